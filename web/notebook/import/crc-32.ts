const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  return rest;
});

/**
 * The checksum that a zip keeps of each file, and we of what is kept between visits.
 *
 * @source ISO 3309 / ITU-T V.42, as named in PKWARE APPNOTE 6.3.10, 4.4.7.
 */
export function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  // By place rather than by `for … of`: it is read over sixteen million bytes when a large notebook is opened.
  for (let at = 0; at < bytes.length; at += 1) sum = (TABLE[(sum ^ (bytes[at] ?? 0)) & 0xff] ?? 0) ^ (sum >>> 8);
  return (sum ^ 0xffffffff) >>> 0;
}
