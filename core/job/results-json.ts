import { Decimal } from 'decimal.js';
import type { CheckResult } from '../checks/check-types.ts';
import { runChecks } from '../checks/run-checks.ts';
import type { Board, CutPlan, UnplannedStock } from '../cutting/cut-plan-types.ts';
import type { Finding } from '../layout/layout-types.ts';
import type { CostLine, Estimate } from '../pricing/estimate-types.ts';
import type { Problem } from '../problems/problem.ts';
import { problemSentence } from '../problems/sentence.ts';
import type { Piece, TakeoffLine } from '../takeoff/takeoff-types.ts';
import { cutText, eaveJson } from './eave-json.ts';
import type { Json } from './json.ts';
import type { JobInput } from './job-file.ts';
import type { JobResult } from './job-result.ts';

/**
 * Every figure of a job as a JSON-able object with the unit at the end of each key: `In` inches, `Sixteenths`, `Ft`,
 * `SqFt`, `Deg`, `Usd` (decimal text), `Cents`, `Percent`, `H` hours, `Lb`; `Text` is a length as a tape is read.
 * Lengths in `In` are not rounded; what is cut is in whole sixteenths.
 * @param input - what the job was computed from.
 * @param result - the computed job.
 */
export function resultsJson(input: JobInput, result: JobResult) {
  return {
    format: 'eavewright-results',
    version: 1,
    job: input.job.name,
    asOf: input.asOf,
    eaves: result.eaves.map((layout) => eaveJson(layout)),
    pieces: result.takeoff.pieces.map(pieceJson),
    takeoff: {
      lines: result.takeoff.lines.map(takeoffLineJson),
      labourHours: result.takeoff.labourHours,
      crewDays: result.takeoff.crewDays,
      lacks: result.takeoff.lacks.map(problemJson),
    },
    cutPlans: result.cutPlans.map(cutPlanJson),
    unplanned: result.unplanned.map(unplannedJson),
    estimate: estimateJson(result.estimate),
    findings: result.findings.map(findingJson),
    checks: runChecks(input, result).map((check) => checkJson(check, input)),
    caution:
      'Structural figures are advisory. Local code, the building department and a licensed engineer decide.',
  } satisfies Json;
}

function pieceJson(piece: Piece) {
  return {
    mark: piece.mark,
    use: piece.use,
    section: piece.stock.section,
    grade: piece.stock.grade,
    lengthSixteenths: piece.lengthSixteenths,
    lengthText: cutText(piece.lengthSixteenths),
    eaveId: piece.eaveId,
    stationIn: piece.stationIn,
    cuts: piece.cuts,
  } satisfies Json;
}

function takeoffLineJson(line: TakeoffLine) {
  return {
    id: line.id,
    kind: line.kind,
    phase: line.phase,
    description: line.description,
    clientWording: line.clientWording,
    quantity: line.quantity,
    unit: line.unit,
    taxable: line.taxable,
    where: line.where,
    need: needJson(line.need),
  } satisfies Json;
}

function needJson(need: TakeoffLine['need']) {
  return need.kind === 'lumber'
    ? ({
        kind: need.kind,
        section: need.stock.section,
        grade: need.stock.grade,
        marks: need.marks,
      } satisfies Json)
    : ({ ...need } satisfies Json);
}

function cutPlanJson(plan: CutPlan) {
  return {
    group: plan.group,
    section: plan.stock.section,
    grade: plan.stock.grade,
    costUsd: plan.costUsd,
    boundUsd: plan.boundUsd,
    gapPercent: percent(plan.gap),
    status: plan.status,
    yieldPercent: percent(plan.yield),
    oneLengthUsd: plan.oneLengthUsd,
    oneLengthFt: plan.oneLengthFt,
    boards: plan.boards.map(boardJson),
  } satisfies Json;
}

function boardJson(board: Board) {
  return {
    number: board.number,
    itemId: board.itemId,
    lengthSixteenths: board.lengthSixteenths,
    lengthText: cutText(board.lengthSixteenths),
    priceCents: board.priceCents,
    pieces: board.items.map(({ mark, lengthSixteenths }) => ({
      mark,
      lengthSixteenths: lengthSixteenths,
      lengthText: cutText(lengthSixteenths),
    })),
    offcutSixteenths: board.offcutSixteenths,
    offcutText: cutText(board.offcutSixteenths),
  } satisfies Json;
}

function unplannedJson(stock: UnplannedStock) {
  return { group: stock.group, marks: stock.marks, problem: problemJson(stock.problem) } satisfies Json;
}

function estimateJson(estimate: Estimate) {
  return {
    asOf: estimate.asOf,
    validUntil: estimate.validUntil,
    lines: estimate.lines.map(costLineJson),
    totals: estimate.totals.map(({ key, label, amountUsd }) => ({ key, label, amountUsd })),
    directCostUsd: estimate.directCostUsd,
    priceUsd: estimate.priceUsd,
    totalUsd: estimate.totalUsd,
    profitMarkupPercent: estimate.profitMarkupPercent,
    profitMarginPercent: estimate.profitMarginPercent,
    grossMarkupPercent: estimate.grossMarkupPercent,
    grossMarginPercent: estimate.grossMarginPercent,
    lacks: estimate.lacks.map(problemJson),
    notes: estimate.notes.map(problemJson),
  } satisfies Json;
}

function costLineJson(line: CostLine) {
  return {
    id: line.id,
    takeoffLineId: line.takeoffLineId,
    kind: line.kind,
    phase: line.phase,
    description: line.description,
    clientWording: line.clientWording,
    quantity: line.quantity,
    unit: line.unit,
    unitCostUsd: line.unitCostUsd,
    costUsd: line.costUsd,
    priceUsd: line.priceUsd,
    taxable: line.taxable,
    supplier: line.supplier,
    stalePriceOf: line.stalePriceOf,
    rateMark: line.rateMark,
  } satisfies Json;
}

function findingJson(finding: Finding) {
  return {
    eaveId: finding.eaveId,
    stationIn: finding.stationIn,
    topic: finding.topic,
    text: finding.text,
    structural: finding.structural,
  } satisfies Json;
}

/** An advisory check; `ratio` has no unit, above 1 is beyond. Decisions stand beside the figures and change none. */
function checkJson(check: CheckResult, input: JobInput) {
  return {
    id: check.id,
    check: check.check,
    eaveId: check.eaveId,
    what: check.what,
    where: check.where,
    stationIn: check.stationIn,
    value: check.value === null ? null : { ...check.value },
    limit: check.limit === null ? null : { ...check.limit },
    ratio: check.ratio,
    verdict: check.verdict,
    source: check.source.map((source) => ({ ...source })),
    assumptions: check.assumptions,
    remedy: check.remedy,
    why: check.why.map(({ label, formula, withNumbers, result }) => ({
      label,
      formula,
      withNumbers,
      result,
    })),
    missingField: check.missingField,
    decisions: input.design.decisions
      .filter(({ checkId }) => checkId === check.id)
      .map(({ who, date, note }) => ({ who, date, note })),
  } satisfies Json;
}

function problemJson(problem: Problem) {
  return {
    code: problem.code,
    sentence: problemSentence(problem),
    field: problem.field ?? null,
  } satisfies Json;
}

/** A ratio in percent, to 2 decimals half up. [%] */
function percent(ratio: number): number {
  return new Decimal(ratio).times(100).toDecimalPlaces(2, Decimal.ROUND_HALF_UP).toNumber();
}
