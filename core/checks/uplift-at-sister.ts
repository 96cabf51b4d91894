import { atTail, found, held, type Check, source, step } from './answer.ts';
import type { Tail } from './tail-to-check.ts';
import { governingTail } from './governing.ts';
import { upliftOn, windDuration } from './loads/uplift.ts';
import { plain, pounds } from './measured.ts';
import { fillerAssumptions, tooShort } from './filler-words.ts';
import { elasticCentre, type GroupForces } from './nails/nail-group.ts';
import { adjustedNail } from './nails/sister-joint.ts';
import { nailSource } from './nails/unknown-nail.ts';
import { nailSteps } from './sister-nails.ts';
import { sisterTails } from './sister-tails.ts';
import { noUplift, upliftAssumptions, upliftSource, upliftSteps } from './uplift-steps.ts';

const what = 'Worst sister nail under wind uplift, the plate holding nothing, against one nail';

/**
 * The sister joint alone under uplift: force Q through the nails' centroid and moment Q (e + c) about it, by the elastic
 * centre method. Source: NDS 2018, chapters 11 and 12; statics of nail groups.
 * Worked: four nails at the corners of a 6 x 8 in. oblong, 100 lb at 10 in. from the centroid -> 25 lb and 50 lb as arrows.
 */
export const upliftAtSister: Check = {
  check: 'uplift-sister',
  group: 'Nails',
  title: 'Wind uplift on the sister nails',
  run: (eave) => {
    const { upliftPsf } = eave.loads;
    if (upliftPsf === null) return noUplift(what);
    const looked = sisterTails(eave, what);
    if ('instead' in looked) return looked.instead;
    const { sisters } = looked;
    const wet = eave.design.structure.wetService;
    const limitOf = (tail: Tail) => adjustedNail(sisters.jointOf(tail).value.lb, windDuration, wet);
    const forcesOf = (tail: Tail) => groupUnder(tail, upliftOn(eave, tail, upliftPsf));
    const tail = governingTail(sisters.tails, (one) => forcesOf(one).worstLb / limitOf(one));
    const uplift = upliftOn(eave, tail, upliftPsf);
    const forces = forcesOf(tail);
    const limit = limitOf(tail);
    const told = {
      what,
      at: atTail(tail.extender),
      value: pounds(forces.worstLb),
      limit: pounds(limit),
      source: [nailSource, upliftSource],
      assumptions: [
        ...eave.taken.extender,
        ...eave.taken.oldWood,
        'What ties the tail to the plate is left out here, so this is the harder of two readings.',
        ...fillerAssumptions(tail),
        ...sisters.leftOut,
        ...upliftAssumptions,
      ],
      why: [
        ...upliftSteps(eave, tail, uplift),
        step(
          "Moment about the nails' centroid",
          'Q (e + c)',
          `${plain(uplift.netLb, 1)} x (${plain(uplift.armOutIn, 2)} + ${plain(centroidAlongIn(tail), 2)})`,
          `${plain(uplift.netLb * (uplift.armOutIn + centroidAlongIn(tail)))} lb-in.`,
        ),
        step(
          'Worst nail',
          'Q / n and M r / sum r^2, added as arrows',
          `${plain(uplift.netLb, 1)} / ${tail.nails.length}, sum r^2 ${plain(forces.polar, 1)} sq in.`,
          pounds(forces.worstLb).text,
          { source: source('Elastic centre method: statics of nail groups', 'published') },
        ),
        ...nailSteps(eave, sisters.jointOf(tail), windDuration, limit),
      ],
    };
    if (limit === 0)
      return found({
        ...told,
        verdict: 'beyond',
        remedy: tooShort(tail),
      });
    return held({
      ...told,
      worse: 'more',
      remedy:
        'A metal tie at the plate of each tail takes this load off the nails; closer nails or a longer backspan help too. Hold the tie against the pull at the plate.',
    });
  },
};

/** Level distance of the nails' centroid inside the wall, taken along the slope. [in] */
function centroidAlongIn({ unit, shape }: Tail): number {
  return -unit.centroid[0] * Math.hypot(1, shape.slope);
}

function groupUnder(tail: Tail, { netLb, armOutIn }: ReturnType<typeof upliftOn>): GroupForces {
  const factor = Math.hypot(1, tail.shape.slope);
  return elasticCentre(tail.nails, {
    forceX: (netLb * tail.shape.slope) / factor,
    forceY: netLb / factor,
    moment: netLb * (armOutIn + centroidAlongIn(tail)),
  });
}
