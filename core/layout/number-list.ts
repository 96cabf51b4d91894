/**
 * Writes whole numbers in order with runs of three and more drawn together: 2, 5, 6, 7, 9, 10 -> `2, 5-7, 9, 10`.
 * @param numbers - in rising order.
 */
export function numberList(numbers: readonly number[]): string {
  const parts: string[] = [];
  let start = 0;
  while (start < numbers.length) {
    let end = start;
    while (numbers[end + 1] === (numbers[end] ?? 0) + 1) end += 1;
    if (end - start >= 2) parts.push(`${numbers[start]}-${numbers[end]}`);
    else parts.push(...numbers.slice(start, end + 1).map(String));
    start = end + 1;
  }
  return parts.join(', ');
}
