/** What fails as a whole (open, import, save) says so in its type. */
export type Result<T, E extends string> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: E };

/** A success. */
export const ok = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });

/** A failure with its reason. */
export const failed = <E extends string>(error: E): { readonly ok: false; readonly error: E } => ({ ok: false, error });
