/**
 * Contexts in which a word that is a dyestuff's name means something else. Everything here is our own judgement of
 * English usage; a name written with its own accents, or in emphasis or quotation marks, is never judged by it.
 */
export interface FalseFriend {
  /** Folded names the rule is about. */
  readonly names: readonly string[];
  /** The folded words before it in its sentence, up to four. */
  readonly before?: RegExp;
  /** The folded words after it in its sentence, up to four. */
  readonly after?: RegExp;
  /** Its sentence, folded. */
  readonly within?: RegExp;
  /** Only as written with a capital and small letters. */
  readonly capital?: true;
  /** Not where the sentence speaks of dyeing. */
  readonly unlessDyeing?: true;
}

/** Words that show that a sentence is about dyeing, cloth or plants. */
export const DYE_SENSE =
  /\b(?:dye|dyes|dyed|dyeing|dyers?|dyestuffs?|mordant\w*|alum\w*|vats?|bath|baths|skeins?|yarns?|wool\w*|silks?|linen|cloths?|fleece|colou?r\w*|reds?|yellows?|blues?|purples?|crimson|scarlet|shades?|pigments?|plants?|roots?|seeds?|sow\w*|harvest\w*|leaf|leaves|insects?|lichens?|woad|weld|madder|indigo)\b/;

const METALWORK =
  /\b(?:fire basket|grate|hinges?|hooks?|brackets?|rails?|railings?|gates?|frames?|pipes?|tripods?|chains?|axles?|blades?|anvil|blacksmith|forge|solder\w*|rivet\w*|torch|steel|girders?|hull|boiler|tank|joints?|seams?|cracks?|cracked|welds|welded|welder|welding)\b/;
const PLACE_BEFORE =
  /(?:^| )(?:in|from|to|at|near|via|across|around|outside|into|for|reached|visited|new|north|south|east|west|northern|southern|city of|town of|county|isle of|island of|coast of|coasts of|king of|queen of|duke of|duchess of|bishop of|house of|battle of|siege of|port of|people of|government of|history of|map of)(?: the)?$/;
const PERSON_VERB =
  /^(?:signed|signs|said|says|asked|asks|told|tells|wrote|writes|came|comes|went|goes|thinks|thought|brought|brings|phoned|called|calls|sent|sends|left|arrived|has asked|will|would|and (?:i|she|he|her|his|their)|smiled|laughed|answered|agreed|knows|knew|wants|wanted|loves|loved|lives|lived)\b/;
const HONORIFIC = /(?:^| )(?:mr|mrs|miss|ms|mx|dr|dear|aunt|auntie|sister|lady|dame|my friend|thanks to)$/;

export const FALSE_FRIENDS: readonly FalseFriend[] = [
  // More mad.
  { names: ['madder'], before: /^(?!.*\b(?:more|less|fewer|other|rather|better|older|finer|cheaper)(?: \S+){0,2}$)/, after: /^than\b/ },
  { names: ['madder'], within: /\b(?:mad|maddest|maddened|maddening|maddeningly|madly|madness|madman|madmen)\b/ },
  { names: ['madder'], after: /^(?:and madder|by the (?:day|hour|minute|week)|(?:with|at) (?:me|him|her|us|them|you)\b)/ },
  { names: ['madder'], before: /(?:^| )(?:dr[io]ves?|driving|ma[dk]es?|making) (?:me|him|her|us|them|you|it|everyone)(?: even| ever)?$/ },
  // To join metal, and the place where it was joined.
  {
    names: ['weld', 'welds'],
    before: /(?:^| )(?:to|will|would|can|could|cannot|must|should|shall|may|might|we|they|you|i|he|she|who|then)$/,
    after: /^(?:the|a|an|it|them|this|that|these|those|two|both|iron|steel|shut|up|together|on to|onto)\b/,
    unlessDyeing: true,
  },
  { names: ['weld', 'welds'], after: /^(?:together|joints?|seams?|beads?|pool|nuggets?|shop|inspection)\b/ },
  { names: ['weld', 'welds'], before: /(?:^| )(?:spot|butt|lap|fillet|tack|arc)$/ },
  {
    names: ['weld', 'welds'],
    before: /(?:^| )(?:a|an|the|this|that|its|each|every|one|any|bad|good|new|old|clean|broken|failed)$/,
    within: METALWORK,
    unlessDyeing: true,
  },
  { names: ['weld', 'welds'], after: /^(?:holds|held|cracked|cracks|broke|breaks|failed|fails|gave way)\b/, unlessDyeing: true },
  // Corn, sand, wood, a small weight.
  {
    names: ['grain', 'grains', 'grein', 'greyn'],
    after:
      /^of (?:(?:a|an|the|this|that|some|any|pure|coarse|fine) ){0,2}(?:sands?|salt|wheat|barley|rye|oats?|corn|rice|maize|millet|mustard|pepper|pollen|starch|dust|earth|gold|silver|truth|doubt|sense|comfort|hope|faith|powder|gunpowder|sugar|alum|incense|wood|timber|oak|board|boards|plank|leather|hide|paper|stone|marble|fabric|weave|photograph|image|film)\b/,
  },
  {
    names: ['grain'],
    before:
      /(?:^| )(?:against the|with the|along the|across the|wood|timber|leather|end|cross|straight|short|long|whole|film|barley|wheat|corn|rye)$/,
    unlessDyeing: true,
  },
  {
    names: ['grain'],
    after:
      /^(?:stores?|silos?|barns?|merchants?|harvests?|fields?|crops?|barges?|ships?|prices?|mills?|elevators?|line|fleet|pits?|and (?:hay|fodder|straw|flour|livestock|cattle|meal))\b/,
  },
  {
    names: ['grain', 'grains'],
    before: /(?:^| )(?:sacks?|bushels?|ears?|pecks?|fields?|crops?|granary|granaries|quarters|threshing|ground|ripe|standing)(?: of)?$/,
    unlessDyeing: true,
  },
  {
    names: ['grain', 'grains'],
    after: /^(?:(?:was|were|is|are|being|been) )?(?:threshed|reaped|milled|malted|winnowed|sown|stored|fermented)\b/,
  },
  // To vex; bile; impudence.
  { names: ['gall', 'galls'], after: /^(?:me|him|her|us|them|you|it|everyone|to)\b/ },
  {
    names: ['gall', 'galls'],
    before: /(?:^| )(?:it|he|she|that|this|which|what|had the|have the|has the|having the|wormwood and|bitter as|ox|bears)$/,
  },
  { names: ['gall'], after: /^(?:bladder|stones?)\b/ },
  // People.
  { names: ['heather', 'kath', 'tansy', 'henna', 'saffron', 'cork', 'weld'], after: PERSON_VERB, capital: true, unlessDyeing: true },
  { names: ['heather', 'kath', 'tansy', 'saffron', 'weld', 'cork'], before: HONORIFIC, capital: true },
  // Places.
  { names: ['saffron'], after: /^(?:walden|hill)\b/, capital: true },
  { names: ['brazil', 'brasil', 'orleans', 'cyprus', 'cork', 'magenta', 'solferino', 'inde'], before: PLACE_BEFORE, capital: true },
  { names: ['brazil'], after: /^nuts?\b/ },
  { names: ['cork'], after: /^(?:city|harbour|airport)\b/, capital: true },
  // The stopper, and the bark it is cut from.
  { names: ['cork'], before: /(?:^| )(?:a|an|each|every|bottle|wine|champagne)$/ },
  {
    names: ['cork'],
    after:
      /^(?:stoppers?|oaks?|bungs?|floats?|lids?|mats?|boards?|soles?|soled|tiles?|floors?|(?:of|in|from|on|out of) (?:the|a|its|his|her) (?:bottles?|jars?|flasks?|barrels?|casks?|jugs?))\b/,
  },
  { names: ['cork'], before: /(?:^| )(?:pull\w*|drew|draws?|popp\w*|push\w*|remov\w*) (?:the|its|out the)$/ },
  // The fish.
  { names: ['ling'], within: /\b(?:cod|fish\w*|stockfish|herrings?|hake|haddock|nets?|salted|catch)\b/, unlessDyeing: true },
  // Nothing; a broken house; a hundred thousand; lakes; a bird; colours and sticks of chalk; inks.
  { names: ['nil'], before: /(?:^| )(?:was|were|is|are|be|been)$/, after: /^$/, unlessDyeing: true },
  { names: ['nil'], before: /(?:^| )(?:almost|virtually|practically|to|one|two|three)$/, unlessDyeing: true },
  { names: ['nil'], after: /^(?:results?|returns?|returned|effect|desperandum|points?|found|per|all)\b/ },
  {
    names: ['ruin'],
    before:
      /(?:^| )(?:a|an|the|this|that|old|(?:brink|verge|edge|state|risk|danger) of|to|in|into|his|her|their|its|my|our|your|will|would|can|could|may|might|roman|castle|financial|utter)$/,
  },
  { names: ['ruin'], after: /^(?:the|a|it|them|everything|of|him|her|us|me|you)\b/ },
  { names: ['lakh'], before: /(?:^| )(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|several|many|few|a)$/ },
  { names: ['lac'], after: /^(?:de|du|des|leman|operon)\b/ },
  { names: ['lac'], before: /(?:^| )(?:le|du|au|grand)$/ },
  { names: ['indigo'], after: /^(?:buntings?|snakes?|girls)\b/ },
  {
    names: ['pastel'],
    after: /^(?:colou?rs?|shades?|tones?|hues?|tints?|drawings?|chalks?|crayons?|portraits?|pinks?|blues?|greens?|yellows?|sketch\w*)\b/,
  },
  { names: ['magenta'], within: /\bcyan\b/ },
  { names: ['lime'], after: /^(?:trees?|juice|blossoms?|avenue|greens?|wood|pickle)\b/ },
  { names: ['son'], before: /(?:^| )(?:a|the|his|her|my|our|your|their|its|eldest|elder|younger|youngest|only|second|first|and|or|s)$/ },
  { names: ['son'], after: /^(?:of|and|in law|or)\b/ },
  { names: ['slip'], before: /(?:^| )(?:a|the|paper|to|may|might|will|can|could|let|not|pillow)$/, unlessDyeing: true },
  { names: ['slip'], after: /^(?:of|on|off|into|away|up|past|out|through|from)\b/ },
  { names: ['ware'], before: /(?:^| )(?:glass|earthen|stone|hard|soft|slip|red|grey|small|dutch|table|kitchen)$/ },
  { names: ['tin'], after: /^(?:cans?|box|boxes|lids?|roofs?|soldiers?|whistles?|hats?|foil|opener)\b/ },
];

/** Names that are at least as often an ordinary word: where nothing in the sentence speaks of dyeing they are doubtful. */
export const ORDINARY_WORDS: ReadonlySet<string> = new Set([
  'ai',
  'nil',
  'ruin',
  'lakh',
  'suo',
  'cork',
  'ling',
  'crocus',
  'mauve',
  'magenta',
  'solferino',
  'orleans',
  'cyprus',
  'kath',
  'roid',
  'pastel',
  'son',
  'eau',
  'ware',
  'slip',
  'sig',
  'lime',
  'gall',
  'grain',
  'grains',
  'inde',
  'tin',
  'water',
  'aqua',
]);
