/** A file's name without folder and ending. */
export const stemOf = (file: string): string => file.slice(file.lastIndexOf('/') + 1).replace(/\.(?:md|markdown)$/i, '');
