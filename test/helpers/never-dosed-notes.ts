import { printSkeinCode } from '../../web/domain/pot/skein-code.ts';
import { aDyestuff, aNote, aWorld } from './a-notebook.ts';

/** Amounts of what is never dosed; they stand nowhere else in these notes, so that any trace of one is a leak. */
const SECRETS = ['3.71', '4.83', '5.92', '6.17', '7.29', '8.31', '9.47'];
/** Amounts of tin and copper: for staff, and for nobody else. */
const STAFF = ['11.13', '12.17', '13.19', '14.23', '15.29', '16.31', '17.37', '18.41', '19.43'];
/** The code of a skein that tin went into. */
export const NEVER_DOSED_CODE = printSkeinCode({ year: 26, bath: 1, skein: 1 }) ?? '';
/** Notes that hold such amounts wherever an author could write one. */
export const NEVER_DOSED_FILES = {
  ...aWorld,
  'dyestuffs/weld.md': aDyestuff('Weld', 'region: england, when: 900–1100, status: grown, known-by: text, source: invented-1'),
  'mordants/tin-salt.md': aNote('kind: mordant\ntitle: Tin salt\nnames: [stannous chloride]\nformula: SnCl2'),
  'mordants/blue-salt.md': aNote('kind: mordant\ntitle: Blue salt\nnames: [blue vitriol]\nformula: CuSO4·5H2O'),
  'mordants/red-salt.md': aNote('kind: mordant\ntitle: Red salt\nnames: [potassium dichromate]\nformula: K2Cr2O7'),
  'recipes/olive.md': `---
kind: recipe
title: Olive
fibre: wool
liquor: "30:1"
ingredients:
  - { what: weld, role: dye, amount: 50 % }
  - { what: red-salt, role: mordant, amount: 3.71 %, form: dichromate solution of 4.83 g/L }
steps:
  - "Dissolve 5.92 g of the red salt and enter the wool."
as-written: "Take of bichromate 6.17 ounces to the pound of wool."
---

Old books give 7.29 g of dichromate for a skein.
`,
  'trials/pot.md': `---
kind: trial
title: Pot one
recipe: olive
fibre: wool
fibre-mass: 50 g
code: A-1
actual:
  - { what: weld, role: dye, amount: 50 % }
  - { what: red-salt, role: mordant, amount: 3.71 %, form: 4.83 g/L dichromate }
log: ["dichromate 8.31 g in"]
deviations: ["9.47 g of red salt, not 3.71 g"]
colour: { lab: [60, -5, 40], illuminant: D65, observer: 10 }
---
`,
  'recipes/scarlet.md': `---
kind: recipe
title: Scarlet
fibre: wool
liquor: "30:1"
ingredients:
  - { what: weld, role: dye, amount: 50 % }
  - { what: tin-salt, role: mordant, amount: 11.13 %, form: stannous chloride of 12.17 g/L }
  - { what: blue-salt, role: modifier, amount: 13.19 % }
steps:
  - "Dissolve 14.23 g of tin salt; enter the wool at 80 °C for one hour."
  - "Sadden with 15.29 g of blue vitriol, twenty minutes."
as-written: "Of stannous chloride 16.31 grains."
---

An old book has 17.37 g of copper for a skein.
`,
  'trials/scarlet-pot.md': `---
kind: trial
title: "Scarlet, 18.41 % tin"
recipe: scarlet
date: 2026-05-01
fibre: wool
fibre-mass: 50 g
samples:
  - { code: "${NEVER_DOSED_CODE}", fibre: wool, fibre-mass: 50 g, note: "with 19.43 g tin salt", colour: { lab: [45, 50, 30], illuminant: D65, observer: 10 } }
actual:
  - { what: weld, role: dye, amount: 50 % }
  - { what: tin-salt, role: mordant, amount: 11.13 %, form: 12.17 g/L stannous chloride }
  - { what: blue-salt, role: modifier, amount: 13.19 % }
lots: ["blue vitriol, 14.23 g jar"]
log: ["2026-05-01 10:20 tin 15.29 g in"]
deviations: ["16.31 g of tin salt, not 11.13 %"]
---

Planned for 50 g: tin salt 17.37 g.
`,
  'palettes/reds.md': aNote(
    'kind: palette\ntitle: Colours\nregion: york\nwhen: "950"\nkeeps: [{what: scarlet, note: 19.43 g of tin salt}, {what: olive, note: 7.29 g of dichromate}]',
  ),
  'displays/board.md': aNote(
    `kind: display\ntitle: The board\npalette: reds\ncaptions: [{for: scarlet, headline: Scarlet, text: "Wool dyed with 18.41 g of tin salt, a modern sample.", claims: [{claim: "weld#0", says: weld}]}, {for: olive, headline: Olive, text: "Wool with 9.47 g of dichromate, a modern sample.", claims: []}]`,
  ),
  'trials/other.md': `---
kind: trial
title: Pot two
recipe: olive
fibre: wool
actual: [{ what: weld, role: dye, amount: 50 % }, { what: red-salt, role: mordant, amount: 7.29 %, form: "5.92 g/L" }]
colour: { lab: [58, -5, 40], illuminant: D65, observer: 10 }
---
`,
} as const;

/** The secret amounts that stand in what was shown. */
export const secretsIn = (shown: string): readonly string[] => [...SECRETS, ...STAFF].filter((secret) => shown.includes(secret));
