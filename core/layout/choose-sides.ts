import { formatLength } from '../units/format-length.ts';
import type { EaveDesign } from '../eave/design-document.ts';
import type { Side } from '../survey/survey-document.ts';
import { clashToleranceIn, inTheWay, overlaps, type Interval } from './in-the-way.ts';
import type { Extender, Occupied, PlacedRafter, Unplaced } from './layout-types.ts';

/** The side an extender takes, or why there is none. */
export type SideChoice =
  | ({ readonly kind: 'placed'; readonly rafter: PlacedRafter } & Interval &
      Pick<Extender, 'side' | 'because' | 'clash'>)
  | ({ readonly kind: 'unplaced'; readonly rafter: PlacedRafter } & Pick<
      Unplaced,
      'reason' | 'left' | 'right'
    >);

type Stand = Side | 'none';

/** One rafter's two places for an extender, what stands in each, and which stands may be chosen. */
type Candidate = {
  readonly rafter: PlacedRafter;
  readonly pin: Stand | undefined;
  readonly places: Readonly<Record<Side, Interval>>;
  readonly clashes: Readonly<Record<Side, string | null>>;
  readonly stands: readonly Stand[];
};

/** How good the stands up to a rafter are: more placed first, then more on the preferred side. */
type Score = { readonly placed: number; readonly preferred: number; readonly from: Stand | undefined };

/**
 * Chooses for each rafter the side its extender stands on: the person's pins first and as they are, then as many
 * extenders as fit, then as many on the preferred side as can be. Neighbouring rafters too close for two extenders are
 * settled together (dynamic programming along the wall), so that one does not take the only room of the next.
 * @param rafters - on their stations, in order. [in]
 * @param occupied - what stands on the plate already. [in]
 * @param wallLengthIn - corner to corner. [in]
 * @param thicknessIn - actual thickness of an extender. [in]
 * @param design - preferred side and pins.
 * @returns one choice a rafter, in order; nothing rounded. Worked: a joist on the preferred right side -> `left`, `moved`.
 */
export function chooseSides(
  rafters: readonly PlacedRafter[],
  occupied: readonly Occupied[],
  wallLengthIn: number,
  thicknessIn: number,
  design: Pick<EaveDesign, 'preferredSide' | 'pins'>,
): readonly SideChoice[] {
  const preferred = design.preferredSide;
  const candidates = candidatesOf(rafters, occupied, wallLengthIn, thicknessIn, design);
  const stands = bestStands(candidates, preferred);
  return candidates.map((candidate, index): SideChoice => {
    const stand = stands[index] ?? 'none';
    const clashes = withNeighbours(candidates, stands, index);
    const { rafter, pin, places } = candidate;
    if (stand === 'none') {
      return pin === 'none'
        ? { kind: 'unplaced', rafter, reason: 'pinned-none', left: 'none wanted', right: 'none wanted' }
        : {
            kind: 'unplaced',
            rafter,
            reason: 'no-side-free',
            left: clashes.left ?? '',
            right: clashes.right ?? '',
          };
    }
    const because = pin !== undefined ? 'pinned' : stand === preferred ? 'preferred' : 'moved';
    const clash = because === 'pinned' ? clashes[stand] : because === 'moved' ? clashes[preferred] : null;
    return { kind: 'placed', rafter, side: stand, because, clash, ...places[stand] };
  });
}

function candidatesOf(
  rafters: readonly PlacedRafter[],
  occupied: readonly Occupied[],
  wallLengthIn: number,
  thicknessIn: number,
  design: Pick<EaveDesign, 'preferredSide' | 'pins'>,
): readonly Candidate[] {
  const pins = new Map<string, Stand>(design.pins.map(({ rafterId, side }) => [rafterId, side]));
  const standing = inTheWay(occupied);
  const other: Side = design.preferredSide === 'left' ? 'right' : 'left';
  return rafters.map((rafter) => {
    const places = {
      left: { leftIn: rafter.leftFaceIn - thicknessIn, rightIn: rafter.leftFaceIn },
      right: { leftIn: rafter.rightFaceIn, rightIn: rafter.rightFaceIn + thicknessIn },
    };
    const clashOf = (side: Side): string | null => {
      const first = standing(places[side])[0];
      if (first !== undefined) return `${first.label}, ${stretch(first)}`;
      if (places[side].leftIn < -clashToleranceIn) return "it would stand past the wall's left end";
      if (places[side].rightIn > wallLengthIn + clashToleranceIn)
        return "it would stand past the wall's right end";
      return null;
    };
    const clashes = { left: clashOf('left'), right: clashOf('right') };
    const pin = pins.get(rafter.id);
    const free = ([design.preferredSide, other] as const).filter((side) => clashes[side] === null);
    return { rafter, pin, places, clashes, stands: pin === undefined ? [...free, 'none'] : [pin] };
  });
}

function bestStands(candidates: readonly Candidate[], preferred: Side): readonly Stand[] {
  const tables: Map<Stand, Score>[] = [];
  for (const [index, candidate] of candidates.entries()) {
    const before = candidates[index - 1];
    const last = tables.at(-1) ?? new Map<Stand, Score>();
    const table = new Map<Stand, Score>();
    for (const stand of candidate.stands) {
      let best: Score | undefined =
        before === undefined ? { placed: 0, preferred: 0, from: undefined } : undefined;
      for (const [from, score] of last) {
        if (before !== undefined && !standTogether(before, from, candidate, stand)) continue;
        if (best === undefined || better(score, best)) best = { ...score, from };
      }
      if (best === undefined) continue;
      table.set(stand, {
        placed: best.placed + (stand === 'none' ? 0 : 1),
        preferred: best.preferred + (stand === preferred ? 1 : 0),
        from: best.from,
      });
    }
    tables.push(table);
  }
  return walkBack(tables);
}

function walkBack(tables: readonly ReadonlyMap<Stand, Score>[]): readonly Stand[] {
  let stand: Stand | undefined;
  let best: Score | undefined;
  for (const [candidate, score] of tables.at(-1) ?? []) {
    if (best === undefined || better(score, best)) [stand, best] = [candidate, score];
  }
  const stands: Stand[] = [];
  for (const table of tables.toReversed()) {
    if (stand === undefined) throw new Error('no stand to walk back to');
    stands.unshift(stand);
    stand = table.get(stand)?.from;
  }
  return stands;
}

function better(one: Score, other: Score): boolean {
  return one.placed > other.placed || (one.placed === other.placed && one.preferred > other.preferred);
}

/** Two neighbours may stand so unless their extenders overlap; two pins stay as they are whatever happens. */
function standTogether(left: Candidate, leftStand: Stand, right: Candidate, rightStand: Stand): boolean {
  if (leftStand === 'none' || rightStand === 'none') return true;
  if (left.pin !== undefined && right.pin !== undefined) return true;
  return !overlaps(left.places[leftStand], right.places[rightStand]);
}

/** What stands in each place, the neighbours' extenders among it. */
function withNeighbours(
  candidates: readonly Candidate[],
  stands: readonly Stand[],
  index: number,
): Readonly<Record<Side, string | null>> {
  const own = candidates[index];
  if (own === undefined) throw new Error('no such rafter');
  const clashOf = (side: Side): string | null => {
    if (own.clashes[side] !== null) return own.clashes[side];
    for (const neighbour of [index - 1, index + 1]) {
      const candidate = candidates[neighbour];
      const stand = stands[neighbour] ?? 'none';
      if (candidate === undefined || stand === 'none') continue;
      const place = candidate.places[stand];
      if (overlaps(place, own.places[side]))
        return `the extender of rafter ${candidate.rafter.number}, ${stretch(place)}`;
    }
    return null;
  };
  return { left: clashOf('left'), right: clashOf('right') };
}

function stretch({ leftIn, rightIn }: Interval): string {
  return `at ${formatLength(leftIn)} to ${formatLength(rightIn)}`;
}
