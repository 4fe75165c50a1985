import type { TextileRecord } from '../../domain/note/note.ts';
import { addressOf } from '../address.ts';
import { settingsOfLab } from '../lab-address.ts';
import { EMPTY_LAB } from '../typed-lab.ts';

/** A way from a note to the laboratory's page. */
export interface LabLink {
  readonly words: string;
  readonly address: string;
}

/** For each thread whose compounds are known the question what they mean; for a textile without any, where to put a report in. */
export function labLinks({ region, when, threads }: TextileRecord): readonly LabLink[] {
  const at = { ...(region && { region: region.text }), ...(when && { when: when.text }) };
  const examined = threads.filter(({ markers }) => markers.length > 0);
  if (examined.length === 0) {
    const [fibre] = threads.flatMap((thread) => thread.fibre ?? []);
    return [{ words: 'Put in a laboratory’s report on it', address: labAddress({ ...at, ...(fibre && { fibre: fibre.text }) }) }];
  }
  return examined.map(({ where, fibre, markers }) => ({
    words: `Ask what the compounds of ${examined.length === 1 || where === undefined ? 'its thread' : `the ${where}`} mean`,
    address: labAddress({
      ...at,
      ...(fibre && { fibre: fibre.text }),
      findings: markers.map((compound) => ({ compound, found: 'present' as const })),
    }),
  }));
}

/** The laboratory's page with what a dyestuff's note says a laboratory finds. */
export const labOfMarkers = (markers: readonly string[]): string =>
  labAddress({ findings: markers.map((compound) => ({ compound, found: 'present' as const })) });

const labAddress = (report: Partial<typeof EMPTY_LAB>): string =>
  addressOf({ view: 'ask', id: 'laboratory', settings: settingsOfLab({ ...EMPTY_LAB, ...report }) });
