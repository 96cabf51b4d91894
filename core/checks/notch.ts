import type { NotchRule } from '../eave/structure.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import { atTail, found, held, lacking, type Answer, type Check, source, step, wholeEave } from './answer.ts';
import type { CheckSource, CheckStep } from './check-types.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import type { Tail } from './tail-to-check.ts';
import { governingTail } from './governing.ts';
import { inches, plain } from './measured.ts';

const what = 'Notch over the plate against the rule picked';
/** Least wood left, and longest overhang, of a notch in the cantilevered portion. [in] */
const leastLeftIn = 3.5;
const longestIn = 24;

const sources: Readonly<Record<NotchRule, CheckSource>> = {
  quarter: source('IRC R802.7.1, end notch no deeper than a quarter (seen on secondary pages)', 'secondary'),
  sixth: source('IRC R802.7.1, notch no deeper than a sixth (seen on secondary pages)', 'secondary'),
  remaining: source('IRC R802.7.1.1, cantilevered portion', 'published'),
};

/**
 * The notch over the plate, read three ways (square to the slope, plumb, and what is left above it), against the rule that the
 * person picked. Inspectors differ on whether a seat cut is a notch, and on how its depth is read, so all are shown.
 * Source: IRC R802.7.1 and R802.7.1.1. Worked: 2x6 at 6/12, 3.5 in. seat -> 1.565 in. square, 1.375 is a quarter, 3.935 left.
 */
export const notch: Check = {
  check: 'notch',
  group: 'Rules of thumb',
  title: 'Notch over the plate',
  run: (eave) => {
    const tail = governingTail(eave.tails, ({ extender }) => -extender.section.throatIn);
    const { section } = tail.extender;
    const { bearing } = section;
    if (bearing.kind !== 'notched')
      return found({
        what,
        at: wholeEave,
        value: inches(0),
        source: Object.values(sources),
        why: [step('Notch', 'plumb depth of the tail - height above plate', 'no tail is notched', '0"')],
        verdict: 'within',
        remedy: null,
      });
    const why = readings(eave, tail, bearing.notchDepthIn, bearing.heelCutIn);
    const rule = eave.input.design.notchRule;
    if (rule === null)
      return {
        ...lacking({
          what,
          at: atTail(tail.extender),
          source: Object.values(sources),
          why,
          field: 'design.notchRule',
          enter: 'Ask the building department which rule it holds a seat cut to, and pick it under Checks.',
        }),
        value: inches(bearing.notchDepthIn),
      };
    return heldTo(rule, eave, tail, bearing.notchDepthIn, why);
  },
};

function heldTo(
  rule: NotchRule,
  eave: EaveToCheck,
  tail: Tail,
  notchDepthIn: number,
  why: readonly CheckStep[],
): Answer {
  const { throatIn, overhangLevelIn } = tail.extender.section;
  const told = { at: atTail(tail.extender), source: [sources[rule]], why };
  const assumptions = ['Rules read the notch in different ways; the readings below show them all.'];
  if (rule === 'remaining') {
    const left = held({
      ...told,
      what: 'Wood left above the notch, square to the slope, against 3-1/2 in.',
      value: inches(throatIn),
      limit: inches(leastLeftIn),
      worse: 'less',
      assumptions: [...assumptions, 'The rule holds where the overhang is 24 in. or less.'],
      remedy: `Raise the tail on a packer by ${formatInches(leastLeftIn - throatIn)} square to the slope, or choose a shallower seat: the height above plate decides what is left.`,
    });
    if (overhangLevelIn <= longestIn + 1e-9) return left;
    return {
      ...left,
      verdict: 'needs-engineer',
      remedy: `The rule ends at an overhang of 24"; this one is ${formatLength(overhangLevelIn)}. Shorten it, or ask an engineer.`,
    };
  }
  const share = rule === 'quarter' ? 4 : 6;
  const limitIn = eave.stock.depthIn / share;
  const shallowerIn = (notchDepthIn - limitIn) * tail.extender.section.slopeFactor;
  return held({
    ...told,
    what: `Notch over the plate, square to the slope, against a ${rule} of the depth`,
    value: inches(notchDepthIn),
    limit: inches(limitIn),
    worse: 'more',
    assumptions,
    remedy: `A packer that raises the tail ${formatInches(shallowerIn)} plumb, or stock ${formatInches(shallowerIn / tail.extender.section.slopeFactor)} shallower, would bring it near; then the seat is shorter too.`,
  });
}

function readings(
  eave: EaveToCheck,
  tail: Tail,
  notchDepthIn: number,
  heelCutIn: number,
): readonly CheckStep[] {
  const { depthIn } = eave.stock;
  const { throatIn, plumbDepthIn, overhangLevelIn } = tail.extender.section;
  const ref = { ref: `section/${eave.layout.eaveId}/${tail.extender.id}` };
  return [
    step(
      'Square to the slope',
      'd - height above plate x cos',
      `${plain(depthIn, 3)} - ${plain(throatIn, 3)}`,
      against(notchDepthIn, depthIn),
      {
        ...ref,
        source: sources.quarter,
      },
    ),
    step(
      'Plumb',
      'd x slope factor - height above plate',
      `${plain(plumbDepthIn, 3)} - ${plain(plumbDepthIn - heelCutIn, 3)}`,
      against(heelCutIn, plumbDepthIn),
      {
        ...ref,
        source: sources.sixth,
      },
    ),
    step(
      'Left above the notch',
      'height above plate x cos',
      `overhang ${formatLength(overhangLevelIn)}`,
      `${formatInches(Math.max(0, throatIn))}; 3-1/2" asked with 24" or less`,
      {
        ...ref,
        source: sources.remaining,
      },
    ),
  ];
}

function against(isIn: number, ofIn: number): string {
  return `${formatInches(isIn)}; a quarter ${formatInches(ofIn / 4)}, a sixth ${formatInches(ofIn / 6)}`;
}
