import { captionsOf, type CaptionView } from './caption-view.ts';
import { type EvidenceSheetView, type ListedReference, listReferences, sheetOf } from './evidence-sheet-view.ts';
import type { Notebook } from '../notebook.ts';
import { shownColours } from '../shown-colours.ts';

/** Everything behind a display: each colour's sheet and captions, and one list of sources. */
export interface DossierView {
  readonly id: string;
  readonly title: string;
  readonly version: number;
  readonly question: string;
  readonly sheets: readonly (EvidenceSheetView & { readonly captions: readonly Omit<CaptionView, 'written'>[] })[];
  /** Colours that have no sheet, because they cannot be judged. */
  readonly without: readonly string[];
  readonly references: readonly ListedReference[];
  readonly missing: readonly string[];
}

/** A caption as it may leave the desk: nothing of what only the form needs; where an amount went, its marks go with it. */
const printed = ({ written, ...caption }: CaptionView): Omit<CaptionView, 'written'> =>
  written.headline === caption.headline && written.text === caption.text ? caption : { ...caption, bound: [], notices: [] };

/** The dossier of a display; undefined when there is none of that id. */
export function dossierView(notebook: Notebook, id: string): DossierView | undefined {
  const shown = shownColours(notebook, id);
  if (!shown) return undefined;
  const sheets = shown.colours.flatMap((one) => {
    const sheet = sheetOf(notebook, shown, one);
    return sheet ? [{ ...sheet, captions: captionsOf(notebook, shown, one).map(printed) }] : [];
  });
  const keys = sheets.flatMap(({ references, missing }) => [...references.map(({ key }) => key), ...missing]);
  return {
    id: shown.id,
    title: shown.title,
    version: shown.record.version ?? 1,
    question: shown.palette?.record.question ?? '',
    sheets,
    without: shown.colours.filter(({ what }) => !sheets.some((sheet) => sheet.what === what)).map(({ what }) => what),
    ...listReferences(
      notebook,
      keys.map((key) => ({ key })),
    ),
  };
}
