/** The style of a published page: greys, the reader's own typefaces, paper as the page's little brother. */
export const PUBLISHED_STYLE = `
:root { color-scheme: light dark; --ground: light-dark(oklch(0.96 0 0), oklch(0.24 0 0)); --ink: light-dark(oklch(0.22 0 0), oklch(0.9 0 0)); --quiet: light-dark(oklch(0.46 0 0), oklch(0.76 0 0)); --line: light-dark(oklch(0.84 0 0), oklch(0.36 0 0)); }
* { box-sizing: border-box; }
[hidden] { display: none !important; }
body { margin: 0 auto; max-width: 72rem; padding: 1.5rem; background: var(--ground); color: var(--ink); font: 1.0625rem/1.55 Literata, 'Iowan Old Style', 'Palatino Linotype', Georgia, serif; }
h1 { margin: 0; font-size: 2.2rem; line-height: 1.15; }
h2 { margin: 0 0 .5rem; font-size: 1.8rem; line-height: 1.2; }
h1:focus, h2:focus { outline: none; }
h3 { margin: 1.5rem 0 .5rem; padding-bottom: .25rem; border-bottom: 1px solid var(--ink); font: 700 1rem/1.3 'Atkinson Hyperlegible Next', 'Segoe UI', Arial, sans-serif; }
p { margin: .5rem 0; max-width: 68ch; }
ul { margin: 0; padding: 0; list-style: none; }
li { max-width: 68ch; padding: .5rem 0; border-bottom: 1px solid var(--line); }
.quiet { color: var(--quiet); font: .885rem/1.5 'Atkinson Hyperlegible Next', 'Segoe UI', Arial, sans-serif; }
.line { display: grid; grid-template-columns: repeat(auto-fill, minmax(9rem, 1fr)); gap: 1.5rem; margin: 2rem 0; padding-top: .75rem; border-top: 1px solid var(--ink); }
.line li { padding: 0; border: 0; }
.line a { display: block; min-height: 2.75rem; color: inherit; text-decoration: none; }
.line a span { display: block; margin-top: .5rem; text-decoration: underline; text-underline-offset: .2em; }
.line svg { width: 8rem; height: auto; }
a:focus-visible, button:focus-visible, summary:focus-visible { outline: 3px solid var(--ink); outline-offset: 3px; }
.colour { display: grid; grid-template-columns: 14rem minmax(0, 1fr); gap: 2rem; padding: 2.5rem 0; border-top: 1px solid var(--line); }
.colour > figure { margin: 0; }
.colour > figure svg { width: 100%; height: auto; }
.caption { font-size: 1.2rem; }
button { min-height: 2.75rem; padding: .5rem 1rem; border: 1px solid var(--quiet); background: none; color: inherit; font: inherit; }
button[aria-pressed='true'] { border-width: 3px; font-weight: 700; }
summary { min-height: 2.75rem; padding: .6rem 0; cursor: pointer; text-decoration: underline; text-underline-offset: .2em; }
.gallery body { font-size: 1.35rem; user-select: none; }
.gallery .line { grid-template-columns: repeat(auto-fill, minmax(13rem, 1fr)); }
.gallery .line svg { width: 12rem; }
.gallery .line a, .gallery button, .gallery summary { min-height: 4rem; }
.gallery .colour { grid-template-columns: minmax(14rem, 22rem) minmax(0, 1fr); border: 0; }
.gallery .caption { font-size: 1.6rem; }
.bar { position: sticky; top: 0; z-index: 1; display: flex; flex-wrap: wrap; gap: 1rem; padding: .5rem 0; background: var(--ground); }
.bar:not(:has(button:not([hidden]))) { display: none; }
@media (max-width: 40rem) { .colour, .gallery .colour { grid-template-columns: 1fr; gap: 1rem; } .colour > figure { max-width: 10rem; } }
@media (prefers-contrast: more) { :root { --quiet: var(--ink); --line: var(--ink); } }
@page { margin: 15mm; }
@media print { :root { color-scheme: light; --ground: #fff; --ink: #000; --quiet: #444; font-size: 9pt; } body { max-width: none; padding: 0; } p, li { max-width: none; } li { break-inside: avoid; } h2, h3 { break-after: avoid; } .bar, .line { display: none; } .colour { grid-template-columns: 30mm 1fr; padding: 6mm 0; } summary { display: none; } details::details-content { content-visibility: visible; } }
`;
