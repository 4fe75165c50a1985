/** Cloths laid side by side, as the setting `look` of an address holds them: a colour may have commas, so semicolons part them. */
export const lookedIds = (look: string | undefined): readonly string[] =>
  (look ?? '')
    .split(';')
    .map((id) => id.trim())
    .filter((id) => id !== '');

/** The setting that lays these side by side. */
export const lookSetting = (ids: readonly string[]): string => ids.join(';');
