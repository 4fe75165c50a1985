import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect } from 'vitest';
import { parseColourText } from '../../web/domain/colour/parse-colour.ts';
import { readSpectralFile } from '../../web/domain/colour/read-spectral-file.ts';
import { parseDate } from '../../web/domain/date/parse-date.ts';
import { readFastnessLine } from '../../web/domain/fastness/read-fastness-line.ts';
import { findCompound, nearestCompounds } from '../../web/domain/laboratory/find-compound.ts';
import { parseAmount, parseFibreGrams } from '../../web/domain/note/amount.ts';
import { decodeNote } from '../../web/domain/note/decode-note.ts';
import { parseMarkdown } from '../../web/domain/note/markdown.ts';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { readFormula } from '../../web/domain/pot/molar-mass.ts';
import { readLogLine } from '../../web/domain/pot/pot-log.ts';
import { readSkeinCode } from '../../web/domain/pot/skein-code.ts';
import { readHardness } from '../../web/domain/pot/water-hardness.ts';
import { readAddress } from '../../web/notebook/address.ts';
import type { Gathered } from '../../web/notebook/import/gathered.ts';
import { openZip } from '../../web/notebook/import/open-zip.ts';
import { readFileList } from '../../web/notebook/import/read-file-list.ts';
import { readNotebookJsonLd } from '../../web/notebook/import/read-notebook-jsonld.ts';
import { readPeriods } from '../../web/notebook/import/read-periods.ts';
import { readPlaces } from '../../web/notebook/import/read-places.ts';
import { readTextiles } from '../../web/notebook/import/read-textiles.ts';
import { readTrials } from '../../web/notebook/import/read-trials.ts';
import { labOfSettings } from '../../web/notebook/lab-address.ts';
import { readSkeins } from '../../web/notebook/read-skeins.ts';
import * as foreign from '../../web/notebook/references/foreign-items.ts';
import { readReferences } from '../../web/notebook/references/read-references.ts';
import { readRemarks } from '../../web/notebook/remarks.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../helpers/a-notebook.ts';
import { makeZip } from '../helpers/make-zip.ts';

/** A reader of something a person, a machine or a stranger wrote, and what must hold of it whatever the text. */
export interface FuzzTarget {
  readonly name: string;
  /** Texts it takes, from the demonstration where there are some. */
  readonly samples: readonly string[];
  /** What its format is made of. */
  readonly words: readonly string[];
  /** Reads a text and expects what always holds; what it gives is compared with a second reading. */
  readonly read: (text: string) => unknown;
}

const DEMO = fileURLToPath(new URL('../../corpus-demo/', import.meta.url));
const REFERENCE = fileURLToPath(new URL('../reference/', import.meta.url));
/** Long texts cost time and reach nothing that shorter ones do not. */
const LONGEST = 2500;

/** Two shorter notes of every folder of the demonstration. */
const demoNotes = readdirSync(DEMO, { withFileTypes: true })
  .filter((one) => one.isDirectory() && one.name !== 'spectra')
  .flatMap(({ name }) =>
    readdirSync(DEMO + name)
      .filter((file) => file.endsWith('.md'))
      .map((file) => readFileSync(`${DEMO}${name}/${file}`, 'utf8'))
      .filter((text) => text.length <= LONGEST)
      .slice(0, 2),
  );
const cut = (path: string): string => readFileSync(path, 'utf8').slice(0, LONGEST);

const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (sign) => sign.charCodeAt(0) & 0xff);
const asText = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1');

const { base } = aNotebook({
  ...aWorld,
  'dyestuffs/madder.md': aDyestuff('Madder', 'region: england, when: 1200–1400, status: grown, known-by: text, source: book'),
  'mordants/alum.md': aNote('kind: mordant\ntitle: Alum'),
  'recipes/red.md': aNote('kind: recipe\ntitle: Madder on wool\nfibre: wool\ningredients: [{what: madder, role: dye, amount: 50 %}]'),
});

/** Whatever is gathered, its messages name rows there may be, and its notes are notes whose front matter can be read. */
function gathered(found: Gathered): Gathered {
  for (const { row } of found.messages) expect(row).toBeGreaterThanOrEqual(0);
  for (const { path, text } of found.notes) {
    expect(path).toMatch(/^[a-z]+\/[^/\\]+\.md$/);
    const { diagnostics } = parseNote(path, text);
    expect(diagnostics.filter(({ code }) => code.startsWith('yaml') || code.startsWith('front-matter'))).toEqual([]);
  }
  return found;
}

const JSON_WORDS = ['{}', '[]', '"id"', '"@context"', '"label"', ':[', '},{', '{"__proto__":{"x":1}}', '1e400', '"\\u0000"'];
const CSV_WORDS = ['"', '""', '";"', '\n\n', '=1+1', '@x', "'=", 'madder', '50 %', '#ff0000', '40, 45, 28', 'York', 'c. 950', 'none'];

/** Every reader of text in the program. */
export const FUZZ_TARGETS: readonly FuzzTarget[] = [
  {
    name: 'notes',
    samples: demoNotes,
    words: [
      'kind: trial\n',
      'samples:\n',
      '  - ',
      'availability:\n',
      'when: 12XX\n',
      'source: ',
      'colour: {lab: [1, 2, 3]}\n',
      '---\n',
      '<<: *a\n',
    ],
    read(text) {
      const { value, diagnostics } = parseNote('notes/a.md', text);
      expect(value.source).toBe(text);
      expect(value.bodyStart >= 0 && value.bodyStart <= text.length).toBe(true);
      for (const { range } of diagnostics) expect(0 <= range[0] && range[0] <= range[1] && range[1] <= text.length).toBe(true);
      return [value, diagnostics];
    },
  },
  {
    name: 'bytes of notes',
    samples: demoNotes.map((text) => asText(Buffer.from(text))),
    words: ['\u00c3', '\u00a9', '\u00ff\u00fe', '\u00ed\u00a0\u0080', '\u00f4\u0090\u0080\u0080', '\u00c0\u0080', '\u00ef\u00bb\u00bf'],
    read(text) {
      const bytes = bytesOf(text);
      const { value, diagnostics } = decodeNote(bytes);
      const back = value.encoding === 'utf-8' ? Buffer.from(value.text, 'utf8') : Buffer.from(value.text, 'latin1');
      expect(Buffer.compare(back, bytes)).toBe(0);
      expect(diagnostics.length > 0).toBe(value.readOnly);
      return value;
    },
  },
  {
    name: 'Markdown',
    samples: [
      '# A heading\n\nWords with [a link](../madder.md), *stress* and `code`.\n\n| a | b |\n| - | - |\n| 1 | 2 |\n\n- one\n  - two\n\n> said\n',
    ],
    words: ['\n\n', '    ', '```\n', '[a]: b\n', '![', '](', '<b>', '&amp;', '***', '- - - ', '1. ', '> ', '|', '\\'],
    read: (text) => parseMarkdown(text),
  },
  {
    name: 'dates',
    samples: [
      'c. 1350',
      'late 9th century',
      '1st cent. BC',
      '870–950',
      'before 1000',
      '1180s',
      '2nd quarter of the 14th c.',
      '1606/7',
      '12XX',
      '1405-10',
      '-1200',
      '1985-04/..',
      'c. 1475–c. 1525',
      '[1667,1668]',
      'Y-17E7',
    ],
    words: ['c. ', 'century', ' BC', 'AD ', '–', '/', '..', '?', '~', '%', 'X', 'early ', 'mid-', 'half of the ', 'after ', 'th', 's', '-'],
    read(text) {
      const reading = parseDate(text);
      expect(reading.span === undefined).not.toBe(reading.problem === undefined);
      if (!reading.span) {
        for (const instead of reading.problem?.suggestions ?? []) expect(parseDate(instead).span, instead).toBeDefined();
        return reading;
      }
      const { earliestStart, latestStart, earliestEnd, latestEnd } = reading.span;
      expect(reading.span.text).toBe(text);
      expect((earliestStart ?? -Infinity) <= (latestStart ?? Infinity)).toBe(true);
      expect((earliestEnd ?? -Infinity) <= (latestEnd ?? Infinity)).toBe(true);
      expect((earliestStart ?? -Infinity) <= (latestEnd ?? Infinity)).toBe(true);
      return reading;
    },
  },
  {
    name: 'amounts',
    samples: [
      '15 %',
      '15% WOF',
      '3–5 g/L',
      '2 oz',
      '1/2 lb',
      '1:4',
      '2 ½ pounds',
      '0,5 kg',
      '17 °dH',
      '3 to 4 g per litre',
      'KAl(SO4)2·12H2O',
    ],
    words: ['%', ' g', '/L', '–', ' to ', '½', ' of ', ':', 'of the weight of fibre', ' grains', '(', ')', '·'],
    read(text) {
      const amount = parseAmount(text);
      expect(amount.text).toBe(text.trim());
      if (amount.value !== undefined) expect(Number.isFinite(amount.value) && amount.value >= 0).toBe(true);
      if (amount.upTo !== undefined) expect(amount.upTo).toBeGreaterThanOrEqual(amount.value ?? Infinity);
      const grams = parseFibreGrams(text);
      if (typeof grams === 'number') expect(grams > 0 && grams <= 100_000).toBe(true);
      return [amount, grams, readHardness(text), readFormula(text)];
    },
  },
  {
    name: 'colours',
    samples: [
      '#8a2b2b',
      '40.1, 45.2, 28',
      'lab 40 45 28',
      'rebeccapurple',
      'rgb(10% 20% 30% / 0.5)',
      'color(display-p3 1 0 0)',
      'oklch(60% 0.1 30deg)',
    ],
    words: ['lab(', 'none', 'calc(1)', ', ', '/', '%', 'deg', 'rgb('],
    read(text) {
      const colour = parseColourText(text);
      if (colour) expect((colour.kind === 'lab' ? colour.lab : colour.lab2).every(Number.isFinite)).toBe(true);
      return colour;
    },
  },
  {
    name: 'spectra (ISO 28178)',
    samples: [
      ...readdirSync(`${REFERENCE}iso28178-samples`)
        .filter((file) => file.endsWith('.txt'))
        .map((file) => cut(`${REFERENCE}iso28178-samples/${file}`)),
      cut(`${DEMO}spectra/greens.txt`),
      'CGATS.17\nNUMBER_OF_FIELDS 4\nBEGIN_DATA_FORMAT\nSAMPLE_ID SPECTRAL_NM400 SPECTRAL_NM410 SPECTRAL_NM420\nEND_DATA_FORMAT\nNUMBER_OF_SETS 2\nBEGIN_DATA\na 0.1 0.2 0.3\n"b c" 0.4 0.5 0.6\nEND_DATA\n',
    ],
    words: [
      'BEGIN_DATA_FORMAT',
      'END_DATA_FORMAT',
      'BEGIN_DATA\n',
      'END_DATA\n',
      'SPECTRAL_NM430',
      'NUMBER_OF_SETS 999999999',
      'SAMPLE_ID ',
      'LAB_L',
      '0,5',
    ],
    read: spectra,
  },
  {
    name: 'spectra (CSV)',
    samples: [
      'id,400,410,420,430\na,0.1,0.2,0.3,0.4\nb,10,20,30,40\n',
      'wavelength;red;blue\n400;0,1;0,2\n410;0,3;0,4\n420;0,5;0,6\n',
      'nm\ta\n380\t5.5\n390\t6\n400\t7\n',
    ],
    words: ['400', '410 nm', ';', '\t', ',', '0,5', '-0.1', '250', 'wavelength', '"a"', '\n'],
    read: spectra,
  },
  {
    name: 'lists of skeins',
    samples: [
      'name;dyestuffs;mordant;fibre;colour\nRed no. 1;madder;alum;wool;#8a2b2b\nTwo;madder + weld;none;silk;"40, 45, 28"\n',
      'Red,madder,alum,wool\nBlue,woad,,linen',
    ],
    words: CSV_WORDS,
    read(text) {
      const skeins = readSkeins(base, text);
      for (const { line, problems } of skeins) expect(line >= 1 && problems.every((one) => one !== '')).toBe(true);
      return skeins;
    },
  },
  {
    name: 'tables of trials',
    samples: [
      'Trial;Recipe;Dyed on;Dyestuff;% WOF;Mordant;Temp (°C);Time (min);Skein;Fiber;Weight (g);L*;a*;b*;Illuminant;Observer;Remarks\nP1;Madder on wool;2025-03-02;Madder;50 %;alum 15 %;70;60;P1-1;Wool;50;40.1;45.2;28;D65;10;even\nP1;;;;;;;;P1-2;Wool;25;41;44;27;D65;10;\n',
    ],
    words: [...CSV_WORDS, 'pH', 'Water hardness (°dH)', 'stands for', 'lot', 'bath', '3rd'],
    read: (text) => gathered(readTrials(base, text)),
  },
  {
    name: 'tables of textiles',
    samples: [
      'Object;Site;Dating;Thread;Fiber;Identification;Compounds;Reference\nBand 1;York;c. 950;warp;wool;Madder;alizarin, purpurin;walton-1989, p. 3\nBand 1;York;c. 950;weft;wool;woad + Madder;;x\nSock;Albion;10th century;;Wool;;;\n',
    ],
    words: CSV_WORDS,
    read: (text) => gathered(readTextiles(base, text)),
  },
  {
    name: 'periods, places and notebooks (JSON)',
    samples: [
      '{"@context":{},"authorities":{"a":{"id":"a","periods":{"p1":{"id":"p1","label":"Viking Age","type":"Period","start":{"label":"800","in":{"year":"0800"}},"stop":{"label":"1050","in":{"year":"1050"}},"spatialCoverage":[{"label":"York"}]}}}}}',
      '{"type":"FeatureCollection","features":[{"type":"Feature","properties":{"title":"York","id":"york"},"geometry":{"type":"Point","coordinates":[-1.08,53.96]},"names":[{"toponym":"Jorvik"}]}]}',
      '{"@context":"https://linked.art/ns/v1/linked-art.json","@graph":[{"id":"urn:x:madder","type":"HumanMadeObject","_label":"Madder"}]}',
    ],
    words: JSON_WORDS,
    read: (text) => [gathered(readPeriods(base, text)), gathered(readPlaces(base, text)), gathered(readNotebookJsonLd(base, text))],
  },
  {
    name: 'bibliographies (CSL)',
    samples: [
      cut(`${DEMO}bibliography.json`).replace(/,\s*\{[^{]*$/, ']'),
      '[{"id":"a","type":"book","title":"T","author":[{"family":"F","given":"G"}],"issued":{"date-parts":[[2007,5]]},"URL":"https://a.b/"}]',
    ],
    words: [...JSON_WORDS, '"author":', '"issued":', '"date-parts":', '"literal"', '"URL":"javascript:x"'],
    read: (text) => references('bibliography.json', text),
  },
  {
    name: 'bibliographies (BibTeX)',
    samples: [
      '@string{bw = "Brill"}\n@book{cardon-2007, author = {Cardon, Dominique and M{\\"u}ller, J{\\o}rgen and {{Big Museum}}}, title = "Natural {D}yes",\n  publisher = bw # " Press", year = 2007, pages = {1--20} }\n@misc{next, title={Next}}\n',
    ],
    words: ['@book{', '@string{', '@comment', '@preamble', ' = ', '{', '}', '"', '#', '\\"', '\\o', ' and ', ',', '$', '%', '\\url{'],
    read: (text) => references('more.bib', text),
  },
  {
    name: 'bibliographies (RIS)',
    samples: [
      'TY  - JOUR\nAU  - Shannon, Claude E.\nPY  - 1948/07//\nTI  - A Mathematical Theory of Communication\nT2  - Bell System Technical Journal\nSP  - 379\nEP  - 423\nVL  - 27\nER  - \n\nTY  - BOOK\nID  - b\nA1  - Doe, Jane\nY1  - 2001///\nT1  - Madder\nER  - \n',
    ],
    words: ['TY  - ', 'ER  - \n', 'AU  - ', 'PY  - ', 'ID  - ', 'KW  - ', '\r\n', '//', 'TY  -'],
    read: (text) => references('more.ris', text),
  },
  {
    name: 'zips',
    samples: [
      makeZip([
        { path: 'notes/madder.md', bytes: Buffer.from('madder and weld '.repeat(20)) },
        { path: 'b.md', bytes: Buffer.from('b'), options: { level: 0 } },
      ]),
      makeZip([{ path: 'Färber/紅花.md', bytes: Buffer.from('é'), options: { comment: 'said' } }]),
    ].map(asText),
    words: [
      'PK\u0003\u0004',
      'PK\u0001\u0002',
      'PK\u0005\u0006',
      'PK\u0006\u0006',
      '\u00ff\u00ff\u00ff\u00ff',
      '\u0000\u0000',
      '../',
      'C:\\',
      '\u0008\u0000',
    ],
    async read(text) {
      const limits = { entries: 100, fileBytes: 100_000, allBytes: 200_000, ratio: 200, ratioFrom: 1024 };
      const opened = openZip('a.zip', bytesOf(text), limits);
      if (!opened.ok) return opened.error;
      expect(opened.value.files.length).toBeLessThanOrEqual(limits.entries);
      let together = 0;
      const files = await Promise.all(opened.value.files.map(async (file) => [file.path, file.fault, await file.read()] as const));
      for (const [, , read] of files) together += read.ok ? read.value.length : 0;
      expect(together).toBeLessThanOrEqual(limits.allBytes);
      return files.map(([path, fault, read]) => [path, fault, read.ok ? asText(read.value) : read.error]);
    },
  },
  {
    name: 'remarks and lists of files',
    samples: [
      '{"format":"tenterground-remarks","version":1,"remarks":[{"id":"1","note":"madder","line":3,"text":"so","by":"R","at":"2026-01-02T03:04:05Z","done":true}]}',
      '{"files":[{"path":"notes/a.md","text":"# A"},{"path":"b.png"}]}',
    ],
    words: JSON_WORDS,
    read(text) {
      const remarks = readRemarks(Buffer.from(text));
      if (remarks.ok) for (const one of remarks.value.remarks) expect(one.id !== '' && !Number.isNaN(Date.parse(one.at))).toBe(true);
      return [remarks, readFileList(text)];
    },
  },
  {
    name: 'addresses and laboratory reports',
    samples: [
      '#/ask?colour=%238a2b2b&region=york&when=c.%20950',
      '#/samples/madder?found=alizarin;purpurin&trace=x&ratios=a%2Fb|1.5|0.2&method=hplc-dad&reach=alizarin|hplc-dad|0.9&gone=a|0.1',
    ],
    words: ['%', '%E0%A4%A', '&', '=', ';', '|', '/', '?', 'found', 'ratios', 'alizarin', 'CAS 72-48-0'],
    read(text) {
      const address = readAddress(text);
      const lab = labOfSettings(address.settings);
      return [address, lab, lab.findings.map(({ compound }) => findCompound(compound) ?? nearestCompounds(compound.slice(0, 40)))];
    },
  },
  {
    name: 'lines of a log, skein codes',
    samples: [
      '11:40 72 °C',
      '2026-11-28 9:05 in (written down 2026-11-29 10:00)',
      'wash fastness: 4 (grey scale for change; ISO 105-C06)',
      'rub fastness, wet: 2-3 (grey scale; ISO 105-X12)',
      'W7K-03-4',
    ],
    words: ['(written down ', 'fastness', ':', '(', ')', ';', '-', ' wet', '25:99'],
    read: (text) => [readLogLine(text, '2026-11-28'), readFastnessLine(text), readSkeinCode(text)],
  },
];

function spectra(text: string): unknown {
  const file = readSpectralFile(text);
  const lines = text.split(/\r\n|\n|\r/).length;
  for (const { line } of file.findings) expect(line >= 1 && line <= lines).toBe(true);
  for (const { spectrum } of file.samples) expect(spectrum.values.every((value) => value >= 0 && value <= 1)).toBe(true);
  return file;
}

function references(path: string, text: string): unknown {
  const found = readReferences(path, text, foreign);
  for (const { key, title } of found) expect(key !== '' && typeof title === 'string').toBe(true);
  return found;
}
