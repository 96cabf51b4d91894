import type { Method } from '../eave/design-document.ts';
import type { Extender, HeaderBlock } from '../layout/layout-types.ts';
import { placeWords } from '../takeoff/tail-cuts.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import { inchesOf } from '../units/sixteenths.ts';
import { clipToBox } from './clip.ts';
import type { Fill, Point, Shape } from './drawing.ts';
import { backspanLevel, faceAt, type PlanView, rectangle, tailEnd } from './plan-view.ts';

/** How each method's piece is filled on a plan, so that it tells itself apart in black and white. */
export const methodFills = {
  side: 'new',
  filler: 'new',
  'outer-face': 'new',
  'block-hung': 'hung',
  'full-length': 'whole',
  'end-replacement': 'whole',
} as const satisfies Readonly<Record<Method, Fill>>;

/** A method in a word or two beside a mark; nothing beside the plain one. */
export const methodTags = {
  side: '',
  filler: 'filler',
  'outer-face': 'outer face',
  'block-hung': 'hung',
  'full-length': 'full',
  'end-replacement': 'replaces',
} as const satisfies Readonly<Record<Method, string>>;

/** Whether a piece runs up to the ridge, so that it has no backspan of its own. */
export function reachesRidge({ method }: Pick<Extender, 'method'>): boolean {
  return method === 'full-length' || method === 'end-replacement';
}

/** Blocks at the plate, new ones with the clear length of their bay. */
export function blocks(view: PlanView): readonly Shape[] {
  const { layout, box } = view;
  return layout.bays.flatMap((bay): readonly Shape[] => {
    const middle = (bay.fromIn + bay.toIn) / 2;
    if (!view.inside(middle)) return [];
    const face = faceAt(view, middle);
    const says = {
      block: formatInches(bay.clearIn),
      'old-stays': 'stays',
      'left-open': 'open',
      'too-narrow': '',
    }[bay.block];
    const label: readonly Shape[] =
      says === ''
        ? []
        : [{ kind: 'text', at: [middle, face - 4.5], text: says, anchor: 'middle', sizePt: 6 }];
    if (bay.block !== 'block' && bay.block !== 'old-stays') return label;
    const old = bay.block === 'old-stays';
    return [
      {
        kind: 'polygon',
        points: clipToBox(rectangle(bay.fromIn, bay.toIn, face, face + view.blockIn), box),
        pen: old ? 'old' : 'new',
        fill: old ? 'old' : 'new',
        ref: `bay/${layout.eaveId}/${bay.leftRafterId}`,
        title: `${old ? 'Old block of bay' : 'Block'} ${bay.mark}, ${formatLength(bay.clearIn)}`,
      },
      ...label,
    ];
  });
}

/** The new tails, each by its method, with its fillers and header blocks; a triangle where one moved or clashes. */
export function extenders(view: PlanView): readonly Shape[] {
  return view.layout.extenders.flatMap((extender): readonly Shape[] =>
    view.inside(extender.centreIn)
      ? [
          ...fillerShapes(view, extender),
          ...extender.headers.flatMap((header) => headerShapes(view, extender, header)),
          ...tailShapes(view, extender),
        ]
      : [],
  );
}

function tailShapes({ box }: PlanView, extender: Extender): readonly Shape[] {
  const { method } = extender;
  const back = reachesRidge(extender) ? box.maxY : backOf(extender);
  const shapes: Shape[] = [
    {
      kind: 'polygon',
      points: clipToBox(rectangle(extender.leftIn, extender.rightIn, tailEnd(extender), back), box),
      pen: 'new',
      fill: methodFills[method],
      ref: `piece/${extender.mark}`,
      title: `${extender.mark}, ${placeWords(extender)}`,
    },
  ];
  if (method !== 'block-hung' && (extender.because === 'moved' || extender.clash !== null)) {
    // A triangle, so that a moved piece shows without colour.
    const x = extender.centreIn;
    const y = tailEnd(extender) / 2;
    shapes.push({
      kind: 'polygon',
      points: [
        [x - 2.4, y - 2],
        [x + 2.4, y - 2],
        [x, y + 2.4],
      ],
      pen: 'new',
      fill: 'paper',
      title:
        extender.because === 'moved'
          ? `Moved to the ${extender.side}: ${extender.clash ?? 'the other side is taken'}`
          : `Clash: ${extender.clash ?? ''}`,
    });
  }
  return shapes;
}

function backOf(extender: Extender): number {
  return backspanLevel(extender) - extender.wallOutIn;
}

/** The filler lies between the old rafter and the tail, at the tail's back end. */
function fillerShapes({ layout, box }: PlanView, extender: Extender): readonly Shape[] {
  const { filler } = extender;
  const rafter = layout.rafters.find(({ id }) => id === extender.rafterId);
  if (filler === null || rafter === undefined) return [];
  const back = backOf(extender);
  const low = back - inchesOf(filler.lengthSixteenths) / extender.section.slopeFactor;
  const [left, right] =
    extender.side === 'right' ? [rafter.rightFaceIn, extender.leftIn] : [extender.rightIn, rafter.leftFaceIn];
  return [
    {
      kind: 'polygon',
      points: clipToBox(rectangle(left, right, low, back), box),
      pen: 'new',
      fill: 'filler',
      ref: `piece/${filler.mark}`,
      title: `Filler ${filler.mark}, ${formatLength(inchesOf(filler.lengthSixteenths))}`,
    },
  ];
}

function headerShapes({ box }: PlanView, extender: Extender, header: HeaderBlock): readonly Shape[] {
  const near = header.alongIn / extender.section.slopeFactor - extender.wallOutIn;
  const thickness = extender.rightIn - extender.leftIn;
  const points: readonly Point[] = clipToBox(
    rectangle(header.leftIn, header.rightIn, near, near + thickness),
    box,
  );
  return [
    {
      kind: 'polygon',
      points,
      pen: 'new',
      fill: 'header',
      ref: `piece/${header.mark}`,
      title: `Header block ${header.mark}, ${formatLength(inchesOf(header.lengthSixteenths))}`,
    },
    {
      kind: 'text',
      at: [(header.leftIn + extender.leftIn) / 2, near + thickness + 1.2],
      text: header.mark,
      anchor: 'middle',
      sizePt: 6,
    },
  ];
}
