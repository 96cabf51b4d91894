import type { Lookout, RakeLayout } from '../rake/rake-types.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import { formatLength } from '../units/format-length.ts';
import { inchesOf } from '../units/sixteenths.ts';
import type { Drawing, Point, Shape } from './drawing.ts';

/** How far the old deck is drawn in past the last member. [in] */
const pastInsideIn = 10;

/** A stretch across the rake (into the house positive) and square to the slope (down from the sheathing's underside). [in] */
type Box = {
  readonly fromIn: number;
  readonly toIn: number;
  readonly topIn: number;
  readonly bottomIn: number;
};

/**
 * Draws one lookout or rung where it lies, cut square to the slope and seen up it: outside on the left, the members in
 * section, the lookout from barge rafter to the first member inside, and the sheathing over it.
 * @param rake - laid out. [in]
 * @param lookout - one of its lookouts or rungs. [in]
 * @param deckThicknessIn - of the old deck. [in]
 * @param finishIn - sheathing and siding left on the gable wall. [in]
 * @param soffitIn - thickness of the soffit under it; null where the rake stays open. [in]
 */
export function drawLookout(
  rake: RakeLayout,
  lookout: Lookout,
  deckThicknessIn: number,
  finishIn: number,
  soffitIn: number | null = null,
): Drawing {
  const outIn = rake.overhangIn - rake.bargeSize.thicknessIn;
  const fasciaIn = rake.fasciaSize?.thicknessIn ?? 0;
  const members = [...lookout.crosses, ...(lookout.meets === null ? [] : [lookout.meets])];
  const ladder = rake.kind === 'ladder';
  const innermostIn = Math.max(
    rake.gable.innerInsideIn,
    ...members.map(({ innerInsideIn }) => innerInsideIn),
  );
  const shapes: Shape[] = [
    ...(ladder ? [gableBox(rake)] : []),
    ...members.map(({ label, kind, outerInsideIn, innerInsideIn, depthIn }) =>
      boxShape(
        { fromIn: outerInsideIn, toIn: innerInsideIn, topIn: 0, bottomIn: -depthIn },
        kind === 'rafter' ? 'old' : 'new',
        label,
      ),
    ),
    ...(ladder ? [railBox(rake, finishIn)] : []),
    ...lookoutBoxes(rake, lookout, outIn, finishIn),
    ...(soffitIn === null
      ? []
      : [
          boxShape(
            {
              fromIn: -outIn,
              toIn: -finishIn,
              topIn: -rake.lookoutDepthIn,
              bottomIn: -rake.lookoutDepthIn - soffitIn,
            },
            'paper',
            'soffit',
          ),
        ]),
    boxShape(
      { fromIn: -rake.overhangIn, toIn: -outIn, topIn: 0, bottomIn: -rake.bargeSize.depthIn },
      'new',
      `barge rafter ${rake.bargeStock.section}`,
    ),
    ...(rake.fasciaSize === null
      ? []
      : [
          boxShape(
            {
              fromIn: -rake.overhangIn - fasciaIn,
              toIn: -rake.overhangIn,
              topIn: 0,
              bottomIn: -rake.fasciaSize.depthIn,
            },
            'paper',
            `rake fascia ${rake.fasciaStock?.section ?? ''}`,
          ),
        ]),
    ...deck(rake, lookout, deckThicknessIn, innermostIn),
  ];
  const deepestIn = Math.max(
    rake.gable.depthIn,
    rake.bargeSize.depthIn,
    rake.fasciaSize?.depthIn ?? 0,
    ...members.map(({ depthIn }) => depthIn),
  );
  const bottomIn = -deepestIn - 3;
  shapes.push(
    { kind: 'line', from: [0, bottomIn], to: [0, deckThicknessIn + 2], pen: 'centre' },
    {
      kind: 'text',
      at: [0.4, bottomIn - 1],
      text: 'gable wall, framing face',
      anchor: 'start',
      sizePt: 7,
    },
    ...labels(rake, lookout, members, deepestIn),
    ...dimensions(rake, lookout, deckThicknessIn, bottomIn),
  );
  return {
    title: `${lookout.mark} in place, ${rake.name}`,
    description: describe(rake, lookout),
    shapes,
    minX: -rake.overhangIn - fasciaIn,
    maxX: innermostIn + pastInsideIn,
    minY: bottomIn,
    maxY: deckThicknessIn,
  };
}

function gableBox(rake: RakeLayout): Shape {
  const { gable } = rake;
  return boxShape(
    { fromIn: gable.outerInsideIn, toIn: gable.innerInsideIn, topIn: 0, bottomIn: -gable.depthIn },
    'old',
    `rafter ${gable.number}`,
  );
}

function railBox(rake: RakeLayout, finishIn: number): Shape {
  const rail = dressedSection(rake.lookoutStock.section);
  return boxShape(
    {
      fromIn: -finishIn - (rail?.thicknessIn ?? 0),
      toIn: -finishIn,
      topIn: 0,
      bottomIn: -(rail?.depthIn ?? 0),
    },
    'new',
    `rail ${rake.lookoutStock.section}`,
  );
}

/** The lookout itself, and the block in line with it where it stops at the gable rafter. */
function lookoutBoxes(rake: RakeLayout, lookout: Lookout, outIn: number, finishIn: number): readonly Shape[] {
  const bottomIn = -rake.lookoutDepthIn;
  const railIn =
    rake.kind === 'ladder' ? (dressedSection(rake.lookoutStock.section)?.thicknessIn ?? 0) + finishIn : 0;
  const toIn = rake.kind === 'ladder' ? -railIn : lookout.lengthIn - outIn;
  const own = boxShape(
    { fromIn: -outIn, toIn, topIn: 0, bottomIn },
    'whole',
    lookout.mark,
    `rake/${rake.rakeId}/lookout/${lookout.mark}`,
  );
  if (lookout.block === null || lookout.meets === null) return [own];
  const innerIn = Math.max(...lookout.crosses.map(({ innerInsideIn }) => innerInsideIn));
  return [
    own,
    boxShape(
      { fromIn: innerIn, toIn: lookout.meets.outerInsideIn, topIn: 0, bottomIn },
      'whole',
      lookout.block.mark,
    ),
  ];
}

/** New sheathing to where the old deck stays on; next to the eave it is the eave's, which runs on. */
function deck(
  rake: RakeLayout,
  { alongIn }: Lookout,
  thicknessIn: number,
  innermostIn: number,
): readonly Shape[] {
  if (rake.strip === null) return [];
  const end = innermostIn + pastInsideIn;
  const { outIn, widthIn, fromIn } = rake.strip;
  const newTo = alongIn < fromIn ? end : Math.min(end, widthIn - outIn);
  return [
    boxShape(
      { fromIn: -outIn, toIn: newTo, topIn: thicknessIn, bottomIn: 0 },
      'paper',
      'new sheathing',
      `rake/${rake.rakeId}/strip`,
    ),
    ...(newTo < end
      ? [boxShape({ fromIn: newTo, toIn: end, topIn: thicknessIn, bottomIn: 0 }, 'old', 'old deck')]
      : []),
  ];
}

function labels(
  rake: RakeLayout,
  lookout: Lookout,
  members: readonly Lookout['crosses'][number][],
  deepestIn: number,
): readonly Shape[] {
  const middleIn = -(rake.overhangIn - rake.bargeSize.thicknessIn) / 2;
  const under = (xIn: number, text: string): Shape => ({
    kind: 'text',
    at: [xIn, -deepestIn - 1.6],
    text,
    anchor: 'middle',
    sizePt: 7,
  });
  const shown =
    rake.kind === 'ladder'
      ? [
          {
            label: `rafter ${rake.gable.number}`,
            outerInsideIn: rake.gable.outerInsideIn,
            innerInsideIn: rake.gable.innerInsideIn,
          },
        ]
      : members;
  return [
    {
      kind: 'text',
      at: [middleIn, -rake.lookoutDepthIn - 1.6],
      text: `${lookout.mark}  ${rake.lookoutStock.section}`,
      anchor: 'middle',
      sizePt: 8,
      bold: true,
    },
    under(-rake.overhangIn + rake.bargeSize.thicknessIn / 2, `barge ${rake.bargeStock.section}`),
    ...shown.map(({ label, outerInsideIn, innerInsideIn }) =>
      under((outerInsideIn + innerInsideIn) / 2, label),
    ),
  ];
}

function dimensions(rake: RakeLayout, lookout: Lookout, deckIn: number, bottomIn: number): readonly Shape[] {
  const shapes: Shape[] = [
    {
      kind: 'dimension',
      from: [-rake.overhangIn, deckIn],
      to: [0, deckIn],
      offsetPt: 14,
      text: `overhang ${formatLength(rake.overhangIn)}`,
    },
  ];
  if (lookout.meets !== null)
    shapes.push({
      kind: 'dimension',
      from: [0, deckIn],
      to: [lookout.meets.outerInsideIn, deckIn],
      offsetPt: 14,
      text: formatLength(lookout.meets.outerInsideIn),
    });
  const outerIn = -(rake.overhangIn - rake.bargeSize.thicknessIn);
  const from: Point = [outerIn + lookout.lengthIn, bottomIn];
  shapes.push({
    kind: 'dimension',
    from,
    to: [outerIn, bottomIn],
    offsetPt: 16,
    text: `${lookout.mark}: ${formatLength(lookout.lengthIn)} in place`,
  });
  return shapes;
}

function describe(rake: RakeLayout, lookout: Lookout): string {
  const crossed = lookout.crosses.map(({ label }) => label).join(' and ');
  return [
    `${lookout.mark} of ${rake.name} cut square to the slope and seen up it, outside on the left.`,
    `Overhang ${formatLength(rake.overhangIn)} to the barge rafter's outer face.`,
    ...(crossed === ''
      ? []
      : [`It is ${rake.notch === null ? 'nailed to the faces of' : 'let into'} ${crossed}.`]),
    ...(lookout.meets === null
      ? []
      : [
          `Its inner end meets ${lookout.meets.label}, ${formatLength(lookout.meets.outerInsideIn)} in from the wall's framing face.`,
        ]),
    `It is cut ${formatLength(inchesOf(lookout.lengthSixteenths))}.`,
  ].join(' ');
}

function boxShape(
  { fromIn, toIn, topIn, bottomIn }: Box,
  fill: 'old' | 'new' | 'whole' | 'paper',
  title: string,
  ref?: string,
): Shape {
  return {
    kind: 'polygon',
    points: [
      [fromIn, topIn],
      [toIn, topIn],
      [toIn, bottomIn],
      [fromIn, bottomIn],
    ],
    pen: fill === 'old' ? 'old' : 'new',
    fill,
    title,
    ...(ref === undefined ? {} : { ref }),
  };
}
