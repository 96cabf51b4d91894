import type { Method } from '../../eave/design-document.ts';
import { assertNever } from '../../result.ts';
import type { Side } from '../../survey/survey-document.ts';
import { formatLength } from '../../units/format-length.ts';
import type { Interval } from '../in-the-way.ts';
import { rafterAt, type RafterSide } from './beside-rafter.ts';
import { placeAbout, type Wall } from './wall.ts';

/** A tail that stands where the person put it, or where it was built. */
export type HeldTail = Interval & {
  readonly id: string;
  readonly method: Method;
  readonly side: Side;
  /** Index of the rafter it is fastened to; of a hung tail the one on its left, -1 where there is none. */
  readonly rafter: number;
  readonly fillerIn: number | null;
  readonly by: 'pinned' | 'built';
  /** What could not be done as it was asked for, in a sentence; null where all could. */
  readonly note: string | null;
};

type Pin = Wall['design']['pins'][number];

/** Ids that the program gives to the tails that it hangs itself. */
export const ownIdStart = 'gap-';

/** What a tape held along a wall, and a face read by hand, can be off by. [in] Common practice, no source. */
const builtToleranceIn = 0.25;

/**
 * The tails of rafters whose place is fixed: built at a station, or pinned with a method that has one place only.
 * @param index - of the rafter.
 * @param sides - left and right of it.
 * @param wall - the wall. [in]
 * @returns undefined where the solver may still choose.
 */
export function heldBesideRafter(
  index: number,
  sides: Readonly<Record<Side, RafterSide>>,
  wall: Wall,
): HeldTail | undefined {
  const { id } = rafterAt(index, wall);
  const pin = wall.design.pins.find(({ rafterId }) => rafterId === id);
  const stationIn = builtStation(id, wall);
  if (stationIn !== null) return builtTail(index, stationIn, sides, pin, wall);
  if (pin === undefined || pin.side === 'none' || pin.method === undefined || pin.method === 'block-hung')
    return undefined;
  return {
    id,
    rafter: index,
    side: pin.side,
    by: 'pinned',
    ...pinnedPlace(index, pin.method, sides[pin.side], wall),
  };
}

function pinnedPlace(
  index: number,
  method: Exclude<Method, 'block-hung'>,
  { side, place, clash, outerFace, joist }: RafterSide,
  wall: Wall,
): Interval & Pick<HeldTail, 'method' | 'fillerIn' | 'note'> {
  const { number, centreIn } = rafterAt(index, wall);
  const isEnd = index === 0 || index === wall.rafters.length - 1;
  const beside = (why: string | null) => ({ ...place, method: 'side' as const, fillerIn: null, note: why });
  switch (method) {
    case 'side':
      return beside(null);
    case 'filler':
      return joist === null
        ? beside(
            `no ceiling joist lies on the ${side} of rafter ${number}, so the tail goes against the rafter without a filler`,
          )
        : { ...joist.place, method, fillerIn: joist.thicknessIn, note: null };
    case 'outer-face':
      return outerFace
        ? { ...place, method, fillerIn: null, note: null }
        : beside(
            `the ${side} of rafter ${number} does not lie past the wall's end, so the tail goes beside it as any other`,
          );
    case 'full-length':
      return {
        ...(clash !== null && joist !== null ? joist.place : place),
        method,
        fillerIn: null,
        note: null,
      };
    case 'end-replacement':
      return isEnd
        ? { ...placeAbout(centreIn, wall), method, fillerIn: null, note: null }
        : beside(`rafter ${number} is no end rafter, so it stays and the tail goes beside it`);
    default:
      return assertNever(method);
  }
}

/**
 * A tail that was built at a station: against the rafter, out past its joist with a filler as thick as the way between,
 * or, too far off to fill, hung.
 */
function builtTail(
  index: number,
  stationIn: number,
  sides: Readonly<Record<Side, RafterSide>>,
  pin: Pin | undefined,
  wall: Wall,
): HeldTail {
  const rafter = rafterAt(index, wall);
  const place = placeAbout(stationIn, wall);
  const side: Side = stationIn < rafter.centreIn ? 'left' : 'right';
  const { joist, outerFace } = sides[side];
  const clearIn = side === 'left' ? rafter.leftFaceIn - place.rightIn : place.leftIn - rafter.rightFaceIn;
  const base = { ...place, id: rafter.id, rafter: index, side, by: 'built' as const, note: null };
  const method = pin?.side === 'none' ? undefined : pin?.method;
  const fillable = (joist?.thicknessIn ?? wall.thicknessIn) + builtToleranceIn;
  if (clearIn > fillable && method !== 'full-length')
    return { ...hungAt(stationIn, wall), id: rafter.id, by: 'built', note: null };
  if (method === 'full-length' || method === 'end-replacement') return { ...base, method, fillerIn: null };
  if (clearIn > builtToleranceIn) return { ...base, method: 'filler', fillerIn: clearIn };
  return { ...base, method: outerFace ? 'outer-face' : 'side', fillerIn: null };
}

/**
 * The hung tails that are fixed: those that the person added, where they were built if that was read, and those of the
 * program's own that were built.
 * @param wall - the wall. [in]
 */
export function heldHungTails(wall: Wall): readonly HeldTail[] {
  const { addedTails } = wall.design;
  const added = addedTails.map(({ id, stationIn }): HeldTail => {
    const builtIn = builtStation(id, wall);
    return { ...hungAt(builtIn ?? stationIn, wall), id, by: builtIn === null ? 'pinned' : 'built' };
  });
  const known = new Set([...wall.rafters, ...addedTails].map(({ id }) => id));
  const own = wall.asBuilt.flatMap(({ extenderId, stationIn }): readonly HeldTail[] =>
    stationIn === null || known.has(extenderId) || !extenderId.startsWith(ownIdStart)
      ? []
      : [{ ...hungAt(stationIn, wall), id: extenderId, by: 'built' }],
  );
  return [...added, ...own];
}

function hungAt(stationIn: number, wall: Wall): Omit<HeldTail, 'id' | 'by'> {
  const rafter = leftRafterOf(stationIn, wall);
  const between = rafter >= 0 && rafter < wall.rafters.length - 1;
  return {
    ...placeAbout(stationIn, wall),
    method: 'block-hung',
    side: 'right',
    rafter,
    fillerIn: null,
    note: between
      ? null
      : `the tail at ${formatLength(stationIn)} does not stand between two rafters, so no header block can carry it`,
  };
}

/** Index of the last rafter whose middle lies at or before a station, -1 where none does. */
export function leftRafterOf(stationIn: number, { rafters }: Pick<Wall, 'rafters'>): number {
  return rafters.findLastIndex(({ centreIn }) => centreIn <= stationIn);
}

function builtStation(id: string, { asBuilt }: Wall): number | null {
  return asBuilt.find(({ extenderId }) => extenderId === id)?.stationIn ?? null;
}
