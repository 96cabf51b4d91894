import { findNail, type Nail } from '../takeoff/nails.ts';
import { atTail, held, type Check, source, step } from './answer.ts';
import { speciesGroups } from './data/species.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import type { Tail } from './tail-to-check.ts';
import { governingTail } from './governing.ts';
import { upliftOn, windDuration } from './loads/uplift.ts';
import { plain, pounds } from './measured.ts';
import { toenailPenetrationIn, toenailWithdrawalFactor, withdrawalPerInch } from './nails/toenail.ts';
import { nailSource, unknownNail } from './nails/unknown-nail.ts';
import { noTailHeld, reckonedHolds, tailsHeldBy } from './tails-held.ts';
import { noUplift, upliftAssumptions, upliftSource, upliftSteps } from './uplift-steps.ts';

const what = 'Pull-out at the plate under wind uplift against toenails in withdrawal, or the tie';

/**
 * Uplift that the plate has to hold: Q (1 + e / arm), by moments about the nails' resultant, against the toenails drawn
 * straight out (W p n C_D 0.67) or a metal tie, whichever holds more; the two are not added, as they give differently.
 * Source: NDS 2018, Eq. 12.2-3 and 12.5.4.1. Worked: 100 lb, e 9 in., arm 30 in. -> 130 lb.
 */
export const upliftAtPlate: Check = {
  check: 'uplift-plate',
  group: 'Nails',
  title: 'Wind uplift at the plate',
  run: (eave) => {
    const { upliftPsf } = eave.loads;
    if (upliftPsf === null) return noUplift(what);
    const { plateNail } = eave.input.settings.fastening;
    const reckoned = tailsHeldBy(eave, reckonedHolds);
    if (reckoned.tails.length === 0) return noTailHeld(what, eave, reckoned);
    const nail = findNail(plateNail);
    if (nail === undefined) return unknownNail(what, plateNail);
    const pullOf = (tail: Tail) => {
      const { netLb, armOutIn, armInIn } = upliftOn(eave, tail, upliftPsf);
      return netLb * (1 + (armInIn > 0 ? armOutIn / armInIn : 0));
    };
    const each = withdrawalOf(eave, nail);
    const tieLb = eave.design.structure.plateTieUpliftLb;
    const holdsOf = (one: Tail) => Math.max(each * toenailsOf(eave, one), tieLb);
    const tail = governingTail(reckoned.tails, (one) => pullOf(one) / holdsOf(one));
    const uplift = upliftOn(eave, tail, upliftPsf);
    const pullLb = pullOf(tail);
    const toenails = toenailsOf(eave, tail);
    const toenailsLb = each * toenails;
    const needed = each > 0 ? Math.ceil(pullLb / each) : 0;
    return held({
      what,
      at: atTail(tail.extender),
      value: pounds(pullLb),
      limit: pounds(holdsOf(tail)),
      worse: 'more',
      source: [nailSource, upliftSource],
      assumptions: [
        ...eave.taken.oldWood,
        'Up to 200 lb of net uplift a rafter, the code lets its nailing table do under conditions of its own (IRC R802.11, from memory).',
        'Toenails hold in withdrawal from the plate alone; toenails and tie are not added together.',
        ...reckoned.leftOut,
        ...upliftAssumptions,
      ],
      remedy: `A metal tie at each tail that its maker rates at ${pounds(Math.ceil(pullLb / 5) * 5).text} or more${
        needed > toenails && needed <= 6 ? `, or ${needed} toenails,` : ''
      } would bring it within. Enter the tie's uplift under Structure in Design.`,
      why: [
        ...upliftSteps(eave, tail, uplift),
        step(
          'Pull at the plate',
          "Q (1 + e / arm), about the nails' resultant",
          `${plain(uplift.netLb, 1)} x (1 + ${plain(uplift.armOutIn, 2)} / ${plain(uplift.armInIn, 2)})`,
          pounds(pullLb).text,
        ),
        step(
          `One ${nail.name} toenail in withdrawal`,
          'W p C_D C_tn, W = 1380 G^2.5 D',
          `${plain(withdrawalPerInch(speciesGroups[eave.oldSpecies].gravity, nail.diameterIn), 1)} x ${plain(toenailPenetrationIn(nail), 3)} x ${windDuration} x ${toenailWithdrawalFactor}`,
          pounds(each).text,
          {
            source: source('NDS 2018, Eq. 12.2-3 and 12.5.4.1', 'published'),
            ref: 'setting/fastening.plateNail',
          },
        ),
        step(
          'Toenails of one tail',
          'number x one',
          `${toenails} x ${plain(each, 1)}`,
          pounds(toenailsLb).text,
          {
            ref: `setting/fastening.${tail.backHold === 'blocks' ? 'plateToenailsBothFaces' : 'plateToenailsOneFace'}`,
          },
        ),
        step('Tie', "maker's value, as entered", plain(tieLb), pounds(tieLb).text, {
          ref: `design/${eave.layout.eaveId}/structure.plateTieUpliftLb`,
        }),
      ],
    });
  },
};

/** A hung tail stands free on both faces; the others have one in reach. */
function toenailsOf({ input }: EaveToCheck, { backHold }: Tail): number {
  const { plateToenailsOneFace, plateToenailsBothFaces } = input.settings.fastening;
  return backHold === 'blocks' ? plateToenailsBothFaces : plateToenailsOneFace;
}

function withdrawalOf(eave: EaveToCheck, nail: Nail): number {
  const perInch = withdrawalPerInch(speciesGroups[eave.oldSpecies].gravity, nail.diameterIn);
  return perInch * toenailPenetrationIn(nail) * windDuration * toenailWithdrawalFactor;
}
