/**
 * Other forms of a listed name, by rules that are safe for single words and last words of a name.
 *
 * English: plural of a singular, singular of a listed plural. German: genitive, and umlauts written ae, oe, ue.
 * Latin: the commonest cases of long nouns in -a, -um, -us, as charters have them (`vermiculo`).
 * Other languages: none, because no rule is safe without a dictionary (our choice).
 *
 * @param name as listed.
 * @param lang BCP 47; absent counts as English.
 */
export function inflectName(name: string, lang: string | undefined): readonly string[] {
  const language = lang?.split('-')[0]?.toLowerCase();
  if (language === undefined || language === 'en') return english(name);
  if (language === 'de') return german(name);
  if (language === 'la') return latin(name);
  return [];
}

function english(name: string): readonly string[] {
  if (/(?:ies)$/i.test(name)) return [name.replace(/ies$/i, 'y')];
  if (/[^aeiou]y$/i.test(name)) return [name.replace(/y$/i, 'ies')];
  if (/leaf$/i.test(name)) return [name.replace(/leaf$/i, 'leaves')];
  if (/(?:s|x|z|ch|sh)$/i.test(name)) {
    // A listed plural such as "oak galls"; not "kermes", "indigos" or a Latin -us, -is, -as.
    const plural = /[^aeious\s]s$/i.test(name) || / [a-z]{3,}es$/i.test(name);
    return plural ? [name.slice(0, -1)] : /(?:x|z|ch|sh)$/i.test(name) ? [`${name}es`] : [];
  }
  return [`${name}s`];
}

function german(name: string): readonly string[] {
  const spelt = name
    .replace(/ä/g, 'ae')
    .replace(/ö/g, 'oe')
    .replace(/ü/g, 'ue')
    .replace(/Ä/g, 'Ae')
    .replace(/Ö/g, 'Oe')
    .replace(/Ü/g, 'Ue');
  const genitive = /[^aeiousxz\s]$/i.test(name) && !/\s/.test(name) ? [`${name}s`] : [];
  return spelt === name ? genitive : [...genitive, spelt, ...genitive.map(() => `${spelt}s`)];
}

function latin(name: string): readonly string[] {
  const stem = /^(\p{L}{5,})(a|um|us)$/iu.exec(name);
  if (!stem?.[1]) return [];
  return stem[2]?.toLowerCase() === 'a' ? [`${stem[1]}ae`, `${stem[1]}am`] : [`${stem[1]}i`, `${stem[1]}o`];
}
