import { nails } from '../takeoff/nails.ts';
import { atTail, held, type Check, source, step } from './answer.ts';
import { fillerAssumptions, fillerOf, fillerThicknessIn } from './filler-words.ts';
import { governingTail } from './governing.ts';
import { inches, plain } from './measured.ts';
import { sisterJointValue } from './nails/sister-joint.ts';
import { nailSource } from './nails/unknown-nail.ts';
import { sisterTails } from './sister-tails.ts';

const what = 'Depth of the sister nails in the old rafter against six diameters';

/**
 * How deep the nails of the sister joint stand in the rafter: less than 6 D gives no value at all, 10 D the whole one.
 * Source: NDS 2018, 12.1.6.4. Worked: 16d common through 1-1/2 in. into 1-1/2 in. -> 1.50 in.; 6 D 0.972, 10 D 1.62.
 */
export const nailPenetration: Check = {
  check: 'nail-penetration',
  group: 'Nails',
  title: 'Depth of the sister nails',
  run: (eave) => {
    const looked = sisterTails(eave, what);
    if ('instead' in looked) return looked.instead;
    const { sisters } = looked;
    const tail = governingTail(sisters.tails, (one) => {
      const { penetrationIn, leastPenetrationIn } = sisters.jointOf(one).value;
      return leastPenetrationIn / penetrationIn;
    });
    const { nail, value, settingRef } = sisters.jointOf(tail);
    const longer = nails.find(
      (one) =>
        one.finish === nail.finish &&
        one.name.includes(nail.name.split(' ')[1] ?? '') &&
        sisterJointValue(eave, tail, one).penetrationFactor > 0,
    );
    return held({
      what,
      at: atTail(tail.extender),
      value: inches(value.penetrationIn),
      limit: inches(value.leastPenetrationIn),
      worse: 'less',
      source: [nailSource],
      assumptions: [
        'Driven square through the extender into the rafter; the point is counted.',
        ...fillerAssumptions(tail),
        ...sisters.leftOut,
        ...(value.penetrationFactor < 1
          ? [
              `Below ten diameters (${plain(value.fullPenetrationIn, 2)} in.) the nail counts in part: ${plain(value.penetrationFactor, 3)}.`,
            ]
          : []),
      ],
      remedy:
        longer === undefined
          ? `${fillerOf(tail) === null ? 'Thicker rafters or bolts' : 'Bolts through all three, or a tail hung on header blocks,'} are wanted here: ask an engineer.`
          : `${longer.name} nails would bring it within (Settings, Fastening).`,
      why: [
        step(
          'Depth in the rafter',
          fillerOf(tail) === null
            ? 'nail length - extender, not more than the rafter'
            : 'nail length - extender - filler, not more than the rafter',
          `${plain(nail.lengthIn, 3)} - ${plain(eave.stock.thicknessIn, 3)}${fillerOf(tail) === null ? '' : ` - ${plain(fillerThicknessIn(tail), 3)}`}, rafter ${plain(tail.rafter.thicknessIn, 3)}`,
          `${plain(value.penetrationIn, 3)} in.`,
          { ref: `rafter/${eave.layout.eaveId}/${tail.rafter.id}/thicknessIn` },
        ),
        step('Least depth', '6 D', `6 x ${nail.diameterIn}`, `${plain(value.leastPenetrationIn, 3)} in.`, {
          source: source('NDS 2018, 12.1.6.4', 'published'),
          ref: settingRef,
        }),
        step(
          'Depth for the whole value',
          '10 D',
          `10 x ${nail.diameterIn}`,
          `${plain(value.fullPenetrationIn, 3)} in.`,
        ),
      ],
    });
  },
};
