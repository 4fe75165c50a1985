import type { WhoHadWhatView } from './views/who-had-what-view.ts';
import { csvCell } from './words/csv-cell.ts';

/** The chart as comma-separated values, a line a claim. Years are astronomical; an empty cell is open. */
export function chartCsv({ rows }: WhoHadWhatView): string {
  const year = (value: number | null) => (value === null ? '' : String(value));
  const lines = rows.flatMap(({ title, bands }) =>
    bands.map(({ style, from, to, outerFrom, outerTo, soft, label, claimKey }) =>
      [
        csvCell(title),
        csvCell(style),
        year(outerFrom),
        year(from),
        year(to),
        year(outerTo),
        soft ? 'soft' : 'hard',
        csvCell(label),
        csvCell(claimKey),
      ].join(','),
    ),
  );
  return `${['source,kind,earliest start,start,end,latest end,evidence,claim,address', ...lines].join('\r\n')}\r\n`;
}
