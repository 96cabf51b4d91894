import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import { formatLength } from '../units/format-length.ts';
import { inchesOf } from '../units/sixteenths.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { boardOutline, rakeGeometry, type RakeGeometry } from './rake-geometry.ts';
import { describeRake, rakeDimensions, rakeLabels } from './rake-notes.ts';
import type { SectionParts } from './section-geometry.ts';

/** The eave that a rake rises from. */
type EaveOfRake = Pick<SectionParts, 'layout' | 'survey' | 'design'>;

/** How far the wall is drawn below the plate, at least. [in] */
const wallShownIn = 14;
/** How far the ridge's centre line is drawn past the ridge. [in] */
const pastRidgeIn = 6;

/**
 * Draws a rake in elevation to scale, seen from outside the gable: wall, gable rafter and ridge (old), the lookouts' or
 * rungs' ends, barge rafter, rake fascia (dashed, since it covers the rest), the corner with the eave's fascia, and
 * running dimensions up the slope from the tail's top corner.
 * @param rake - laid out. [in]
 * @param eave - the eave that it rises from. [in]
 */
export function drawRake(rake: RakeLayout, eave: EaveOfRake): Drawing {
  const geometry = rakeGeometry(rake);
  const tailFoot = geometry.onSlope(0, -rake.bargeSize.depthIn)[1];
  const wallBottomIn = Math.min(-wallShownIn, tailFoot - 6);
  const shapes: Shape[] = [
    ...oldGable(rake, eave, geometry, wallBottomIn),
    ...newTails(rake, eave, geometry),
    ...lookoutEnds(rake, geometry),
    ...boards(rake, geometry),
    ...eaveFasciaEnd(rake, eave, geometry),
    ...rakeLabels(rake, geometry, wallBottomIn),
    ...rakeDimensions(rake, geometry, wallBottomIn),
  ];
  const ends = [
    geometry.at(-rake.runIn - rake.ridgeThicknessIn, 0)[0],
    geometry.onSlope(-rake.corner.rakeLongAlongIn, 0)[0],
    geometry.at(rake.eaveOverhangIn, 0)[0],
  ];
  return {
    title: `Rake ${rake.mark}, ${rake.name}`,
    description: describeRake(rake),
    shapes,
    minX: Math.min(...ends),
    maxX: Math.max(...ends),
    minY: wallBottomIn,
    maxY: rake.ridgeTopIn + pastRidgeIn,
  };
}

function oldGable(
  rake: RakeLayout,
  { survey }: EaveOfRake,
  { at, gableTop }: RakeGeometry,
  wallBottomIn: number,
): readonly Shape[] {
  const { gable, runIn, ridgeThicknessIn } = rake;
  const plumbDepthIn = gable.depthIn * Math.hypot(1, gable.pitchRisePer12 / 12);
  const under = (levelIn: number): number => gableTop(levelIn) - plumbDepthIn;
  const ridgeFaceIn = -runIn + ridgeThicknessIn / 2;
  const plateIn = survey.plateWidthIn;
  const rafterRef = `reading/${rake.eaveId}/${gable.rafterId}`;
  return [
    {
      kind: 'polygon',
      points: [
        at(-runIn, wallBottomIn),
        at(0, wallBottomIn),
        at(0, 0),
        at(-plateIn, 0),
        at(-plateIn, under(-plateIn)),
        at(-runIn, under(-runIn)),
      ],
      pen: 'old',
      fill: 'paper',
      title: 'Gable wall',
    },
    {
      kind: 'polygon',
      points: [at(-plateIn, 0), at(0, 0), at(0, -1.5), at(-plateIn, -1.5)],
      pen: 'old',
      fill: 'plate',
      ref: `eave/${rake.eaveId}/plateWidthIn`,
      title: 'Wall plate',
    },
    {
      kind: 'polygon',
      points: [
        at(ridgeFaceIn, gableTop(ridgeFaceIn)),
        at(0, gableTop(0)),
        at(0, Math.max(0, under(0))),
        ...seat(under, gable.pitchRisePer12 / 12),
        at(ridgeFaceIn, under(ridgeFaceIn)),
      ].filter((point) => point !== undefined),
      pen: 'old',
      fill: 'old',
      ref: rafterRef,
      title: `Gable rafter (rafter ${gable.number})`,
    },
    ...(ridgeThicknessIn > 0
      ? [
          {
            kind: 'polygon' as const,
            points: [
              at(-runIn - ridgeThicknessIn / 2, gableTop(ridgeFaceIn)),
              at(ridgeFaceIn, gableTop(ridgeFaceIn)),
              at(ridgeFaceIn, under(ridgeFaceIn)),
              at(-runIn - ridgeThicknessIn / 2, under(ridgeFaceIn)),
            ],
            pen: 'old' as const,
            fill: 'old' as const,
            ref: `rake/${rake.rakeId}/survey/ridgeThicknessIn`,
            title: 'Ridge',
          },
        ]
      : []),
    {
      kind: 'line',
      from: at(-runIn, wallBottomIn),
      to: at(-runIn, rake.ridgeTopIn + pastRidgeIn),
      pen: 'centre',
    },
  ];

  /** The seat over the plate, where the rafter's lower edge lies under it. */
  function seat(lower: (levelIn: number) => number, slope: number): readonly Point[] {
    return lower(0) >= 0 || slope === 0 ? [] : [at(lower(0) / slope, 0)];
  }
}

/** Tails of the eave that lookouts cross, behind the barge rafter. */
function newTails(rake: RakeLayout, { layout }: EaveOfRake, { at }: RakeGeometry): readonly Shape[] {
  const crossed = new Set(
    rake.lookouts
      .flatMap(({ crosses }) => crosses.filter(({ kind }) => kind === 'extender'))
      .map(({ label }) => label),
  );
  return layout.extenders
    .filter(({ mark }) => crossed.has(mark))
    .map((extender) => ({
      kind: 'polygon',
      points: extender.section.outline.map(([x, y]) => at(x, y)),
      pen: 'hidden',
      fill: 'none',
      ref: `section/${layout.eaveId}/${extender.id}`,
      title: `Extender ${extender.mark}, behind`,
    }));
}

function lookoutEnds(rake: RakeLayout, { onSlope }: RakeGeometry): readonly Shape[] {
  const half = rake.lookoutWidthIn / 2;
  const depth = rake.lookoutDepthIn;
  return rake.lookouts.map((lookout) => ({
    kind: 'polygon',
    points: [
      onSlope(lookout.alongIn - half, 0),
      onSlope(lookout.alongIn + half, 0),
      onSlope(lookout.alongIn + half, -depth),
      onSlope(lookout.alongIn - half, -depth),
    ],
    pen: 'new',
    fill: 'new',
    ref: `rake/${rake.rakeId}/lookout/${lookout.mark}`,
    title: `${lookout.mark}: ${formatLength(inchesOf(lookout.lengthSixteenths))} at ${formatLength(lookout.alongIn)} up the slope`,
  }));
}

function boards(rake: RakeLayout, geometry: RakeGeometry): readonly Shape[] {
  const shapes: Shape[] = [];
  const add = (
    pieces: RakeLayout['barge'],
    depthIn: number,
    name: string,
    key: string,
    pen: 'new' | 'hidden',
  ): void => {
    const first = pieces[0];
    const last = pieces.at(-1);
    if (first === undefined || last === undefined) return;
    shapes.push({
      kind: 'polygon',
      points: boardOutline(geometry, { fromIn: first.fromIn, toIn: last.toIn }, depthIn, rake.tailCut),
      pen,
      fill: 'none',
      ref: `rake/${rake.rakeId}/${key}`,
      title: `${name}: ${pieces.map(({ mark }) => mark).join(', ')}`,
    });
    for (const { fromIn } of pieces.slice(1))
      shapes.push({
        kind: 'line',
        from: geometry.onSlope(fromIn, 0),
        to: geometry.onSlope(fromIn, -depthIn),
        pen: 'new',
      });
  };
  add(rake.barge, rake.bargeSize.depthIn, 'Barge rafter', 'barge', 'new');
  if (rake.fasciaSize !== null) add(rake.fascia, rake.fasciaSize.depthIn, 'Rake fascia', 'fascia', 'hidden');
  return shapes;
}

/** The eave's fascia, seen on its end where it runs out to the corner. */
function eaveFasciaEnd(
  rake: RakeLayout,
  { design }: EaveOfRake,
  { at, onSlope, slope }: RakeGeometry,
): readonly Shape[] {
  const board = dressedSection(design.fascia.stock.section);
  if (board === undefined) return [];
  const { thicknessIn, depthIn } = board;
  const innerIn = rake.corner.rakeShortAlongIn;
  const inner = onSlope(-innerIn, 0);
  const outer = onSlope(-innerIn - thicknessIn * (rake.tailCut === 'plumb' ? rake.slopeFactor : 1), 0);
  const bottom = inner[1] - depthIn;
  const points: readonly Point[] =
    rake.tailCut === 'plumb'
      ? [inner, outer, [outer[0], bottom], [inner[0], bottom]]
      : [inner, outer, squareBelow(outer), squareBelow(inner)];
  return [
    {
      kind: 'polygon',
      points,
      pen: 'new',
      fill: 'paper',
      ref: `design/${rake.eaveId}/fascia`,
      title: `Fascia of ${rake.eaveName}, on its end`,
    },
  ];

  function squareBelow([x, y]: Point): Point {
    const [sideX] = at(slope / rake.slopeFactor, 0);
    return [x - sideX * depthIn, y - depthIn / rake.slopeFactor];
  }
}
