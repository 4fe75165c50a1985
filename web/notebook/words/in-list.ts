/** Words as a sentence lists them: "madder", "madder and weld", "madder, weld and woad". */
export const inList = (words: readonly string[], joint = 'and'): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${joint} ${words.at(-1) ?? ''}`;
