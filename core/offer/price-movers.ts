import { Decimal } from 'decimal.js';
import type { JobInput } from '../job/job-file.ts';
import { buildUp, type CostSums } from '../pricing/build-up.ts';
import type { CostLine, Estimate } from '../pricing/estimate-types.ts';
import { sumUsd, type Usd, usd } from '../units/money.ts';

/** A line of the estimate, and what it does to the price. */
export type PriceMover = {
  readonly lineId: string;
  readonly description: string;
  readonly costUsd: Usd;
  /** What the price before the client's tax and before rounding goes up by where this line costs so much more. [$] */
  readonly priceUpUsd: Usd;
};

/**
 * The lines that move the price most, the largest first.
 * @param input - for the shop's money rules.
 * @param estimate - of the job.
 * @param morePercent - by how much each is raised. [%]
 * @param count - how many of them. [-]
 * @returns the build-up made anew with each line raised alone. Worked: a line of 1,000 in a job with no tax, contingency 8 %,
 * overhead 15 % and a markup of 10 % moves the price by 100 x 1.08 x 1.15 x 1.10 = 136.62 for 10 %.
 */
export function priceMovers(
  { settings: { money } }: Pick<JobInput, 'settings'>,
  estimate: Estimate,
  morePercent = 10,
  count = 3,
): readonly PriceMover[] {
  const exact = { ...money, roundToUsd: '0' as const };
  const before = buildUp(sumsOf(estimate.lines), exact);
  if (!before.ok) return [];
  return estimate.lines
    .toSorted((a, b) => new Decimal(b.costUsd).comparedTo(a.costUsd))
    .slice(0, 2 * count)
    .flatMap((line): readonly PriceMover[] => {
      const costUsd = usd(new Decimal(line.costUsd).times(100 + morePercent).div(100));
      const after = buildUp(
        sumsOf(estimate.lines.map((one) => (one === line ? { ...line, costUsd } : one))),
        exact,
      );
      return after.ok
        ? [
            {
              lineId: line.id,
              description: line.description,
              costUsd: line.costUsd,
              priceUpUsd: usd(new Decimal(after.value.priceUsd).minus(before.value.priceUsd)),
            },
          ]
        : [];
    })
    .toSorted((a, b) => new Decimal(b.priceUpUsd).comparedTo(a.priceUpUsd))
    .slice(0, count);
}

function sumsOf(lines: readonly CostLine[]): CostSums {
  const sumOf = (wanted: (line: CostLine) => boolean): Usd =>
    sumUsd(lines.filter(wanted).map(({ costUsd }) => costUsd));
  return {
    materialsUsd: sumOf(({ kind }) => kind === 'material'),
    labourUsd: sumOf(({ kind }) => kind === 'labour'),
    otherUsd: sumOf(({ kind }) => kind !== 'material' && kind !== 'labour'),
    taxableMaterialsUsd: sumOf(({ kind, taxable }) => kind === 'material' && taxable),
  };
}
