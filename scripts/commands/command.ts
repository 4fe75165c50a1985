import { parseArgs } from 'node:util';
import { Notebook } from '../../web/notebook/notebook.ts';
import type { QuestionProblem } from '../../web/notebook/pose-question.ts';
import { type PassedOver, readFolder } from '../read-folder.ts';

/** One command of the command line: its arguments in, its exit code out. 0 done, 1 errors found, 2 not understood. */
export type Command = (args: readonly string[]) => Promise<number>;

/**
 * Options and words of a command; undefined after what is wrong was said.
 *
 * @param mostWords how many words beside the options mean something; a date typed without quotes leaves one too many.
 */
export function readArgs(
  args: readonly string[],
  options: Readonly<Record<string, { readonly type: 'string' | 'boolean' }>>,
  mostWords = Infinity,
): { readonly values: Readonly<Record<string, string | boolean | undefined>>; readonly words: readonly string[] } | undefined {
  try {
    // A colour such as -3,2,1 or a year such as -44 is a value, not an option.
    const joined = joinNegatives(args, options);
    const { values, positionals } = parseArgs({ args: joined, options, allowPositionals: true, strict: true });
    if (positionals.length > mostWords) {
      const left = positionals.slice(mostWords).map((word) => `"${word}"`);
      console.error(`Not understood: ${left.join(', ')}. Put what holds a space in quotes, such as --when "c. 1370".`);
      return undefined;
    }
    return { values, words: positionals };
  } catch (problem) {
    console.error(problem instanceof Error ? problem.message.split('. ')[0] : String(problem));
    console.error(
      `Known options: ${Object.keys(options)
        .map((option) => `--${option}`)
        .join(', ')}.`,
    );
    return undefined;
  }
}

function joinNegatives(args: readonly string[], options: Readonly<Record<string, { readonly type: string }>>): string[] {
  const joined: string[] = [];
  for (let at = 0; at < args.length; at++) {
    const arg = args[at] ?? '';
    const next = args[at + 1];
    if (arg.startsWith('--') && options[arg.slice(2)]?.type === 'string' && next !== undefined && /^-\d/.test(next)) {
      joined.push(`${arg}=${next}`);
      at += 1;
    } else joined.push(arg);
  }
  return joined;
}

/** A notebook opened from a folder; undefined after the reason was said. */
export async function openFolder(
  folder: string | undefined,
): Promise<{ readonly notebook: Notebook; readonly passedOver: readonly PassedOver[] } | undefined> {
  if (folder === undefined) {
    console.error('Name the folder of notes: tenterground COMMAND FOLDER …');
    return undefined;
  }
  const reading = await readFolder(folder);
  if (!reading) {
    console.error(`The folder "${folder}" is missing, is no folder, or may not be read. Give the path of a folder of notes.`);
    return undefined;
  }
  const notebook = new Notebook();
  notebook.putAll(reading.files);
  await notebook.ready();
  return { notebook, passedOver: reading.passedOver };
}

const OPTION_OF = {
  colour: '--colour',
  dye: '--dye',
  region: '--region',
  when: '--when',
  fibre: '--fibre',
  wearer: '--wearer',
  tolerance: '--tolerance',
} as const satisfies Record<QuestionProblem['part'], string>;

/** Says on stderr which option was not understood and what is near. */
export function tellProblems(problems: readonly QuestionProblem[]): void {
  for (const { part, problem, typed, nearest } of problems) {
    const option = OPTION_OF[part];
    const near = nearest.length > 0 ? ` ${problem === 'ambiguous' ? 'It fits' : 'Nearest known'}: ${nearest.join(', ')}.` : '';
    if (problem === 'missing') console.error(`${option} is missing${part === 'colour' ? ' (or --dye)' : ''}.`);
    else if (problem === 'ambiguous') console.error(`${option} "${typed}" fits more than one.${near}`);
    else if (problem === 'colourless')
      console.error(`${option} "${typed}": the note of that name states no colour. Write for example: ${nearest.join(' or ')}.`);
    else if (problem === 'unreadable')
      console.error(`${option} "${typed}" cannot be read.${nearest.length > 0 ? ` Write for example: ${nearest.join(' or ')}.` : ''}`);
    else console.error(`${option} "${typed}" is not known here.${near}`);
  }
}

/** A terminal's width worth of text, later lines indented. */
export function wrap(text: string, indent = '', width = Math.min(process.stdout.columns ?? 80, 110)): string {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(' ')) {
    if (line.trim() !== '' && line.length + word.length + 1 > width) {
      lines.push(line);
      line = `${indent}${word}`;
    } else line = line.trim() === '' ? `${indent}${word}` : `${line} ${word}`;
  }
  return [...lines, line].join('\n');
}
