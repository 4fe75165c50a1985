import { amountShown, formShown, withoutDoses } from '../../domain/pot/without-doses.ts';
import { type OnScreen, onScreen } from '../../domain/colour/swatch-colour.ts';
import { MATERIAL_KINDS } from '../../domain/claim/evidence-base.ts';
import type { Ingredient, Note, NoteRecord, StatedColour } from '../../domain/note/note.ts';
import type { Coloured } from '../../domain/verdict/sample-colours.ts';
import type { Notebook } from '../notebook.ts';
import { TEXTILE } from '../../domain/colour/conditions.ts';
import { addressOf, settingsOf } from '../address.ts';
import { carryColour } from '../typed-colour.ts';
import { weaveOf } from './cloth-view.ts';
import { joinLines, type Line, plain, quiet } from './line.ts';
import { NoteWords } from './note-words.ts';

/** A field of a note: its label and what stands there. */
export interface NoteRow {
  readonly label: string;
  readonly line: Line;
}

/** A cloth that a note states a colour for. */
export interface NoteCloth extends OnScreen {
  readonly title: string;
  readonly weave: string;
  readonly seed: string;
  /** The note it belongs to, where that is another. */
  readonly note?: string;
  readonly lines: readonly Line[];
  /** The photo beside it, from the notebook's folder. */
  readonly photo?: string;
  /** Where what it may have been before it faded is asked. */
  readonly asFound?: string;
}

/** A part of a note that is more than a row. */
export type NoteSection =
  | { readonly is: 'list'; readonly title: string; readonly ordered: boolean; readonly lines: readonly Line[] }
  | { readonly is: 'table'; readonly title: string; readonly head: readonly string[]; readonly rows: readonly (readonly Line[])[] }
  | { readonly is: 'cloths'; readonly title: string; readonly cloths: readonly NoteCloth[] }
  | { readonly is: 'quote'; readonly title: string; readonly text: string };

/** What a note's record holds, in reading order. */
export interface RecordView {
  readonly rows: readonly NoteRow[];
  readonly sections: readonly NoteSection[];
  readonly cautions: readonly string[];
}

/**
 * The record of a note as labelled rows and sections; what is not stated is left out.
 * One reader for all kinds, because it is read, and changed, as one table of what stands where.
 */
export function recordView(notebook: Notebook, note: Note): RecordView {
  const { rows, sections } = new RecordReader(notebook, note).read(note.record);
  return {
    rows: rows.filter(({ line }) => line.length > 0),
    sections: sections.filter((section) => !isEmpty(section)),
    cautions: 'cautions' in note.record ? note.record.cautions : [],
  };
}

function isEmpty(section: NoteSection): boolean {
  switch (section.is) {
    case 'list':
      return section.lines.length === 0;
    case 'table':
      return section.rows.length === 0;
    case 'cloths':
      return section.cloths.length === 0;
    case 'quote':
      return section.text === '';
  }
}

type Parts = { readonly rows: readonly NoteRow[]; readonly sections: readonly NoteSection[] };

const row = (label: string, line: Line): NoteRow => ({ label, line });
const words = (text: string | undefined): Line => (text === undefined || text === '' ? [] : plain(text));
const list = (title: string, texts: readonly string[], ordered = false): NoteSection => ({
  is: 'list',
  title,
  ordered,
  lines: texts.map(plain),
});

class RecordReader {
  readonly #words: NoteWords;

  constructor(
    private readonly notebook: Notebook,
    private readonly note: Note,
  ) {
    this.#words = new NoteWords(notebook.base);
  }

  read(record: NoteRecord): Parts {
    const say = this.#words;
    switch (record.kind) {
      case 'dyestuff':
        return this.#dyestuff(record);
      case 'mordant':
      case 'assistant':
      case 'process':
        return { rows: [row('Formula', words(record.formula)), everyday(record.everyday)], sections: [] };
      case 'fibre':
        return {
          rows: [row('A kind of', say.ref(record.isKindOf, ['fibre'])), row('Class', words(record.fibreClass)), everyday(record.everyday)],
          sections: [
            {
              is: 'cloths',
              title: 'Undyed',
              cloths: record.undyed.flatMap((one) => this.#cloth(one, one.name, `${this.note.id} ${one.name}`, [], this.note.id)),
            },
          ],
        };
      case 'recipe':
        return {
          rows: [
            row('On', say.refs(record.fibre, ['fibre'])),
            row('Liquor', words(record.liquor)),
            row('Starts from', say.refs(record.follows, ['recipe'])),
            row('Based on', say.refs(record.basedOn, ['text', 'recipe', 'plain'])),
          ],
          sections: [
            this.#ingredients('Ingredients', record.ingredients),
            list('Steps', record.steps.map(this.#undosed), true),
            { is: 'quote', title: 'As written', text: this.#undosed(record.asWritten ?? '') },
            this.#trials(),
          ],
        };
      case 'trial':
        return this.#trial(record);
      case 'textile':
        return this.#textile(record);
      case 'text':
        return {
          rows: [
            row('Of', say.region(record.region)),
            row('When', say.date(record.when)),
            row('This copy', say.date(record.copied)),
            row('Names', say.refs(record.dyes, ['dyestuff'])),
            row('On', say.refs(record.fibre, ['fibre'])),
          ],
          sections: [{ is: 'quote', title: 'What it says', text: this.#undosed(record.says ?? '') }],
        };
      case 'colour-word':
        return this.#colourWord(record);
      case 'rule':
        return {
          rows: [
            row('Where', say.region(record.region)),
            row('When', say.date(record.when)),
            row('Touches', words({ wear: 'wearing', dye: 'dyeing', import: 'bringing in', sell: 'selling' }[record.act ?? 'wear'])),
            row('Concerns', say.refs(record.concerns, [...MATERIAL_KINDS, 'colour-word'])),
            row('Allows', say.refs(record.allows, ['wearer'])),
            row('Forbids', say.refs(record.forbids, ['wearer'])),
            row('Enforced', words(record.enforced)),
          ],
          sections: [],
        };
      case 'wearer':
        return {
          rows: [
            row('Within', say.refs(record.within, ['wearer'])),
            row('Where', say.region(record.region)),
            row('When', say.date(record.when)),
          ],
          sections: [],
        };
      case 'region':
        return {
          rows: [
            row(
              'Within',
              joinLines(
                record.within.map((ref) => say.region(ref)),
                ', ',
              ),
            ),
            row(
              'Beside',
              joinLines(
                record.near.map((ref) => say.region(ref)),
                ', ',
              ),
            ),
            row('Lies at', record.point ? plain(pointText(record.point)) : []),
          ],
          sections: [],
        };
      case 'period':
        return { rows: [row('Where', say.region(record.region)), row('When', say.date(record.when))], sections: [] };
      case 'palette':
        return this.#palette(record);
      case 'display':
        return { rows: [row('Shows', say.ref(record.palette, ['palette']))], sections: [] };
      case 'exposure':
        return {
          rows: [row('Sample', words(record.sample)), row('Reference', words(record.reference))],
          sections: [
            {
              is: 'table',
              title: 'Readings',
              head: ['Date', 'Light', 'Colour'],
              rows: record.readings.map(({ date, dose, colour }) => [say.date(date), words(dose), this.#stated(colour)]),
            },
          ],
        };
      case 'plain':
        return { rows: [], sections: [] };
    }
  }

  #dyestuff(record: Extract<NoteRecord, { kind: 'dyestuff' }>): Parts {
    const say = this.#words;
    const { gather } = record;
    const months = gather?.months.map((month) => MONTHS[month - 1] ?? '').join(', ') ?? '';
    const year = gather?.yearOfGrowth === undefined ? '' : `${gather.yearOfGrowth} year of growth`;
    return {
      rows: [
        row('Matter', words(record.matter)),
        row('Part used', words(record.part)),
        row('A laboratory finds', words(record.markers.join(', '))),
        row('Gathered', words([months, year, gather?.note ?? ''].filter((part) => part !== '').join('; '))),
        everyday(record.everyday),
      ],
      sections: [
        {
          is: 'table',
          title: 'Fastness to light',
          head: ['On', 'Mordant', 'Grade', 'Scale and method', 'Source'],
          rows: record.lightfast.map(({ on, mordant, grade, scale, method, sources }) => [
            say.ref(on, ['fibre']),
            say.ref(mordant, ['mordant', 'assistant', 'process']),
            words(grade),
            words([scale, method].filter((part) => part !== undefined).join('; ')),
            say.sources(sources),
          ]),
        },
      ],
    };
  }

  #trial(record: Extract<NoteRecord, { kind: 'trial' }>): Parts {
    const say = this.#words;
    const { water, bath } = record;
    const waterText = [water?.hardness, water?.pH === undefined ? undefined : `pH ${water.pH}`, water?.note];
    const nth: Line = bath?.nth === undefined ? [] : plain(`bath ${bath.nth}`);
    const after = say.ref(bath?.after, ['trial']);
    return {
      rows: [
        row('Recipe', say.ref(record.recipe, ['recipe'])),
        row('Run on', say.date(record.date)),
        row('By', words(record.by)),
        row('Vessel', words(record.vessel)),
        row('Water', words(waterText.filter((part) => part !== undefined).join(', '))),
        row('Bath', joinLines([nth, after.length === 0 ? [] : [{ text: 'after ' }, ...after]], ', ')),
        row('Lots', words(record.lots.map(this.#undosed).join('; '))),
      ],
      sections: [
        {
          is: 'cloths',
          title: record.samples.length > 1 ? 'Samples' : 'Sample',
          cloths: record.samples.flatMap((sample, nth) =>
            this.#cloth(
              sample,
              sample.code ?? this.note.id,
              `${this.note.id} ${nth}`,
              [
                joinLines(
                  [
                    say.ref(sample.fibre, ['fibre']),
                    sample.fibreGrams === undefined ? [] : plain(`${sample.fibreGrams} g`),
                    sample.onto === undefined ? [] : plain(`onto ${sample.onto}`),
                  ],
                  ', ',
                ),
                sample.note === undefined ? [] : [quiet(this.#undosed(sample.note))],
              ],
              sample.fibre && this.notebook.base.resolve(sample.fibre.text, ['fibre']),
            ),
          ),
        },
        this.#ingredients('What went in', record.actual),
        list('At the pot', record.log.map(this.#undosed), true),
        list('Done otherwise than the recipe says', record.deviations.map(this.#undosed)),
      ],
    };
  }

  #textile(record: Extract<NoteRecord, { kind: 'textile' }>): Parts {
    const say = this.#words;
    return {
      rows: [
        row('Found', say.region(record.region)),
        row('Made', say.region(record.madeAt)),
        row('When', say.date(record.when)),
        row('Context', words(record.context)),
        row('Worn by', say.refs(record.wearer, ['wearer'])),
      ],
      sections: [
        {
          is: 'table',
          title: 'Threads',
          head: ['Where', 'Fibre', 'Dyestuffs', 'Compounds', 'Colour now', 'Tested'],
          rows: record.threads.map((thread) => [
            words(thread.where),
            say.ref(thread.fibre, ['fibre']),
            say.refs(thread.dyes, ['dyestuff']),
            words(thread.markers.join(', ')),
            typeof thread.colourNow === 'string' ? words(thread.colourNow) : this.#stated(thread.colourNow),
            words({ no: 'not tested', 'none-detected': 'none detected', found: 'found' }[thread.tested]),
          ]),
        },
        { is: 'cloths', title: 'Its colours now', cloths: record.threads.flatMap((thread, nth) => this.#thread(record, thread, nth)) },
      ],
    };
  }

  /** A thread's colour as it is now, with the question what it may have been. */
  #thread(
    { region, madeAt, when }: Extract<NoteRecord, { kind: 'textile' }>,
    { where, fibre, colourNow }: Extract<NoteRecord, { kind: 'textile' }>['threads'][number],
    nth: number,
  ): readonly NoteCloth[] {
    if (colourNow === undefined || typeof colourNow === 'string') return [];
    const { base, colours } = this.notebook;
    const on = fibre && base.resolve(fibre.text, ['fibre']);
    const swatch = colours.of({ colour: colourNow }, this.note.file);
    if (!swatch) return [];
    const question = {
      colour: carryColour({ lab: swatch.lab10, ...TEXTILE, by: swatch.origin }),
      region: (madeAt ?? region)?.text ?? '',
      when: when?.text ?? '',
      ...(on === undefined ? {} : { fibre: on }),
      asFound: true,
    };
    return this.#cloth({ colour: colourNow }, where ?? this.note.title, `${this.note.id} ${nth}`, [], on).map((cloth) => ({
      ...cloth,
      asFound: addressOf({ view: 'ask', settings: settingsOf(question) }),
    }));
  }

  #colourWord(record: Extract<NoteRecord, { kind: 'colour-word' }>): Parts {
    const say = this.#words;
    return {
      rows: [
        row('Language', words(record.lang)),
        row('Where', say.region(record.region)),
        row('When', say.date(record.when)),
        row('Doubt', words(record.doubt)),
      ],
      sections: [
        {
          is: 'list',
          title: 'May mean',
          ordered: false,
          lines: record.means.map((meaning) =>
            joinLines(
              [
                words(meaning.shade),
                meaning.dyes.length === 0 ? [] : [{ text: 'dyed with ' }, ...say.refs(meaning.dyes, MATERIAL_KINDS)],
                words(meaning.cloth),
                words(meaning.process),
                words(meaning.rank),
              ],
              '; ',
            ),
          ),
        },
        {
          is: 'cloths',
          title: 'In colours',
          cloths: record.means.flatMap((meaning, nth) =>
            meaning.colours.flatMap((colour, at) =>
              this.#cloth({ colour }, meaning.shade ?? this.note.title, `${this.note.id} ${nth} ${at}`, [], undefined),
            ),
          ),
        },
      ],
    };
  }

  #palette(record: Extract<NoteRecord, { kind: 'palette' }>): Parts {
    const say = this.#words;
    return {
      rows: [
        row('Where', say.region(record.region)),
        row('When', say.date(record.when)),
        row('On', say.ref(record.fibre, ['fibre'])),
        row('For', say.ref(record.wearer, ['wearer'])),
        row('Question', words(record.question)),
      ],
      sections: [
        {
          is: 'table',
          title: 'Kept colours',
          head: ['Colour', 'Trial', 'Verdict when kept', 'Note'],
          rows: record.keeps.map(({ what, trial, verdict, note }) => [
            say.ref(what, ['recipe', 'fibre']),
            say.ref(trial, ['trial']),
            words(verdict?.replaceAll('-', ' ')),
            words(note),
          ]),
        },
      ],
    };
  }

  /** The samples of a recipe's trials. */
  #trials(): NoteSection {
    const { base } = this.notebook;
    const cloths = base
      .ofKind('trial')
      .filter(({ record }) => record.recipe !== undefined && base.resolve(record.recipe.text, ['recipe']) === this.note.id)
      .flatMap((trial) =>
        trial.record.samples.flatMap((sample, nth) => {
          const fibre = sample.fibre && base.resolve(sample.fibre.text, ['fibre']);
          const date = trial.record.date === undefined ? [] : plain(trial.record.date.text);
          const cloth = this.#cloth(sample, sample.code ?? trial.title, `${trial.id} ${nth}`, [date], fibre, trial.file);
          return cloth.map((one) => ({ ...one, note: trial.id }));
        }),
      );
    return { is: 'cloths', title: 'Trials of it', cloths };
  }

  /** What is never dosed is named without its amount wherever a note is read; the editor shows the text as it is. */
  readonly #undosed = (text: string): string => withoutDoses(this.notebook.base, text);

  #ingredients(title: string, ingredients: readonly Ingredient[]): NoteSection {
    const say = this.#words;
    const { base } = this.notebook;
    return {
      is: 'table',
      title,
      head: ['What', 'As', 'Amount', 'Form'],
      rows: ingredients.map(({ range, what, role, amount, form, standsFor }) => [
        [...say.ref(what, MATERIAL_KINDS), ...(standsFor ? [{ text: ', standing in for ' }, ...say.ref(standsFor, MATERIAL_KINDS)] : [])],
        words(role),
        words(amountShown(base, { range, what, amount, form })),
        words(formShown(base, { what, form })),
      ]),
    };
  }

  #cloth(
    coloured: Coloured & { readonly photo?: string },
    title: string,
    seed: string,
    lines: readonly Line[],
    fibre: string | undefined,
    file = this.note.file,
  ): readonly NoteCloth[] {
    const colour = this.notebook.colours.of(coloured, file);
    if (!colour) return [];
    const numbers = `Lab ${colour.lab10.map((value) => value.toFixed(1)).join(', ')}`;
    const from =
      colour.origin === 'spectrum'
        ? 'spectrum measured'
        : colour.origin === 'lab'
          ? 'Lab measured'
          : `by ${colour.origin.replaceAll('-', ' ')}`;
    return [
      {
        title,
        seed,
        ...onScreen(colour),
        weave: weaveOf(this.notebook.base, fibre),
        lines: [...lines.filter((line) => line.length > 0), [quiet(`${numbers} (D65, 10°), ${from}`)]],
        ...(coloured.photo === undefined ? {} : { photo: coloured.photo }),
      },
    ];
  }

  #stated(colour: StatedColour | undefined): Line {
    if (!colour) return [];
    const conditions = [colour.illuminant, colour.observer === undefined ? undefined : `${colour.observer}°`].filter(
      (part) => part !== undefined,
    );
    const values = colour.lab ? `Lab ${colour.lab.join(', ')}` : colour.xyz ? `XYZ ${colour.xyz.join(', ')}` : (colour.hex ?? '');
    return plain(conditions.length === 0 ? values : `${values} (${conditions.join(', ')})`);
  }
}

const everyday = (is: boolean): NoteRow => row('Evidence', is ? plain('everyday: needs none') : []);

const pointText = ([latitude, longitude]: readonly [number, number]): string =>
  `${Math.abs(latitude)}° ${latitude < 0 ? 'south' : 'north'}, ${Math.abs(longitude)}° ${longitude < 0 ? 'west' : 'east'}`;

const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];
