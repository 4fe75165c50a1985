import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import { findCompound } from '../domain/laboratory/find-compound.ts';
import { blockYaml, type PlainValue } from '../domain/note/yaml-text.ts';
import { inSentence, titleOf } from './words/claim-line.ts';
import { figure, foundWords, methodWords, mixtureTitle } from './words/lab-words.ts';
import { inList } from './words/in-list.ts';
import type { LabView } from './views/lab-view.ts';
import { stemFrom } from './starters.ts';
import type { TypedLab } from './typed-lab.ts';

/** A note to be written: a draft until its writer saves it. */
export interface DraftNote {
  readonly id: string;
  readonly path: string;
  readonly text: string;
}

/**
 * A report and what it may mean as a textile note.
 *
 * @param dyes the identification its writer takes; a dyestuff on a thread is a claim, so none is taken unasked.
 */
export function labNote(base: EvidenceBase, typed: TypedLab, lab: LabView, dyes: readonly string[] = []): DraftNote {
  const place = typed.region === undefined || typed.region === '' ? undefined : titleOf(base, base.regionId(typed.region) ?? typed.region);
  const title = [dyes.length > 0 ? mixtureTitle(base, dyes) : 'Analysed thread', [place, typed.when].filter(Boolean).join(', ')]
    .filter((part) => part !== '')
    .join(': ');
  const found = typed.findings.filter((one) => one.found === 'present' || one.found === 'trace');
  const tested = found.length > 0 ? 'found' : typed.findings.some((one) => one.found === 'absent') ? 'none-detected' : 'no';
  const thread: PlainValue = {
    where: 'thread tested',
    ...(typed.fibre ? { fibre: typed.fibre } : {}),
    ...(dyes.length > 0 ? { dyes } : {}),
    ...(found.length > 0 ? { markers: found.map(({ compound }) => findCompound(compound)?.name ?? compound) } : {}),
    tested,
  };
  const front: PlainValue = {
    kind: 'textile',
    title,
    ...(typed.region ? { region: typed.region } : {}),
    ...(typed.when ? { when: typed.when } : {}),
    threads: [thread],
    ...(typed.source ? { source: typed.source } : {}),
  };
  const id = freeId(base, stemFrom(title, 'analysed-thread'));
  return { id, path: `textiles/${id}.md`, text: `---\n${blockYaml(front, 0, '\n')}\n---\n\n${bodyOf(base, typed, lab, dyes)}\n` };
}

function bodyOf(base: EvidenceBase, typed: TypedLab, lab: LabView, dyes: readonly string[]): string {
  const byFound = (['present', 'trace', 'absent'] as const).flatMap((found) => {
    const names = typed.findings.filter((one) => one.found === found).map(({ compound }) => compound);
    return names.length > 0 ? [`${foundWords[found]}: ${names.join(', ')}`] : [];
  });
  const ratios = typed.ratios.map(
    ({ ratio, value, tolerance }) => `${ratio} ${figure(value)}${tolerance ? ` ± ${figure(tolerance)}` : ''}`,
  );
  const ranked = lab.explanations.map(
    ({ title, share, notTold }) => `- ${title}, ${share}.${notTold.length > 0 ? ` ${notTold.join(' ')}` : ''}`,
  );
  const parts = [
    `Examined by ${methodWords[typed.method]}. ${capital(byFound.join('; '))}.${ratios.length > 0 ? ` Ratios: ${ratios.join('; ')}.` : ''}${
      typed.elseAbsent ? ' Everything else was looked for and not found.' : ' What is not named was not tested.'
    }`,
    dyes.length > 0
      ? `Taken here as ${inList(dyes.map((dye) => inSentence(base, dye)))}.`
      : 'No identification was taken: the thread names compounds only.',
    ranked.length > 0 ? `What would explain it, as reckoned when this was written:\n\n${ranked.join('\n')}` : '',
    lab.ruledOut.length > 0 ? `Set aside by place and date: ${lab.ruledOut.join(' ')}` : '',
    lab.ownFigures.length > 0 ? `Reckoned with figures of the writer’s own: ${lab.ownFigures.join('; ')}.` : '',
    lab.tests.length > 0 ? `What would tell more: ${lab.tests.join(' ')}` : '',
  ];
  return parts.filter((part) => part !== '').join('\n\n');
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** An id nobody holds yet: the stem, or the stem with a number. */
export function freeId(base: EvidenceBase, stem: string, taken: ReadonlySet<string> = new Set()): string {
  for (let nth = 1; ; nth += 1) {
    const id = nth === 1 ? stem : `${stem}-${nth}`;
    if (base.note(id) === undefined && !taken.has(id)) return id;
  }
}
