import type { Basis, DyeProfile, Holding, Strength } from '../compound.ts';

/** Compounds by strength, and where they come from. `m` marks what is from memory. */
interface Row {
  readonly main?: string;
  readonly minor?: string;
  readonly trace?: string;
  readonly from: string;
  readonly m?: true;
  /** Added by us to the source's list, from memory. */
  readonly added?: { readonly main?: string; readonly minor?: string; readonly trace?: string };
}

const indigo: Row = { main: 'indigotin', minor: 'indirubin', trace: 'isatin', from: 'Karapanagiotis et al. 2021' };
const redwood: Row = { main: 'urolithin C', minor: 'brazilein; brazilein type B', from: 'Peggie et al. 2018; Brazilein type B, 2025' };
const lichen: Row = { main: 'orceins', minor: 'amino-orceins; hydroxyorceins', from: 'Cala et al. 2019' };
const gallic: Row = { main: 'ellagic acid', minor: 'gallic acid', from: 'Vasileiadou et al. 2021; Cardon 2007' };

/** Strengths of what the laboratory finds, dyestuff by dyestuff; compounds between semicolons. */
const ROWS: Readonly<Record<string, Row>> = {
  woad: indigo,
  indigo,
  'dyers-knotweed': indigo,
  'synthetic-indigo': { main: 'indigotin', from: 'our judgement' },
  'saxon-blue': {
    main: 'indigotin disulfonate',
    minor: 'indigotin monosulfonate',
    trace: 'indigotin',
    from: 'Getty AAT: indigo carmine; Lowengard 2006',
  },
  'shellfish-purple': {
    main: "6,6'-dibromoindigotin; 6-monobromoindigotin; bromine",
    minor: 'indigotin',
    from: 'Sukenik et al. 2021',
    added: { minor: "6,6'-dibromoindirubin", trace: 'indirubin' },
  },
  madder: {
    main: 'alizarin; purpurin',
    minor: 'pseudopurpurin; anthragallol; rubiadin',
    from: 'Karapanagiotis et al. 2021; Lucejko et al. 2021; Fill-Trevisiol study',
    added: { minor: 'munjistin', trace: 'xanthopurpurin; nordamnacanthal' },
  },
  'wild-madder': {
    main: 'purpurin; pseudopurpurin',
    from: 'Karapanagiotis et al. 2021; Cardon 2007',
    added: { minor: 'rubiadin', trace: 'alizarin; munjistin; xanthopurpurin' },
  },
  'ladys-bedstraw': {
    main: 'purpurin; pseudopurpurin',
    from: 'Karapanagiotis et al. 2021; Cardon 2007',
    added: { minor: 'rubiadin', trace: 'alizarin; munjistin; xanthopurpurin' },
  },
  relbunium: { main: 'purpurin; xanthopurpurin', from: 'Wouters & Rosario-Chirinos 1992', added: { minor: 'pseudopurpurin; munjistin' } },
  'indian-madder': {
    main: 'purpurin; munjistin',
    minor: 'pseudopurpurin',
    from: 'Schweppe 1993',
    m: true,
    added: { minor: 'xanthopurpurin', trace: 'alizarin; rubiadin' },
  },
  'chay-root': { main: 'alizarin', from: 'Chay red article', added: { trace: 'rubiadin; anthragallol; purpurin' } },
  'synthetic-alizarin': {
    main: 'alizarin',
    from: 'Travis 1993; Schweppe 1993',
    m: true,
    added: { minor: 'anthrapurpurin; flavopurpurin', trace: 'purpurin' },
  },
  cortinarius: { main: 'dermocybin; dermorubin', minor: 'emodin', from: 'our judgement' },
  weld: { main: 'luteolin', minor: 'apigenin; chrysoeriol', from: 'CORDIS result 38863; Karapanagiotis et al. 2021' },
  'dyers-greenweed': { main: 'genistein; luteolin', minor: 'apigenin', from: 'CORDIS result 38862', added: { trace: 'chrysoeriol' } },
  sawwort: { main: 'luteolin', minor: 'apigenin; quercetin; kaempferol; 3-O-methylquercetin', from: 'CORDIS result 38863' },
  'dyers-chamomile': { main: 'patuletin', minor: 'luteolin; apigenin; quercetagetin', from: 'Schweppe 1993', m: true },
  tansy: { main: 'luteolin', minor: 'apigenin; quercetin', from: 'Schweppe 1993', m: true },
  'young-fustic': {
    main: 'sulfuretin; fisetin',
    minor: 'butin; fustin; butein',
    from: 'Valianou et al. 2009',
    added: { trace: 'quercetin; taxifolin; gallic acid' },
  },
  'old-fustic': { main: 'morin', minor: 'maclurin', trace: 'kaempferol', from: 'Schweppe 1993', m: true },
  'persian-berries': {
    main: 'rhamnetin; quercetin',
    minor: 'kaempferol; emodin; xanthorhamnin',
    from: 'CAMEO: Persian berries; Vasileiadou et al. 2021',
    added: { minor: 'isorhamnetin' },
  },
  'yellow-larkspur': { main: 'quercetin; kaempferol', minor: 'isorhamnetin', from: 'Cardon 2007', m: true },
  quercitron: { main: 'quercetin', minor: 'quercitrin', from: 'Schweppe 1993', m: true },
  saffron: { main: 'crocetin', minor: 'crocin', from: 'Hofenk de Graaff 2004', m: true },
  safflower: { main: 'carthamin; Ct1; Ct2', minor: 'Ct3; Ct4', from: 'Wouters, Grzywacz & Claro 2010' },
  turmeric: { main: 'curcumin', from: 'Vasileiadou et al. 2021' },
  annatto: { main: 'bixin', minor: 'norbixin', from: 'Schweppe 1993', m: true },
  goldenrod: { main: 'quercetin', minor: 'kaempferol', from: 'Schweppe 1993', m: true },
  'american-goldenrod': { main: 'quercetin', minor: 'kaempferol', from: 'Schweppe 1993', m: true },
  'st-johns-wort': { main: 'quercetin', minor: 'hypericin', from: 'Schweppe 1993', m: true },
  'birch-leaf': { main: 'quercetin', minor: 'myricetin; kaempferol', from: 'Schweppe 1993', m: true },
  heather: { main: 'quercetin', minor: 'myricetin; taxifolin', from: 'Schweppe 1993', m: true },
  'bog-myrtle': { main: 'myricetin', minor: 'quercetin', from: 'Schweppe 1993', m: true },
  'onion-skin': { main: 'quercetin', from: 'Schweppe 1993', m: true },
  'american-cochineal': {
    main: 'carminic acid',
    minor: 'dcII',
    trace: 'kermesic acid; flavokermesic acid',
    from: 'Wouters & Verhecken 1989; Lech et al. 2016',
    m: true,
  },
  'polish-cochineal': {
    main: 'carminic acid; kermesic acid',
    minor: 'flavokermesic acid',
    trace: 'dcII',
    from: 'Wouters & Verhecken 1989; Lech et al. 2016',
    m: true,
  },
  'armenian-cochineal': {
    main: 'carminic acid',
    trace: 'kermesic acid; flavokermesic acid; dcII',
    from: 'Wouters & Verhecken 1989; Lech et al. 2016',
    m: true,
  },
  kermes: { main: 'kermesic acid', minor: 'flavokermesic acid', from: 'Wouters & Verhecken 1989', m: true },
  lac: {
    main: 'laccaic acid A',
    minor: 'laccaic acid B; laccaic acid C',
    trace: 'laccaic acid E; flavokermesic acid',
    from: 'Wouters & Verhecken 1989',
    m: true,
  },
  orchil: lichen,
  'northern-orchil': lichen,
  cudbear: lichen,
  crottle: { main: 'salazinic acid; atranorin', from: 'Wills, lichen acids', m: true },
  sappanwood: redwood,
  'american-brazilwood': redwood,
  logwood: { main: 'haematein', minor: 'haematoxylin', from: 'Turkotek summary of Cardon 2007' },
  'oak-galls': { main: 'gallic acid; ellagic acid', from: 'Vasileiadou et al. 2021; Cardon 2007' },
  sumac: gallic,
  'oak-bark': gallic,
  pomegranate: { ...gallic, added: { trace: 'granatin' } },
  'alder-bark': { main: 'catechins', minor: 'ellagic acid', from: 'our judgement' },
  tormentil: { main: 'catechins', minor: 'ellagic acid', from: 'our judgement' },
  walnut: { main: 'juglone', minor: 'ellagic acid; gallic acid', from: 'Schweppe 1993', m: true },
  butternut: { main: 'juglone', minor: 'ellagic acid', from: 'our judgement' },
  eucalyptus: { main: 'quercetin', minor: 'ellagic acid', from: 'our judgement' },
  avocado: { main: 'procyanidins', minor: 'catechin', from: 'our judgement' },
  bilberry: { main: 'anthocyanins', from: 'Schweppe 1993', m: true },
  alkanet: { main: 'alkannin or shikonin', from: 'Hofenk de Graaff 2004', m: true },
  gromwell: { main: 'alkannin or shikonin', from: 'Hofenk de Graaff 2004', m: true },
  henna: { main: 'lawsone', from: 'Schweppe 1993', m: true },
  cutch: { main: 'catechin', minor: 'epicatechin', from: 'Getty AAT: cutch; Schweppe 1993' },
  'amur-cork-tree': { main: 'berberine', minor: 'palmatine; jatrorrhizine', from: 'Sasaki & Sasaki 2013' },
  'prussian-blue': { main: 'iron hexacyanoferrate', minor: 'iron', from: 'our judgement' },
  mauveine: { main: 'mauveine A; mauveine B', from: 'Travis 1993', m: true },
  magenta: { main: 'rosaniline', from: 'Travis 1993', m: true },
  'picric-acid': { main: 'picric acid', from: 'Schweppe 1993', m: true },
};

const split = (list: string | undefined): readonly string[] => (list ? list.split('; ') : []);

function holdings({ from, m, added, ...given }: Row): readonly Holding[] {
  const basis: Basis = { source: from, ...(m && { fromMemory: true }) };
  const ours: Basis = { source: 'general knowledge of the plant, added by us', fromMemory: true };
  const rows = (of: Readonly<Partial<Record<Strength, string>>>, why: Basis) =>
    (['main', 'minor', 'trace'] as const).flatMap((strength) =>
      split(of[strength]).map((compound) => ({ compound, strength, basis: why })),
    );
  return [...rows(given, basis), ...rows(added ?? {}, ours)];
}

/**
 * What each dyestuff gives a laboratory to find. Which compounds: as the source says; how much, in three grades: our judgement
 * on the source's wording, except the insect reds, whose shares are in the ratios.
 */
export const DYE_PROFILES: readonly DyeProfile[] = Object.entries(ROWS).map(([dye, row]) => ({ dye, holds: holdings(row) }));
