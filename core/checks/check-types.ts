/**
 * What a check found. `within` and `beyond` say how the value stands to the limit and nothing about whether the thing may
 * be built; `needs-engineer` is beyond what published rules reach; `not-covered` names what nobody checked here, or what an
 * entry is missing for.
 */
export type Verdict = 'within' | 'beyond' | 'not-covered' | 'needs-engineer';

/** How well a number of a source was seen by us; shown beside the number. */
export type SourceMark = 'published' | 'secondary' | 'from-memory' | 'common-practice' | 'entered';

export type CheckSource = { readonly text: string; readonly mark: SourceMark };

/** A figure for people: `3,050 psf`, with the bare number beside it. */
export type Measured = { readonly text: string; readonly number: number; readonly unit: string };

/** One line of the reckoning: the formula in words or symbols, then with the numbers in it, then its result. */
export type CheckStep = {
  readonly label: string;
  readonly formula: string;
  readonly withNumbers: string;
  readonly result: string;
  readonly source?: CheckSource;
  /** Walks back to an entry or another figure, where there is one. */
  readonly ref?: string;
};

/** The outcome of one check on one eave (at its governing rafter), the same shape for all. */
export type CheckResult = {
  /** `CHECK/EAVE` or `CHECK/RAKE`, unique in a job; decisions are recorded against it. */
  readonly id: string;
  readonly check: string;
  readonly eaveId: string;
  /** Present for a check of a rake on that eave. */
  readonly rakeId?: string;
  /** What is held against what, e.g. `Bending at the plate against the adjusted bending value`. */
  readonly what: string;
  /** Where it governs: `Rafter 15 at 24' 0-3/8"`, or `Whole eave`. */
  readonly where: string;
  readonly stationIn: number | null;
  readonly value: Measured | null;
  readonly limit: Measured | null;
  /** value over limit where more is worse, limit over value where less is worse: above 1 is beyond. Null where neither. */
  readonly ratio: number | null;
  readonly verdict: Verdict;
  readonly source: readonly CheckSource[];
  readonly assumptions: readonly string[];
  /** What would bring it within, with numbers; or whom to ask. Null where nothing is to be done. */
  readonly remedy: string | null;
  readonly why: readonly CheckStep[];
  /** Path of the entry that is missing, where the verdict is not-covered for want of it. */
  readonly missingField: string | null;
};

/** Group headings, in the order shown. */
export const checkGroups = [
  'Rules of thumb',
  'Lumber',
  'Nails',
  'Sheathing and roof edge',
  'House and lot',
] as const;
export type CheckGroup = (typeof checkGroups)[number];
