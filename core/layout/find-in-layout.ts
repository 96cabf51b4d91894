import { formatLength } from '../units/format-length.ts';
import type { Bay, EaveLayout, Extender, Finding, Unplaced } from './layout-types.ts';
import { numberList } from './number-list.ts';

/** Tails further apart than this ask for a look at what the sheathing and fascia may span. [in] */
const wideGapIn = 24;

type Laid = Pick<EaveLayout, 'eaveId' | 'wallLengthIn' | 'rafters' | 'extenders' | 'unplaced' | 'bays'>;

/**
 * What the layout could not meet, by station: rafters with no side free, pins that clash, wide gaps between tails, bays
 * too narrow for a block.
 * @param laid - the eave so far. [in]
 */
export function findInLayout(laid: Laid): readonly Finding[] {
  return [
    ...findNoSideFree(laid),
    ...findPinnedClashes(laid),
    ...findWideGaps(laid),
    ...findNarrowBays(laid),
  ];
}

function findNoSideFree({ eaveId, unplaced, extenders }: Laid): readonly Finding[] {
  const stuck = unplaced.filter(({ reason }) => reason === 'no-side-free');
  const findings = stuck.map(
    (one): Finding => ({
      eaveId,
      stationIn: one.stationIn,
      topic: 'no-side-free',
      text: `Rafter ${one.rafterNumber} at ${formatLength(one.stationIn)} has no side free for an extender. ${sides(one)}`,
      structural: false,
    }),
  );
  if (extenders.length > 0) return findings;
  const text =
    'No extender stands on this eave, so it gets no fascia. Free a side of some rafters, or take pins off.';
  return [...findings, { eaveId, stationIn: null, topic: 'unplaced', text, structural: false }];
}

function sides({ left, right }: Unplaced): string {
  return left === right ? `In the way on both sides: ${left}.` : `Left: ${left}. Right: ${right}.`;
}

function findPinnedClashes({ eaveId, extenders }: Laid): readonly Finding[] {
  return extenders.flatMap((extender): readonly Finding[] =>
    extender.because === 'pinned' && extender.clash !== null
      ? [
          {
            eaveId,
            stationIn: extender.centreIn,
            topic: 'pinned-clash',
            text: `Rafter ${extender.rafterNumber}: the extender is pinned to the ${extender.side}, where it clashes. In the way: ${extender.clash}. Move the pin, or take that away first.`,
            structural: false,
          },
        ]
      : [],
  );
}

function findWideGaps({ eaveId, extenders }: Laid): readonly Finding[] {
  const gaps = extenders.slice(1).flatMap((right, index) => {
    const left = extenders[index];
    if (left === undefined || right.centreIn - left.centreIn <= wideGapIn + 1 / 32) return [];
    return [{ left, right, gapIn: right.centreIn - left.centreIn }];
  });
  const [only, second] = gaps;
  if (only === undefined) return [];
  const least = formatLength(gaps.reduce((gap, { gapIn }) => Math.min(gap, gapIn), Number.POSITIVE_INFINITY));
  const most = formatLength(gaps.reduce((gap, { gapIn }) => Math.max(gap, gapIn), 0));
  const width = least === most ? least : `${least} to ${most}`;
  const where = gaps.map(({ left, right }) => between(left, right)).join(', ');
  return [
    {
      eaveId,
      stationIn: second === undefined ? (only.left.centreIn + only.right.centreIn) / 2 : null,
      topic: 'wide-gap',
      text: `The tails beside rafters ${where} stand ${width} apart, centre to centre. Over ${wideGapIn}": look up what the sheathing and the fascia may span.`,
      structural: true,
    },
  ];
}

function between(left: Extender, right: Extender): string {
  return `${left.rafterNumber} and ${right.rafterNumber}`;
}

function findNarrowBays({ eaveId, bays, rafters }: Laid): readonly Finding[] {
  const narrow = bays.filter(({ block }) => block === 'too-narrow');
  const [only, second] = narrow;
  if (only === undefined) return [];
  const numberOf = new Map(rafters.map(({ id, number }) => [id, number]));
  const rafterNumbers = [...new Set(narrow.map((bay) => numberOf.get(bay.leftRafterId) ?? 0))];
  return [
    {
      eaveId,
      stationIn: second === undefined ? middleOf(only) : null,
      topic: 'bay-too-narrow',
      text: `Right of ${rafterNumbers.length > 1 ? 'rafters' : 'rafter'} ${numberList(rafterNumbers)}: ${second === undefined ? 'a bay is' : 'bays are'} narrower than 1-1/2" and ${second === undefined ? 'gets' : 'get'} no block. Close the gap another way.`,
      structural: false,
    },
  ];
}

function middleOf({ fromIn, toIn }: Bay): number {
  return (fromIn + toIn) / 2;
}
