/**
 * The letter that the marks of an eave begin with, by its place in the survey: 0 -> A, 25 -> Z, 26 -> AA.
 * @param index - place in the survey, from 0. [-]
 */
export function eaveLetter(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : eaveLetter(Math.floor(index / 26) - 1) + last;
}

/**
 * The place in the survey of the eave with this letter: A -> 0, AA -> 26.
 * @param letter - as `eaveLetter` gives it.
 */
export function eaveIndex(letter: string): number {
  let place = 0;
  for (const character of letter) place = place * 26 + (character.charCodeAt(0) - 64);
  return place - 1;
}
