/** Where a caution stands: at the substance, at the step, on the tag of the cloth, over the whole day. */
export type CautionPlace = 'substance' | 'step' | 'tag' | 'plan';

/** A built-in caution. Its words are the notebook's. */
export type CautionCode =
  | 'alum-acid'
  | 'aluminium-acetate-dust'
  | 'iron-harmful'
  | 'iron-weakens'
  | 'copper-harmful'
  | 'tin-harmful'
  | 'tin-copper-staff'
  | 'chrome-never'
  | 'history-never'
  | 'oxalic'
  | 'tannin-dust'
  | 'lye-burns'
  | 'lime-burns'
  | 'ammonia-fumes'
  | 'reducer'
  | 'alcohol-fire'
  | 'logwood-chemical'
  | 'madder-no-food'
  | 'insect-allergy'
  | 'powder-dust'
  | 'poisonous-plant'
  | 'skin-plant'
  | 'deadly-fungus'
  | 'lichen'
  | 'alkali-to-water'
  | 'hot-liquor'
  | 'heavy-pot'
  | 'iron-tannin-weakens'
  | 'tin-hardens'
  | 'not-for-small-children'
  | 'quarantine-wool'
  | 'own-pots'
  | 'air-and-gloves'
  | 'never-mix'
  | 'health'
  | 'children-station'
  | 'waste-alum-iron'
  | 'waste-metals'
  | 'waste-vat'
  | 'competent-person';

/** Who says so. Classifications differ between suppliers; the current safety data sheet of the reader's own product wins. */
export const CAUTION_SOURCES = {
  'alum-acid': ['from memory'],
  'aluminium-acetate-dust': ['earthues.com, about mordants', 'casacaribe.art'],
  'iron-harmful': ['MarVista ferrous sulphate SDS 2015 (H302, H315)', 'H319 and small children: from memory'],
  'iron-weakens': ['naturaldyes.ca, additives: harsh above about 4 %', 'juliamasci.com: above 4 % may damage'],
  'copper-harmful': ['ILO card ICSC 1416, Nov 2023 (H302, H318, H410)'],
  'tin-harmful': ['elementschina.com SDS, UN-GHS rev. 8 (H290, H302+H332, H314, H317, H335, H373, H412)'],
  'tin-copper-staff': ['our judgement'],
  'chrome-never': ['ECHA, potassium dichromate, response to comments 2010'],
  'history-never': ['our judgement'],
  oxalic: ['TargetMol and Greenrock SDS (H302, H312)', 'Blagden SDS 2018 (also H318)', 'ECHA registration 28038'],
  'tannin-dust': ['woolery.com notice after Dean'],
  'lye-burns': ['prochemical.com, indigo directions', 'ICSC text; codes H290, H314 from memory'],
  'lime-burns': ['from memory (H315, H318, H335)'],
  'ammonia-fumes': ['NSW education, chemical safety', 'codes from memory'],
  reducer: ['inchem.org card ICSC 1717', 'New Jersey fact sheet 1697', 'EU codes from memory (H251, H302, EUH031)'],
  'alcohol-fire': ['from memory (H225, H319)'],
  'logwood-chemical': ['pburch.net, naturalsafety'],
  'madder-no-food': ['Carcinogenesis 1998;19:2163, abstract', 'Jäger 2006, Mutation Research 605:22–29'],
  'insect-allergy': ['from memory', 'faena.medievaltextiles.org chart: no exposure standard'],
  'powder-dust': ['woolery.com notice after Dean'],
  'poisonous-plant': ['gardening.yardener.com', 'garden-services.com', 'pburch.net, naturalsafety', 'from memory'],
  'skin-plant': ['from memory'],
  'deadly-fungus': ['from memory'],
  lichen: ['BSBI code of conduct', 'chrissyroshak.blogspot: windfall only', 'janemercer-feltartist.com: windfall only'],
  'alkali-to-water': ['prochemical.com, indigo directions'],
  'hot-liquor': ['our judgement', 'woolery.com notice after Dean: no hotter than a simmer'],
  'heavy-pot': ['our judgement: 10 L weigh about 10 kg'],
  'iron-tannin-weakens': ['common practice'],
  'tin-hardens': ['Mairet 1916: hardens wool'],
  'not-for-small-children': ['our judgement'],
  'quarantine-wool': ['common practice of museums'],
  'own-pots': ['woolery.com notice after Dean', 'pburch.net, naturalsafety', 'rebeccadesnos.com/safety'],
  'air-and-gloves': ['woolery.com notice after Dean', 'kbaxterpackwood.com'],
  'never-mix': ['from memory'],
  health: ['knittingcrochetcrafts.com'],
  'children-station': ['our judgement', 'a museum’s risk form (yumpu 46037353)'],
  'waste-alum-iron': ['makers differ: reneeweaves.blogspot (drain), fibregarden.ca (soil), woolery.com (foul drain)', 'our judgement'],
  'waste-metals': ['ILO card ICSC 1416: must not enter the environment', 'our judgement'],
  'waste-vat': ['our judgement'],
  'competent-person': ['our judgement'],
} as const satisfies Record<CautionCode, readonly [string, ...string[]]>;

/** Substances by what they are called, and what has to be said at them. Folded names: plain small letters. */
export const SUBSTANCES: readonly (readonly [RegExp, readonly CautionCode[]])[] = [
  [/\b(?:alum|aluminium sulphate|aluminum sulfate|pickling alum)\b/, ['alum-acid']],
  [/\balumini?um (?:tri|di|mono)?acetate\b/, ['aluminium-acetate-dust']],
  [/\b(?:iron|copperas|green vitriol|ferrous)\b/, ['iron-harmful', 'iron-weakens']],
  [/\b(?:copper|blue vitriol|verdigris|cupric)\b/, ['copper-harmful', 'tin-copper-staff']],
  [/\b(?:tin|stannous|stannic)\b/, ['tin-harmful', 'tin-copper-staff']],
  [/\b(?:chrome|chromium|(?:bi|di)chromate)\b/, ['chrome-never']],
  [/\b(?:oxalic|rhubarb lea(?:f|ves))\b/, ['oxalic']],
  [/\b(?:galls?|sumac|tannin|tannic|myrobalan|tormentil)\b/, ['tannin-dust']],
  [/\b(?:lye|caustic|potash(?! alum)|pearl ?ash)\b/, ['lye-burns']],
  [/\b(?:lime|quicklime|slaked lime)\b/, ['lime-burns']],
  [/\b(?:urine|ammonia|sal ammoniac|lant)\b/, ['ammonia-fumes']],
  [/\b(?:dithionite|hydrosulphite|hydrosulfite|thiourea dioxide|thiox|spectralite)\b/, ['reducer']],
  [/\b(?:alcohol|ethanol|methylated spirits?|isopropanol|spirits of wine|alkanet|gromwell)\b/, ['alcohol-fire']],
  [/\blogwood\b/, ['logwood-chemical']],
  [/\b(?:madder|chay root|relbunium|ladys bedstraw|lady s bedstraw|bedstraw)\b/, ['madder-no-food']],
  [/\b(?:cochineal|kermes|lac)\b/, ['insect-allergy']],
  [
    /\b(?:alder buckthorn|buckthorn|persian berries|privet|pokeweed|pokeberry|elder|tansy|broom|gorse|ivy|yew|larkspur|lily of the valley|lupin|foxglove|monkshood|bloodroot|greenweed|dyers greenweed|st johns wort)\b/,
    ['poisonous-plant'],
  ],
  [/\b(?:rue|giant hogweed|ivy|fig|walnut|butternut|primula|alkanet)\b/, ['skin-plant']],
];

/** What steps speak of, and what has to be said there. */
export const STEP_WORDS: readonly (readonly [RegExp, CautionCode])[] = [
  [/\b(?:lye|caustic|soda|potash|lime|alkali)\b/i, 'alkali-to-water'],
  [/\b(?:urine|ammonia|ferment\w*)\b/i, 'ammonia-fumes'],
  [/\b(?:alcohol|spirits?|ethanol)\b/i, 'alcohol-fire'],
  [/\b(?:grind|ground up|crush\w*|powder\w*|pounded|sieve\w*)\b/i, 'powder-dust'],
  [/\b(?:boil\w*|simmer\w*|scald\w*)\b/i, 'hot-liquor'],
  [/\b(?:dithionite|hydrosulphite|hydrosulfite|thiourea|thiox)\b/i, 'reducer'],
];
