import { formatLength } from '../units/format-length.ts';
import type { Extender } from '../layout/layout-types.ts';
import type { CheckGroup, CheckResult, CheckSource, CheckStep, Measured, SourceMark } from './check-types.ts';
import type { EaveToCheck } from './eave-to-check.ts';

/** What a check answers; the registry adds which check and eave it is. */
export type Answer = Omit<CheckResult, 'id' | 'check' | 'eaveId'>;

/** One check of the registry. */
export type Check = {
  readonly check: string;
  readonly group: CheckGroup;
  readonly title: string;
  /** Answers for an eave that has an extender at least. */
  readonly run: (eave: EaveToCheck) => Answer;
};

export function source(text: string, mark: SourceMark): CheckSource {
  return { text, mark };
}

export const noSource: CheckSource = { text: 'Common practice, no source', mark: 'common-practice' };

export function step(
  label: string,
  formula: string,
  withNumbers: string,
  result: string,
  more: { readonly source?: CheckSource; readonly ref?: string } = {},
): CheckStep {
  return { label, formula, withNumbers, result, ...more };
}

/** Where a check governs: the whole eave, or one tail. */
export type Place = Pick<Answer, 'where' | 'stationIn'>;

export const wholeEave: Place = { where: 'Whole eave', stationIn: null };

export function atTail(extender: Pick<Extender, 'method' | 'mark' | 'rafterNumber' | 'centreIn'>): Place {
  const { method, mark, rafterNumber, centreIn } = extender;
  const name = method === 'block-hung' ? `Tail ${mark}` : `Rafter ${rafterNumber}`;
  return { where: `${name} at ${formatLength(centreIn)}`, stationIn: centreIn };
}

/** The same of a rafter that has no tail. */
export function atRafter(rafterNumber: number, stationIn: number): Place {
  return { where: `Rafter ${rafterNumber} at ${formatLength(stationIn)}`, stationIn };
}

type Told = Pick<Answer, 'what' | 'source' | 'why'> & {
  readonly at: Place;
  readonly assumptions?: readonly string[];
};

/** Dust of binary arithmetic that does not put a value beyond its limit. [-] */
const dust = 1e-9;

/**
 * Holds a value against a limit. The ratio is value over limit where more is worse, limit over value where less is
 * worse, so that above 1 is beyond; null where one of them is nothing and no ratio can be told.
 * @param told.remedy - what would bring it within; told, and searched for, only where it is beyond.
 */
export function held(
  told: Told & {
    readonly value: Measured;
    readonly limit: Measured;
    readonly worse: 'more' | 'less';
    readonly remedy: string | (() => string);
  },
): Answer {
  const { value, limit, worse } = told;
  const [over, under] = worse === 'more' ? [value.number, limit.number] : [limit.number, value.number];
  const ratio = over / under;
  const beyond = over > under * (1 + dust) + dust * 1e-3;
  return {
    ...rest(told),
    value,
    limit,
    ratio: Number.isFinite(ratio) && ratio >= 0 ? ratio : null,
    verdict: beyond ? 'beyond' : 'within',
    remedy: beyond ? (typeof told.remedy === 'string' ? told.remedy : told.remedy()) : null,
    missingField: null,
  };
}

/** An answer with its verdict given, where no plain comparison says it. */
export function found(
  told: Told &
    Pick<Answer, 'verdict' | 'remedy'> &
    Partial<Pick<Answer, 'value' | 'limit' | 'ratio' | 'missingField'>>,
): Answer {
  return {
    ...rest(told),
    value: told.value ?? null,
    limit: told.limit ?? null,
    ratio: told.ratio ?? null,
    verdict: told.verdict,
    remedy: told.remedy,
    missingField: told.missingField ?? null,
  };
}

/**
 * Nothing to hold, because an entry is missing.
 * @param told.field - dotted path of the entry; @param told.enter - sentence that says what to enter.
 */
export function lacking(
  told: Omit<Told, 'why' | 'at'> & {
    readonly at?: Place;
    readonly why?: Answer['why'];
    readonly field: string;
    readonly enter: string;
  },
): Answer {
  return found({
    what: told.what,
    at: told.at ?? wholeEave,
    source: told.source,
    why: told.why ?? [],
    ...(told.assumptions === undefined ? {} : { assumptions: told.assumptions }),
    verdict: 'not-covered',
    remedy: told.enter,
    missingField: told.field,
  });
}

function rest(told: Told): Pick<Answer, 'what' | 'where' | 'stationIn' | 'source' | 'assumptions' | 'why'> {
  return {
    what: told.what,
    where: told.at.where,
    stationIn: told.at.stationIn,
    source: told.source,
    assumptions: told.assumptions ?? [],
    why: told.why,
  };
}
