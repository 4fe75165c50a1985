/** What a single key does, wherever no letters are being typed. */
export type Shortcut = 'print' | 'find' | 'view' | 'list';

/** Every shortcut of the page, in the order of its list. */
export const SHORTCUTS: readonly { readonly key: string; readonly does: Shortcut; readonly words: string }[] = [
  { key: '/', does: 'find', words: 'Find notes' },
  { key: 'P', does: 'print', words: 'Print this view' },
  { key: 'E', does: 'view', words: 'Evening or paper: change the ground' },
  { key: '?', does: 'list', words: 'This list' },
];

/** Keys that belong to a control, for the list only. */
export const CONTROL_KEYS: readonly { readonly key: string; readonly words: string }[] = [
  { key: 'Tab', words: 'To the next control or link' },
  { key: 'Arrows', words: 'Along a line of cloth, a chart’s year, a list of words' },
  { key: 'Enter', words: 'Take a cloth down, follow a link' },
  { key: 'Esc', words: 'Close an opened word, a list, this dialog' },
];

/** The shortcut of a key press; with Control, Alt or the command key held it is the browser's. */
export function shortcutOf({
  key,
  ctrlKey,
  metaKey,
  altKey,
}: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey'>): Shortcut | undefined {
  if (ctrlKey || metaKey || altKey) return undefined;
  return SHORTCUTS.find((one) => one.key === key.toUpperCase())?.does;
}

/** Whether a letter typed there belongs to the control; a thread of years takes none. */
export const takesLetters = (one: EventTarget): boolean =>
  one instanceof HTMLInputElement
    ? !['range', 'checkbox', 'radio', 'button', 'file'].includes(one.type)
    : one instanceof HTMLSelectElement || one instanceof HTMLTextAreaElement || (one instanceof HTMLElement && one.isContentEditable);
