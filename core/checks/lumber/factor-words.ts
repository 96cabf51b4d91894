import { source, step } from '../answer.ts';
import type { CheckStep } from '../check-types.ts';
import { speciesGroups } from '../data/species.ts';
import type { EaveToCheck } from '../eave-to-check.ts';
import { plain, psi } from '../measured.ts';
import type { Adjusted } from './adjusted-values.ts';

/** Names of grades for people. */
const gradeNames = { 'no-1': 'No.1', 'no-2': 'No.2', stud: 'Stud' } as const;

/** The lumber in words, `spruce-pine-fir No.2 2x6`. */
export function lumberWords({ lumber, stock }: Pick<EaveToCheck, 'lumber' | 'stock'>): string {
  return `${speciesGroups[lumber.species].name} ${gradeNames[lumber.grade]} ${stock.section}`;
}

/** A step that walks a reference value through its factors. */
export function adjustedStep(
  eave: EaveToCheck,
  label: string,
  symbol: string,
  adjusted: Adjusted,
): CheckStep {
  const { reference, factors, psi: value } = adjusted;
  return step(
    `${label}, ${lumberWords(eave)}`,
    `${symbol}' = ${[symbol, ...factors.map(({ name }) => name)].join(' ')}`,
    [plain(reference.value), ...factors.map(({ factor }) => plain(factor, 2))].join(' x '),
    psi(value).text,
    {
      source: source(
        `NDS Supplement 2018, Table ${eave.lumber.species === 'southern-pine' ? '4B' : '4A'}; factors NDS 2018, Table 4.3.1`,
        reference.mark,
      ),
      ref: `design/${eave.layout.eaveId}/structure.species`,
    },
  );
}
