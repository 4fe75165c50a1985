import type { PrintedRun } from '../../notebook/references/print-reference.ts';
import type { PublishedClaim, PublishedColour, PublishedView } from '../../notebook/views/published-view.ts';
import { dayInPrint } from '../../notebook/words/day-words.ts';
import { inXml } from '../../notebook/words/in-xml.ts';
import { captionRuns } from '../on-show/caption-runs.ts';
import { swatchSvg } from '../swatch/swatch-svg.ts';
import { galleryScript } from './gallery-script.ts';
import { PUBLISHED_STYLE } from './published-style.ts';

/** How a page is used: read, or touched on a screen in the gallery. */
export type PublishedUse = 'reading' | 'gallery';

/**
 * A display as one page of HTML that needs nothing else: no network, no other file, and for reading no script.
 * It leads nowhere: addresses of sources are printed as words.
 */
export function publishedPage(view: PublishedView, use: PublishedUse, idleSeconds = 90): string {
  const lang = view.languages[0] ?? 'en';
  const script = use === 'gallery' ? "'unsafe-inline'" : "'none'";
  return `<!doctype html>
<html lang="${inXml(lang)}"${use === 'gallery' ? ` data-idle="${idleSeconds}"` : ''}>
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; script-src ${script}; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${inXml(view.title)}</title>
<style>${PUBLISHED_STYLE}</style>
</head>
<body>
${use === 'gallery' ? barHtml(view) : ''}
<main>
<div id="start">
<header lang="en">
<h1 tabindex="-1">${inXml(view.title)}</h1>
${view.question === '' ? '' : `<p>${inXml(view.question)}</p>`}
<p class="quiet">${inXml([view.place, view.reading].filter((part) => part !== '').join(', '))}</p>
</header>
<nav aria-label="Colours"><ul class="line">
${view.colours.map((colour, at) => `<li><a href="#${colour.key}">${clothSvg(colour, `n${at}`)}<span>${inXml(headlineOf(colour))}</span></a></li>`).join('\n')}
</ul></nav>
</div>
${view.colours.map((colour, at) => colourHtml(colour, at)).join('\n')}
${use === 'gallery' ? '' : sourcesHtml(view)}
</main>
<footer class="quiet" lang="en"><p>A screen shows a colour near, never exact. Version ${view.version}${view.day === '' ? '' : `, ${dayInPrint(view.day)}`}.</p></footer>
${use === 'gallery' ? `<script>${GALLERY_SCRIPT}</script>` : ''}
</body>
</html>
`;
}

/** The script as it stands in the page. Some compilers wrap functions in `__name` to keep their names; here nobody reads names. */
const GALLERY_SCRIPT = `{const __name=(made)=>made;(${galleryScript.toString()})();}`;

const barHtml = ({ languages }: PublishedView): string =>
  `<div class="bar" lang="en"><button type="button" id="back" hidden>Back to the start</button>${
    languages.length > 1
      ? languages
          .map(
            (lang) =>
              `<button type="button" data-lang="${inXml(lang)}" aria-pressed="false" lang="${inXml(lang)}">${inXml(languageName(lang))}</button>`,
          )
          .join('')
      : ''
  }</div>`;

/** A language by its own name, "Deutsch"; its code where nobody knows it. */
function languageName(lang: string): string {
  try {
    return new Intl.DisplayNames([lang], { type: 'language' }).of(lang) ?? lang;
  } catch {
    return lang;
  }
}

const headlineOf = ({ captions, title }: PublishedColour): string => captions[0]?.headline || title;

const clothSvg = ({ hex, weave, verdict, classes, code, key, title }: PublishedColour, id: string): string =>
  swatchSvg(
    { hex, wide: '', fibre: weave, verdict, classes, predicted: false, outOfGamut: false, seed: code || key, label: title },
    { x: 0, y: 0, width: 134, key: id },
    { ink: 'currentColor', paper: 'Canvas' },
  );

function colourHtml(colour: PublishedColour, at: number): string {
  const captions = colour.captions.map(
    ({ lang, headline, text }) =>
      `<div class="caption" lang="${inXml(lang)}">${headline === '' ? '' : `<p><strong>${inXml(headline)}</strong></p>`}<p>${slanted(text, colour.latin)}</p></div>`,
  );
  const known = [
    colour.because.map((why) => `<p>${inXml(why)}</p>`).join(''),
    listHtml('What speaks for it', colour.speaksFor.map(claimHtml)),
    listHtml('What speaks against it', colour.speaksAgainst.map(claimHtml)),
    listHtml('What is not known', colour.unknown.map(inXml)),
    listHtml('What stands in for what', colour.standIns.map(inXml)),
    colour.recipe ? listHtml(`Recipe: ${colour.recipe.title}`, [...colour.recipe.ingredients, ...colour.recipe.cautions].map(inXml)) : '',
    colour.dyed
      ? listHtml(
          'This sample',
          [[colour.code, dayInPrint(colour.dyed.date)].filter((part) => part !== '').join(', '), ...colour.dyed.with]
            .filter((part) => part !== '')
            .map(inXml),
        )
      : '',
  ].join('');
  return `<section class="colour" id="${colour.key}" aria-labelledby="${colour.key}-name">
<figure>${clothSvg(colour, `s${at}`)}</figure>
<div><h2 id="${colour.key}-name" tabindex="-1" lang="en">${inXml(colour.title)}</h2>
${captions.join('')}
<div lang="en"><p><strong>${inXml(colour.word)}.</strong> ${inXml(colour.means)}</p>
<p class="quiet">${inXml(colour.code)}</p>
<details><summary>How is this known?</summary>${known}</details></div></div>
</section>`;
}

const slanted = (text: string, latin: readonly string[]): string =>
  captionRuns({ text, bound: [], notices: [] }, latin)
    .map((run) => (run.latin ? `<em lang="la">${inXml(run.text)}</em>` : inXml(run.text)))
    .join('');

const listHtml = (title: string, items: readonly string[]): string =>
  items.length === 0 ? '' : `<h3>${inXml(title)}</h3><ul>${items.map((item) => `<li>${item}</li>`).join('')}</ul>`;

const runsHtml = (runs: readonly PrintedRun[]): string =>
  runs.map(({ text, italic }) => (italic === true ? `<em>${inXml(text)}</em>` : inXml(text))).join('');

const claimHtml = ({ says, region, years, evidence, sources }: PublishedClaim): string =>
  `<strong>${inXml(says)}</strong>, ${inXml(region)}, ${inXml(years)}. <span class="quiet">${inXml(evidence)}.</span>${sources.map((runs) => `<br><span class="quiet">${runsHtml(runs)}</span>`).join('')}`;

const sourcesHtml = ({ references, missing }: PublishedView): string =>
  `<section lang="en">${listHtml(
    'Sources',
    references.map(({ note }) => runsHtml(note)),
  )}${missing.length === 0 ? '' : `<p class="quiet">Cited without an entry in the bibliography: ${inXml(missing.join(', '))}.</p>`}</section>`;
