/** Gives a file to the browser's downloads. */
export function saveFile(name: string, file: Blob): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  // The download has its own hold on the bytes once it has begun; a minute is long enough to begin.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
