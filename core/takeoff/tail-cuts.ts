import { assertNever } from '../result.ts';
import type { Extender } from '../layout/layout-types.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import { formatPitch, slopeAngleDeg } from '../units/pitch.ts';
import { nearestSixteenth } from '../units/sixteenths.ts';
import { hasPlumbEnds } from './lap.ts';
import type { EaveToTakeOff } from './takeoff-context.ts';

/**
 * What the saw does to a tail, and where it goes, in words of the trade.
 * @param extender - as laid out. [in]
 * @param eave - for the design.
 * @returns e.g. `plumb tail 26.6 deg, left 1" long and cut to the string; back end plumb, parallel to the tail; seat
 * 3-5/16", heel 1-5/8", wall line 2' 11-3/4" from the back end on the top edge; on the right of rafter 1`.
 */
export function tailCuts(extender: Extender, { design }: Pick<EaveToTakeOff, 'design'>): string {
  const { section } = extender;
  return [
    `${tailEnd(extender, design.tailCut)}${
      design.trimAllowanceIn > 0
        ? `, left ${formatInches(design.trimAllowanceIn)} long and cut to the string`
        : ''
    }`,
    ...backEnd(extender, design),
    `${bearingCuts(section.bearing)}, ${wallLine(section)}`,
    placeWords(extender),
  ].join('; ');
}

/** Where a tail goes and how it is fastened, e.g. `hung between rafters 6 and 7 on A-H01`. */
export function placeWords({ method, side, rafterNumber, filler, headers }: Extender): string {
  const rafter = `rafter ${rafterNumber}`;
  switch (method) {
    case 'side':
      return `on the ${side} of ${rafter}`;
    case 'filler':
      return `on the ${side} of ${rafter}, over filler ${filler?.mark ?? 'as thick as the joist'}`;
    case 'outer-face':
      return `on the outer face of ${rafter}`;
    case 'block-hung':
      return `hung between rafters ${rafterNumber} and ${rafterNumber + 1}${
        headers.length === 0 ? '' : ` on ${headers.map(({ mark }) => mark).join(' and ')}`
      }`;
    case 'full-length':
      return `whole rafter on the ${side} of ${rafter}, up to the ridge`;
    case 'end-replacement':
      return `whole rafter in the place of ${rafter}, up to the ridge`;
    default:
      return assertNever(method);
  }
}

function tailEnd({ section, pitchRisePer12 }: Extender, tailCut: 'plumb' | 'square'): string {
  const cut =
    tailCut === 'plumb' ? `plumb tail ${slopeAngleDeg(pitchRisePer12).toFixed(1)} deg` : 'square tail';
  const kicked = section.kickUp === null ? '' : `, kicked up to ${formatPitch(pitchRisePer12)}`;
  const level =
    section.levelCutIn > 0
      ? `, underside cut level ${formatInches(section.levelCutIn)} so that ${formatInches(section.tailFaceIn)} of the face is left`
      : '';
  return `${cut}${kicked}${level}`;
}

function backEnd({ method, pitchRisePer12 }: Extender, design: EaveToTakeOff['design']): readonly string[] {
  const whole = method === 'full-length' || method === 'end-replacement';
  const end = whole ? 'ridge end' : 'back end';
  if (hasPlumbEnds(design)) return [`${end} plumb, parallel to the tail`];
  return design.backEnd === 'parallel' || whole
    ? [`${end} plumb ${slopeAngleDeg(pitchRisePer12).toFixed(1)} deg`]
    : [];
}

function bearingCuts(bearing: Extender['section']['bearing']): string {
  switch (bearing.kind) {
    case 'notched':
      return `seat ${formatInches(bearing.seatIn)}, heel ${formatInches(bearing.heelCutIn)}`;
    case 'shimmed':
      return nearestSixteenth(bearing.shimIn) === 0
        ? 'no seat cut'
        : `no seat cut, ${formatInches(bearing.shimIn)} shim on the plate`;
    case 'on-corner':
      return 'no seat cut';
    default:
      return assertNever(bearing);
  }
}

/** Where the wall's plumb line is struck, which the seat and heel are marked from. */
function wallLine(section: Extender['section']): string {
  return `wall line ${formatLength(section.backspanIn)} from the back end on the top edge`;
}
