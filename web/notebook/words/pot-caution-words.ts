import type { CautionCode } from '../../domain/pot/caution-table.ts';
import type { Caution } from '../../domain/pot/cautions-for.ts';

/** What a built-in caution says. Where it and a supplier’s sheet or the law disagree, they win. */
export const cautionWords = {
  'alum-acid': 'Alum: keep the dust out of eyes and lungs; its bath is acid. Not food, whatever the label says of pickles.',
  'aluminium-acetate-dust': 'Aluminium acetate: weigh it in still air, with a mask; it smells of vinegar and irritates.',
  'iron-harmful': 'Iron sulphate: harmful if swallowed, irritates skin and eyes; a few grams are dangerous to a small child. Lock it away.',
  'iron-weakens': 'Too much iron makes wool harsh and weak: above about 4 % look twice.',
  'copper-harmful':
    'Copper sulphate: harmful if swallowed, damages eyes, deadly to water life. Goggles, gloves, no dust, nothing down the drain.',
  'tin-harmful': 'Tin chloride: corrosive, harmful, and can make the skin allergic.',
  'tin-copper-staff': 'For staff who work by its safety data sheet; never with children or the public.',
  'chrome-never':
    'Chromium salts: not to be used. They cause cancer and harm genes and unborn children. Old chrome-mordanted cloth is not sanded or burnt.',
  'history-never': 'Named as history only: do not make it and do not dye with it.',
  oxalic: 'Oxalic acid and rhubarb leaf: poisonous; do not taste, do not boil the leaf indoors.',
  'tannin-dust': 'Galls and other tannins: crush them damp or outdoors, for the dust irritates.',
  'lye-burns': 'Lye burns skin and eyes and eats aluminium pots: goggles, gloves.',
  'lime-burns': 'Lime burns eyes; quicklime heats violently with water.',
  'ammonia-fumes': 'Ammonia and stale urine: outdoors, gloves, never near bleach; nobody of the public handles them.',
  reducer:
    'The reducer heats with a little water and can catch fire; with acid it gives a choking gas. Powder into plenty of water, never the other way.',
  'alcohol-fire': 'Alcohol burns: no flame and no fire near it, and none under it.',
  'logwood-chemical': 'Logwood: harmful to breathe or swallow; treat it as a chemical.',
  'madder-no-food':
    'Madder roots: no food use, no dust. Compounds in them caused tumours in fed rats; for wearers nothing is established here.',
  'insect-allergy': 'Insect dyes can set off asthma and allergy: grind damp or behind a mask.',
  'powder-dust': 'Fine dust harms lungs: a mask (FFP2 or better), wipe, do not sweep.',
  'poisonous-plant': 'Poisonous or harmful to eat: keep it from children, and away from anything edible.',
  'skin-plant': 'The plant stains or irritates skin: gloves.',
  'deadly-fungus': 'Deadly fungi look alike: an expert names it, with gloves and pots of its own.',
  lichen:
    'Lichens grow for decades: nothing is scraped from rock or living trunk; windfall only, with leave, and protected kinds not at all.',
  'alkali-to-water': 'Add the alkali to cold water, never water to the alkali.',
  'hot-liquor': 'Hot liquor scalds: nobody reaches over the pot, and an adult stands at it.',
  'heavy-pot':
    'Ten litres weigh ten kilograms, and wet wool two to three times its dry weight: two people lift, or the bath is bailed out.',
  'iron-tannin-weakens': 'Iron with tannin weakens the cloth in time: no tension, low light, look at it each year.',
  'tin-hardens': 'Tin hardens wool and makes it brittle.',
  'not-for-small-children': 'Not for small children to handle.',
  'quarantine-wool':
    'Wool and silk may bring moth and beetle: bag and quarantine them by the museum’s own rule before they enter a gallery.',
  'own-pots': 'Pots, spoons and thermometers for dyeing only; they never go back to the kitchen. No food, drink or smoking.',
  'air-and-gloves':
    'Air, lids, gloves, apron, closed shoes; goggles for alkalis and strong salts. Label every jar, also with what it holds today.',
  'never-mix': 'Never together: bleach and ammonia or acid; a reducer and acid; alcohol and flame.',
  health: 'Allergies, asthma, pregnancy or breast-feeding: ask a doctor before handling dyes and mordants.',
  'children-station':
    'With children: mordanted and rinsed wool only, no open powders, no alkali vat in reach, an adult at every pot, a line two metres from the fire, water and a burns kit at hand.',
  'waste-alum-iron':
    'Alum and iron baths: use them up first; away only as water company, landowner and site rules allow. Septic tank, camp site or river bank: assume not.',
  'waste-metals': 'Copper, tin and chromium: never into drain, soil or water. Collect them for licensed disposal.',
  'waste-vat': 'A vat is aired out and brought to pH 6–9 before it is disposed of; lime sludge stays out of drains.',
  'competent-person': 'Follow local rules and the supplier’s current safety data sheet; ask a competent person.',
} as const satisfies Record<CautionCode, string>;

/** What a caution says: a note’s own words, or the built-in ones. */
export const cautionText = ({ code, text }: Caution): string => text ?? (code === undefined ? '' : cautionWords[code]);
