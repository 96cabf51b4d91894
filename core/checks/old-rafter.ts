import { atTail, found, type Check, source, step } from './answer.ts';
import { governingCase } from './governing.ts';
import { loadSteps } from './load-steps.ts';
import { plain, pounds } from './measured.ts';
import { noTailHeld, reckonedHolds, tailsHeldBy } from './tails-held.ts';
import type { Tail } from './tail-to-check.ts';

const what = 'What the old rafter and wall then carry, which is not judged here';

/**
 * What the new tail hands on to the old rafter and the wall, for whoever judges them: it is not judged here.
 * Worked: 640 lb-in. at an arm of 20 in. -> 32 lb that pull the rafter up where the nails are.
 */
export const oldRafter: Check = {
  check: 'old-rafter',
  group: 'Lumber',
  title: 'Old rafter and wall',
  run: (eave) => {
    const reckoned = tailsHeldBy(eave, reckonedHolds);
    if (reckoned.tails.length === 0) return noTailHeld(what, eave, reckoned);
    const governing = governingCase(reckoned.tails, (_, { momentLbIn }) => momentLbIn);
    const { tail, forces } = governing;
    return found({
      what,
      at: atTail(tail.extender),
      value: pounds(forces.wallLb),
      source: [source('Statics of the tail', 'published')],
      assumptions: [
        'Not covered: the old rafter (its size, notches, rot, splices and collar ties), the plate, the wall and what is under it, trusses, earthquake, fire and moisture.',
        'Not covered: rakes and lookouts.',
        ...reckoned.leftOut,
        'Not covered: drifted, sliding and unbalanced snow, ponding, and trees.',
      ],
      verdict: 'not-covered',
      remedy: `Give an engineer these figures: the plate takes ${pounds(forces.wallLb).text}, and ${lifts(tail)} by ${pounds(forces.holdDownLb).text} some ${plain(Math.max(0, tail.unit.armIn), 1)} in. inside the wall.`,
      why: [
        ...loadSteps(eave, governing),
        step(
          'Lift on the old rafter',
          'F = M / arm of the nails, the block or the ridge',
          `${plain(forces.momentLbIn)} / ${plain(Math.max(0, tail.unit.armIn), 2)}`,
          pounds(forces.holdDownLb).text,
        ),
        step(
          'Load on the plate',
          'load on the overhang + lift',
          `${plain(forces.loadLb, 1)} + ${plain(forces.holdDownLb, 1)}`,
          pounds(forces.wallLb).text,
        ),
      ],
    });
  },
};

function lifts({ backHold }: Tail): string {
  if (backHold === 'blocks') return 'the header block lifts the rafters on both sides';
  return backHold === 'ridge' ? 'the whole rafter lifts the ridge' : 'the nails lift the old rafter';
}
