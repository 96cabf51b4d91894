import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { formatLength } from '../units/format-length.ts';
import { entryValue } from './entry-value.ts';
import {
  chosenPart,
  findRafter,
  findTail,
  nextRafter,
  ownOrEavePart,
  stationPart,
  type FoundRafter,
  type FoundTail,
} from './found.ts';
import type { Explanation, TracePart } from './trace.ts';
import type { Bay } from '../layout/layout-types.ts';

/** Where a rafter's centre, or that of a tail hung between two, stands on the wall line. `station/EAVE/RAFTER` or `/TAIL` */
export function explainStation(rest: string, input: JobInput, result: JobResult): Explanation | undefined {
  const rafter = findRafter(rest, input, result);
  if (rafter !== undefined) return rafterStation(`station/${rest}`, rafter);
  const tail = findTail(rest, input, result);
  return tail === undefined ? undefined : tailStation(`station/${rest}`, tail, input);
}

function rafterStation(ref: string, found: FoundRafter): Explanation {
  const { layout, eave, rafter } = found;
  const station = formatLength(rafter.centreIn);
  const thickness = formatLength(rafter.thicknessIn);
  const reading: TracePart = {
    label: `Tape reading at rafter ${rafter.number}`,
    value: formatLength(found.reading.readingIn),
    ref: `reading/${layout.eaveId}/${rafter.id}`,
  };
  const own = ownOrEavePart(found, 'thicknessIn');
  const previous = layout.rafters.find(({ number }) => number === rafter.number - 1);
  const fromLast = previous === undefined ? [] : [stationPart({ ...found, rafter: previous })];
  const shown = { ref, title: `Station of rafter ${rafter.number}, ${layout.name}`, value: station };
  if (eave.readingMode === 'running') {
    const toCentre = eave.readingTo === 'centre';
    return {
      ...shown,
      how: toCentre
        ? `Read to the rafter's centre, so the reading is the station: ${station}.`
        : `Read to the ${eave.readingTo === 'near-face' ? 'near face, plus' : 'far face, less'} half the thickness of ${thickness}: ${station} to the centre.`,
      parts: toCentre ? [reading] : [reading, ...own],
    };
  }
  const from = previous === undefined ? "the wall's left end" : `rafter ${previous.number}`;
  return eave.readingMode === 'bays-centres'
    ? { ...shown, how: `Centre to centre from ${from}: ${station}.`, parts: [...fromLast, reading] }
    : {
        ...shown,
        how: `Clear from ${from}, plus half the thickness of ${thickness}: ${station} to the centre.`,
        parts: [...fromLast, reading, ...own],
      };
}

function tailStation(ref: string, found: FoundTail, input: JobInput): Explanation {
  const { layout, extender, left, right, design } = found;
  const between =
    right === null
      ? `past rafter ${left.rafter.number}`
      : `between rafters ${left.rafter.number} and ${right.rafter.number}`;
  const added = design.addedTails.find(({ id }) => id === extender.id);
  const built = input.design.asBuilt.find(
    ({ eaveId, extenderId }) => eaveId === layout.eaveId && extenderId === extender.id,
  );
  return {
    ref,
    title: `Station of ${extender.mark}, ${layout.name}`,
    value: formatLength(extender.centreIn),
    how: `Hung ${between}: ${becauseWords(found)}.`,
    parts: [
      ...(added === undefined
        ? []
        : [chosenPart(found, 'addedTails', 'Put in by hand at', formatLength(added.stationIn))]),
      ...(built === undefined || built.stationIn === null
        ? []
        : [{ label: 'Typed back as built', value: formatLength(built.stationIn) }]),
      ...(extender.because === 'gap' || extender.because === 'even'
        ? [
            chosenPart(
              found,
              'layout.largestGapIn',
              'Largest gap between tails',
              design.layout.largestGapIn === null
                ? 'from sheathing, fascia and soffit'
                : entryValue('largestGapIn', design.layout.largestGapIn),
            ),
          ]
        : []),
      ...(extender.because === 'panel-joint'
        ? [chosenPart(found, 'sheathing.kind', 'Sheathing', entryValue('kind', design.sheathing.kind))]
        : []),
      stationPart(left),
      ...(right === null ? [] : [stationPart(right)]),
    ],
  };
}

function becauseWords({ extender }: FoundTail): string {
  switch (extender.because) {
    case 'pinned':
      return 'you put it there';
    case 'built':
      return 'that is where it was built';
    case 'gap':
      return 'without it the gap between its neighbours is too wide';
    case 'panel-joint':
      return 'a joint of the sheathing panels lands on it';
    case 'even':
      return 'there it makes the gaps even';
    case 'preferred':
    case 'moved':
      return extender.clash === null
        ? 'the rafter that it stands for has no side free'
        : `the rafter that it stands for has no side free. In the way: ${extender.clash}`;
    default:
      return extender.because satisfies never;
  }
}

/** The clear bay right of a rafter; where a joist or extender divides it, each part. `bay/EAVE/RAFTER` */
export function explainBay(rest: string, input: JobInput, result: JobResult): Explanation | undefined {
  const found = findRafter(rest, input, result);
  const bays = found?.layout.bays.filter(({ leftRafterId }) => leftRafterId === found.rafter.id) ?? [];
  const first = bays[0];
  const last = bays.at(-1);
  if (found === undefined || first === undefined || last === undefined) return undefined;
  const { layout, rafter } = found;
  const next = nextRafter(found);
  const both = next === undefined ? [found] : [found, next];
  return {
    ref: `bay/${rest}`,
    title: `Bay right of rafter ${rafter.number}, ${layout.name}`,
    value: bays.map(({ clearIn }) => formatLength(clearIn)).join(' and '),
    how: bays.map(bayInWords).join(' '),
    parts: [
      ...both.map(stationPart),
      ...both.flatMap((one) => ownOrEavePart(one, 'thicknessIn')),
      ...layout.extenders
        .filter(({ leftIn, rightIn }) => rightIn >= first.fromIn - 0.1 && leftIn <= last.toIn + 0.1)
        .map((extender) => ({
          label: `Extender ${extender.mark} takes ${formatLength(extender.rightIn - extender.leftIn)}`,
          value:
            extender.method === 'block-hung'
              ? `hung at ${formatLength(extender.centreIn)}`
              : `${extender.side} of rafter ${extender.rafterNumber}`,
          ref:
            extender.method === 'block-hung'
              ? `station/${layout.eaveId}/${extender.id}`
              : `design/${layout.eaveId}/extender`,
        })),
    ],
  };
}

function bayInWords(bay: Bay): string {
  return `${bay.mark}: from the face at ${formatLength(bay.fromIn)} to the face at ${formatLength(bay.toIn)}, ${formatLength(bay.clearIn)} clear.`;
}
