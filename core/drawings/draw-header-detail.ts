import type { EaveLayout, Extender } from '../layout/layout-types.ts';
import { formatLength } from '../units/format-length.ts';
import { inchesOf } from '../units/sixteenths.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { rectangle } from './plan-view.ts';

/** How a hung tail's block is nailed. */
export type HeaderNails = {
  readonly nail: string;
  /** Through each end of the block, and through it into the tail. */
  readonly eachEnd: number;
  readonly intoTail: number;
};

/** Nails are drawn so long, whatever they are. [in] */
const nailIn = 2.6;

/** Half the size of a nail's head seen from its end; not to scale. [in] */
const headIn = 0.35;

/**
 * Draws a hung tail's header block from outside, looking up the slope: the block between the two members, the tail before
 * it, and the nails through each end and into the tail.
 * @param layout - the eave. [in]
 * @param extender - a hung tail with a header block. [in]
 * @param nails - kind and counts.
 */
export function drawHeaderDetail(layout: EaveLayout, extender: Extender, nails: HeaderNails): Drawing {
  const header = extender.headers.find(({ place }) => place === 'back') ?? extender.headers[0];
  if (header === undefined) throw new Error('a tail without a header block has no detail of it');
  const depthIn = extender.section.plumbDepthIn / extender.section.slopeFactor;
  const { leftIn, rightIn } = header;
  const sides = membersBeside(layout, leftIn, rightIn);
  const rows = (count: number): readonly number[] =>
    Array.from({ length: count }, (_, index) => -((index + 1) * depthIn) / (count + 1));
  const deepest = Math.max(depthIn, ...sides.map((member) => member.depthIn));
  const outer = sides.flatMap(({ fromIn, toIn }) => [fromIn, toIn]);
  const minX = Math.min(leftIn, ...outer);
  const maxX = Math.max(rightIn, ...outer);
  return {
    title: `Header block ${header.mark} of ${extender.mark}: ${nails.eachEnd} of ${nails.nail} through each end, ${nails.intoTail} into the tail`,
    description: `Header block ${header.mark}, ${formatLength(inchesOf(header.lengthSixteenths))} long, between two members, seen from outside; the hung tail ${extender.mark} stands before it, ${formatLength(extender.leftIn - leftIn)} from the left member's face. Its near face lies ${formatLength(header.alongIn)} up the slope from the wall's framing face.`,
    shapes: [
      ...sides.map(
        ({ fromIn, toIn, depthIn: deep, name, fill }): Shape => ({
          kind: 'polygon',
          points: rectangle(fromIn, toIn, -deep, 0),
          pen: fill === 'old' ? 'old' : 'new',
          fill,
          title: name,
        }),
      ),
      {
        kind: 'polygon',
        points: rectangle(leftIn, rightIn, -depthIn, 0),
        pen: 'new',
        fill: 'paper',
        ref: `piece/${header.mark}`,
        title: `Header block ${header.mark}`,
      },
      {
        kind: 'polygon',
        points: rectangle(extender.leftIn, extender.rightIn, -depthIn, 0),
        pen: 'new',
        fill: 'hung',
        ref: `piece/${extender.mark}`,
        title: `Tail ${extender.mark}`,
      },
      ...rows(nails.eachEnd).flatMap((y) => [...endNail([leftIn, y], -1), ...endNail([rightIn, y], 1)]),
      ...rows(nails.intoTail).map((y): Shape => head([extender.centreIn, y])),
      {
        kind: 'running',
        origin: [leftIn, -deepest],
        direction: [1, 0],
        fromIn: 0,
        toIn: rightIn - leftIn,
        offsetPt: -12,
        stops: [extender.leftIn, extender.rightIn, rightIn].map((at) => ({
          atIn: at - leftIn,
          text: formatLength(at - leftIn),
        })),
      },
      {
        kind: 'dimension',
        from: [leftIn, 0],
        to: [rightIn, 0],
        offsetPt: 14,
        text: `${header.mark} ${formatLength(rightIn - leftIn)}`,
      },
    ],
    minX,
    maxX,
    minY: -deepest,
    maxY: 0,
  };
}

type Member = {
  readonly fromIn: number;
  readonly toIn: number;
  readonly depthIn: number;
  readonly name: string;
  readonly fill: 'old' | 'new';
};

/** What the block's ends stand against: an old rafter, or an extender beside one. */
function membersBeside(layout: EaveLayout, leftIn: number, rightIn: number): readonly Member[] {
  const members: readonly Member[] = [
    ...layout.rafters.map(
      ({ leftFaceIn, rightFaceIn, depthIn, number }): Member => ({
        fromIn: leftFaceIn,
        toIn: rightFaceIn,
        depthIn,
        name: `Rafter ${number}`,
        fill: 'old',
      }),
    ),
    ...layout.extenders
      .filter(({ method }) => method !== 'block-hung')
      .map(
        (extender): Member => ({
          fromIn: extender.leftIn,
          toIn: extender.rightIn,
          depthIn: extender.section.plumbDepthIn / extender.section.slopeFactor,
          name: `Extender ${extender.mark}`,
          fill: 'new',
        }),
      ),
  ];
  return members.filter(
    ({ fromIn, toIn }) => Math.abs(toIn - leftIn) < 1 / 32 || Math.abs(fromIn - rightIn) < 1 / 32,
  );
}

/** A nail from outside a member into the block's end; `way` is -1 for the left end. */
function endNail([x, y]: Point, way: -1 | 1): readonly Shape[] {
  const outer: Point = [x + way * nailIn * 0.6, y];
  return [
    { kind: 'line', from: outer, to: [x - way * nailIn * 0.7, y], pen: 'new' },
    { kind: 'line', from: [outer[0], y - headIn], to: [outer[0], y + headIn], pen: 'new' },
  ];
}

function head([x, y]: Point): Shape {
  return {
    kind: 'polygon',
    points: Array.from({ length: 12 }, (_, index): Point => {
      const angle = (index * Math.PI) / 6;
      return [x + headIn * Math.cos(angle), y + headIn * Math.sin(angle)];
    }),
    pen: 'new',
    fill: 'paper',
  };
}
