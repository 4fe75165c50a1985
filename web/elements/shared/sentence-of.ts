/** Words as a sentence: a capital letter before, a full stop behind; nothing of nothing. */
export const sentenceOf = (words: string | undefined): string =>
  words === undefined || words === '' ? '' : `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
