import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { CrossedMember, Lookout, RakeBoard, RakeLayout } from '../rake/rake-types.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import { inchesOf } from '../units/sixteenths.ts';
import { stripText } from '../rake/rake-strip.ts';
import { entered, valueAt } from './explain-entry.ts';
import { rakeEntryName } from './entry-labels.ts';
import { ownerOf, splitRef } from './ref.ts';
import type { Explanation, TracePart } from './trace.ts';

/**
 * A figure of a rake, or an entry of its survey or design. `rake/ID/lookout/MARK`, `rake/ID/barge`, `rake/ID/rail`,
 * `rake/ID/fascia`, `rake/ID/strip`, `rake/ID/line` (its pitch), `rake/ID/survey/FIELD`, `rake/ID/design/FIELD`
 */
export function explainRake(rest: string, input: JobInput, result: JobResult): Explanation | undefined {
  const measured = ownerOf(rest, input.survey.rakes, ({ id }) => id);
  if (measured === undefined) return undefined;
  const ref = `rake/${rest}`;
  const { owner: survey } = measured;
  const { kind, rest: key } = splitRef(measured.rest);
  const name = survey.name.trim();
  if (kind === 'survey') {
    const value = valueAt(survey, key);
    return value === undefined
      ? undefined
      : ofRake(entered(ref, key, value, name, 'Measured or entered in the survey.'), key, name);
  }
  const design = input.design.rakes.find(({ rakeId }) => rakeId === survey.id);
  if (kind === 'design') {
    const value = design === undefined ? undefined : valueAt(design, key);
    return value === undefined
      ? undefined
      : ofRake(entered(ref, key, value, name, 'Chosen in the design.'), key, name);
  }
  const rake = result.rakes.find(({ rakeId }) => rakeId === survey.id);
  if (rake === undefined) return undefined;
  switch (kind) {
    case 'line':
      return explainLine(rake, ref, input, result);
    case 'lookout':
      return explainLookout(rake, key, ref, input, result);
    case 'barge':
      return explainBoards(rake, ref, 'Barge rafter', rake.barge, bargeWords(rake));
    case 'rail':
      return explainBoards(rake, ref, 'Rail of the ladder', rake.rails, bargeWords(rake));
    case 'fascia':
      return explainBoards(rake, ref, 'Rake fascia', rake.fascia, fasciaWords(rake));
    case 'strip':
      return explainStrip(rake, ref);
    default:
      return undefined;
  }
}

/** The entry under the name that the screen gives it. */
function ofRake(explanation: Explanation, key: string, name: string): Explanation {
  const label = rakeEntryName(key);
  return label === undefined ? explanation : { ...explanation, title: `${label}, ${name}` };
}

function entryPart(
  rake: RakeLayout,
  where: 'survey' | 'design',
  field: string,
  label: string,
  value: string,
): TracePart {
  return { label, value, ref: `rake/${rake.rakeId}/${where}/${field}` };
}

/** Straight from the ridge to the eave's fascia line. */
function explainLine(rake: RakeLayout, ref: string, input: JobInput, result: JobResult): Explanation {
  const { gable } = rake;
  const ownPitch = input.survey.rakes.find(({ id }) => id === rake.rakeId)?.pitchRisePer12 ?? null;
  return {
    ref,
    title: `Pitch of the barge rafter, ${rake.name}`,
    value: formatPitch(rake.pitchRisePer12),
    how: `Straight from the gable rafter's top edge at the ridge, ${formatLength(rake.ridgeTopIn)} above the plate, to the eave's fascia line, ${formatLength(rake.tailTopIn)} above it: ${formatLength(rake.ridgeTopIn - rake.tailTopIn)} of rise over ${formatLength(rake.runIn + rake.eaveOverhangIn)} level, ${formatPitch(rake.pitchRisePer12)}.`,
    parts: [
      entryPart(rake, 'survey', 'runIn', 'Wall to ridge, level', formatLength(rake.runIn)),
      ownPitch === null
        ? {
            label: `Pitch of the gable rafter (rafter ${gable.number})`,
            value: formatPitch(gable.pitchRisePer12),
            ref: gablePitchRef(rake, input),
          }
        : entryPart(
            rake,
            'survey',
            'pitchRisePer12',
            'Pitch of the gable rafter, measured there',
            formatPitch(ownPitch),
          ),
      eaveTailPart(rake, result),
    ],
  };
}

/** The rafter's own pitch where it was measured, else the eave's. */
function gablePitchRef({ eaveId, gable }: RakeLayout, input: JobInput): string {
  const eave = input.survey.eaves.find(({ id }) => id === eaveId);
  const own = eave?.rafters.find(({ id }) => id === gable.rafterId)?.pitchRisePer12 ?? null;
  return own === null ? `eave/${eaveId}/pitchRisePer12` : `rafter/${eaveId}/${gable.rafterId}/pitchRisePer12`;
}

/** The tail at the gable, whose top corner the barge rafter meets; the overhang as given where none stands. */
function eaveTailPart(rake: RakeLayout, result: JobResult): TracePart {
  const layout = result.eaves.find(({ eaveId }) => eaveId === rake.eaveId);
  const tail = layout?.extenders.find(
    ({ rafterId, method }) => rafterId === rake.gable.rafterId && method !== 'block-hung',
  );
  const value = formatLength(rake.eaveOverhangIn);
  return tail === undefined
    ? { label: "The eave's overhang", value, ref: `design/${rake.eaveId}/overhangIn` }
    : {
        label: `Overhang of the tail at the gable, ${tail.mark}`,
        value,
        ref: `section/${rake.eaveId}/${tail.id}`,
      };
}

function explainLookout(
  rake: RakeLayout,
  mark: string,
  ref: string,
  input: JobInput,
  result: JobResult,
): Explanation | undefined {
  const lookout = rake.lookouts.find((one) => one.mark === mark);
  const design = input.design.rakes.find(({ rakeId }) => rakeId === rake.rakeId);
  const survey = input.survey.rakes.find(({ id }) => id === rake.rakeId);
  if (lookout === undefined || design === undefined || survey === undefined) return undefined;
  const { meets } = lookout;
  return {
    ref,
    title: `${mark}, ${rake.name}`,
    value: formatLength(inchesOf(lookout.lengthSixteenths)),
    how: `${placeWords(rake, lookout)} ${lengthWords(rake, lookout)}`,
    parts: [
      entryPart(rake, 'design', 'overhangIn', 'Overhang at the rake', formatLength(rake.overhangIn)),
      entryPart(rake, 'design', 'spacingIn', 'Largest spacing', formatLength(rake.largestSpacingIn)),
      entryPart(
        rake,
        'design',
        'barge',
        `Barge rafter, ${formatInches(rake.bargeSize.thicknessIn)} thick`,
        rake.bargeStock.section,
      ),
      ...(rake.kind === 'ladder'
        ? [
            entryPart(
              rake,
              'survey',
              'finishIn',
              'Left on the gable wall behind it',
              formatInches(survey.finishIn),
            ),
          ]
        : [
            entryPart(
              rake,
              'design',
              'trimAllowanceIn',
              'Long by, to trim',
              formatInches(design.trimAllowanceIn),
            ),
          ]),
      ...(meets === null ? [] : [insidePart(rake, meets, survey.firstInsideIn, result)]),
      {
        label: 'Slope of the barge rafter',
        value: formatPitch(rake.pitchRisePer12),
        ref: `rake/${rake.rakeId}/line`,
      },
    ],
  };
}

function insidePart(
  rake: RakeLayout,
  meets: CrossedMember,
  firstInsideIn: number | null,
  result: JobResult,
): TracePart {
  const layout = result.eaves.find(({ eaveId }) => eaveId === rake.eaveId);
  const label = `Near face of ${meets.label}, in from the gable`;
  const value = formatLength(meets.outerInsideIn);
  if (
    meets.kind === 'rafter' &&
    firstInsideIn !== null &&
    Math.abs(firstInsideIn - meets.outerInsideIn) < 1e-9
  )
    return entryPart(rake, 'survey', 'firstInsideIn', label, value);
  const extender = layout?.extenders.find(({ mark }) => mark === meets.label);
  if (extender !== undefined) return { label, value, ref: `section/${rake.eaveId}/${extender.id}` };
  const rafter = layout?.rafters.find(({ number }) => meets.label === `rafter ${number}`);
  return rafter === undefined
    ? { label, value }
    : { label, value, ref: `station/${rake.eaveId}/${rafter.id}` };
}

function placeWords(rake: RakeLayout, lookout: Lookout): string {
  const at = `${formatLength(lookout.alongIn)} up the slope from the tail's top corner`;
  switch (lookout.because) {
    case 'eave':
      return `${at}: the first, clear of the eave's fascia.`;
    case 'ridge':
      return `${at}: the last, clear of the ridge cut.`;
    case 'panel-joint':
      return `${at}: under a joint of the panels.`;
    case 'spacing':
      return `${at}: evenly between its neighbours, no more than ${formatLength(rake.largestSpacingIn)} apart.`;
    default:
      return lookout.because satisfies never;
  }
}

function lengthWords(rake: RakeLayout, lookout: Lookout): string {
  const outIn = rake.overhangIn - rake.bargeSize.thicknessIn;
  const cut = formatLength(inchesOf(lookout.lengthSixteenths));
  if (rake.kind === 'ladder')
    return `Between rail and barge rafter: ${formatLength(lookout.lengthIn)}, rounded down to ${cut}.`;
  const inner = lookout.lengthIn - outIn;
  const to =
    lookout.block === null
      ? (lookout.meets?.label ?? 'the first rafter inside')
      : (lookout.crosses[0]?.label ?? 'the gable rafter');
  return `To the barge rafter's inner face ${formatLength(outIn)}, and in to ${to} ${formatLength(inner)}: ${formatLength(lookout.lengthIn)} in place, cut ${cut} long.`;
}

function explainBoards(
  rake: RakeLayout,
  ref: string,
  what: string,
  boards: readonly RakeBoard[],
  how: string,
): Explanation | undefined {
  if (boards.length === 0) return undefined;
  return {
    ref,
    title: `${what}, ${rake.name}`,
    value: boards.map(({ lengthSixteenths }) => formatLength(inchesOf(lengthSixteenths))).join(' and '),
    how,
    parts: [
      {
        label: 'Slope of the barge rafter',
        value: formatPitch(rake.pitchRisePer12),
        ref: `rake/${rake.rakeId}/line`,
      },
      entryPart(rake, 'survey', 'runIn', 'Wall to ridge, level', formatLength(rake.runIn)),
      entryPart(rake, 'survey', 'ridgeThicknessIn', 'Ridge', formatInches(rake.ridgeThicknessIn)),
      {
        label: "The eave's tail cut",
        value: rake.tailCut,
        ref: `design/${rake.eaveId}/tailCut`,
      },
    ],
  };
}

function bargeWords(rake: RakeLayout): string {
  const level = rake.runIn - rake.ridgeThicknessIn / 2 + rake.eaveOverhangIn;
  const tail = rake.tailCut === 'plumb' ? ' The plumb tail adds depth times slope.' : '';
  return `Level ${formatLength(rake.runIn)} to the ridge's centre line, less half the ridge, plus the eave's ${formatLength(rake.eaveOverhangIn)}: ${formatLength(level)} x ${rake.slopeFactor.toFixed(4)} = ${formatLength(level * rake.slopeFactor)} along the slope.${tail} Rounded up to a sixteenth${rake.barge.length > 1 ? ', jointed on lookouts' : ''}.`;
}

function fasciaWords(rake: RakeLayout): string {
  return `From the corner's long point, ${formatInches(rake.corner.rakeLongAlongIn)} past the tail's top corner, to the ridge's centre line ${formatLength(rake.alongIn)} up the slope.${rake.tailCut === 'plumb' ? ' The plumb corner cut adds depth times slope.' : ''} Rounded up to a sixteenth${rake.fascia.length > 1 ? ', jointed with bevels on lookouts' : ''}.`;
}

function explainStrip(rake: RakeLayout, ref: string): Explanation | undefined {
  const { strip } = rake;
  if (strip === null) return undefined;
  return {
    ref,
    title: `New sheathing, ${rake.name}`,
    value: stripText(strip),
    how: `${formatLength(strip.outIn)} past the gable wall and ${formatLength(strip.widthIn - strip.outIn)} in to the old deck, from ${formatLength(strip.fromIn)} up the slope, where the eave's sheathing ends, to the ridge at ${formatLength(strip.toIn)}.`,
    parts: [
      entryPart(rake, 'design', 'overhangIn', 'Overhang at the rake', formatLength(rake.overhangIn)),
      entryPart(
        rake,
        'design',
        'sheathing.stripBackIn',
        'Old deck stripped back',
        formatLength(strip.widthIn - strip.outIn),
      ),
      {
        label: "The eave's sheathing, in over the wall",
        value: formatLength(strip.fromIn - rake.wallAlongIn),
        ref: `design/${rake.eaveId}/sheathing.tieBackIn`,
      },
      {
        label: 'Slope of the barge rafter',
        value: formatPitch(rake.pitchRisePer12),
        ref: `rake/${rake.rakeId}/line`,
      },
    ],
  };
}
