import { Decimal } from 'decimal.js';
import { type CostStaircase, type CostStep, isOnStep } from '../../../../core/job/cost-staircase.ts';
import { formatInches } from '../../../../core/units/format-length.ts';
import { formatUsd, usd } from '../../../../core/units/money.ts';

/** The step that today's overhang lies on. */
export function stepOfToday({ steps, todayIn }: CostStaircase): CostStep | undefined {
  return steps.find((step) => isOnStep(step, todayIn));
}

/** The overhangs of a step: `15-13/16" to 15-7/8"`, or the one. */
export function stretchOf({ fromOverhangIn, toOverhangIn }: CostStep): string {
  return fromOverhangIn === toOverhangIn
    ? formatInches(toOverhangIn)
    : `${formatInches(fromOverhangIn)} to ${formatInches(toOverhangIn)}`;
}

/** What a step costs against today's: `$0.96 less`, `$1.20 more`, `the same`; empty where either is not known. */
export function againstToday(step: CostStep, today: CostStep | undefined): string {
  if (step.boardsUsd === null || today === undefined || today.boardsUsd === null) return '';
  const more = new Decimal(step.boardsUsd).minus(today.boardsUsd);
  if (more.isZero()) return 'the same';
  return `${formatUsd(usd(more.abs()))} ${more.isNegative() ? 'less' : 'more'}`;
}

/** How well a step's cost is known. */
export function knownAs({ boardsUsd, boundUsd, proof, hasNoBoard }: CostStep): string {
  if (hasNoBoard) return 'A piece is longer than any board';
  if (boardsUsd === null) return 'Not reckoned yet';
  if (proof !== 'none') return 'Proven';
  return boundUsd === null || new Decimal(boundUsd).isZero()
    ? 'Best found'
    : `At least ${formatUsd(boundUsd)}`;
}

/** What the nearest cheaper overhangs save, and how far the eave can reach for the same money. */
export function besideToday({ cheaper, todayIn, asFarAsIn }: CostStaircase): readonly string[] {
  const [nearest] = cheaper;
  return [
    ...(nearest === undefined
      ? []
      : [
          `${formatInches(todayIn - nearest.overhangIn)} less (${formatInches(nearest.overhangIn)}) saves ${formatUsd(nearest.savesUsd)} of boards.`,
        ]),
    asFarAsIn > todayIn
      ? `It can reach ${formatInches(asFarAsIn - todayIn)} further (${formatInches(asFarAsIn)}) for no more money in boards.`
      : 'Any further out costs more, or is not reckoned.',
  ];
}
