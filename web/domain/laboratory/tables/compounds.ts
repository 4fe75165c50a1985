import type { Basis, Compound, CompoundFamily, Loss } from '../compound.ts';

const judged: Basis = { source: 'our judgement' };

/** [usual name, other names, CAS number from memory, loss on ageing, where the loss comes from, stray chance if not the family's] */
type Row = readonly [name: string, names: readonly string[], cas: string | undefined, loss: Loss, basis?: Basis, stray?: number];

/** Chance that a compound of the family strays into a report; our judgement throughout. */
const STRAY: Readonly<Record<CompoundFamily, number>> = {
  anthraquinone: 0.006,
  'insect-red': 0.003,
  flavonoid: 0.015,
  isoflavone: 0.003,
  indigoid: 0.006,
  bromoindigoid: 0.0005,
  'indigo-sulfonate': 0.002,
  redwood: 0.004,
  logwood: 0.003,
  'lichen-purple': 0.004,
  'lichen-acid': 0.01,
  tannin: 0.08,
  naphthoquinone: 0.004,
  carotenoid: 0.003,
  curcuminoid: 0.003,
  alkaloid: 0.003,
  safflower: 0.002,
  aurone: 0.002,
  synthetic: 0.002,
  element: 0.1,
};

const modht: Basis = { source: 'CORDIS result 38863, National Museums of Scotland (weld and sawwort under light)' };
const greenweed: Basis = { source: 'CORDIS result 38862, National Museums of Scotland (greenweed)' };
const safflower: Basis = { source: 'Wouters, Grzywacz & Claro 2010' };
const fustic: Basis = { source: 'Valianou et al. 2009' };
const sulfonate: Basis = { source: 'Getty AAT: indigo carmine; Lowengard 2006' };
const madder: Basis = { source: 'Lucejko et al. 2021 (pseudopurpurin turns into purpurin)', fromMemory: true };

const BY_FAMILY: Readonly<Partial<Record<CompoundFamily, readonly Row[]>>> = {
  anthraquinone: [
    ['alizarin', ['1,2-dihydroxyanthraquinone'], '72-48-0', 'steady'],
    ['purpurin', ['1,2,4-trihydroxyanthraquinone'], '81-54-9', 'steady'],
    ['pseudopurpurin', ['purpurin-3-carboxylic acid'], '476-41-5', 'much', madder],
    ['anthragallol', ['1,2,3-trihydroxyanthraquinone'], '602-64-2', 'some'],
    ['rubiadin', ['1,3-dihydroxy-2-methylanthraquinone'], '117-02-2', 'some'],
    ['xanthopurpurin', ['purpuroxanthin', '1,3-dihydroxyanthraquinone'], '518-83-2', 'some'],
    ['munjistin', ['1,3-dihydroxyanthraquinone-2-carboxylic acid'], '478-06-8', 'much'],
    ['nordamnacanthal', ['1,3-dihydroxy-2-formylanthraquinone'], '3736-59-2', 'some'],
    ['anthrapurpurin', ['isopurpurin', '1,2,7-trihydroxyanthraquinone'], '602-65-3', 'steady'],
    ['flavopurpurin', ['1,2,6-trihydroxyanthraquinone'], '82-29-1', 'steady'],
    ['emodin', ['frangula emodin'], '518-82-1', 'some', undefined, 0.012],
    ['dermocybin', [], undefined, 'some'],
    ['dermorubin', [], undefined, 'some'],
  ],
  'insect-red': [
    ['carminic acid', [], '1260-17-9', 'steady'],
    ['dcII', ['dc II', '2-C-glucoside of flavokermesic acid'], undefined, 'some'],
    ['kermesic acid', [], '18499-92-8', 'steady'],
    ['flavokermesic acid', ['laccaic acid D', 'xanthokermesic acid'], '18499-84-8', 'some'],
    ['laccaic acid A', [], '15979-35-8', 'steady'],
    ['laccaic acid B', [], '17249-00-2', 'some'],
    ['laccaic acid C', [], '23241-56-7', 'much'],
    ['laccaic acid E', [], '14597-16-1', 'much'],
  ],
  flavonoid: [
    ['luteolin', [], '491-70-3', 'some', modht],
    ['apigenin', [], '520-36-5', 'some', modht],
    ['chrysoeriol', ['luteolin methyl ether', "luteolin 3'-methyl ether", "3'-O-methylluteolin"], '491-71-4', 'steady', modht, 0.004],
    ['quercetin', [], '117-39-5', 'much', modht, 0.025],
    ['kaempferol', [], '520-18-3', 'much', modht],
    ['3-O-methylquercetin', ['quercetin 3-methyl ether'], '1486-70-0', 'most', modht, 0.003],
    ['isorhamnetin', ["3'-O-methylquercetin"], '480-19-3', 'some', undefined, 0.005],
    ['rhamnetin', ['7-O-methylquercetin'], '90-19-7', 'some', undefined, 0.004],
    ['xanthorhamnin', [], undefined, 'much', undefined, 0.003],
    ['myricetin', [], '529-44-2', 'most'],
    ['morin', [], '480-16-0', 'much', undefined, 0.003],
    ['maclurin', [], '519-34-6', 'much', undefined, 0.003],
    ['quercitrin', ['quercetin 3-rhamnoside'], '522-12-3', 'most'],
    ['patuletin', [], '519-96-0', 'much', undefined, 0.004],
    ['quercetagetin', [], '90-18-6', 'much', undefined, 0.004],
    ['taxifolin', ['dihydroquercetin'], '480-18-2', 'much', undefined, 0.006],
  ],
  isoflavone: [['genistein', [], '446-72-0', 'much', greenweed]],
  indigoid: [
    ['indigotin', ['indigo', 'indigo blue'], '482-89-3', 'steady'],
    ['indirubin', ['indigo red'], '479-41-4', 'some', undefined, 0.004],
    ['isatin', [], '91-56-5', 'steady', undefined, 0.02],
  ],
  bromoindigoid: [
    ["6,6'-dibromoindigotin", ['dibromoindigo', 'DBI', "6,6'-dibromoindigo", 'Tyrian purple'], '19201-53-7', 'steady'],
    ['6-monobromoindigotin', ['monobromoindigo', 'MBI', '6-bromoindigotin', '6-bromoindigo'], undefined, 'steady'],
    ["6,6'-dibromoindirubin", ['DBIR'], undefined, 'some'],
  ],
  'indigo-sulfonate': [
    ['indigotin disulfonate', ['indigo carmine', 'indigotindisulfonic acid'], '860-22-0', 'much', sulfonate],
    ['indigotin monosulfonate', ['indigo monosulfonate'], undefined, 'much', sulfonate],
  ],
  redwood: [
    ['brazilein', ['brasilein'], '600-76-0', 'most'],
    ['brazilein type B', ['type B compound'], undefined, 'some'],
    ['urolithin C', ['type C', 'type C compound', 'brazilwood type C'], '165393-06-6', 'steady'],
  ],
  logwood: [
    ['haematein', ['hematein'], '475-25-2', 'much'],
    ['haematoxylin', ['hematoxylin'], '517-28-2', 'most'],
  ],
  'lichen-purple': [
    ['orceins', ['orcein'], '1400-62-0', 'much'],
    ['amino-orceins', ['aminoorceins', 'alpha-aminoorcein'], undefined, 'much'],
    ['hydroxyorceins', ['alpha-hydroxyorcein'], undefined, 'much'],
  ],
  'lichen-acid': [
    ['salazinic acid', [], '521-39-1', 'much'],
    ['atranorin', [], '479-20-9', 'much'],
  ],
  tannin: [
    ['ellagic acid', [], '476-66-4', 'steady'],
    ['gallic acid', [], '149-91-7', 'some'],
    ['granatin', ['granatin B'], undefined, 'most', undefined, 0.004],
    ['catechins', ['condensed tannins'], undefined, 'much'],
    ['catechin', [], '154-23-4', 'much', undefined, 0.03],
    ['epicatechin', [], '490-46-0', 'much', undefined, 0.02],
    ['procyanidins', ['proanthocyanidins'], undefined, 'much'],
  ],
  naphthoquinone: [
    ['juglone', ['5-hydroxy-1,4-naphthoquinone'], '481-39-0', 'most'],
    ['lawsone', ['2-hydroxy-1,4-naphthoquinone'], '83-72-7', 'some'],
    // Mirror images: ordinary columns give one peak for both (Hofenk de Graaff 2004, from memory), so reports and tables hold one.
    ['alkannin or shikonin', ['alkannin', 'shikonin', '517-88-4', '517-89-5'], undefined, 'much'],
  ],
  carotenoid: [
    ['crocetin', [], '27876-94-4', 'most'],
    ['crocin', ['crocins'], '42553-65-1', 'most'],
    ['bixin', [], '6983-79-5', 'most'],
    ['norbixin', [], '542-40-5', 'most'],
  ],
  curcuminoid: [['curcumin', [], '458-37-7', 'most']],
  alkaloid: [
    ['berberine', [], '2086-83-1', 'some'],
    ['palmatine', [], '3486-67-7', 'some'],
    ['jatrorrhizine', ['jatrorrhizin'], '3621-38-3', 'some'],
  ],
  safflower: [
    ['carthamin', [], '36338-96-2', 'most', safflower],
    ['Ct1', [], undefined, 'steady', safflower],
    ['Ct2', [], undefined, 'steady', safflower],
    ['Ct3', [], undefined, 'steady', safflower],
    ['Ct4', [], undefined, 'steady', safflower],
  ],
  aurone: [
    ['sulfuretin', [], '120-05-8', 'some', fustic],
    ['fisetin', [], '528-48-3', 'some', fustic],
    ['fustin', ['dihydrofisetin'], '20725-03-5', 'much', fustic],
    ['butein', [], '487-52-5', 'much', fustic],
    ['butin', [], '492-14-8', 'much', fustic],
  ],
  synthetic: [
    ['mauveine A', [], undefined, 'some'],
    ['mauveine B', [], undefined, 'some'],
    ['rosaniline', ['fuchsine', 'magenta'], '632-99-5', 'much'],
    ['picric acid', ['2,4,6-trinitrophenol'], '88-89-1', 'much'],
    ['iron hexacyanoferrate', ['Prussian blue', 'ferric ferrocyanide'], '14038-43-8', 'steady'],
    ['anthocyanins', [], undefined, 'most'],
    ['hypericin', [], '548-04-9', 'most'],
  ],
  element: [
    ['aluminium', ['Al', 'aluminum'], '7429-90-5', 'some'],
    ['iron', ['Fe'], '7439-89-6', 'steady'],
    ['copper', ['Cu'], '7440-50-8', 'steady'],
    ['tin', ['Sn'], '7440-31-5', 'steady'],
    ['chromium', ['Cr', 'chrome'], '7440-47-3', 'steady'],
    ['bromine', ['Br'], '7726-95-6', 'steady', undefined, 0.02],
  ],
};

/**
 * The compounds a report may name.
 *
 * @source losses: as each row says; without a row's own source and for every stray chance, our judgement. CAS numbers from memory.
 */
export const COMPOUNDS: readonly Compound[] = Object.entries(BY_FAMILY).flatMap(([family, rows]) =>
  rows.map(([name, names, cas, loss, basis, stray]): Compound => {
    const one = family as CompoundFamily;
    return { name, names, ...(cas && { cas }), family: one, loss, lossBasis: basis ?? judged, stray: stray ?? STRAY[one] };
  }),
);
