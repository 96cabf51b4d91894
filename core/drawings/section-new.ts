import type { Point, Shape } from './drawing.ts';
import { methodFills } from './plan-new.ts';
import type { SectionGeometry, SectionParts } from './section-geometry.ts';

/** What is new in section: extender with its header blocks, edge boards, shim, deck and soffit. */
export function newWork(parts: SectionParts, geometry: SectionGeometry): readonly Shape[] {
  const { extender, layout, design } = parts;
  const board = (points: readonly Point[], name: string, stock: string): readonly Shape[] =>
    points.length === 0
      ? []
      : [
          {
            kind: 'polygon',
            points,
            pen: 'new',
            fill: 'paper',
            ref: `design/${layout.eaveId}/fascia`,
            title: `${name} ${stock}`,
          },
        ];
  return [
    {
      kind: 'polygon',
      points: extender.section.outline,
      pen: 'new',
      fill: methodFills[extender.method],
      ref: `section/${layout.eaveId}/${extender.id}`,
      title: `Extender ${extender.mark}`,
    },
    ...headers(parts, geometry),
    ...board(geometry.subFascia, 'Sub-fascia', design.fascia.subFascia.stock.section),
    ...board(geometry.fascia, 'Fascia', design.fascia.stock.section),
    ...shim(parts),
    ...newDeck(parts, geometry),
    ...soffit(parts, geometry),
  ];
}

/** Header blocks behind and over the plate, cut through: as deep as the tail, plumb where its back end is plumb. */
function headers({ extender, design }: SectionParts, geometry: SectionGeometry): readonly Shape[] {
  const { section } = extender;
  const thickness = extender.rightIn - extender.leftIn;
  const plumb = design.backEnd === 'parallel';
  const wide = plumb ? thickness * section.slopeFactor : thickness;
  const deep = section.plumbDepthIn / section.slopeFactor;
  return extender.headers.map((header): Shape => {
    const near = geometry.onSlope(-header.alongIn, 0);
    const far = geometry.onSlope(-header.alongIn - wide, 0);
    const foot = ([x, y]: Point, alongIn: number): Point =>
      plumb ? [x, y - section.plumbDepthIn] : geometry.onSlope(alongIn, -deep);
    return {
      kind: 'polygon',
      points: [far, near, foot(near, -header.alongIn), foot(far, -header.alongIn - wide)],
      pen: 'new',
      fill: 'header',
      ref: `piece/${header.mark}`,
      title: `Header block ${header.mark}`,
    };
  });
}

function shim({ extender, survey }: SectionParts): readonly Shape[] {
  const { bearing } = extender.section;
  if (bearing.kind !== 'shimmed') return [];
  const under = bearing.shimIn;
  return [
    {
      kind: 'polygon',
      points: [
        [-survey.plateWidthIn, 0],
        [-survey.plateWidthIn, under + (extender.pitchRisePer12 / 12) * survey.plateWidthIn],
        [0, under],
        [0, 0],
      ],
      pen: 'new',
      fill: 'waste',
      title: 'Bearing shim',
    },
  ];
}

/** The new deck along the tails, and along the old roof where it ties in further in than a kicked-up tail breaks. */
function newDeck({ extender, survey, design }: SectionParts, geometry: SectionGeometry): readonly Shape[] {
  const { sheathing } = design;
  if (sheathing.kind === 'none') return [];
  const { section } = extender;
  const deck = survey.deckThicknessIn;
  const { roof } = geometry;
  const breakIn = section.kickUp?.breakOutIn;
  const end =
    section.overhangAlongIn + (sheathing.coversFascia ? geometry.edgeThicknessIn * section.slopeFactor : 0);
  const start = breakIn === undefined ? -sheathing.tieBackIn : breakIn * section.slopeFactor;
  const strips = [geometry.strip(start, end, deck)];
  const tieIn = -sheathing.tieBackIn / roof.slopeFactor;
  if (breakIn !== undefined && tieIn < breakIn) strips.push(roof.strip(tieIn, breakIn, deck));
  return strips.map(
    (points): Shape => ({ kind: 'polygon', points, pen: 'new', fill: 'paper', title: 'New deck' }),
  );
}

function soffit({ extender, design }: SectionParts, geometry: SectionGeometry): readonly Shape[] {
  const { section } = extender;
  const { thicknessIn } = design.soffit;
  if (design.soffit.kind === 'level' && section.soffitBelowPlateIn !== null) {
    const under = -section.soffitBelowPlateIn;
    return [
      {
        kind: 'polygon',
        points: [
          [0, under],
          [0, under + thicknessIn],
          [geometry.overhangIn, under + thicknessIn],
          [geometry.overhangIn, under],
        ],
        pen: 'old',
        fill: 'new',
        title: 'Soffit',
      },
    ];
  }
  if (design.soffit.kind !== 'sloped') return [];
  // Under the tails: from the wall's face to the tail's lowest corner.
  const depth = section.plumbDepthIn / section.slopeFactor;
  const slope = extender.pitchRisePer12 / 12;
  const end = section.overhangAlongIn + (design.tailCut === 'plumb' ? depth * slope : 0);
  return [
    {
      kind: 'polygon',
      points: geometry.strip(depth * slope, end, -thicknessIn, -depth),
      pen: 'old',
      fill: 'new',
      title: 'Soffit along the slope',
    },
  ];
}
