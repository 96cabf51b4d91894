import { assertNever } from '../result.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import { nearestRoomIn, roomsWithin, whyNotHung, type FoundLayout } from './found-layout.ts';
import type { Extender, Finding } from './layout-types.ts';
import { leastEndBearingIn } from '../takeoff/panel-layout.ts';
import { gapToleranceIn, nailingRoomIn, placeAbout } from './solver/wall.ts';

/** More of a kind than this are told in one sentence. */
const toldSingly = 3;

type Gap = { readonly left: Extender; readonly right: Extender; readonly gapIn: number };

/**
 * Tells where neighbouring tails stand further apart than the largest gap: by station, what is exceeded, and what would
 * have closed it.
 * @param found - the eave. [in]
 */
export function findWideGaps(found: FoundLayout): readonly Finding[] {
  const { eaveId, extenders, largestGap } = found.laid;
  const gaps = extenders.slice(1).flatMap((right, index): readonly Gap[] => {
    const left = extenders[index];
    if (left === undefined) return [];
    const gapIn = right.centreIn - left.centreIn;
    return gapIn > largestGap.gapIn + gapToleranceIn ? [{ left, right, gapIn }] : [];
  });
  const finding = (stationIn: number | null, text: string): Finding => ({
    eaveId,
    stationIn,
    topic: 'wide-gap',
    text,
    structural: true,
  });
  if (gaps.length <= toldSingly)
    return gaps.map((gap) =>
      finding(
        (gap.left.centreIn + gap.right.centreIn) / 2,
        `The tails at ${formatLength(gap.left.centreIn)} and ${formatLength(gap.right.centreIn)} stand ${formatLength(gap.gapIn)} apart, centre to centre: ${limitWords(found)}. ${closing(gap, found)}`,
      ),
    );
  const widths = gaps.map(({ gapIn }) => gapIn);
  const [least, most] = [Math.min(...widths), Math.max(...widths)].map(formatLength);
  const where = gaps.map(
    ({ left, right }) => `${formatLength(left.centreIn)} and ${formatLength(right.centreIn)}`,
  );
  return [
    finding(
      null,
      `Tails stand ${least === most ? least : `${least} to ${most}`} apart, centre to centre, in ${gaps.length} places: ${limitWords(found)}. Between ${where.join('; ')}. ${closing(gaps[0], found)}`,
    ),
  ];
}

function limitWords({ laid: { largestGap } }: FoundLayout): string {
  const figure = formatLength(largestGap.gapIn);
  switch (largestGap.by) {
    case 'stated':
      return `no gap over ${figure} is asked for`;
    case 'panels':
      return `the sheathing panels may span ${figure}`;
    case 'planks':
      return `sheathing planks may span ${figure}`;
    case 'fascia':
      return `the fascia may span ${figure}`;
    case 'soffit':
      return `the soffit may span ${figure}`;
    default:
      return assertNever(largestGap.by);
  }
}

/** What would have closed a gap. */
function closing(gap: Gap | undefined, found: FoundLayout): string {
  if (gap === undefined) return '';
  const middleIn = (gap.left.centreIn + gap.right.centreIn) / 2;
  const apartIn = found.wall.thicknessIn + nailingRoomIn;
  const rooms = roomsWithin(found, gap.left.centreIn + apartIn, gap.right.centreIn - apartIn);
  const stationIn = nearestRoomIn(rooms, middleIn);
  if (stationIn === undefined)
    return 'No bay between has room for a hung tail: free one, or choose what may span more.';
  const room = rooms.find(({ fromIn, toIn }) => stationIn >= fromIn && stationIn <= toIn);
  const why = room === undefined ? undefined : whyNotHung(found, room.bay);
  const closes =
    Math.max(stationIn - gap.left.centreIn, gap.right.centreIn - stationIn) <=
    found.laid.largestGap.gapIn + gapToleranceIn;
  const tail = `a tail hung at ${formatLength(stationIn)} would ${closes ? 'close' : 'narrow'} it`;
  return why === undefined ? `Further in, ${tail}.` : `To do so, ${why}: ${tail}.`;
}

/**
 * Tells which joints between panels have no tail under them, and where a whole panel has to be cut back: by station, where
 * a tail would carry the joint, and what keeps it from there.
 * @param found - the eave. [in]
 */
export function findBareJoints(found: FoundLayout): readonly Finding[] {
  const { eaveId, panelJoints } = found.laid;
  const bareIn = panelJoints
    .filter(({ extenderId }) => extenderId === null)
    .map(({ stationIn }) => stationIn);
  const cutBackIn = found.placed.prepared.wall.cutBackIn.filter((stationIn) => !bareIn.includes(stationIn));
  const told = (
    jointsIn: readonly number[],
    one: string,
    more: string,
    structural: boolean,
  ): readonly Finding[] => {
    const finding = (stationIn: number | null, text: string): Finding => ({
      eaveId,
      stationIn,
      topic: 'panel-joint',
      text,
      structural,
    });
    if (jointsIn.length <= toldSingly)
      return jointsIn.map((jointIn) =>
        finding(jointIn, `The panel joint at ${formatLength(jointIn)} ${one} ${carrying(jointIn, found)}`),
      );
    const where = jointsIn.map(formatLength).join(', ');
    return [
      finding(
        null,
        `${jointsIn.length} panel joints ${more}: ${where}. ${carrying(jointsIn[0] ?? 0, found)}`,
      ),
    ];
  };
  return [
    ...told(bareIn, 'has no tail under it.', 'have no tail under them', true),
    ...told(
      cutBackIn,
      'finds no tail, so the panel is cut back.',
      'find no tail, so those panels are cut back',
      false,
    ),
  ];
}

/** Where a tail would carry a joint, and what keeps it from there. */
function carrying(jointIn: number, found: FoundLayout): string {
  const { jointToleranceIn: offIn } = found.wall;
  if (offIn < 0)
    return `The extenders are too thin for two panels to bear on by ${formatInches(leastEndBearingIn)} each: nail a cleat beside them.`;
  const would = `A tail at ${formatLength(jointIn - offIn)} to ${formatLength(jointIn + offIn)} would carry it`;
  const [room] = roomsWithin(found, jointIn - offIn, jointIn + offIn);
  if (room === undefined) return `${would}, but ${inTheWayOf(jointIn, found)}.`;
  const why = whyNotHung(found, room.bay);
  return why === undefined ? `${would}.` : `${would}: ${why}.`;
}

function inTheWayOf(jointIn: number, { placed, wall }: FoundLayout): string {
  const first = placed.prepared.standing(placeAbout(jointIn, wall))[0];
  return first === undefined
    ? 'no rafters on both sides can carry one there'
    : `${first.label} is in the way`;
}
