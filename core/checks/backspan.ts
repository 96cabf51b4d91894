import { formatLength } from '../units/format-length.ts';
import { atTail, found, held, noSource, type Answer, type Check, step, wholeEave } from './answer.ts';
import { governingTail } from './governing.ts';
import { atLeast, atMost, plain, toOne } from './measured.ts';

const what = 'Backspan to overhang along the slope against 2 to 1';

/** The piece reaches at least this many times as far back as it sticks out. [-] Common practice, no source. */
const usualRatio = 2;
/** Shorter than this asks for an engineer. [-] Common practice, no source. */
const engineerRatio = 1.5;

/**
 * Backspan to overhang, along the slope. Common practice; the same 2 to 1 stands in the code's table of balcony joists.
 * Worked: 16 in. out and 30 in. back along the slope -> 1.88 to 1.
 */
export const backspan: Check = {
  check: 'backspan',
  group: 'Rules of thumb',
  title: 'Backspan to overhang',
  run: (eave) => {
    // A whole rafter reaches back to the ridge, whatever it sticks out.
    const tails = eave.tails.filter(({ extender }) => extender.method !== 'full-length');
    if (tails.length === 0) return allWhole(eave.tails.length);
    const tail = governingTail(tails, ({ extender }) => -extender.section.backspanRatio);
    const { section } = tail.extender;
    const neededIn = usualRatio * section.overhangAlongIn;
    const clearIn = tail.rafter.clearBackspanIn;
    const blocked = clearIn !== null && clearIn < neededIn;
    const answer = held({
      what,
      at: atTail(tail.extender),
      value: toOne(section.backspanRatio),
      limit: toOne(usualRatio),
      worse: 'less',
      source: [noSource],
      assumptions: [
        'At 2 to 1 the back end is pulled up by a quarter of an even load on the overhang; at 1 to 1 by half.',
      ],
      remedy: blocked
        ? `Only ${formatLength(clearIn)} is clear. An overhang of ${atMost(clearIn / usualRatio / section.slopeFactor)} level, or a backspan of ${atLeast(neededIn)} past what is in the way, would bring it within.`
        : `A backspan of ${atLeast(neededIn)} along the slope would bring it within.`,
      why: [
        step(
          'Backspan to overhang',
          'B / O',
          `${plain(section.backspanIn, 2)} / ${plain(section.overhangAlongIn, 2)}`,
          toOne(section.backspanRatio).text,
          { ref: `section/${eave.layout.eaveId}/${tail.extender.id}` },
        ),
      ],
    });
    return section.backspanRatio < engineerRatio - 1e-9 ? { ...answer, verdict: 'needs-engineer' } : answer;
  },
};

function allWhole(count: number): Answer {
  return found({
    what,
    at: wholeEave,
    source: [noSource],
    why: [step('Tails that are no whole rafters', 'as laid out', `of ${count}`, 'none')],
    verdict: 'within',
    remedy: null,
  });
}
