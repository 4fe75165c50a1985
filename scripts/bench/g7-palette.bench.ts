import type { PlacedClaim } from '../../web/domain/claim/claim.ts';
import { paletteOf } from '../../web/domain/palette/palette.ts';
import { standingOf } from '../../web/domain/verdict/standing.ts';
import { Notebook } from '../../web/notebook/notebook.ts';
import { alternate } from './alternate.ts';
import { benchOptions } from './bench-options.ts';
import { madeNotes } from './made/made-notes.ts';
import { type Figure, report, timedFigure } from './report.ts';

const encoder = new TextEncoder();
const figures: Figure[] = [];
for (const [name, notes] of benchOptions().sizes) {
  const notebook = new Notebook();
  notebook.putAll([...madeNotes(notes, { short: true })].map(({ path, text }) => ({ path, bytes: encoder.encode(text) })));
  await notebook.ready();
  const { base, colours } = notebook;
  const region = base.regions.ids[3] ?? 'world';
  const question = { region, span: { from: 1300, to: 1350 }, dyedHere: false };
  const claims: PlacedClaim[] = [...base.notes()]
    .flatMap(({ file }) => base.claimsIn(file))
    .map((claim) => base.place(claim))
    .filter((one) => 'claim' in one);

  /** The same rules over one list of objects: each material's claims are looked for among all. */
  const plain = (): readonly string[] => {
    const standings: string[] = [];
    for (const { judgement, fibre } of palette) {
      const asked = { ...question, fibreLine: fibre === undefined ? [] : base.fibreLine(fibre) };
      for (const { material, judgedFor } of judgement.materials) {
        const own = claims.filter((one) => one.material === material.id);
        const context = { regions: base.regions, everyday: base.isEveryday(material.id) };
        standings.push(standingOf(own, { ...asked, region: judgedFor }, context).standing);
      }
    }
    return standings;
  };
  const judge = () => paletteOf(base, colours, question);
  const palette = judge();
  const standings = palette.flatMap(({ judgement }) => judgement.materials.map(({ standing }) => standing));
  if (plain().join() !== standings.join()) throw new Error('other standings');

  const [ours, theirs] = await alternate([
    { name: 'palette', run: judge },
    { name: 'rules over plain objects', run: plain },
  ]);
  if (!ours || !theirs) continue;
  const at = `${name} notes, ${claims.length} claims, ${palette.length} colours`;
  figures.push(timedFigure({ goal: 'G7', what: 'whole palette', at, wanted: 1 / 20 }, ours, theirs));
}
report('palette', 'A whole palette of one place and date, in Node', figures);
