const NOTE_ENDING = /\.(md|markdown)$/i;

/** Whether a file of the folder is read as a note. */
export const isNotePath = (path: string): boolean => NOTE_ENDING.test(path);
