import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { Extender, PlacedRafter } from '../layout/layout-types.ts';
import { gableFaces, gableRafterOf, gableTailsOf, insideFaces, type RakeParts } from './rake-parts.ts';
import type { CrossedMember } from './rake-types.ts';

/** A stretch level in the gable, from the eave wall's framing face, outward positive. [in] */
export type LevelStretch = { readonly fromIn: number; readonly toIn: number };

/** What lies across a lookout's way at one place up the slope. */
export type Crossing = {
  /** At the gable, from outside in; none where neither rafter nor tail stands there. */
  readonly crosses: readonly CrossedMember[];
  /** The first member further in; null where none stands there. */
  readonly meets: CrossedMember | null;
};

/** Two faces nearer than this are one. [in] */
const dustIn = 1e-6;

/**
 * What a lookout crosses at the gable, and which member its inner end meets. Over the house these are old rafters and the
 * backspans of new tails beside them; past the wall only tails, and what is left of old ones. A tail on the inner face of
 * the gable rafter is crossed with it; one beside the first rafter inside shortens the lookout by its thickness.
 * @param parts - the rake and its eave.
 * @param stretch - level, that the lookout takes up. [in]
 */
export function crossingAt(parts: RakeParts, stretch: LevelStretch): Crossing {
  const gable = gableRafterOf(parts);
  const gableTails = new Set(gableTailsOf(parts).map(({ id }) => id));
  const crosses: CrossedMember[] = [];
  const inner: CrossedMember[] = [];
  for (const rafter of parts.layout.rafters) {
    if (!overlaps(rafterStretch(parts, rafter), stretch)) continue;
    if (rafter.id === gable?.id) crosses.push(gableMember(parts, rafter));
    else inner.push(movedToReading(parts, rafterMember(parts, rafter)));
  }
  for (const extender of parts.layout.extenders) {
    if (!overlaps(extenderStretch(extender), stretch)) continue;
    (gableTails.has(extender.id) ? crosses : inner).push(extenderMember(parts, extender));
  }
  crosses.sort((a, b) => a.outerInsideIn - b.outerInsideIn);
  const behindIn = Math.max(0, ...crosses.map(({ innerInsideIn }) => innerInsideIn));
  const meets = inner
    .filter(({ outerInsideIn }) => outerInsideIn >= behindIn - dustIn)
    .reduce<CrossedMember | null>(
      (nearest, one) => (nearest === null || one.outerInsideIn < nearest.outerInsideIn ? one : nearest),
      measuredInside(parts, stretch),
    );
  return { crosses, meets };
}

function overlaps(member: LevelStretch, lookout: LevelStretch): boolean {
  return member.fromIn < lookout.toIn - dustIn && member.toIn > lookout.fromIn + dustIn;
}

/** An old rafter runs from the ridge to the wall, or to the end of its old tail; one that is replaced is cut back. */
function rafterStretch({ eave, layout }: RakeParts, rafter: PlacedRafter): LevelStretch {
  const replacement = layout.extenders.find(
    ({ rafterId, method }) => rafterId === rafter.id && method === 'end-replacement',
  );
  const oldTailIn = eave.rafters.find(({ id }) => id === rafter.id)?.oldTailIn ?? 0;
  return {
    fromIn: Number.NEGATIVE_INFINITY,
    toIn: replacement === undefined ? oldTailIn : extenderStretch(replacement).fromIn,
  };
}

function extenderStretch({ section, overhangLevelIn }: Extender): LevelStretch {
  return { fromIn: -section.backspanIn / section.slopeFactor, toIn: overhangLevelIn };
}

function gableMember(parts: RakeParts, gable: PlacedRafter): CrossedMember {
  return {
    label: `rafter ${gable.number}`,
    kind: 'rafter',
    depthIn: parts.survey.endRafterDepthIn ?? gable.depthIn,
    ...gableFaces(parts, gable),
  };
}

function rafterMember(parts: RakeParts, rafter: PlacedRafter): CrossedMember {
  return {
    label: `rafter ${rafter.number}`,
    kind: 'rafter',
    depthIn: rafter.depthIn,
    ...insideFaces(parts, { leftIn: rafter.leftFaceIn, rightIn: rafter.rightFaceIn }),
  };
}

function extenderMember(parts: RakeParts, extender: Extender): CrossedMember {
  return {
    label: extender.mark,
    kind: 'extender',
    depthIn: dressedSection(parts.eaveDesign.extender.section)?.depthIn ?? 0,
    ...insideFaces(parts, extender),
  };
}

/** The first rafter inside stands where it was measured from the gable, if it was. */
function movedToReading(parts: RakeParts, own: CrossedMember): CrossedMember {
  const { firstInsideIn } = parts.survey;
  if (firstInsideIn === null || own.label !== firstInsideLabel(parts)) return own;
  const thicknessIn = own.innerInsideIn - own.outerInsideIn;
  return { ...own, outerInsideIn: firstInsideIn, innerInsideIn: firstInsideIn + thicknessIn };
}

/** A first inside rafter that only the rake's own reading tells of. */
function measuredInside(parts: RakeParts, { fromIn }: LevelStretch): CrossedMember | null {
  const { firstInsideIn } = parts.survey;
  if (firstInsideIn === null || firstInsideLabel(parts) !== undefined || fromIn >= 0) return null;
  return {
    label: 'the first rafter inside',
    kind: 'rafter',
    depthIn: parts.eave.rafterDepthIn,
    outerInsideIn: firstInsideIn,
    innerInsideIn: firstInsideIn + parts.eave.rafterThicknessIn,
  };
}

function firstInsideLabel({ survey, layout }: RakeParts): string | undefined {
  const next = survey.end === 'left' ? layout.rafters[1] : layout.rafters.at(-2);
  return next === undefined ? undefined : `rafter ${next.number}`;
}
