/** Where the map of a source's reach at a date stands. */
export const reachAddress = (dye: string, when: string): string =>
  `#/who-had-what/map?dye=${encodeURIComponent(dye)}&when=${encodeURIComponent(when)}`;
