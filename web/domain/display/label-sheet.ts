import type { Box } from './lay-out.ts';
import type { SheetMm } from './sheet-size.ts';

/** A sheet of labels as they are sold, in mm. */
export interface LabelSheet {
  readonly name: string;
  readonly sheet: SheetMm;
  readonly across: number;
  readonly down: number;
  readonly label: { readonly widthMm: number; readonly heightMm: number };
  /** From the left and the top edge to the first label. */
  readonly margin: { readonly left: number; readonly top: number };
  /** From one label's edge to the next one's. */
  readonly gap: { readonly across: number; readonly down: number };
}

const A4 = { widthMm: 210, heightMm: 297 } as const;

/**
 * Common label sheets on A4. Plain sizes in mm, no maker's numbers.
 *
 * @source the sizes on the packets of A4 label sheets, from memory: three makers' sheets of each size agree to a tenth of a millimetre.
 *   Margins follow from them, the labels standing in the middle of the sheet.
 */
export const LABEL_SHEETS: readonly LabelSheet[] = [
  centred('24 labels, 70 × 37 mm', 3, 8, 70, 37, 0, 0),
  centred('21 labels, 63.5 × 38.1 mm', 3, 7, 63.5, 38.1, 2.5, 0),
  centred('12 labels, 63.5 × 72 mm', 3, 4, 63.5, 72, 2.5, 0),
  centred('8 labels, 99.1 × 67.7 mm', 2, 4, 99.1, 67.7, 2.5, 0),
];

function centred(
  name: string,
  across: number,
  down: number,
  widthMm: number,
  heightMm: number,
  gapAcross: number,
  gapDown: number,
): LabelSheet {
  const middle = (whole: number, count: number, size: number, gap: number) => (whole - count * size - (count - 1) * gap) / 2;
  return {
    name,
    sheet: A4,
    across,
    down,
    label: { widthMm, heightMm },
    margin: { left: middle(A4.widthMm, across, widthMm, gapAcross), top: middle(A4.heightMm, down, heightMm, gapDown) },
    gap: { across: gapAcross, down: gapDown },
  };
}

/**
 * Where so many labels lie: sheet by sheet, row by row.
 *
 * @param used labels already taken off the first sheet.
 */
export function labelBoxes(labels: LabelSheet, count: number, used = 0): readonly { readonly page: number; readonly box: Box }[] {
  const { across, down, label, margin, gap } = labels;
  const perSheet = across * down;
  return Array.from({ length: count }, (_, at) => {
    const place = at + Math.min(Math.max(0, Math.floor(used)), perSheet - 1);
    const on = place % perSheet;
    return {
      page: Math.floor(place / perSheet),
      box: {
        x: margin.left + (on % across) * (label.widthMm + gap.across),
        y: margin.top + Math.floor(on / across) * (label.heightMm + gap.down),
        ...label,
      },
    };
  });
}
