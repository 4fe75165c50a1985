import '../../elements/ask/tg-ask.ts';
import '../../elements/availability-chart/tg-availability-chart.ts';
import '../../elements/palette/tg-palette.ts';
import '../../elements/recipe/tg-recipe-card.ts';
import '../../elements/swatch/tg-swatch.ts';
import type { TgAsk } from '../../elements/ask/tg-ask.ts';
import type { TgAvailabilityChart } from '../../elements/availability-chart/tg-availability-chart.ts';
import type { TgPalette } from '../../elements/palette/tg-palette.ts';
import type { TgRecipeCard } from '../../elements/recipe/tg-recipe-card.ts';
import type { Engine } from '../../notebook/engine.ts';
import { LocalEngine } from '../../notebook/local-engine.ts';
import { readListedNotebook } from './listed-notebook.ts';
import tokens from '../../styles/tokens.css?inline';

/** Elements that show something of a published notebook, given by its address. */
const TAGS = ['tg-ask', 'tg-palette', 'tg-availability-chart', 'tg-recipe-card'] as const;
const SELECTOR = TAGS.map((tag) => `${tag}[notebook]`).join(', ');

/** Notebooks that were opened, by their whole address: every element of a page shares them. */
const opened = new Map<string, Promise<Engine>>();

function engineFor(address: string): Promise<Engine> {
  const url = new URL(address, document.baseURI).href;
  const known = opened.get(url);
  if (known) return known;
  const opening = (async () => {
    const engine = new LocalEngine();
    await engine.open(await readListedNotebook(url));
    return engine;
  })();
  opened.set(url, opening);
  return opening;
}

const said = (element: Element, name: string): string | undefined => element.getAttribute(name)?.trim() || undefined;

/** Where and when an element asks about, from its attributes. */
function circumstancesOf(element: Element) {
  const [fibre, wearer] = [said(element, 'fibre'), said(element, 'wearer')];
  return {
    region: said(element, 'region') ?? '',
    when: said(element, 'when') ?? '',
    ...(fibre === undefined ? {} : { fibre }),
    ...(wearer === undefined ? {} : { wearer }),
  };
}

async function fill(element: Element): Promise<void> {
  const engine = await engineFor(said(element, 'notebook') ?? '');
  switch (element.localName as (typeof TAGS)[number]) {
    case 'tg-ask': {
      const ask = element as TgAsk;
      const [colour, dye] = [said(element, 'colour'), said(element, 'dye')];
      ask.question = { ...circumstancesOf(element), ...(colour === undefined ? {} : { colour }), ...(dye === undefined ? {} : { dye }) };
      ask.engine = engine;
      return;
    }
    case 'tg-palette': {
      const palette = element as TgPalette;
      palette.palette = circumstancesOf(element);
      palette.engine = engine;
      return;
    }
    case 'tg-availability-chart': {
      const chart = element as TgAvailabilityChart;
      const view = await engine.whoHadWhat({ region: said(element, 'region') ?? '' });
      chart.rows = view?.rows ?? [];
      if (view && !element.hasAttribute('label')) chart.label = `Who had what in ${view.place}, when`;
      return;
    }
    case 'tg-recipe-card':
      (element as TgRecipeCard).engine = engine;
  }
}

/** Elements that were filled, with the attributes they were filled from. */
const filled = new WeakMap<Element, string>();

function look(): void {
  for (const element of document.querySelectorAll(SELECTOR)) {
    const now = [...element.attributes].map(({ name, value }) => `${name}=${value}`).join('\n');
    if (filled.get(element) === now) continue;
    filled.set(element, now);
    fill(element).catch((fault: unknown) => {
      const reason = fault instanceof Error ? fault.message : String(fault);
      element.dispatchEvent(new CustomEvent('tg-notebook-error', { detail: { reason }, bubbles: true, composed: true }));
      element.setAttribute('title', `The notebook could not be opened: ${reason}`);
    });
  }
}

/**
 * Without the address of a notebook's own page its views cannot be reached: links to them are plain words. What prints the whole
 * page is left to the page.
 */
const ELSEWHERE = `:where([notebook]:not([site])) { --tg-view-mark: transparent; --tg-view-pointer: none; }
:where(tg-ask[notebook])::part(print), :where(tg-ask[notebook]:not([site]))::part(ways) { display: none; }
`;

/** The tokens yield to whatever the page itself says of them, wherever it says so. */
function layTokens(): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(
    ELSEWHERE +
      tokens
        .replace(/:root:root/g, ':root')
        .replace(/:root(\[[^\]]*\])?/g, (_, which: string | undefined) => `:where(:root${which ?? ''})`),
  );
  document.adoptedStyleSheets = [sheet, ...document.adoptedStyleSheets];
}

// In the page of a notebook the address holds what is asked; here each element holds its own.
document.addEventListener('tg-question-change', ({ target, detail }) => {
  if (target instanceof Element && target.matches(SELECTOR)) (target as TgAsk).question = detail.question;
});
document.addEventListener('tg-palette-change', ({ target, detail }) => {
  if (target instanceof Element && target.matches(SELECTOR)) (target as TgPalette).palette = detail.palette;
});
document.addEventListener('tg-year-change', ({ target, detail }) => {
  if (target instanceof Element && target.matches(SELECTOR) && target.localName === 'tg-availability-chart')
    (target as TgAvailabilityChart).year = detail.year;
});
// Views of a notebook's own page are not there: such links lead to the page that is named, or nowhere.
document.addEventListener('click', (event) => {
  const path = event.composedPath();
  const element = path.find((one): one is Element => one instanceof Element && one.matches(SELECTOR));
  const link = path.find((one): one is HTMLAnchorElement => one instanceof HTMLAnchorElement);
  const view = link?.getAttribute('href');
  if (!element || view === null || view === undefined || !view.startsWith('#/')) return;
  event.preventDefault();
  const site = said(element, 'site');
  if (site !== undefined) globalThis.location.assign(new URL(view, new URL(site, document.baseURI)));
});

layTokens();
new MutationObserver(look).observe(document, {
  subtree: true,
  childList: true,
  attributes: true,
  attributeFilter: ['notebook', 'region', 'when', 'colour', 'dye', 'fibre', 'wearer'],
});
look();
