import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { Extender } from '../layout/layout-types.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import { outText } from '../units/offset-words.ts';
import { formatPitch } from '../units/pitch.ts';
import { inchesOf } from '../units/sixteenths.ts';
import { entryValue } from './entry-value.ts';
import {
  chosenPart,
  findTail,
  ownOrEavePart,
  stationPart,
  type FoundRafter,
  type FoundTail,
} from './found.ts';
import { surroundingReadings } from './explain-wall.ts';
import type { Explanation, TracePart } from './trace.ts';

/** How one tail was solved. `section/EAVE/TAIL` */
export function explainSection(rest: string, input: JobInput, result: JobResult): Explanation | undefined {
  const found = findTail(rest, input, result);
  if (found === undefined) return undefined;
  const { layout, extender, design, left } = found;
  return {
    ref: `section/${rest}`,
    title: `Section of ${extender.mark}, ${placeWords(found)}, ${layout.name}`,
    value: formatLength(inchesOf(extender.blankSixteenths)),
    how: lengthInWords(extender, design.trimAllowanceIn),
    parts: [
      overhangPart(found),
      ...roofParts(found),
      linePart(found),
      ...kickUpParts(found),
      chosenPart(found, 'extender', 'Extender', entryValue('extender', design.extender)),
      ...(extender.method === 'full-length'
        ? [spanPart(found)]
        : [chosenPart(found, 'backspanRatio', 'Backspan, times the overhang', String(design.backspanRatio))]),
      ...rafters(found).flatMap((rafter) => ownOrEavePart(rafter, 'clearBackspanIn')),
      chosenPart(found, 'tailCut', 'Tail cut', entryValue('tailCut', design.tailCut)),
      chosenPart(found, 'backEnd', 'Back end', entryValue('backEnd', design.backEnd)),
      chosenPart(found, 'trimAllowanceIn', 'Trimming allowance', formatLength(design.trimAllowanceIn)),
      extender.method === 'block-hung'
        ? {
            label: `Station of ${extender.mark}`,
            value: formatLength(extender.centreIn),
            ref: `station/${rest}`,
          }
        : stationPart(left),
    ],
  };
}

/** A tail's own overhang on a bowed wall. `overhang/EAVE/TAIL` */
export function explainOverhang(rest: string, input: JobInput, result: JobResult): Explanation | undefined {
  const found = findTail(rest, input, result);
  if (found === undefined) return undefined;
  const { layout, extender, eave, design } = found;
  const { outIn } = layout.lineInPlan;
  const own = formatInches(extender.overhangLevelIn);
  const there = outText(extender.wallOutIn);
  return {
    ref: `overhang/${rest}`,
    title: `Overhang of ${extender.mark}, ${layout.name}`,
    value: own,
    how:
      outIn === null
        ? `The fascia follows the wall's bow, so every tail sticks out as stated: ${own}.`
        : `The line of the tails lies ${formatInches(outIn)} out of the reference line, and the wall's face here ${there}: ${own} is left.`,
    parts: [
      chosenPart(found, 'overhangIn', 'Overhang as given', entryValue('overhangIn', design.overhangIn)),
      chosenPart(found, 'fasciaInPlan', 'Fascia in plan', entryValue('fasciaInPlan', design.fasciaInPlan)),
      chosenPart(found, 'overhangFrom', 'Measured from', entryValue('overhangFrom', design.overhangFrom)),
      ...surroundingReadings('wall', layout.eaveId, eave.wallReadings, extender.centreIn, ({ outIn: out }) =>
        outText(out),
      ),
    ],
  };
}

/** How a tail meets the plate: seat, shim or packer. `fit/EAVE/TAIL` */
export function explainFit(rest: string, input: JobInput, result: JobResult): Explanation | undefined {
  const found = findTail(rest, input, result);
  if (found === undefined) return undefined;
  const { layout, extender, design } = found;
  const { section, fit } = extender;
  const packer = section.kickUp !== null;
  const height = `The tail's own top edge stands ${formatInches(section.heightAbovePlateIn)} above the plate at the wall; it is ${formatInches(section.plumbDepthIn)} deep, measured plumb`;
  const against = `Against the old rafter's top edge it stands ${aboveWords(inchesOf(fit.aboveRafterSixteenths))} there.`;
  const [value, how] =
    fit.shimSixteenths > 0
      ? [
          `${packer ? 'packer' : 'shim'} ${formatInches(inchesOf(fit.shimSixteenths))}`,
          `${height}, so it clears the plate by ${formatInches(inchesOf(fit.shimSixteenths))}.`,
        ]
      : fit.heelSixteenths > 0
        ? [
            `heel ${formatInches(inchesOf(fit.heelSixteenths))}, seat ${formatInches(inchesOf(fit.seatSixteenths))}`,
            `${height}, so it is cut over the plate by ${formatInches(inchesOf(fit.heelSixteenths))}; level, the seat is ${formatInches(inchesOf(fit.seatSixteenths))}.`,
          ]
        : ['neither', `${height}: its lower edge meets the plate's corner.`];
  return {
    ref: `fit/${rest}`,
    title: `${packer ? 'Seat or packer' : 'Seat or shim'} of ${extender.mark}, ${layout.name}`,
    value,
    how: `${how} ${against}`,
    parts: [
      ...roofParts(found),
      linePart(found),
      ...kickUpParts(found),
      overhangPart(found),
      chosenPart(found, 'extender', 'Extender', entryValue('extender', design.extender)),
    ],
  };
}

/** What a filler is built of, and how long it is. `filler/EAVE/TAIL` */
export function explainFiller(rest: string, input: JobInput, result: JobResult): Explanation | undefined {
  const found = findTail(rest, input, result);
  const filler = found?.extender.filler ?? null;
  if (found === undefined || filler === null) return undefined;
  const { layout, left } = found;
  const off =
    Math.abs(filler.offIn) < 1 / 32
      ? 'exactly'
      : `${formatInches(Math.abs(filler.offIn))} ${filler.offIn > 0 ? 'short of it' : 'over it'}`;
  const own = left.reading.joistThicknessIn !== null;
  return {
    ref: `filler/${rest}`,
    title: `Filler ${filler.mark}, ${layout.name}`,
    value: formatLength(inchesOf(filler.lengthSixteenths)),
    how: `As thick as the joist between rafter ${left.rafter.number} and its tail, ${formatInches(filler.wantedIn)}: built ${off}. It begins where the rafter is clear of the joist and ends at the tail's back end, ${formatLength(inchesOf(filler.lengthSixteenths))} long.`,
    parts: [
      {
        label: `Joist at rafter ${left.rafter.number}${own ? ' (measured here)' : ' (of the eave)'}`,
        value: formatInches(filler.wantedIn),
        ref: own
          ? `rafter/${layout.eaveId}/${left.rafter.id}/joistThicknessIn`
          : `eave/${layout.eaveId}/joistThicknessIn`,
      },
      ...filler.layers.map(({ name, itemId, thicknessIn }) => ({
        label: `Layer: ${name}`,
        value: formatInches(thicknessIn),
        ...(itemId === null ? {} : { ref: `price/${itemId}` }),
      })),
      { label: "Its tail's section", value: found.extender.mark, ref: `section/${rest}` },
    ],
  };
}

/** Length and place of the header block that a tail hangs on. `header/EAVE/TAIL` */
export function explainHeader(rest: string, input: JobInput, result: JobResult): Explanation | undefined {
  const found = findTail(rest, input, result);
  const header = found?.extender.headers[0];
  if (found === undefined || header === undefined) return undefined;
  const { layout, extender } = found;
  const length = formatLength(inchesOf(header.lengthSixteenths));
  return {
    ref: `header/${rest}`,
    title: `Header block ${header.mark}, ${layout.name}`,
    value: length,
    how: `From the face at ${formatLength(header.leftIn)} to the face at ${formatLength(header.rightIn)}, rounded down to a sixteenth: ${length}. It stands at the back end of ${extender.mark}, ${formatLength(header.alongIn)} up the slope from the wall line.`,
    parts: [
      ...rafters(found).flatMap((one) => [stationPart(one), ...ownOrEavePart(one, 'thicknessIn')]),
      { label: "Its tail's section", value: extender.mark, ref: `section/${rest}` },
    ],
  };
}

function rafters({ left, right }: FoundTail): readonly FoundRafter[] {
  return right === null ? [left] : [left, right];
}

function placeWords({ extender, left, right }: FoundTail): string {
  if (extender.method !== 'block-hung') return `rafter ${left.rafter.number}`;
  return right === null
    ? `past rafter ${left.rafter.number}`
    : `between rafters ${left.rafter.number} and ${right.rafter.number}`;
}

function overhangPart(found: FoundTail): TracePart {
  const { layout, extender, design } = found;
  return layout.lineInPlan.bowed
    ? {
        label: 'Its own overhang from the bowed wall',
        value: formatInches(extender.overhangLevelIn),
        ref: `overhang/${layout.eaveId}/${extender.id}`,
      }
    : chosenPart(found, 'overhangIn', 'Overhang as given', entryValue('overhangIn', design.overhangIn));
}

function roofParts(found: FoundTail): readonly TracePart[] {
  return rafters(found).flatMap((one) => [
    ...ownOrEavePart(one, 'pitchRisePer12'),
    ...ownOrEavePart(one, 'heightAbovePlateIn'),
  ]);
}

function linePart({ layout, extender }: FoundTail): TracePart {
  const up = extender.liftAtTailIn < 0 ? 'down' : 'up';
  return {
    label: `Tail set to the fascia line, ${up} ${formatLength(Math.abs(extender.liftAtTailIn))}; own pitch ${formatPitch(extender.pitchRisePer12)}`,
    value: formatLength(extender.section.tailTopAbovePlateIn),
    ref: `fascia-line/${layout.eaveId}`,
  };
}

function kickUpParts(found: FoundTail): readonly TracePart[] {
  const { extender, design } = found;
  if (extender.section.kickUp === null) return [];
  return [
    chosenPart(
      found,
      'kickUpPitchRisePer12',
      'Kicked up to',
      formatPitch(design.kickUpPitchRisePer12 ?? extender.pitchRisePer12),
    ),
    chosenPart(
      found,
      'kickUpRaiseIn',
      'Raised above the old rafter at the wall',
      formatInches(design.kickUpRaiseIn),
    ),
  ];
}

function spanPart({ layout, eave }: FoundTail): TracePart {
  return {
    label: 'Level span to the ridge or purlin',
    value: entryValue('rafterSpanIn', eave.rafterSpanIn),
    ref: `eave/${layout.eaveId}/rafterSpanIn`,
  };
}

function aboveWords(byIn: number): string {
  if (byIn === 0) return 'flush';
  return `${formatInches(Math.abs(byIn))} ${byIn > 0 ? 'higher' : 'lower'}`;
}

function lengthInWords({ section, blankSixteenths }: Extender, trimIn: number): string {
  const tailExtra = section.finishedLengthIn - section.overhangAlongIn - section.backspanIn;
  return [
    `Overhang ${formatLength(section.overhangLevelIn)} level x ${section.slopeFactor.toFixed(4)} = ${formatLength(section.overhangAlongIn)} along the slope.`,
    `Backspan ${formatLength(section.backspanIn)} (${section.backspanRatio.toFixed(2)} times the overhang).`,
    ...(tailExtra > 1 / 32 ? [`The tail cut adds ${formatLength(tailExtra)}.`] : []),
    ...(trimIn > 0 ? [`Trimming allowance ${formatLength(trimIn)}.`] : []),
    `Together ${formatLength(inchesOf(blankSixteenths))}, rounded up to a sixteenth.`,
  ].join(' ');
}
