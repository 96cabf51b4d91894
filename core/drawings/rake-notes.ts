import type { RakeLayout } from '../rake/rake-types.ts';
import { formatLength } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import { inchesOf } from '../units/sixteenths.ts';
import type { Shape } from './drawing.ts';
import type { RakeGeometry } from './rake-geometry.ts';

/** Marks and names on a rake's elevation. */
export function rakeLabels(rake: RakeLayout, geometry: RakeGeometry, wallBottomIn: number): readonly Shape[] {
  const turn = -geometry.outward * rake.slopeAngleDeg;
  const belowIn = -Math.max(rake.bargeSize.depthIn, rake.fasciaSize?.depthIn ?? 0);
  const barge = rake.barge[0];
  const middleIn = rake.alongIn / 2;
  const shapes: Shape[] = rake.lookouts.map(({ mark, alongIn }) => ({
    kind: 'text',
    at: geometry.onSlope(alongIn, belowIn - 4.5),
    text: mark.split('-')[1] ?? mark,
    anchor: 'middle',
    sizePt: 7,
    rotateDeg: turn,
    bold: true,
  }));
  if (barge !== undefined)
    shapes.push({
      kind: 'text',
      at: geometry.onSlope(middleIn, belowIn - 12),
      text: `barge rafter ${rake.bargeStock.section}, ${formatPitch(rake.pitchRisePer12)}`,
      anchor: 'middle',
      sizePt: 8,
      rotateDeg: turn,
      bold: true,
    });
  if (rake.fasciaStock !== null)
    shapes.push({
      kind: 'text',
      at: geometry.onSlope(middleIn, belowIn - 18),
      text: `rake fascia ${rake.fasciaStock.section} over it, dashed`,
      anchor: 'middle',
      sizePt: 7,
      rotateDeg: turn,
    });
  shapes.push({
    kind: 'text',
    at: geometry.at(-rake.runIn / 2, wallBottomIn / 2),
    text: `${rake.name}: gable wall`,
    anchor: 'middle',
    sizePt: 8,
  });
  return shapes;
}

/** Running dimensions up the slope to each lookout's middle, and the level and plumb figures that place the rake. */
export function rakeDimensions(
  rake: RakeLayout,
  geometry: RakeGeometry,
  wallBottomIn: number,
): readonly Shape[] {
  const { outward, at, onSlope, upSlope } = geometry;
  const upper = rake.barge.at(-1);
  const ridgeCutIn = upper?.toIn ?? rake.alongIn;
  const run: Shape = {
    kind: 'running',
    origin: onSlope(0, 0),
    direction: upSlope,
    fromIn: 0,
    toIn: ridgeCutIn,
    // Above the roof, whichever way the slope goes.
    offsetPt: outward === 1 ? -14 : 14,
    stops: [
      ...rake.lookouts.map(({ alongIn }) => ({ atIn: alongIn, text: formatLength(alongIn) })),
      { atIn: ridgeCutIn, text: `${formatLength(ridgeCutIn)} ridge cut` },
    ],
  };
  const left = Math.min(at(-rake.runIn, 0)[0], at(0, 0)[0]);
  const right = Math.max(at(-rake.runIn, 0)[0], at(0, 0)[0]);
  const tailX = at(rake.eaveOverhangIn, 0)[0];
  return [
    run,
    {
      kind: 'dimension',
      from: [right, wallBottomIn],
      to: [left, wallBottomIn],
      offsetPt: 12,
      text: `run ${formatLength(rake.runIn)}`,
    },
    {
      kind: 'dimension',
      from: [Math.max(tailX, at(0, 0)[0]), wallBottomIn],
      to: [Math.min(tailX, at(0, 0)[0]), wallBottomIn],
      offsetPt: 12,
      text: formatLength(rake.eaveOverhangIn),
    },
    {
      kind: 'dimension',
      from: outward === 1 ? at(-rake.runIn, rake.ridgeTopIn) : at(-rake.runIn, 0),
      to: outward === 1 ? at(-rake.runIn, 0) : at(-rake.runIn, rake.ridgeTopIn),
      offsetPt: -16,
      text: `plate to ridge line ${formatLength(rake.ridgeTopIn)}`,
    },
  ];
}

/** The rake in words, for those who cannot see the drawing. */
export function describeRake(rake: RakeLayout): string {
  const what = rake.kind === 'ladder' ? 'rungs' : 'lookouts';
  const first = rake.lookouts[0];
  const barge = rake.barge
    .map(({ mark, lengthSixteenths }) => `${mark} ${formatLength(inchesOf(lengthSixteenths))}`)
    .join(', ');
  return [
    `Elevation of ${rake.name}, seen from outside with the eave on the ${rake.end === 'left' ? 'right' : 'left'}: a gable edge at ${formatPitch(rake.pitchRisePer12)}, ${formatLength(rake.runIn)} from the eave wall to the ridge.`,
    `${rake.lookouts.length} ${what} of ${rake.lookoutStock.section} carry an overhang of ${formatLength(rake.overhangIn)}, up the slope at ${rake.lookouts.map(({ alongIn }) => formatLength(alongIn)).join(', ')} from the tail's top corner.`,
    ...(first === undefined ? [] : [`The first is ${formatLength(inchesOf(first.lengthSixteenths))} long.`]),
    `Barge rafter ${rake.bargeStock.section}: ${barge}, ${rake.tailCut} tail, plumb ridge cut.`,
    ...(rake.corner.mitred
      ? [
          `At the corner its fascia meets the eave's in a mitre of ${rake.corner.mitreDeg.toFixed(0)} degrees.`,
        ]
      : []),
  ].join(' ');
}
