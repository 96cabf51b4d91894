/**
 * What the marks of a rake begin with, by its place in the survey: 0 -> R1. With the eave's letters they stay apart, since
 * none of those holds a figure: `R1-K03` is a lookout of the first rake, `R-E07` an extender of the eighteenth eave.
 * @param index - place in the survey, from 0. [-]
 */
export function rakeMark(index: number): string {
  return `R${index + 1}`;
}
