import { formatLength } from '../units/format-length.ts';
import { found, held, noSource, type Check, step, wholeEave } from './answer.ts';
import { inches } from './measured.ts';

const what = "Joints of the fascia against the middle of a tail's edge";

/**
 * Every joint of the fascia lands on a tail: the distance of a joint from the nearest tail's centre against half the tail's
 * thickness. Common practice, no source.
 */
export const fasciaJoints: Check = {
  check: 'fascia-joints',
  group: 'Rules of thumb',
  title: 'Fascia joints on tails',
  run: (eave) => {
    const joints = eave.layout.fascia.slice(1).map(({ fromIn }) => ({
      fromIn,
      offIn: eave.tails.reduce(
        (least, { extender }) => Math.min(least, Math.abs(extender.centreIn - fromIn)),
        Number.POSITIVE_INFINITY,
      ),
    }));
    const [first, ...others] = joints;
    if (first === undefined)
      return found({
        what,
        at: wholeEave,
        source: [noSource],
        why: [step('Fascia boards', 'as laid out', `${eave.layout.fascia.length}`, 'no joint')],
        verdict: 'within',
        remedy: null,
      });
    const worst = others.reduce((a, b) => (b.offIn > a.offIn ? b : a), first);
    return held({
      what,
      at: { where: `Joint at ${formatLength(worst.fromIn)}`, stationIn: worst.fromIn },
      value: inches(worst.offIn),
      limit: inches(eave.stock.thicknessIn / 2),
      worse: 'more',
      source: [noSource],
      remedy: 'Set a tail or a nailing block behind the joint, or choose longer fascia boards.',
      why: joints.map(({ fromIn, offIn }) =>
        step(
          `Joint at ${formatLength(fromIn)}`,
          "to the nearest tail's centre",
          'as laid out',
          inches(offIn).text,
        ),
      ),
    });
  },
};
