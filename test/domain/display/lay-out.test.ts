import { describe, expect, test } from 'vitest';
import { BOARD, type BoardItem, type Box, captionHeightMm, layOut } from '../../../web/domain/display/lay-out.ts';
import { isMoveKey, movedBy, movedByKey } from '../../../web/domain/display/move-place.ts';
import { captionTypeMm, sheetMm } from '../../../web/domain/display/sheet-size.ts';
import { fc, runs } from '../../helpers/property.ts';

const item = (id: string, more: Partial<BoardItem> = {}): BoardItem => ({
  id,
  group: '',
  captionLength: 200,
  captionSpot: 'below',
  ...more,
});
const items = (count: number) => Array.from({ length: count }, (_, at) => item(`i${at}`, { group: at < count / 2 ? 'red' : 'blue' }));
const a3 = sheetMm({ size: 'a3', orientation: 'portrait' });

describe('sheetMm', () => {
  // ISO 216.
  test.each([
    ['a4', 'portrait', 210, 297],
    ['a3', 'landscape', 420, 297],
    ['a2', 'portrait', 420, 594],
    ['a1', 'landscape', 841, 594],
  ] as const)('%s %s is %i × %i mm', (size, orientation, widthMm, heightMm) => {
    expect(sheetMm({ size, orientation })).toEqual({ widthMm, heightMm });
  });

  test('a free sheet is as it is written', () => {
    expect(sheetMm({ size: 'free', orientation: 'landscape', widthMm: 500, heightMm: 900 })).toEqual({ widthMm: 500, heightMm: 900 });
  });

  test('bigger sheets have bigger type', () => {
    const sizes = (['a4', 'a3', 'a2', 'a1'] as const).map((size) => captionTypeMm(sheetMm({ size, orientation: 'portrait' })));
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    expect(sizes[0]).toBeGreaterThanOrEqual(3.17);
  });
});

const inside = (box: Box, sheet: { widthMm: number; heightMm: number }) =>
  box.x >= 0 && box.y >= 0 && box.x + box.widthMm <= sheet.widthMm + 1e-9 && box.y + box.heightMm <= sheet.heightMm + 1e-9;
const overlap = (a: Box, b: Box) =>
  a.x < b.x + b.widthMm - 1e-9 && b.x < a.x + a.widthMm - 1e-9 && a.y < b.y + b.heightMm - 1e-9 && b.y < a.y + a.heightMm - 1e-9;

describe('layOut', () => {
  test('nine colours with captions find room on A3, in order, a heading where a group begins', () => {
    const found = layOut(items(9), a3, captionTypeMm(a3));
    expect(found.items.map(({ id }) => id)).toEqual(['i0', 'i1', 'i2', 'i3', 'i4', 'i5', 'i6', 'i7', 'i8']);
    expect(found.headings.map(({ group }) => group)).toEqual(['red', 'blue']);
    expect(found.overflow).toEqual([]);
  });

  test('few cloths are larger than many', () => {
    const width = (count: number) => layOut(items(count), a3, 3.5).items[0]?.cloth.widthMm ?? 0;
    expect(width(2)).toBeGreaterThan(width(12));
    expect(width(2)).toBeLessThanOrEqual(BOARD.most);
  });

  test('what finds no room is told, never made too small', () => {
    const found = layOut(items(200), sheetMm({ size: 'a4', orientation: 'portrait' }), 3.2);
    expect(found.overflow.length).toBeGreaterThan(100);
    expect(found.items.length + found.overflow.length).toBe(200);
    expect(found.items.every(({ cloth }) => cloth.widthMm >= BOARD.leastCloth)).toBe(true);
  });

  test('nothing leaves the sheet or lies on another, whatever is laid', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ group: fc.constantFrom('a', 'b', 'c'), captionLength: fc.integer({ min: 0, max: 420 }) }), { maxLength: 40 }),
        fc.constantFrom('a4', 'a3', 'a2', 'a1'),
        fc.constantFrom('portrait', 'landscape'),
        (drawn, size, orientation) => {
          const sheet = sheetMm({ size, orientation } as Parameters<typeof sheetMm>[0]);
          const found = layOut(
            drawn.map((one, at) => item(`${at}`, one)),
            sheet,
            captionTypeMm(sheet),
          );
          const boxes = found.items.flatMap(({ cloth, caption }) => (caption ? [cloth, caption] : [cloth]));
          expect(boxes.every((box) => inside(box, sheet))).toBe(true);
          expect(boxes.every((box, at) => boxes.slice(at + 1).every((other) => !overlap(box, other)))).toBe(true);
        },
      ),
      runs(60),
    );
  });

  test('a place in the note is kept; the others hang below it', () => {
    const found = layOut([item('a', { fixed: { x: 20, y: 40, widthMm: 50, heightMm: 60 } }), item('b')], a3, 3.5);
    expect(found.items[0]).toMatchObject({ id: 'a', fixed: true, cloth: { x: 20, y: 40, widthMm: 50, heightMm: 60 } });
    expect(found.items[1]?.cloth.y).toBeGreaterThan(100);
  });

  test.each(['a4', 'a3', 'a2', 'a1'] as const)('kept as it lies, a board on %s stays as it lies: headings and captions too', (size) => {
    const sheet = sheetMm({ size, orientation: 'portrait' });
    const board = items(7);
    const flowed = layOut(board, sheet, captionTypeMm(sheet));
    const boxes = new Map(flowed.items.map(({ id, cloth }) => [id, cloth]));
    const kept = layOut(
      board.map((one) => ({ ...one, fixed: boxes.get(one.id) ?? {} })),
      sheet,
      captionTypeMm(sheet),
    );
    const near = ({ x, y, widthMm, heightMm }: Box) => [x, y, widthMm, heightMm].map((mm) => Math.round(mm * 100) / 100);
    const captions = (laid: typeof kept) => laid.items.map(({ caption }) => caption && near(caption));
    expect(captions(kept)).toEqual(captions(flowed));
    expect(kept.headings.map((one) => [one.group, ...near(one)])).toEqual(flowed.headings.map((one) => [one.group, ...near(one)]));
    expect(kept.clashes).toEqual([]);
  });

  test('a heading goes with the cloth of its group that is read first', () => {
    const at = (id: string, group: string, x: number, y: number) => item(id, { group, fixed: { x, y, widthMm: 50, heightMm: 60 } });
    const found = layOut([at('a', 'red', 20, 200), at('b', 'red', 90, 60), at('c', 'blue', 160, 60), item('d', { group: '' })], a3, 3.5);
    expect(found.headings.map(({ group, x, y }) => [group, x, y])).toEqual([
      ['red', 90, 60 - BOARD.heading],
      ['blue', 160, 60 - BOARD.heading],
    ]);
  });

  test('places over one another or over the edge are told', () => {
    const at = (id: string, x: number, y: number) => item(id, { captionSpot: 'none', fixed: { x, y, widthMm: 50, heightMm: 60 } });
    expect(layOut([at('a', 20, 40), at('b', 60, 90), at('c', 270, 40), at('d', 120, 200)], a3, 3.5).clashes).toEqual([
      { id: 'a', with: 'b' },
      { id: 'c' },
    ]);
  });

  test('a caption beside its cloth counts too', () => {
    const found = layOut([item('a', { captionSpot: 'beside', fixed: { x: 20, y: 40, widthMm: 50, heightMm: 60 } })], a3, 3.5);
    expect(found.items[0]?.caption).toMatchObject({ x: 72, y: 40, widthMm: 50 });
  });
});

describe('captionHeightMm', () => {
  test('no words need no height, a narrow column more than a wide one', () => {
    expect(captionHeightMm(0, 50, 3.5)).toBe(0);
    expect(captionHeightMm(300, 40, 3.5)).toBeGreaterThan(captionHeightMm(300, 80, 3.5));
  });
});

describe('movedByKey', () => {
  const box = { x: 20, y: 40, widthMm: 50, heightMm: 60 };

  test('5 mm, or 1 mm when fine', () => {
    expect(movedByKey(box, 'ArrowRight', false, a3)).toMatchObject({ x: 25, y: 40 });
    expect(movedByKey(box, 'ArrowUp', true, a3)).toMatchObject({ x: 20, y: 39 });
  });

  test('stays on the sheet', () => {
    expect(movedByKey({ ...box, x: 2 }, 'ArrowLeft', false, a3).x).toBe(0);
    expect(movedBy(box, 9999, 9999, a3)).toMatchObject({ x: 247, y: 360 });
  });

  test('a pointer lays it on the grid', () => {
    expect(movedBy(box, 3.2, -1, a3)).toMatchObject({ x: 25, y: 40 });
  });

  test('only arrows move', () => {
    expect(['ArrowLeft', 'Enter', 'toString'].map(isMoveKey)).toEqual([true, false, false]);
  });
});
