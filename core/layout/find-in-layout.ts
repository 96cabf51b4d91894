import { formatLength } from '../units/format-length.ts';
import { findBareJoints, findWideGaps } from './find-gaps.ts';
import { findMethods } from './find-methods.ts';
import { findUnserved } from './find-unserved.ts';
import type { FoundLayout } from './found-layout.ts';
import type { Bay, Extender, Finding } from './layout-types.ts';
import { numberList } from './number-list.ts';

/**
 * What the layout could not meet or has to tell, by station: rafters without a tail, held tails that clash or could not be
 * done as asked, how tails are held, wide gaps, bare panel joints, bays too narrow for a block.
 * @param found - the eave so far. [in]
 */
export function findInLayout(found: FoundLayout): readonly Finding[] {
  return [
    ...findUnserved(found),
    ...findHeldClashes(found),
    ...findOutOfPlace(found),
    ...findMethods(found),
    ...findWideGaps(found),
    ...findBareJoints(found),
    ...findNarrowBays(found),
  ];
}

function findHeldClashes({ laid: { eaveId, extenders } }: FoundLayout): readonly Finding[] {
  return extenders.flatMap((extender): readonly Finding[] => {
    const { because, clash, centreIn } = extender;
    if ((because !== 'pinned' && because !== 'built') || clash === null) return [];
    const way = because === 'pinned' ? 'Move the pin, or take that away first.' : 'Read the station again.';
    return [
      {
        eaveId,
        stationIn: centreIn,
        topic: 'pinned-clash',
        text: `${heldWords(extender)}, where it clashes. In the way: ${clash}. ${way}`,
        structural: false,
      },
    ];
  });
}

function heldWords({ method, because, side, rafterNumber, centreIn }: Extender): string {
  const at = formatLength(centreIn);
  if (method === 'block-hung')
    return `A hung tail ${because === 'pinned' ? 'is set at' : 'was built at'} ${at}`;
  return because === 'pinned'
    ? `Rafter ${rafterNumber}: the extender is pinned to the ${side}`
    : `Rafter ${rafterNumber}: the extender was built at ${at}`;
}

/** What was asked for and could not be done so. */
function findOutOfPlace({ laid: { eaveId }, placed }: FoundLayout): readonly Finding[] {
  return placed.notes.map(({ stationIn, text }) => ({
    eaveId,
    stationIn,
    topic: 'pin-out-of-place',
    text: `At ${formatLength(stationIn)}: ${text}.`,
    structural: false,
  }));
}

function findNarrowBays({ laid: { eaveId, bays, rafters } }: FoundLayout): readonly Finding[] {
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
