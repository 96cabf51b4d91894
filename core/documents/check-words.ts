import type { CheckResult, CheckSource, SourceMark, Verdict } from '../checks/check-types.ts';
import { assertNever } from '../result.ts';

/** How a value stands to its limit, in the words that screen and paper share; none of them is a permission. */
export const verdictWords: Readonly<Record<Verdict, string>> = {
  within: 'Within the limit',
  beyond: 'Beyond the limit',
  'not-covered': 'Not covered',
  'needs-engineer': 'Needs an engineer',
};

/**
 * How well we have seen a source, said wherever its number stands. Published numbers were held against public
 * transcriptions of the standards, not against the bought standards.
 */
export const markWords: Readonly<Record<SourceMark, string>> = {
  published: 'seen in transcription',
  secondary: 'seen second-hand',
  'from-memory': 'from memory, not looked up',
  'common-practice': 'common practice, no source',
  entered: 'entered by hand',
};

/** The weakest first: what has to be told beside the number itself. */
const weakMarks = [
  ['from-memory', 'from memory'],
  ['common-practice', 'common practice'],
  ['secondary', 'second-hand'],
] as const satisfies readonly (readonly [SourceMark, string])[];

/**
 * The weakest mark among a check's sources, to stand beside its figures.
 * @returns e.g. `from memory`, or `partly from memory` where other sources are stronger; blank where none is weak.
 */
export function weakestMark(check: CheckResult): string {
  for (const [mark, words] of weakMarks) {
    const weak = check.source.filter((source) => source.mark === mark).length;
    if (weak > 0) return weak === check.source.length ? words : `partly ${words}`;
  }
  return '';
}

/** A check's limit with the weakest mark of its sources: `1,422 psi, partly from memory`. */
export function limitText(check: CheckResult): string {
  if (check.limit === null) return '–';
  const mark = weakestMark(check);
  return mark === '' ? check.limit.text : `${check.limit.text}, ${mark}`;
}

/** A source with its mark: `NDS 2018, 12.3.1 (seen in transcription)`; a text that says its mark is left as it is. */
export function sourceText(source: CheckSource): string {
  const mark = markWords[source.mark];
  return source.text.toLowerCase().includes(mark) ? source.text : `${source.text} (${mark})`;
}

/**
 * Writes a ratio to two decimals, half up; one just above 1 gets as many as show that it is above.
 * @param ratio - value over limit, or limit over value where less is worse; above 1 is beyond. [-]
 * @returns e.g. `0.83`; 1.0004 -> `1.0004`; null -> `none`.
 */
export function ratioText(ratio: number | null): string {
  if (ratio === null) return 'none';
  const rounded = ratio.toFixed(2);
  if (ratio <= 1 || Number(rounded) > 1) return rounded;
  for (let places = 3; places <= 6; places += 1)
    if (Number(ratio.toFixed(places)) > 1) return ratio.toFixed(places);
  return 'just above 1';
}

/** What a check found, as one sentence with its figures in it. */
export function standingSentence(check: CheckResult): string {
  const { value, limit, verdict } = check;
  const figures =
    value === null
      ? ''
      : limit === null
        ? `${value.text}. `
        : `${value.text} against ${limit.text}${check.ratio === null ? '' : `, ratio ${ratioText(check.ratio)}`}. `;
  switch (verdict) {
    case 'within':
    case 'beyond':
      return `${figures}${verdictWords[verdict]}.`;
    case 'needs-engineer':
      return `${figures}The rules used here do not reach this far: a licensed engineer has to look at it.`;
    case 'not-covered':
      return `${figures}${check.missingField === null ? 'Not covered here.' : 'Not covered until the missing entry is filled.'}`;
    default:
      return assertNever(verdict);
  }
}
