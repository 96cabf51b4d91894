import { formatLength } from '../units/format-length.ts';
import { nearestRoomIn, whyNotHung, type FoundLayout } from './found-layout.ts';
import type { Finding, Unplaced } from './layout-types.ts';

/**
 * Tells of the rafters that get no tail though one is wanted: what stands in the way, and what would serve them.
 * @param found - the eave. [in]
 */
export function findUnserved(found: FoundLayout): readonly Finding[] {
  const { eaveId, unplaced, extenders } = found.laid;
  const findings = unplaced
    .filter(({ reason }) => reason === 'no-side-free')
    .map((one): Finding => {
      const remedy = remedyFor(one, found);
      return {
        eaveId,
        stationIn: one.stationIn,
        topic: 'no-side-free',
        text: `Rafter ${one.rafterNumber} at ${formatLength(one.stationIn)} has no side free for an extender. ${sides(one)} ${remedy.text}`,
        structural: false,
        ...(remedy.field === undefined ? {} : { field: `survey.eaves.${found.surveyIndex}.${remedy.field}` }),
      };
    });
  if (extenders.length > 0) return findings;
  const text =
    'No extender stands on this eave, so it gets no fascia. Free a side of some rafters, or take pins off.';
  return [...findings, { eaveId, stationIn: null, topic: 'unplaced', text, structural: false }];
}

function sides({ left, right }: Unplaced): string {
  return left === right ? `In the way on both sides: ${left}.` : `Left: ${left}. Right: ${right}.`;
}

function remedyFor(
  { rafterNumber }: Unplaced,
  found: FoundLayout,
): { readonly text: string; readonly field?: 'rafterSpanIn' } {
  const { wall, placed } = found;
  const index = rafterNumber - 1;
  const rafter = wall.rafters[index];
  const { allowFiller, allowFullLength } = wall.design.layout;
  if (rafter !== undefined && rafter.condition !== 'sound') {
    if (!allowFullLength) return { text: 'Allow whole new rafters, under Layout in Design.' };
    if (!wall.spanKnown)
      return {
        text: 'Enter the rafter span in Survey, so that a whole new rafter can be cut to go beside it.',
        field: 'rafterSpanIn',
      };
  }
  const own = placed.prepared.places[index]?.sides;
  const pastJoist = [own?.left, own?.right].find((side) => side?.joist?.clash === null)?.joist?.place;
  if (rafter?.condition === 'sound' && !allowFiller && pastJoist !== undefined)
    return {
      text: `Allow fillers, under Layout in Design: past the joist it could stand at ${formatLength((pastJoist.leftIn + pastJoist.rightIn) / 2)}.`,
    };
  for (const bay of [index, index + 1]) {
    const rooms = placed.prepared.rooms[bay] ?? [];
    const stationIn = nearestRoomIn(rooms, rafter?.centreIn ?? 0);
    const why = whyNotHung(found, bay);
    if (stationIn !== undefined && why !== undefined)
      return { text: `A tail could hang at ${formatLength(stationIn)} instead: ${why}.` };
  }
  return { text: 'Take away what stands there, or pin the rafter to get none.' };
}
