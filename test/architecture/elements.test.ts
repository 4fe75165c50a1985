import { describe, expect, test } from 'vitest';
import { elementFaults } from './element-rules.ts';
import { filesBelow } from './web-files.ts';

const ELEMENT = `
/**
 * @summary One cloth.
 * @event {ClothPickEvent} tg-cloth-pick - The reader chose it.
 * @slot note - A remark.
 * @csspart chip - The cloth.
 */
@customElement('tg-cloth')
export class TgCloth extends LitElement {
  override render() {
    return html\`<button part="chip" @click=\${this.#pick}></button><slot name="note"></slot>\`;
  }
  #pick() {
    this.dispatchEvent(new ClothPickEvent('x'));
  }
}
declare global {
  interface HTMLElementTagNameMap { 'tg-cloth': TgCloth }
}`;

describe('elements', () => {
  test('every element says what it is, what it sends and what can be styled', () => {
    expect([...filesBelow('web/elements', /\.ts$/), ...filesBelow('web/app', /\.ts$/)].flatMap(elementFaults)).toEqual([]);
  });
});

describe('elementFaults', () => {
  const faults = (text: string) => elementFaults({ path: 'tg-cloth.ts', text });

  test('finds nothing in a whole file, and nothing to ask of other files', () => {
    expect(faults(ELEMENT)).toEqual([]);
    expect(faults('export const a = 1;')).toEqual([]);
  });

  test.each([
    ['@summary One cloth.', '@summary'],
    ['tg-cloth-pick - The reader chose it.', '@event {ClothPickEvent}'],
    ['@slot note - A remark.', '@slot note'],
    ['@csspart chip - The cloth.', '@csspart chip'],
    [`'tg-cloth': TgCloth`, 'HTMLElementTagNameMap'],
  ])('without "%s" it asks for %s', (line, asked) => {
    expect(faults(ELEMENT.replace(line, ''))).toEqual([`tg-cloth.ts: tg-cloth lacks ${asked}`]);
  });
});
