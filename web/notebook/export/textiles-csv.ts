import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import type { StatedColour } from '../../domain/note/note.ts';
import type { TextileColumn } from '../import/table-columns.ts';
import { sourceText } from '../words/claim-line.ts';
import { csvCell } from '../words/csv-cell.ts';

const COLUMNS: readonly TextileColumn[] = [
  'id',
  'title',
  'region',
  'made-at',
  'when',
  'context',
  'wearer',
  'where',
  'fibre',
  'dyes',
  'markers',
  'tested',
  'colour-now',
  'source',
  'checked',
];

/** Every textile, a line for each thread, in the columns that `readTextiles` reads back. Remarks and measured colours are not in it. */
export function textilesCsv(base: EvidenceBase): string {
  const lines = base.ofKind('textile').flatMap((note) => {
    const { record } = note;
    const shared = [
      note.id,
      note.title,
      record.region?.text ?? '',
      record.madeAt?.text ?? '',
      record.when?.text ?? '',
      record.context ?? '',
      record.wearer.map(({ text }) => text).join('; '),
    ];
    const end = [sourceText(note.sources), note.checked ?? ''];
    const threads = record.threads.map(({ where, fibre, dyes, markers, tested, colourNow }) => [
      ...shared,
      where ?? '',
      fibre?.text ?? '',
      dyes.map(({ text }) => text).join('; '),
      markers.join('; '),
      tested,
      wordsOf(colourNow),
      ...end,
    ]);
    return threads.length > 0 ? threads : [[...shared, '', '', '', '', '', '', ...end]];
  });
  return [COLUMNS, ...lines].map((cells) => `${cells.map(csvCell).join(',')}\r\n`).join('');
}

const wordsOf = (colour: StatedColour | string | undefined): string => (typeof colour === 'string' ? colour : (colour?.hex ?? ''));
