/**
 * Parts a text into paragraphs and the empty lines between them, each a token of its own; together they are the text again.
 *
 * Empty lines stand alone so that a paragraph put behind the last one leaves that one as it was.
 */
export function paragraphs(text: string): readonly string[] {
  const tokens: string[] = [];
  let wasBlank: boolean | undefined;
  for (const line of text.match(/[^\r\n]*(?:\r\n|\n|\r)|[^\r\n]+$/g) ?? []) {
    const isBlank = line.trim() === '';
    if (isBlank === wasBlank) tokens[tokens.length - 1] += line;
    else tokens.push(line);
    wasBlank = isBlank;
  }
  return tokens;
}
