import type { Nail } from '../takeoff/nails.ts';
import { formatLength } from '../units/format-length.ts';
import { nailsApartIn } from './data/hung-nails.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import { hungDemands, nearerShare, worstDemand, type HungDemand } from './hung-demand.ts';
import { plain, pounds } from './measured.ts';
import { longestOverhang } from './shorter-overhang.ts';

/** Longest backspan that is proposed. [in] */
const furthestIn = 120;

/**
 * What would bring the nails of a hung tail within: more of them, as far as they fit one above another; hangers; a longer
 * backspan; a shorter overhang.
 */
export function hungRemedy(eave: EaveToCheck, worst: HungDemand, nail: Nail, nails: number): string {
  const { tail, ratio } = worst;
  const { shape, rafter } = tail;
  const ways: string[] = [];

  const wanted = Math.ceil(nails * ratio - 1e-9);
  const roomIn = eave.stock.depthIn - 2 * eave.design.structure.nailEdgeDistanceIn;
  if (wanted <= Math.floor(roomIn / nailsApartIn) + 1)
    ways.push(`${wanted} nails at each end of the block and into the tail`);

  ways.push(hangers(hungDemands(eave, tail, nail, nails), nearerShare(tail)));

  // Load and overhang stay, so the pull falls as the backspan grows.
  const backspanIn = Math.ceil(shape.backspanIn * ratio - 1e-9);
  if (backspanIn <= Math.min(rafter.clearBackspanIn ?? furthestIn, furthestIn))
    ways.push(`a backspan of ${formatLength(backspanIn)}`);

  const shorterIn = longestOverhang(
    eave,
    tail,
    (changed) => worstDemand(hungDemands(eave, tail, nail, nails, changed))?.ratio ?? 0,
  );
  if (shorterIn !== undefined) ways.push(`a level overhang of ${formatLength(shorterIn)}`);

  const text = `${ways.join(', or ')}${ways.length > 1 ? ',' : ''} would bring it within.`;
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Hangers by their makers' values, each way that the back end is pulled; rounded up to 5 lb. */
function hangers(demands: readonly HungDemand[], share: number): string {
  const most = (wind: boolean) =>
    Math.max(
      0,
      ...demands
        .filter(({ place, forces }) => place === 'tail' && (forces === null) === wind)
        .map(({ reactionLb }) => reactionLb),
    );
  const part = Math.abs(share - 0.5) < 0.005 ? 'half' : plain(share, 2);
  const [liftLb, pressLb] = [most(false), most(true)];
  const down = pressLb > 0 ? ` and ${rated(pressLb)} downward` : '';
  return `hangers that their makers rate for it (at the tail ${rated(liftLb)} against lifting${down}, at the nearer end of the block ${part} of that)`;
}

function rated(lb: number): string {
  return pounds(Math.ceil(lb / 5 - 1e-9) * 5).text;
}
