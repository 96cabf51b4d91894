import { formatLength } from '../units/format-length.ts';
import { noSource, source, step } from './answer.ts';
import type { CheckStep } from './check-types.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import { nearerShare, type HungDemand } from './hung-demand.ts';
import { loadSteps } from './load-steps.ts';
import { upliftOn } from './loads/uplift.ts';
import { count, plain, pounds } from './measured.ts';
import { endGrainFactor } from './nails/hung-joint.ts';
import { wetLateralFactor } from './nails/sister-joint.ts';
import type { Nail } from '../takeoff/nails.ts';
import { upliftSteps } from './uplift-steps.ts';

/** How the load on a hung tail comes to its nails, and what they take. */
export function hungSteps(
  eave: EaveToCheck,
  demand: HungDemand,
  nail: Nail,
  nails: number,
): readonly CheckStep[] {
  const { tail, place, reactionLb, value, nailLb, duration } = demand;
  const { eaveId } = eave.layout;
  const into = place === 'tail' ? 'the tail' : 'the block';
  return [
    ...reactionSteps(eave, demand),
    step(
      'Handed to the nearer end of the block',
      'the longer part over the whole',
      `${plain(reactionLb, 1)} x ${plain(nearerShare(tail), 3)}; span ${formatLength(tail.block.rightIn - tail.block.leftIn)}`,
      pounds(reactionLb * nearerShare(tail)).text,
      { ref: tail.shapeRef },
    ),
    step(
      'Nails into the tail, and as many at each end',
      'as set: to 2x4, and deeper',
      eave.stock.section,
      count(nails, 'nail').text,
      { source: noSource, ref: `design/${eaveId}/extender` },
    ),
    step(
      `One ${nail.name} nail into ${into}, six yield modes`,
      'least of I_m, I_s, II, III_m, III_s, IV; depth p / 10 D, at most 1',
      `${pounds(value.tabulated.lb).text}, mode ${value.tabulated.governing}; ${plain(value.penetrationIn, 3)} / ${plain(value.fullPenetrationIn, 3)}`,
      pounds(value.lb).text,
      {
        source: source('NDS 2018, Table 12.3.1A and 12.1.6.4', 'published'),
        ref: 'setting/fastening.headerNail',
      },
    ),
    step(
      'Adjusted value of one nail in end grain',
      "Z' = Z C_D C_M C_eg",
      `${plain(value.lb, 1)} x ${duration} x ${eave.design.structure.wetService ? wetLateralFactor : 1} x ${endGrainFactor}`,
      pounds(nailLb).text,
      { source: source('NDS 2018, Tables 11.3.1, 2.3.2 and 11.3.3; end grain factor', 'published') },
    ),
    step(
      `What the nails into ${into} take`,
      'number x one',
      `${nails} x ${plain(nailLb, 1)}`,
      pounds(nails * nailLb).text,
    ),
  ];
}

function reactionSteps(eave: EaveToCheck, { tail, forces, reactionLb }: HungDemand): readonly CheckStep[] {
  const { shape } = tail;
  if (forces === null) {
    const uplift = upliftOn(eave, tail, eave.loads.upliftPsf ?? 0);
    return [
      ...upliftSteps(eave, tail, uplift),
      step(
        'The block holds the back end up',
        'Q e / backspan, along the slope',
        `${plain(uplift.netLb, 1)} x ${plain(uplift.armOutIn, 2)} / ${plain(shape.backspanIn, 2)}`,
        pounds(reactionLb).text,
      ),
    ];
  }
  return [
    ...loadSteps(eave, { tail, forces }),
    step(
      'The block holds the back end down',
      'F = M / backspan, level',
      `${plain(forces.momentLbIn)} / ${plain(tail.unit.armIn, 2)}`,
      pounds(reactionLb).text,
    ),
  ];
}
