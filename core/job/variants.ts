import type { Design, EaveDesign } from '../eave/design-document.ts';
import type { EaveLayout, Extender } from '../layout/layout-types.ts';
import type { Problem } from '../problems/problem.ts';
import { fail, ok, type Result } from '../result.ts';
import type { Side } from '../survey/survey-document.ts';
import { sumUsd, type DecimalText, type Usd } from '../units/money.ts';
import { computeJob } from './compute-job.ts';
import type { JobInput } from './job-file.ts';
import type { JobResult } from './job-result.ts';
import { differences, type Difference } from './variant-differences.ts';
import { evenedDesign } from './variant-even.ts';

/** What a variant of one eave's layout comes to. */
export type VariantFigures = {
  readonly tails: number;
  /** Tails that are not nailed straight beside a rafter: on fillers, hung, whole, in another's place. */
  readonly tailsBySpecialMethod: number;
  /** Largest distance of neighbouring tails of the eave, centre to centre; null with fewer than two. [in] */
  readonly largestGapIn: number | null;
  /** Boards of the whole job, as planned. [$] */
  readonly boardsUsd: Usd;
  /** What the client pays for the whole job. [$] */
  readonly totalUsd: Usd;
  readonly labourHours: DecimalText;
  /** What there is to look at in the whole job. */
  readonly findings: number;
  /** What could not be priced, so that the sums leave it out. */
  readonly lacks: number;
};

export const variantKeys = ['as-designed', 'all-left', 'all-right', 'fillers', 'hung', 'two-more'] as const;
export type VariantKey = (typeof variantKeys)[number];

/** One way to lay out an eave, beside the design. */
export type Variant = {
  readonly key: VariantKey;
  readonly name: string;
  /** The design that it takes, for whoever wants to go on with it. */
  readonly design: Design;
  /** Against the layout as designed, from left to right. */
  readonly differs: readonly Difference[];
  /** Its figures; or the problem that stops it. */
  readonly figures: Result<VariantFigures, Problem>;
};

const names: Readonly<Record<VariantKey, string>> = {
  'as-designed': 'As designed',
  'all-left': 'All on the left of their rafters, where free',
  'all-right': 'All on the right of their rafters, where free',
  fillers: 'On fillers, none hung',
  hung: 'Hung on blocks, no fillers',
  'two-more': 'Two more tails in the widest gaps',
};

/**
 * The layout of one eave beside a few others, each computed in full by a change of the design: all tails on one side of
 * their rafters; fillers instead of hung tails and the reverse; two more tails in the widest gaps. What is the person's own
 * (rafters without a tail, what is built) stays in all of them.
 * @param input - the job.
 * @param eaveId - of the eave.
 * @param compute - computes a job; the whole computation unless told.
 * @returns as designed first; or the problem that stops even that.
 */
export function variantsOf(
  input: JobInput,
  eaveId: string,
  compute: (input: JobInput) => Result<JobResult, Problem> = computeJob,
): Result<readonly Variant[], Problem> {
  const asDesigned = compute(input);
  if (!asDesigned.ok) return asDesigned;
  const layout = asDesigned.value.eaves.find((eave) => eave.eaveId === eaveId);
  const design = input.design.eaves.find((eave) => eave.eaveId === eaveId);
  if (layout === undefined || design === undefined)
    return fail({ code: 'not-found', what: `eave ${eaveId}` });
  return ok(
    variantKeys.map((key) => variantOf(key, { input, layout, design, result: asDesigned.value }, compute)),
  );
}

/** An eave as designed, which variants are held against. */
export type Designed = {
  readonly input: JobInput;
  readonly layout: EaveLayout;
  readonly design: EaveDesign;
  readonly result: JobResult;
};

/**
 * One variant alone, for whoever shows them as they come.
 * @param key - which.
 * @param designed - the eave as designed.
 * @param compute - computes a job; the whole computation unless told.
 */
export function variantOf(
  key: VariantKey,
  { input, layout, design, result: asDesigned }: Designed,
  compute: (input: JobInput) => Result<JobResult, Problem> = computeJob,
): Variant {
  const changed = key === 'as-designed' ? design : changedDesign(key, design, layout, input, compute);
  const ofJob = withEave(input.design, changed);
  const result = key === 'as-designed' ? ok(asDesigned) : compute({ ...input, design: ofJob });
  const laid = result.ok ? result.value.eaves.find((eave) => eave.eaveId === layout.eaveId) : undefined;
  return {
    key,
    name: names[key],
    design: ofJob,
    differs: laid === undefined ? [] : differences(layout, laid),
    figures: result.ok && laid !== undefined ? ok(figuresOf(result.value, laid)) : failed(result),
  };
}

function failed(result: Result<JobResult, Problem>): Result<never, Problem> {
  if (result.ok) throw new Error('a variant lost its eave');
  return result;
}

function withEave(design: Design, eave: EaveDesign): Design {
  return { ...design, eaves: design.eaves.map((one) => (one.eaveId === eave.eaveId ? eave : one)) };
}

function changedDesign(
  key: Exclude<VariantKey, 'as-designed'>,
  design: EaveDesign,
  layout: EaveLayout,
  input: JobInput,
  compute: (input: JobInput) => Result<JobResult, Problem>,
): EaveDesign {
  switch (key) {
    case 'all-left':
      return onOneSide('left', design, layout, input, compute);
    case 'all-right':
      return onOneSide('right', design, layout, input, compute);
    case 'fillers':
      return {
        ...design,
        addedTails: [],
        pins: withoutMethod(design, 'block-hung'),
        layout: { ...design.layout, allowFiller: true, allowBlockHung: false },
      };
    case 'hung':
      return {
        ...design,
        pins: withoutMethod(design, 'filler'),
        layout: { ...design.layout, allowFiller: false, allowBlockHung: true },
      };
    case 'two-more':
      return evenedDesign(design, layout, 2);
    default:
      return key satisfies never;
  }
}

/** Pins that ask for a method keep their side, and leave the method to the program. */
function withoutMethod({ pins }: EaveDesign, method: Extender['method']): EaveDesign['pins'] {
  return pins.map((pin) => {
    if (pin.method !== method) return pin;
    const { method: _, ...rest } = pin;
    return rest;
  });
}

/** Pins every sound rafter to one side, but for those where the tail would clash there, which are left to the program. */
function onOneSide(
  side: Side,
  design: EaveDesign,
  layout: EaveLayout,
  input: JobInput,
  compute: (input: JobInput) => Result<JobResult, Problem>,
): EaveDesign {
  const none = design.pins.filter((pin) => pin.side === 'none');
  const left = new Set(none.map(({ rafterId }) => rafterId));
  const pinned = (rafterIds: readonly string[]): EaveDesign => ({
    ...design,
    preferredSide: side,
    pins: [...none, ...rafterIds.map((rafterId) => ({ rafterId, side }))],
  });
  const wanted = layout.rafters.flatMap(({ id, condition }) =>
    condition === 'sound' && !left.has(id) ? [id] : [],
  );
  const tried = compute({ ...input, design: withEave(input.design, pinned(wanted)) });
  if (!tried.ok) return { ...design, preferredSide: side, pins: none };
  const laid = tried.value.eaves.find(({ eaveId }) => eaveId === layout.eaveId);
  const standing = new Set(
    laid?.extenders.flatMap((extender) =>
      extender.method === 'side' && extender.side === side && extender.clash === null
        ? [extender.rafterId]
        : [],
    ),
  );
  return pinned(wanted.filter((id) => standing.has(id)));
}

function figuresOf(result: JobResult, layout: EaveLayout): VariantFigures {
  const { extenders } = layout;
  const gaps = extenders.slice(1).map(({ centreIn }, index) => centreIn - (extenders[index]?.centreIn ?? 0));
  return {
    tails: extenders.length,
    tailsBySpecialMethod: extenders.filter(({ method }) => method !== 'side').length,
    largestGapIn: gaps.length === 0 ? null : Math.max(...gaps),
    boardsUsd: sumUsd(result.cutPlans.map(({ costUsd }) => costUsd)),
    totalUsd: result.estimate.totalUsd,
    labourHours: result.takeoff.labourHours,
    findings: result.findings.length,
    lacks: result.estimate.lacks.length,
  };
}
