/** The civil date where the machine stands, `2026-04-30`. */
export function civilDateOf(moment: Date): string {
  const pad = (number: number, digits: number): string => String(number).padStart(digits, '0');
  return `${pad(moment.getFullYear(), 4)}-${pad(moment.getMonth() + 1, 2)}-${pad(moment.getDate(), 2)}`;
}
