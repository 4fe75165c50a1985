import { GrowingBytes } from './growing-bytes.ts';

/** Whole numbers in seven bits a byte, the lowest first, so that small ones take one; before them how many there are. */
export function packNumbers(numbers: ArrayLike<number>): Uint8Array {
  const bytes = new GrowingBytes();
  bytes.pushNumber(numbers.length);
  for (let at = 0; at < numbers.length; at += 1) bytes.pushNumber(numbers[at] ?? 0);
  return bytes.view();
}

/** The numbers of such bytes, below 2³². */
export function unpackNumbers(bytes: Uint8Array): Uint32Array {
  let place = 0;
  const next = (): number => {
    let byte = bytes[place++] ?? 0;
    let value = byte & 0x7f;
    for (let step = 0x80; byte >= 0x80; step *= 0x80) {
      byte = bytes[place++] ?? 0;
      value += (byte & 0x7f) * step;
    }
    return value;
  };
  const numbers = new Uint32Array(next());
  for (let at = 0; at < numbers.length; at += 1) numbers[at] = next();
  return numbers;
}

/** Numbers that never fall, as the steps from one to the next. */
export function packRising(numbers: Uint32Array): Uint8Array {
  return packNumbers(numbers.map((number, at) => number - (at === 0 ? 0 : (numbers[at - 1] ?? 0))));
}

/** The numbers of such steps. */
export function unpackRising(bytes: Uint8Array): Uint32Array {
  const numbers = unpackNumbers(bytes);
  for (let at = 1; at < numbers.length; at += 1) numbers[at] = (numbers[at] ?? 0) + (numbers[at - 1] ?? 0);
  return numbers;
}
