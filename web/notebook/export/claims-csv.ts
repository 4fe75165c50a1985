import { evidenceClassOf } from '../../domain/claim/evidence-class.ts';
import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { sourceText, titleOf } from '../words/claim-line.ts';
import { csvCell } from '../words/csv-cell.ts';

const HEADINGS = [
  'material',
  'title',
  'status',
  'region',
  'when',
  'earliest start',
  'latest start',
  'earliest end',
  'latest end',
  'known by',
  'class',
  'sure',
  'extent',
  'use',
  'on',
  'wearers',
  'usual',
  'price',
  'source',
  'checked',
  'rests on',
  'note',
  'remark',
] as const;

/**
 * Every claim of the notebook, a line each, those that take no part included (their bounds are empty). Years are astronomical: 1 BCE is 0;
 * an open bound is `..`. Cells a spreadsheet would run are made text; negative years stay numbers.
 */
export function claimsCsv(base: EvidenceBase): string {
  const lines = [...base.notes()]
    .sort((a, b) => (a.file < b.file ? -1 : 1))
    .flatMap((note) => base.claimsIn(note.file))
    .map((claim) => {
      const placed = base.place(claim);
      const isPlaced = !('lacks' in placed);
      const span = base.spanOf(claim.when);
      const bound = (year: number | null | undefined) => (year === undefined ? '' : year === null ? '..' : String(year));
      const material = isPlaced ? placed.material : claim.about;
      return [
        material,
        titleOf(base, material),
        claim.status,
        isPlaced ? placed.region : (claim.region?.text ?? ''),
        claim.when?.text ?? '',
        bound(span?.earliestStart),
        bound(span?.latestStart),
        bound(span?.earliestEnd),
        bound(span?.latestEnd),
        claim.knownBy ?? '',
        claim.knownBy ? evidenceClassOf(claim.knownBy) : '',
        claim.sure,
        isPlaced ? placed.extent : (claim.extent ?? ''),
        claim.use,
        (isPlaced ? placed.on : claim.on.map(({ text }) => text)).join('; '),
        claim.wearers.map(({ text }) => text).join('; '),
        claim.usual ?? '',
        claim.price ?? '',
        sourceText(claim.sources),
        claim.checked ?? '',
        claim.restsOn ? sourceText([claim.restsOn]) : '',
        claim.note,
        claim.remark ?? '',
      ];
    });
  return [HEADINGS, ...lines].map((cells) => `${cells.map(csvCell).join(',')}\r\n`).join('');
}
