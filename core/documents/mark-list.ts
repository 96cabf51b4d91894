import { numberList } from '../layout/number-list.ts';

/**
 * Writes marks with runs drawn together, kind by kind: A-E01, A-E02, A-E03, A-T01, B-E05 -> `A-E 1-3; A-T 1; B-E 5`.
 * A mark that is not a letter, a kind and a number stands as it is.
 * @param marks - in the order of the wall.
 */
export function markList(marks: readonly string[]): string {
  const kinds = new Map<string, number[]>();
  for (const mark of marks) {
    const [, kind = mark, number] = /^(.+-[A-Z])(\d+)$/.exec(mark) ?? [];
    const numbers = kinds.get(kind) ?? [];
    if (number !== undefined) numbers.push(Number(number));
    kinds.set(kind, numbers);
  }
  return [...kinds]
    .map(([kind, numbers]) =>
      numbers.length === 0 ? kind : `${kind} ${numberList(numbers.toSorted((a, b) => a - b))}`,
    )
    .join('; ');
}
