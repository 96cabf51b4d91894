import { Decimal } from 'decimal.js';
import { type Phase, phases } from '../eave/phases.ts';
import type { JobCostSettings } from '../pricing/shop-settings.ts';
import type { PieceUse, Takeoff } from '../takeoff/takeoff-types.ts';
import { decimalText, type DecimalText } from '../units/money.ts';
import { costPhaseOf } from './cost-phases.ts';
import type { Progress } from './standing.ts';

/** What the progress of a phase can be counted by. */
export type Countable = {
  readonly what: string;
  readonly unit: string;
  /** All of it. [unit] */
  readonly total: DecimalText;
};

/** What is counted of a phase, and how: tails by the piece, boards by the foot, sheets by the square foot. */
const counted: Readonly<Partial<Record<Phase, (takeoff: Takeoff) => Countable>>> = {
  Framing: (takeoff) => ({
    what: 'tails set',
    unit: 'tails',
    total: decimalText(ofUse(takeoff, ['extender']).length),
  }),
  'Fascia and trim': (takeoff) => ({
    what: 'fascia hung',
    unit: 'LF',
    total: feetOf(takeoff, ['fascia', 'rake-fascia']),
  }),
  'Sheathing and edge': (takeoff) => ({
    what: 'deck closed',
    unit: 'SF',
    total: areaOf(takeoff, 'Sheathing and edge'),
  }),
  Soffit: (takeoff) => ({ what: 'soffit set', unit: 'SF', total: areaOf(takeoff, 'Soffit') }),
};

/**
 * What each of the shop's phases can be counted by; a phase that takes several of the estimate's is counted by the first of
 * them that can be, and one that takes none has nothing to count.
 * @param takeoff - of the accepted quote.
 */
export function countables(
  takeoff: Takeoff,
  settings: Pick<JobCostSettings, 'phases'>,
): ReadonlyMap<string, Countable> {
  const found = new Map<string, Countable>();
  for (const phase of phases) {
    const countable = counted[phase]?.(takeoff);
    const name = costPhaseOf(settings, phase);
    if (countable !== undefined && Number(countable.total) > 0 && !found.has(name))
      found.set(name, countable);
  }
  return found;
}

/**
 * Progress with the tails that the layout knows to be set, for the phase that is counted by tails, where nobody said how far
 * it is; a word of the person holds before it.
 * @param tailsInPlace - marked as built. 14 of 42 -> that phase is 33.3 % done.
 */
export function countedFromLayout(
  progress: readonly Progress[],
  countable: ReadonlyMap<string, Countable>,
  tailsInPlace: number,
): readonly Progress[] {
  const phase = [...countable].find(([, { unit }]) => unit === 'tails')?.[0];
  if (phase === undefined || tailsInPlace === 0) return progress;
  const said = progress.find((one) => one.phase === phase);
  if (said !== undefined && (said.quantity !== null || said.percent !== null)) return progress;
  const counted: Progress = {
    phase,
    notedOn: said?.notedOn ?? '',
    quantity: decimalText(tailsInPlace),
    percent: null,
    toCompleteUsd: said?.toCompleteUsd ?? null,
  };
  return [...progress.filter((one) => one !== said), counted];
}

function ofUse({ pieces }: Takeoff, uses: readonly PieceUse[]): Takeoff['pieces'] {
  return pieces.filter(({ use }) => uses.includes(use));
}

function feetOf(takeoff: Takeoff, uses: readonly PieceUse[]): DecimalText {
  const sixteenths = ofUse(takeoff, uses).reduce((sum, piece) => sum + piece.lengthSixteenths, 0);
  return decimalText(new Decimal(sixteenths).div(192).toDecimalPlaces(0, Decimal.ROUND_HALF_UP));
}

function areaOf({ lines }: Takeoff, phase: Phase): DecimalText {
  const area = lines
    .filter((line) => line.phase === phase && (line.need.kind === 'sheets' || line.need.kind === 'planks'))
    .reduce(
      (sum, { need }) => sum.plus(need.kind === 'sheets' || need.kind === 'planks' ? need.areaSqFt : 0),
      new Decimal(0),
    );
  return decimalText(area.toDecimalPlaces(0, Decimal.ROUND_HALF_UP));
}
