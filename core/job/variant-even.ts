import type { EaveDesign } from '../eave/design-document.ts';
import { solidStretches } from '../layout/bays.ts';
import type { Interval } from '../layout/in-the-way.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import { centreOf } from '../layout/tail-place.ts';

/** Least clear room for nailing on each side of a hung tail. [in] Common practice, no source. */
const nailingRoomIn = 0.5;

/**
 * The design with tails added in the widest gaps, one after another, each as near to the middle of its gap as there is room;
 * the others are pinned where they stand, so that the program takes none of them away again. Fewer where no gap has room
 * between two rafters for one more.
 * @param design - of the eave. [in]
 * @param layout - as designed. [in]
 * @param count - how many more.
 * @returns worked: tails at 16, 40, 64 and 112, one more -> at 88, if a tail fits there.
 */
export function evenedDesign(design: EaveDesign, layout: EaveLayout, count: number): EaveDesign {
  const [first] = layout.extenders;
  const thicknessIn = first === undefined ? 0 : first.rightIn - first.leftIn;
  const half = thicknessIn / 2;
  const added: { readonly id: string; readonly stationIn: number }[] = [];
  for (let more = 0; more < count; more += 1) {
    const tails: readonly Interval[] = [
      ...layout.extenders,
      ...added.map(({ stationIn }) => ({ leftIn: stationIn - half, rightIn: stationIn + half })),
    ].toSorted((a, b) => a.leftIn - b.leftIn);
    const stationIn = widestGapPlace(tails, layout, half + nailingRoomIn);
    if (stationIn === undefined) break;
    added.push({ id: freeId(design, layout, added.length + 1), stationIn });
  }
  return {
    ...design,
    pins: [...design.pins, ...pinsOf(design, layout)],
    addedTails: [...design.addedTails, ...hungAlready(design, layout), ...added],
    layout: { ...design.layout, allowBlockHung: true },
  };
}

/** Pins for the tails at rafters that have none yet, as they stand. */
function pinsOf({ pins }: EaveDesign, { extenders }: EaveLayout): EaveDesign['pins'] {
  const pinned = new Set(pins.map(({ rafterId }) => rafterId));
  return extenders.flatMap(({ method, rafterId, side }) =>
    method === 'block-hung' || pinned.has(rafterId) ? [] : [{ rafterId, side, method }],
  );
}

/** The tails that the program hangs by itself, as the person's own. */
function hungAlready({ addedTails }: EaveDesign, { extenders }: EaveLayout): EaveDesign['addedTails'] {
  const own = new Set(addedTails.map(({ id }) => id));
  return extenders.flatMap(({ id, method, centreIn }) =>
    method === 'block-hung' && !own.has(id) ? [{ id, stationIn: centreIn }] : [],
  );
}

/** As near to the middle of the widest gap as a tail fits; of gaps without room the next widest is tried. [in] */
function widestGapPlace(
  tails: readonly Interval[],
  { rafters, occupied }: EaveLayout,
  needIn: number,
): number | undefined {
  const solid = solidStretches([...occupied, ...tails]);
  const [from, to] = [rafters[0]?.rightFaceIn ?? 0, rafters.at(-1)?.leftFaceIn ?? 0];
  const gaps = tails.slice(1).flatMap((right, index) => {
    const left = tails[index];
    return left === undefined ? [] : [{ fromIn: centreOf(left), toIn: centreOf(right) }];
  });
  for (const gap of gaps.toSorted((a, b) => b.toIn - b.fromIn - (a.toIn - a.fromIn))) {
    const middleIn = (gap.fromIn + gap.toIn) / 2;
    const places = solid.slice(1).flatMap((after, index) => {
      const before = solid[index];
      if (before === undefined) return [];
      const [least, most] = [
        Math.max(before.rightIn + needIn, gap.fromIn, from),
        Math.min(after.leftIn - needIn, gap.toIn, to),
      ];
      return least <= most ? [Math.min(most, Math.max(least, middleIn))] : [];
    });
    const nearest = places.toSorted((a, b) => Math.abs(a - middleIn) - Math.abs(b - middleIn))[0];
    if (nearest !== undefined) return nearest;
  }
  return undefined;
}

/** An id that neither a rafter nor a tail bears. */
function freeId(design: EaveDesign, layout: EaveLayout, number: number): string {
  const taken = new Set([
    ...layout.rafters.map(({ id }) => id),
    ...layout.extenders.map(({ id }) => id),
    ...design.addedTails.map(({ id }) => id),
  ]);
  let at = number;
  while (taken.has(`more-${at}`)) at += 1;
  return `more-${at}`;
}
