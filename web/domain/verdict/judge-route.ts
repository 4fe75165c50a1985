import type { Claim } from '../claim/claim.ts';
import type { EvidenceBase } from '../claim/evidence-base.ts';
import { type EvidenceClass, independentClasses } from '../claim/evidence-class.ts';
import { perNote } from '../claim/per-note.ts';
import type { YearSpan } from '../date/date-span.ts';
import type { Status } from '../note/note.ts';
import { type RegionId, WORLD } from '../place/region-tree.ts';
import type { Asked, JudgedClaim } from './judge-claim.ts';
import type { KnownMaterials } from './known-materials.ts';
import type { Route, RouteMaterial } from './route.ts';
import { type RuleFinding, rulesFor } from './rules-for.ts';
import { type MaterialStanding, standingOf } from './standing.ts';
import { type Standing, STANDINGS, type Verdict, verdictOf, VERDICTS, worse } from './standing-words.ts';
import { type SubSpan, subSpans } from './sub-spans.ts';
import { type Witness, witnessesFor } from './witness.ts';

/** The part of a question that a route is judged by. */
export interface RouteQuestion {
  readonly region: RegionId;
  readonly span: YearSpan;
  /** The fibre the cloth is of; absent when neither asked nor known. */
  readonly fibre?: string;
  readonly wearer?: string;
  readonly dyedHere: boolean;
}

/** A material of the route and how it stands. */
export interface JudgedMaterial extends MaterialStanding {
  readonly material: RouteMaterial;
  /** Where it was judged: the asked region, or `world` when the dyeing place is unknown. */
  readonly judgedFor: RegionId;
  /** A firm cloth-only claim met place and time, yet nothing speaks for the dyestuff: dyed-here only. */
  readonly onlyAsCloth: boolean;
  readonly subSpans: readonly SubSpan[];
}

/** Why a verdict is held down to `plausible`. */
export type Cap = 'predicted' | 'on-another-fibre' | 'undeclared-deviation';

/** A route's verdict and everything it rests on. */
export interface RouteJudgement {
  readonly route: Route;
  readonly verdict: Verdict;
  readonly standing: Standing;
  /** Ids of the materials at that standing. */
  readonly weakest: readonly string[];
  /** The independent classes of evidence behind the weakest material. */
  readonly classes: readonly EvidenceClass[];
  /** The material these classes speak for: of the weakest, the one with the fewest. */
  readonly classesOf?: string;
  readonly materials: readonly JudgedMaterial[];
  readonly witnesses: readonly Witness[];
  readonly rules: readonly RuleFinding[];
  /** A dye came only on cloth: the rest was judged for the world. */
  readonly dyeingPlaceUnknown: boolean;
  /** Set when the cap lowered the verdict. */
  readonly cappedBy?: Cap;
}

const ON_CLOTH: ReadonlySet<Status> = new Set(['on-cloth', 'cloth-only']);

/**
 * Judges a route at a place and time, worn there or dyed there; a brief judgement leaves the sub-spans out.
 *
 * @param extra.known materials already judged for this very question, kept by the caller over many routes.
 */
export function judgeRoute(
  base: EvidenceBase,
  route: Route,
  question: RouteQuestion,
  extra: {
    readonly cap?: Cap;
    readonly colourWords?: readonly string[];
    readonly brief?: boolean;
    readonly known?: KnownMaterials;
  } = {},
): RouteJudgement {
  const asked: Asked = {
    region: question.region,
    span: question.span,
    fibreLine: question.fibre === undefined ? [] : base.fibreLine(question.fibre),
  };
  const judgeAll = (where: Asked, dyedHere: boolean) => {
    const known = extra.known?.at(where, dyedHere);
    return (material: RouteMaterial): JudgedMaterial => {
      const found = known?.get(material.id);
      if (found) return found.material === material ? found : { ...found, material };
      const judged = judgeMaterial(base, material, where, dyedHere, extra.brief);
      known?.keep(judged);
      return judged;
    };
  };
  const here = route.materials.map(judgeAll(asked, question.dyedHere));
  const dyeingPlaceUnknown =
    !question.dyedHere &&
    here.some(({ material, standing }) => material.role === 'dye' && (standing === 'cloth-only' || standing === 'on-cloth'));
  const anywhere = judgeAll({ ...asked, region: WORLD }, false);
  const materials = dyeingPlaceUnknown ? here.map((one) => (one.material.role === 'dye' ? one : anywhere(one.material))) : here;

  const standing =
    materials.length === 0 ? 'unrecorded' : materials.reduce<Standing>((worst, one) => worse(worst, one.standing), STANDINGS[0]);
  const atWorst = materials.filter((one) => one.standing === standing);
  const witnesses = witnessesFor(base, route.dyes, asked);
  const earned = verdictOf(standing, witnesses.length > 0);
  const verdict = extra.cap && VERDICTS.indexOf(earned) < VERDICTS.indexOf('plausible') ? 'plausible' : earned;
  const concerned = new Set([...route.materials.map(({ id }) => id), ...(extra.colourWords ?? []), ...colourWordsOf(base, route)]);
  return {
    route,
    verdict,
    standing,
    weakest: atWorst.map(({ material }) => material.id),
    ...weakestClasses(atWorst),
    materials,
    witnesses,
    rules: rulesFor(base, concerned, asked, question.wearer),
    dyeingPlaceUnknown,
    ...(verdict !== earned && extra.cap ? { cappedBy: extra.cap } : {}),
  };
}

function judgeMaterial(base: EvidenceBase, material: RouteMaterial, asked: Asked, dyedHere: boolean, brief = false): JudgedMaterial {
  const placed = base.claimsOf(material.id);
  const context = { regions: base.regions, everyday: base.isEveryday(material.id), ...(dyedHere ? { without: ON_CLOTH } : {}) };
  const found = standingOf(placed, asked, context);
  const whole =
    dyedHere && found.standing === 'unrecorded' ? standingOf(placed, asked, { ...context, without: new Set<Status>() }) : undefined;
  const clothClaims = whole?.claims.filter((one) => one.firm && one.placed.claim.status === 'cloth-only') ?? [];
  const onlyAsCloth = clothClaims.length > 0;
  return {
    ...found,
    ...(onlyAsCloth ? { standing: 'absent' as const, carriedBy: clothClaims } : {}),
    onlyAsCloth,
    material,
    judgedFor: asked.region,
    subSpans: brief ? [] : subSpans(placed, asked, context),
  };
}

/** Of the materials at the worst standing the one with the fewest independent classes; what needs no evidence is passed over. */
function weakestClasses(atWorst: readonly JudgedMaterial[]): Pick<RouteJudgement, 'classes' | 'classesOf'> {
  const counted = atWorst
    .filter(({ everyday }) => !everyday)
    .map(({ carriedBy, material }) => ({
      classes: classesOf(carriedBy),
      classesOf: material.id,
    }))
    .sort((a, b) => a.classes.length - b.classes.length || (a.classesOf < b.classesOf ? -1 : 1));
  return counted[0] ?? { classes: [] };
}

/** Over many routes the same claims carry the same material. */
const classesKept = new WeakMap<readonly JudgedClaim[], readonly EvidenceClass[]>();

function classesOf(carriedBy: readonly JudgedClaim[]): readonly EvidenceClass[] {
  const classes = classesKept.get(carriedBy) ?? independentClasses(carriedBy.map(({ placed }): Claim => placed.claim));
  classesKept.set(carriedBy, classes);
  return classes;
}

/** The colour-words one of whose meanings names a dyestuff of the route. */
const colourWordsOf = (base: EvidenceBase, route: Route): readonly string[] => route.dyes.flatMap((dye) => wordsByDye(base, dye));

const wordsByDye = perNote<string>({
  kinds: ['colour-word'],
  derive: (base, { id, record }) =>
    record.kind === 'colour-word'
      ? record.means.flatMap(({ dyes }) => dyes.map(({ text }) => ({ key: base.resolve(text, ['dyestuff']), value: id })))
      : [],
});
