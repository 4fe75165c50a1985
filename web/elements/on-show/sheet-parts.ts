import { html, nothing, type TemplateResult } from 'lit';
import type { PrintedRun } from '../../notebook/references/print-reference.ts';
import type { CaptionView } from '../../notebook/views/caption-view.ts';
import type { DossierView } from '../../notebook/views/dossier-view.ts';
import type { CitedClaim, EvidenceSheetView, ListedReference } from '../../notebook/views/evidence-sheet-view.ts';
import { dayWords } from '../../notebook/words/day-words.ts';

/** A printed reference: titles slanted, addresses as links that tell nobody where from. */
export const runsTemplate = (runs: readonly PrintedRun[]): readonly unknown[] =>
  runs.map(({ text, italic, address }) =>
    address === undefined
      ? italic
        ? html`<em>${text}</em>`
        : text
      : html`<a href=${address} rel="noreferrer noopener" target="_blank">${text}</a>`,
  );

/** One claim with class, place, time and its sources in full. */
const claimTemplate = (claim: CitedClaim, style: 'note' | 'author-date'): TemplateResult =>
  html`<li>
    <strong>${claim.says}</strong>, ${claim.region} (${claim.placeRelation}), ${claim.years} (${claim.timeRelation}).
    <span class="quiet">${[claim.evidence, claim.sure, claim.checked].filter((part) => part !== '').join('; ')}.</span>
    ${claim.remark === '' ? nothing : html`<br /><span class="quiet">${claim.remark}</span>`}
    ${
      style === 'note'
        ? claim.sources.map((runs) => html`<br /><span class="quiet">${runsTemplate(runs)}</span>`)
        : html`<span class="quiet">(${claim.citations.join('; ')})</span>`
    }
  </li>`;

const list = (title: string, items: readonly unknown[]): TemplateResult | typeof nothing =>
  items.length === 0
    ? nothing
    : html`<h2>${title}</h2>
        <ul class="lines">
          ${items}
        </ul>`;

const lines = (texts: readonly string[]) => texts.map((text) => html`<li>${text}</li>`);

/** Sources in the style asked for, and the keys that no bibliography holds. */
export const sourcesTemplate = (
  references: readonly ListedReference[],
  missing: readonly string[],
  style: 'note' | 'author-date',
): TemplateResult => html`
  ${list(
    'Sources',
    references.map(({ note, authorDate }) => html`<li class="quiet">${runsTemplate(style === 'note' ? note : authorDate)}</li>`),
  )}
  ${missing.length === 0 ? nothing : html`<p class="notice">Cited, but in no bibliography of this notebook: ${missing.join(', ')}.</p>`}
`;

/** The whole sheet of one colour. */
export const sheetTemplate = (sheet: EvidenceSheetView, style: 'note' | 'author-date', withSources: boolean): TemplateResult => html`
  <header class="pair">
    <tg-swatch
      .hex=${sheet.hex}
      .fibre=${sheet.weave}
      .verdict=${sheet.verdict}
      .outOfGamut=${!sheet.inScreenGamut}
      .seed=${sheet.trial?.code || sheet.what}
      .label=${sheet.title}
    ></tg-swatch>
    <div>
      <h1>${sheet.title}</h1>
      <p class="quiet">
        ${[sheet.trial?.code, sheet.lab === '' ? '' : `Lab ${sheet.lab} (D65, 10°)`, `${sheet.display.title}, version ${sheet.display.version}`].filter((part) => part).join(' · ')}
      </p>
      <p>${sheet.sentence}</p>
      <p><strong>${sheet.word}.</strong> ${sheet.means}</p>
    </div>
  </header>
  ${sheet.because.map((why) => html`<p>${why}</p>`)} ${list('What stands in for what', lines(sheet.standIns))}
  ${list(
    'What speaks for it',
    sheet.speaksFor.map((claim) => claimTemplate(claim, style)),
  )}
  ${list(
    'What speaks against it',
    sheet.speaksAgainst.map((claim) => claimTemplate(claim, style)),
  )}
  ${list(
    'The nearest records',
    sheet.nearest.map((claim) => claimTemplate(claim, style)),
  )}
  ${list('What is not known', lines(sheet.unknown))} ${list('Rules', lines(sheet.rules))}
  ${
    sheet.recipe
      ? html`${list(`Recipe: ${sheet.recipe.title}`, [...lines(sheet.recipe.ingredients), ...sheet.recipe.steps.map((step) => html`<li class="quiet">${step}</li>`)])}
          <p class="quiet">
            <a href=${`#/notebook/${encodeURIComponent(sheet.recipe.id)}`}>Recipe ${sheet.recipe.id}</a
            >${sheet.recipe.basedOn.map(({ id, title }) => html`, after <a href=${`#/notebook/${encodeURIComponent(id)}`}>${title}</a>`)}
          </p>
          ${sheet.recipe.cautions.map((caution) => html`<p class="notice">${caution}</p>`)}`
      : nothing
  }
  ${
    sheet.trial
      ? html`${list(`Trial: ${sheet.trial.title}`, [
            ...lines([
              [dayWords(sheet.trial.date), sheet.trial.by, sheet.trial.water].filter((part) => part !== '').join('; '),
              ...sheet.trial.actual,
              ...sheet.trial.lots.map((lot) => `Lot: ${lot}`),
              ...sheet.trial.deviations.map((one) => `Otherwise than planned: ${one}`),
            ]),
            ...sheet.trial.log.map((entry) => html`<li class="quiet">${entry}</li>`),
          ])}
          <p class="quiet"><a href=${`#/notebook/${encodeURIComponent(sheet.trial.id)}`}>Trial ${sheet.trial.id}</a></p>`
      : nothing
  }
  ${list('Light', lines(sheet.light))} ${withSources ? sourcesTemplate(sheet.references, sheet.missing, style) : nothing}
`;

/** What stands before the sheets of a dossier: what it is of, and what has none. */
export const dossierHead = ({ title, question, version, sheets, without }: DossierView): TemplateResult => html`
  <header>
    <h1>${title}: the evidence</h1>
    ${question === '' ? nothing : html`<p>${question}</p>`}
    <p class="quiet">Version ${version} of the board. Every colour has a sheet: ${sheets.map((sheet) => sheet.title).join('; ')}.</p>
    ${without.length === 0 ? nothing : html`<p class="notice">Without a sheet, because they cannot be judged: ${without.join(', ')}.</p>`}
  </header>
`;

/** The captions of a colour as the public reads them, with their version. */
export const captionsTemplate = (captions: readonly Omit<CaptionView, 'written'>[]): TemplateResult | typeof nothing =>
  list(
    'Captions',
    captions.map(
      ({ lang, headline, text, version, stale }) =>
        html`<li>
          <span lang=${lang}><strong>${headline}.</strong> ${text}</span>
          <span class="quiet">${lang}, version ${version}.${stale.length === 0 ? '' : ` Stale: ${stale.join(' ')}`}</span>
        </li>`,
    ),
  );
