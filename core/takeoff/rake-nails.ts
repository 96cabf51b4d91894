import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { Fastening } from '../pricing/shop-settings.ts';
import type { Lookout, RakeLayout } from '../rake/rake-types.ts';
import { fasciaNailsEach } from './edge-nails.ts';
import type { NailUse } from './nail-use.ts';
import type { CoveredRake, RakeCover } from './rake-cover.ts';
import { rakeSoffitNails } from './rake-soffit.ts';
import { nailsAcross } from './sheathing-strip.ts';
import { counted, rakeLabel } from './takeoff-context.ts';

/** Barge rafter, gable rafter and the rafter under the inner edge: what a rake's sheathing is nailed to up the slope. */
const linesUpSlope = 3;

/**
 * Counts the nails of one rake by use.
 *
 * - Lookouts let in: each member crossed, the member inside, and the barge rafter's face into the end. Butted: the gable's
 *   outer face and the barge for the lookout, the inner face and the member inside for its block.
 * - Ladder: each rung into rail and barge, and the rail through to the gable rafter at each rung.
 * - Barge rafter: its ridge cut, its foot on the eave's fascia, and each joint.
 * - Rake fascia: at each lookout or rung into the barge rafter, and once more for the second board at each joint.
 * - Sheathing in panels: three lines up the slope, and across on each lookout or rung under the strip, once more for the
 *   second panel at each end joint; planks by nails per bearing on the three lines.
 * - Soffit: rake-soffit.ts.
 * Source of the counts: shop settings; where they come from stands there.
 * @param covered - laid out, with what covers and closes it.
 * @param fastening - nail kinds, counts and spacings. [in]
 * @returns uses with a count above zero.
 */
export function rakeNailUses(
  { rake, cover, soffit }: Pick<CoveredRake, 'rake' | 'cover' | 'soffit'>,
  fastening: Fastening,
): readonly NailUse[] {
  return [
    framingNails(rake, fastening),
    bargeNails(rake, fastening),
    fasciaNails(rake, fastening),
    sheathingNails(rake, cover, fastening),
    ...rakeSoffitNails(rake, soffit, fastening),
  ].filter(({ count }) => count > 0);
}

/** Joints of a lookout (and its block) or a rung that are nailed. */
export function jointsOfLookout(kind: RakeLayout['kind'], lookout: Lookout): number {
  if (kind === 'ladder') return 3;
  const inside = lookout.meets === null ? 0 : 1;
  return lookout.block === null ? lookout.crosses.length + inside + 1 : 3 + inside;
}

function framingNails(rake: RakeLayout, fastening: Fastening): NailUse {
  const each = fastening.lookoutNailsPerJoint;
  const joints = rake.lookouts.reduce((sum, lookout) => sum + jointsOfLookout(rake.kind, lookout), 0);
  const what = rake.kind === 'ladder' ? 'rung' : 'lookout';
  return {
    nail: fastening.lookoutNail,
    use: rake.kind === 'ladder' ? 'ladder' : 'lookout',
    phase: 'Framing',
    eaveId: rake.eaveId,
    rakeId: rake.rakeId,
    count: joints * each,
    parts: [
      {
        label: `${rakeLabel(rake)}, ${what}s: ${counted(rake.lookouts.length, what)} with ${counted(joints, 'joint')}, ${each} each`,
        value: counted(joints * each, 'nail'),
        ref: 'setting/fastening.lookoutNailsPerJoint',
      },
    ],
  };
}

function bargeNails(rake: RakeLayout, fastening: Fastening): NailUse {
  const each = fastening.lookoutNailsPerJoint;
  const joints = 2 + Math.max(0, rake.barge.length - 1);
  return {
    nail: fastening.lookoutNail,
    use: 'barge',
    phase: 'Framing',
    eaveId: rake.eaveId,
    rakeId: rake.rakeId,
    count: joints * each,
    parts: [
      {
        label: `${rakeLabel(rake)}, barge rafter: ridge, foot${joints > 2 ? ` and ${counted(joints - 2, 'joint')}` : ''}, ${each} each`,
        value: counted(joints * each, 'nail'),
        ref: 'setting/fastening.lookoutNailsPerJoint',
      },
    ],
  };
}

function fasciaNails(rake: RakeLayout, fastening: Fastening): NailUse {
  const depthIn = dressedSection(rake.fasciaStock?.section ?? '')?.depthIn ?? 0;
  const { each, setting } = fasciaNailsEach(depthIn, fastening);
  const joints = Math.max(0, rake.fascia.length - 1);
  const count = rake.fascia.length === 0 ? 0 : (rake.lookouts.length + joints) * each;
  return {
    nail: fastening.fasciaNail,
    use: 'rake-fascia',
    phase: 'Fascia and trim',
    eaveId: rake.eaveId,
    rakeId: rake.rakeId,
    count,
    parts: [
      {
        label: `${rakeLabel(rake)}, fascia: ${counted(rake.lookouts.length, 'place')} and ${counted(joints, 'joint')}, ${each} each`,
        value: counted(count, 'nail'),
        ref: `setting/fastening.${setting}`,
      },
    ],
  };
}

function sheathingNails(rake: RakeLayout, cover: RakeCover, fastening: Fastening): NailUse {
  const counts = sheathingCounts(rake, cover, fastening);
  return {
    nail: fastening.sheathingNail,
    use: 'rake-sheathing',
    phase: 'Sheathing and edge',
    eaveId: rake.eaveId,
    rakeId: rake.rakeId,
    count: counts.count,
    parts: [
      {
        label: `${rakeLabel(rake)}, sheathing: ${counts.words}`,
        value: counted(counts.count, 'nail'),
        ref: `setting/fastening.${cover.kind === 'planks' ? 'plankNailsPerBearing' : 'sheathingSpacingIn'}`,
      },
    ],
  };
}

function sheathingCounts(
  rake: RakeLayout,
  cover: RakeCover,
  fastening: Fastening,
): { readonly count: number; readonly words: string } {
  const { strip } = rake;
  if (strip === null || cover.kind === 'none') return { count: 0, words: 'none' };
  if (cover.kind === 'planks') {
    const each = fastening.plankNailsPerBearing;
    return {
      count: cover.courses * linesUpSlope * each,
      words: `${counted(cover.courses, 'course')} on ${linesUpSlope} bearings, ${each} each`,
    };
  }
  const spacingIn = fastening.sheathingSpacingIn;
  const ends = [strip.fromIn, ...strip.jointsIn.filter((at) => at > strip.fromIn + 1), strip.toIn];
  const upSlope = ends
    .slice(1)
    .reduce((sum, end, index) => sum + linesUpSlope * nailsAcross(end - (ends[index] ?? end), spacingIn), 0);
  const under = rake.lookouts.filter(
    ({ alongIn }) => alongIn >= strip.fromIn && alongIn <= strip.toIn,
  ).length;
  const across = Math.max(0, nailsAcross(strip.widthIn, spacingIn) - linesUpSlope);
  const crossings = under + Math.max(0, ends.length - 2);
  return {
    count: upSlope + crossings * across,
    words: `${upSlope} on ${linesUpSlope} lines up the slope, and across ${counted(crossings, 'time')} ${across} between them`,
  };
}
