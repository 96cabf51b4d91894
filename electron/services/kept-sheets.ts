import type { CutPlan } from '../../core/cutting/cut-plan-types.ts';
import { type BesideJob, makeSheet } from '../../core/documents/make-sheet.ts';
import { keptSheetKinds, type KeptSheetKind, type Sheet } from '../../core/documents/sheet.ts';
import { jobFileSchema, type JobInput } from '../../core/job/job-file.ts';
import type { JobResult } from '../../core/job/job-result.ts';

/** The sheets that are frozen with an estimate or a quote. */
export type KeptSheets = Readonly<Record<KeptSheetKind, Sheet>>;

/** What an estimate's record holds; the first ones were saved without their sheets. */
type FrozenRecord = {
  readonly input: JobInput;
  readonly result: JobResult;
  readonly sheets?: KeptSheets;
};

/** The sheets that are frozen with an estimate, as data: no later program words or reckons them anew. */
export function sheetsToKeep(input: JobInput, result: JobResult, beside: BesideJob): KeptSheets {
  const sheets = keptSheetKinds.map((kind) => [kind, makeSheet(kind, input, result, beside)] as const);
  return Object.fromEntries(sheets) as KeptSheets;
}

/**
 * A sheet of a frozen estimate. Of a record from before sheets were kept it is worded by today's program from the frozen
 * input and result: the figures are the frozen ones, the drawings of tails are left out, since today's are drawn from
 * more than was kept then.
 * @param record - as it was frozen, its hash checked.
 */
export function keptSheet(record: unknown, kind: KeptSheetKind): Sheet {
  const { input, result, sheets } = record as FrozenRecord;
  if (sheets !== undefined) return sheets[kind];
  const file = { format: 'eavewright-job', version: 1, ...input };
  // Entries that came into the documents since are filled in as for any stored document.
  const { format: _format, version: _version, ...today } = jobFileSchema.parse(file);
  return makeSheet(kind, today, {
    ...result,
    rakes: [],
    eaves: [],
    cutPlans: result.cutPlans.map(asPlannedToday),
    cuttingProblems: [],
  });
}

/** A plan as it was kept before boards on hand, pins and kinds of proof were: its bound was always one in whole numbers. */
function asPlannedToday(plan: CutPlan): CutPlan {
  const added = {
    proof: plan.status === 'optimal' ? 'exact-bound' : 'none',
    certificate: null,
    tiesProven: false,
    centsPerBoard: 0,
    unmetPins: [],
  } as const;
  return {
    ...added,
    ...plan,
    boards: plan.boards.map((board) => ({
      ...board,
      onHand: (board as Partial<typeof board>).onHand ?? false,
    })),
  };
}
