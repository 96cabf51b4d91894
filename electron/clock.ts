/** The civil date where the machine stands, `2026-04-30`. */
export function civilDateOf(moment: Date): string {
  return `${pad(moment.getFullYear(), 4)}-${pad(moment.getMonth() + 1, 2)}-${pad(moment.getDate(), 2)}`;
}

function pad(number: number, digits: number): string {
  return String(number).padStart(digits, '0');
}
