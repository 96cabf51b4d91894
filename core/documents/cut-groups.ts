import type { EaveDesign } from '../eave/design-document.ts';
import type { RafterSection } from '../eave/section-types.ts';
import type { EaveLayout, Extender } from '../layout/layout-types.ts';
import type { EaveParts } from './eave-drawings.ts';
import { fewestSets } from './fewest-sets.ts';

/** A tail with the eave it belongs to. */
export type TailToCut = {
  readonly layout: EaveLayout;
  readonly design: EaveDesign;
  readonly extender: Extender;
};

/** Tails that are marked and cut from one template and with one setting of the square. */
export type CutGroup = {
  /** From 1: notched ones first, which have a template, and of those the largest. */
  readonly number: number;
  /** The tail that the template is drawn from: none of the others is off it by more than the tolerance. */
  readonly model: TailToCut;
  /** The model among them, in the order of the wall. */
  readonly tails: readonly TailToCut[];
  /** The furthest that a line of the template is off one of them. [in] */
  readonly mostOffIn: number;
};

/** What the saw needs of a tail's seat and plumb cut, measured on the piece. [in] */
type CutFigures = {
  readonly heelIn: number;
  readonly seatIn: number;
  /** Plumb from the top edge down to the seat. */
  readonly topToSeatIn: number;
  /** By how much a plumb line slants over the piece's depth. */
  readonly plumbRunIn: number;
};

/**
 * Groups the tails of a job so that each group is cut from one template: all of one stock and kind of seat, and none of
 * heel, seat, height over the seat and slant of the plumb cut further from the drawn one than the tolerance. As few groups
 * as can be, each drawn from one of its tails; every tail goes to the template that it is least off. Tails in place are
 * left out.
 * Worked: heels 1, 1-1/16, 1-1/8 at 1/16 in. -> one group, drawn from the middle one.
 * @param eaves - of the job.
 * @param toleranceIn - most that a line may be off. [in]
 */
export function cutGroups(eaves: readonly EaveParts[], toleranceIn: number): readonly CutGroup[] {
  const tails = eaves.flatMap(({ layout, design }) =>
    layout.extenders
      .filter(({ inPlace }) => !inPlace)
      .map((extender): TailToCut => ({ layout, design, extender })),
  );
  const groups = [...Map.groupBy(tails, kindOf).values()].flatMap((alike) => cover(alike, toleranceIn));
  return groups
    .toSorted((a, b) => Number(isNotched(b)) - Number(isNotched(a)) || b.tails.length - a.tails.length)
    .map((group, index) => ({ ...group, number: index + 1 }));
}

/** Whether a group has a seat cut, so that it has a template. */
export function isNotched({ model }: Pick<CutGroup, 'model'>): boolean {
  return model.extender.section.bearing.kind === 'notched';
}

/** Tails of another stock, or with another kind of seat or tail, never share a template. */
function kindOf({ extender, design }: TailToCut): string {
  return [design.extender.section, design.tailCut, extender.section.bearing.kind].join(' ');
}

function cover(tails: readonly TailToCut[], toleranceIn: number): readonly Omit<CutGroup, 'number'>[] {
  const figures = new Map(tails.map((tail) => [tail, figuresOf(tail.extender.section)]));
  const off = (one: TailToCut, other: TailToCut): number => offBy(figures.get(one), figures.get(other));
  const candidates = models(tails, figures, toleranceIn);
  const chosen = fewestSets(
    tails.length,
    candidates.map((model) =>
      tails.flatMap((tail, index) => (off(model, tail) <= toleranceIn + 1e-9 ? [index] : [])),
    ),
  ).flatMap((index) => candidates[index] ?? []);
  const nearest = (tail: TailToCut): TailToCut =>
    chosen.reduce((best, model) => (off(model, tail) < off(best, tail) - 1e-9 ? model : best));
  return [...Map.groupBy(tails, nearest)].map(([model, ofModel]) => ({
    model,
    tails: ofModel,
    mostOffIn: Math.max(...ofModel.map((tail) => off(model, tail))),
  }));
}

/** Tails that may stand for a group: one of each that no tape tells apart, so that long eaves are grouped quickly. */
function models(
  tails: readonly TailToCut[],
  figures: ReadonlyMap<TailToCut, CutFigures>,
  toleranceIn: number,
): readonly TailToCut[] {
  const cellIn = Math.max(toleranceIn / 4, 1 / 1024);
  const cells = new Map<string, TailToCut>();
  for (const tail of tails) {
    const key = Object.values(figures.get(tail) ?? {})
      .map((figureIn) => Math.round(figureIn / cellIn))
      .join(' ');
    if (!cells.has(key)) cells.set(key, tail);
  }
  return [...cells.values()];
}

function figuresOf(section: RafterSection): CutFigures {
  const { bearing } = section;
  const depthIn = section.plumbDepthIn / section.slopeFactor;
  return {
    heelIn: bearing.kind === 'notched' ? bearing.heelCutIn : 0,
    seatIn: bearing.kind === 'notched' ? bearing.seatIn : 0,
    topToSeatIn: bearing.kind === 'notched' ? section.heightAbovePlateIn : 0,
    plumbRunIn: (depthIn * section.pitchRisePer12) / 12,
  };
}

function offBy(one: CutFigures | undefined, other: CutFigures | undefined): number {
  if (one === undefined || other === undefined) throw new Error('a tail without its cuts');
  return Math.max(
    Math.abs(one.heelIn - other.heelIn),
    Math.abs(one.seatIn - other.seatIn),
    Math.abs(one.topToSeatIn - other.topToSeatIn),
    Math.abs(one.plumbRunIn - other.plumbRunIn),
  );
}
