import { formatSpan } from '../../web/domain/date/format-date.ts';
import { type PaletteColour, paletteOf, sortPalette, USUAL_VERDICTS } from '../../web/domain/palette/palette.ts';
import { judgementJson } from '../../web/notebook/answer-json.ts';
import type { Notebook } from '../../web/notebook/notebook.ts';
import { poseCircumstances } from '../../web/notebook/pose-question.ts';
import { titleOf } from '../../web/notebook/words/claim-line.ts';
import { colourOriginWords } from '../../web/notebook/words/palette-words.ts';
import { verdictWords } from '../../web/notebook/words/verdict-words.ts';
import { type Command, openFolder, readArgs, tellProblems } from './command.ts';

const OPTIONS = {
  region: { type: 'string' },
  when: { type: 'string' },
  fibre: { type: 'string' },
  wearer: { type: 'string' },
  'dyed-here': { type: 'boolean' },
  json: { type: 'boolean' },
} as const;

/** `tenterground palette FOLDER …`: every colour the notebook can stand behind at a place and date. */
export const palette: Command = async (args) => {
  const read = readArgs(args, OPTIONS, 1);
  if (!read) return 2;
  const text = (option: keyof typeof OPTIONS): string | undefined => {
    const value = read.values[option];
    return typeof value === 'string' ? value : undefined;
  };
  const opened = await openFolder(read.words[0]);
  if (!opened) return 2;
  const { base, colours } = opened.notebook;
  const { question, problems } = poseCircumstances(base, {
    region: text('region') ?? '',
    when: text('when') ?? '',
    fibre: text('fibre'),
    wearer: text('wearer'),
    dyedHere: read.values['dyed-here'] === true,
  });
  if (!question) {
    tellProblems(problems);
    return 2;
  }
  const all = paletteOf(base, colours, question.route);
  const shown = sortPalette(
    all.filter(({ judgement }) => USUAL_VERDICTS.includes(judgement.verdict)),
    'hue',
  );
  if (read.values['json'] === true) {
    console.log(
      JSON.stringify(
        {
          question: {
            region: question.route.region,
            ...question.route.span,
            fibre: question.route.fibre ?? null,
            wearer: question.route.wearer ?? null,
            dyedHere: question.route.dyedHere,
          },
          colours: shown.map((one) => colourJson(opened.notebook, one)),
          hidden: all.length - shown.length,
        },
        undefined,
        2,
      ),
    );
    return 0;
  }
  console.log(
    `${titleOf(base, question.route.region)}, ${formatSpan(question.when)}: ${shown.length} colours, ${all.length - shown.length} more not shown.\n`,
  );
  let family = '';
  for (const one of shown) {
    if (one.family !== family) console.log(`${family === '' ? '' : '\n'}${one.family}`);
    family = one.family;
    const origin = one.origin === undefined ? '' : ` · ${colourOriginWords[one.origin]}`;
    console.log(
      `  ${one.colour.hex}  ${titleOf(base, one.judgement.route.recipe ?? one.judgement.route.id)} · ${verdictWords[one.judgement.verdict].word.toLowerCase()}${origin}`,
    );
  }
  return 0;
};

function colourJson({ base }: Notebook, one: PaletteColour) {
  const { route } = one.judgement;
  return {
    ...(route.undyed === undefined ? { recipe: route.id } : { undyed: route.id }),
    title: titleOf(base, route.recipe ?? route.id),
    fibre: one.fibre ?? null,
    origin: one.origin ?? null,
    family: one.family,
    lab: one.colour.lab10.map((value) => Number(value.toFixed(2))),
    hex: one.colour.hex,
    trials: [...new Set(one.samples.map(({ trial }) => trial))],
    ...judgementJson(one.judgement),
  };
}
