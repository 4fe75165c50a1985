import { crc32, deflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { withDensity } from '../../web/notebook/png-density.ts';

const chunk = (name: string, data: Buffer): Buffer => {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
};
/** One white point, grey of 8 bits. */
const png = Buffer.concat([
  Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
  chunk('IHDR', Buffer.from([0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0])),
  chunk('IDAT', deflateSync(Buffer.from([0, 255]))),
  chunk('IEND', Buffer.alloc(0)),
]);

// PNG (Third Edition), 11.3.4.3: 11811 points a metre are 300 an inch; checksums by Node's own zlib.
test('300 dpi is said as points per metre, before the picture’s data and with a checksum that holds', () => {
  const whole = Buffer.from(withDensity(png, 300));
  const density = Buffer.alloc(9);
  density.writeUInt32BE(11811, 0);
  density.writeUInt32BE(11811, 4);
  density[8] = 1;
  expect(whole).toEqual(Buffer.concat([png.subarray(0, 33), chunk('pHYs', density), png.subarray(33)]));
});
