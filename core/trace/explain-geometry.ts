import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { Bay, EaveLayout, Extender, PlacedRafter } from '../layout/layout-types.ts';
import type { RafterSurvey, EaveSurvey } from '../survey/survey-document.ts';
import { formatLength } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import { inchesOf } from '../units/sixteenths.ts';
import { entryValue } from './entry-value.ts';
import { ownerOf } from './ref.ts';
import type { Explanation, TracePart } from './trace.ts';

/** A rafter, laid out and as surveyed. */
type Found = {
  readonly layout: EaveLayout;
  readonly eave: EaveSurvey;
  readonly rafter: PlacedRafter;
  readonly reading: RafterSurvey;
};

/** Where a rafter's centre stands on the wall line. `station/EAVE/RAFTER` */
export function explainStation(rest: string, input: JobInput, result: JobResult): Explanation | undefined {
  const found = findRafter(rest, input, result);
  if (found === undefined) return undefined;
  const { layout, eave, rafter } = found;
  const station = formatLength(rafter.centreIn);
  const thickness = formatLength(rafter.thicknessIn);
  const previous = layout.rafters.find(({ number }) => number === rafter.number - 1);
  const reading: TracePart = {
    label: `Tape reading at rafter ${rafter.number}`,
    value: formatLength(found.reading.readingIn),
    ref: `reading/${rest}`,
  };
  const own = ownOrEave(found, 'thicknessIn', 'rafterThicknessIn', 'Thickness of the rafter', thickness);
  const fromLast: readonly TracePart[] =
    previous === undefined
      ? []
      : [
          {
            label: `Station of rafter ${previous.number}`,
            value: formatLength(previous.centreIn),
            ref: `station/${layout.eaveId}/${previous.id}`,
          },
        ];
  const shown = {
    ref: `station/${rest}`,
    title: `Station of rafter ${rafter.number}, ${layout.name}`,
    value: station,
  };
  if (eave.readingMode === 'running') {
    const toCentre = eave.readingTo === 'centre';
    return {
      ...shown,
      how: toCentre
        ? `Read to the rafter's centre, so the reading is the station: ${station}.`
        : `Read to the ${eave.readingTo === 'near-face' ? 'near face, plus' : 'far face, less'} half the thickness of ${thickness}: ${station} to the centre.`,
      parts: toCentre ? [reading] : [reading, own],
    };
  }
  const from = previous === undefined ? "the wall's left end" : `rafter ${previous.number}`;
  return eave.readingMode === 'bays-centres'
    ? { ...shown, how: `Centre to centre from ${from}: ${station}.`, parts: [...fromLast, reading] }
    : {
        ...shown,
        how: `Clear from ${from}, plus half the thickness of ${thickness}: ${station} to the centre.`,
        parts: [...fromLast, reading, own],
      };
}

/** How one tail was solved. `section/EAVE/RAFTER` */
export function explainSection(rest: string, input: JobInput, result: JobResult): Explanation | undefined {
  const found = findRafter(rest, input, result);
  const extender = found?.layout.extenders.find(({ rafterId }) => rafterId === found.rafter.id);
  const design = input.design.eaves.find(({ eaveId }) => eaveId === found?.layout.eaveId);
  if (found === undefined || extender === undefined || design === undefined) return undefined;
  const { layout, rafter } = found;
  const chosen = (field: string, label: string, value: string): TracePart => ({
    label,
    value,
    ref: `design/${layout.eaveId}/${field}`,
  });
  return {
    ref: `section/${rest}`,
    title: `Section of ${extender.mark}, rafter ${rafter.number}, ${layout.name}`,
    value: formatLength(inchesOf(extender.blankSixteenths)),
    how: lengthInWords(extender, design.trimAllowanceIn),
    parts: [
      chosen('overhangIn', 'Overhang as given', entryValue('overhangIn', design.overhangIn)),
      ownOrEave(
        found,
        'pitchRisePer12',
        'pitchRisePer12',
        'Pitch of the rafter',
        formatPitch(rafter.pitchRisePer12),
      ),
      ownOrEave(
        found,
        'heightAbovePlateIn',
        'heightAbovePlateIn',
        'Height above plate',
        formatLength(rafter.heightAbovePlateIn),
      ),
      chosen(
        'fasciaLine',
        `Tail set to the fascia line, ${extender.liftAtTailIn < 0 ? 'down' : 'up'} ${formatLength(Math.abs(extender.liftAtTailIn))}; own pitch ${formatPitch(extender.pitchRisePer12)}`,
        design.fasciaLine,
      ),
      chosen('extender', 'Extender', entryValue('extender', design.extender)),
      chosen('backspanRatio', 'Backspan, times the overhang', String(design.backspanRatio)),
      ...(rafter.clearBackspanIn === null
        ? []
        : [
            ownOrEave(
              found,
              'clearBackspanIn',
              'clearBackspanIn',
              'Clear backspan',
              formatLength(rafter.clearBackspanIn),
            ),
          ]),
      chosen('tailCut', 'Tail cut', design.tailCut),
      chosen('trimAllowanceIn', 'Trimming allowance', formatLength(design.trimAllowanceIn)),
      {
        label: `Station of rafter ${rafter.number}`,
        value: formatLength(rafter.centreIn),
        ref: `station/${rest}`,
      },
    ],
  };
}

/** The clear bay right of a rafter; where a joist or extender divides it, each part. `bay/EAVE/RAFTER` */
export function explainBay(rest: string, input: JobInput, result: JobResult): Explanation | undefined {
  const found = findRafter(rest, input, result);
  const bays = found?.layout.bays.filter(({ leftRafterId }) => leftRafterId === found.rafter.id) ?? [];
  const first = bays[0];
  const last = bays.at(-1);
  if (found === undefined || first === undefined || last === undefined) return undefined;
  const { layout, rafter } = found;
  const next = layout.rafters.find(({ number }) => number === rafter.number + 1);
  return {
    ref: `bay/${rest}`,
    title: `Bay right of rafter ${rafter.number}, ${layout.name}`,
    value: bays.map(({ clearIn }) => formatLength(clearIn)).join(' and '),
    how: bays.map(bayInWords).join(' '),
    parts: [
      stationPart(layout, rafter),
      ...(next === undefined ? [] : [stationPart(layout, next)]),
      ...[rafter, ...(next === undefined ? [] : [next])].map((one) =>
        ownOrEave(
          { ...found, rafter: one, reading: readingOf(found.eave, one) },
          'thicknessIn',
          'rafterThicknessIn',
          `Thickness of rafter ${one.number}`,
          formatLength(one.thicknessIn),
        ),
      ),
      ...layout.extenders
        .filter(({ leftIn, rightIn }) => rightIn >= first.fromIn - 0.1 && leftIn <= last.toIn + 0.1)
        .map((extender) => ({
          label: `Extender ${extender.mark} takes ${formatLength(extender.rightIn - extender.leftIn)}`,
          value: `${extender.side} of rafter ${extender.rafterNumber}`,
          ref: `design/${layout.eaveId}/extender`,
        })),
    ],
  };
}

function bayInWords(bay: Bay): string {
  return `${bay.mark}: from the face at ${formatLength(bay.fromIn)} to the face at ${formatLength(bay.toIn)}, ${formatLength(bay.clearIn)} clear.`;
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

function stationPart(layout: EaveLayout, rafter: PlacedRafter): TracePart {
  return {
    label: `Station of rafter ${rafter.number}`,
    value: formatLength(rafter.centreIn),
    ref: `station/${layout.eaveId}/${rafter.id}`,
  };
}

/** The entry measured at the rafter, or the eave's own where it was left blank. */
function ownOrEave(
  { layout, rafter, reading }: Found,
  ownField: 'thicknessIn' | 'pitchRisePer12' | 'heightAbovePlateIn' | 'clearBackspanIn',
  eaveField: keyof EaveSurvey,
  label: string,
  value: string,
): TracePart {
  return reading[ownField] === null
    ? { label: `${label} (of the eave)`, value, ref: `eave/${layout.eaveId}/${eaveField}` }
    : { label: `${label} (measured here)`, value, ref: `rafter/${layout.eaveId}/${rafter.id}/${ownField}` };
}

function findRafter(rest: string, input: JobInput, result: JobResult): Found | undefined {
  const found = ownerOf(rest, result.eaves, ({ eaveId }) => eaveId);
  const rafter = found?.owner.rafters.find(({ id }) => id === found.rest);
  const eave = input.survey.eaves.find(({ id }) => id === found?.owner.eaveId);
  const reading = eave?.rafters.find(({ id }) => id === rafter?.id);
  return found === undefined || rafter === undefined || eave === undefined || reading === undefined
    ? undefined
    : { layout: found.owner, eave, rafter, reading };
}

function readingOf(eave: EaveSurvey, rafter: PlacedRafter): RafterSurvey {
  const reading = eave.rafters.find(({ id }) => id === rafter.id);
  if (reading === undefined) throw new Error(`rafter ${rafter.id} is laid out but was not surveyed`);
  return reading;
}
