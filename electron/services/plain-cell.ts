/**
 * Makes text that a spreadsheet would run as a formula plain text, by an apostrophe in front; numbers stay numbers.
 * Source: the published advice on formula injection in CSV: cells that begin with = + - @, tab or carriage return.
 * @param text - a cell's content; `=1+1` -> `'=1+1`, `-3.50` stays.
 */
export function plainCell(text: string): string {
  return /^[=+\-@\t\r]/.test(text) && !/^[+-]?\d+(?:\.\d+)?$/.test(text) ? `'${text}` : text;
}
