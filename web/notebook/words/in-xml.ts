const XML: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** Text for an element or an attribute of XML or HTML; characters that XML cannot hold go. */
export const inXml = (text: string): string =>
  text
    .replace(/[^\P{Cc}\t\n\r]|[\uFFFE\uFFFF]/gu, '')
    .replace(/\p{Surrogate}/gu, '')
    .replace(/[&<>"']/g, (letter) => XML[letter] ?? letter);
