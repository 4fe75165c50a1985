/** A wearer's title after "by": "a merchant", "the clergy", "everyone". */
export function byWearer(title: string): string {
  const word = title.toLowerCase();
  if (/^(?:every|any)(?:one|body)$/.test(word)) return word;
  if (GROUP.test(word)) return `the ${word}`;
  return `${/^[aeiou]/.test(word) ? 'an' : 'a'} ${word}`;
}

/** Titles that name a whole body of people. */
const GROUP = /(?:clergy|family|court|household|nobility|gentry|people|poor|rich|[^s]s)$/;
