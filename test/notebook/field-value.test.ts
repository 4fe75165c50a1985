import { describe, expect, test } from 'vitest';
import { RawYaml } from '../../web/domain/note/yaml-text.ts';
import { fieldValue } from '../../web/notebook/field-value.ts';

describe('fieldValue', () => {
  test('words stay words, ends trimmed; nothing is nothing', () => {
    expect(fieldValue('text', '  3 ')).toBe('3');
    expect(fieldValue('text', '   ')).toBeUndefined();
  });

  test('years and figures are written without quotes', () => {
    expect(fieldValue('date', '0700')).toEqual(new RawYaml('0700'));
    expect(fieldValue('number', '7.40')).toEqual(new RawYaml('7.40'));
    expect(fieldValue('date', 'c. 1350')).toBe('c. 1350');
  });

  test('three numbers are a list however they are parted', () => {
    for (const typed of ['41.2, 38.5, -24', '41.2 38.5 -24', '41.2; 38.5;-24'])
      expect(fieldValue('numbers', typed)).toEqual(new RawYaml('[41.2, 38.5, -24]'));
    expect(fieldValue('numbers', 'reddish')).toBe('reddish');
    expect(fieldValue('number', '7, 8', true)).toEqual(new RawYaml('[7, 8]'));
  });

  test('yes and no are true and false', () => {
    expect(fieldValue('yes-no', 'true')).toBe(true);
    expect(fieldValue('yes-no', 'false')).toBe(false);
  });
});
