/**
 * A web address as it was typed.
 *
 * @returns undefined for what is none, or leads elsewhere than to the web.
 */
export function webAddress(text: string): URL | undefined {
  if (!URL.canParse(text.trim())) return undefined;
  const url = new URL(text.trim());
  return url.protocol === 'https:' || url.protocol === 'http:' ? url : undefined;
}
