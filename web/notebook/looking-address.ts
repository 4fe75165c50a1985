import { addressOf } from './address.ts';

/** Cloths laid side by side, as the setting `look` of an address holds them: a colour may have commas, so semicolons part them. */
export const lookedIds = (look: string | undefined): readonly string[] =>
  (look ?? '')
    .split(';')
    .map((id) => id.trim())
    .filter((id) => id !== '');

/** The setting that lays these side by side. */
export const lookSetting = (ids: readonly string[]): string => ids.join(';');

/** Where these lie side by side. */
export const lookAddress = (ids: readonly string[]): string => addressOf({ view: 'palette', settings: { look: lookSetting(ids) } });

/** A sample as it is laid down: its trial, with its number. */
export const lookedSample = ({ trial, nth }: { readonly trial: string; readonly nth: number }): string => `${trial} ${nth}`;
