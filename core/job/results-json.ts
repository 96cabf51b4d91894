import type { CheckResult } from '../checks/check-types.ts';
import { runChecks } from '../checks/run-checks.ts';
import type { UnplannedStock } from '../cutting/cut-plan-types.ts';
import type { Finding } from '../layout/layout-types.ts';
import type { CostLine, Estimate } from '../pricing/estimate-types.ts';
import type { Problem } from '../problems/problem.ts';
import { problemSentence } from '../problems/sentence.ts';
import { priceOn } from '../pricing/price-on.ts';
import { assertNever } from '../result.ts';
import { coverEave } from '../takeoff/cover.ts';
import { coverRakes } from '../takeoff/rake-cover.ts';
import { eavesToTakeOff } from '../takeoff/takeoff-context.ts';
import type { Piece, TakeoffLine } from '../takeoff/takeoff-types.ts';
import { cutPlanJson } from './cut-plan-json.ts';
import { cutText } from './cut-text.ts';
import { eaveJson } from './eave-json.ts';
import type { JobInput } from './job-file.ts';
import type { JobResult } from './job-result.ts';
import type { Json } from './json.ts';
import { labourJson } from './labour-json.ts';
import { nailUsesJson } from './nails-json.ts';
import { rakeJson } from './rake-json.ts';
import { sheathingJson } from './sheathing-json.ts';
import { soffitJson } from './soffit-json.ts';

/**
 * Every figure of a job as a JSON-able object with the unit in each key. Numbers: `In` inches (not rounded),
 * `Sixteenths` (what is cut), `Ft`, `SqFt`, `Deg`, `RisePer12`, `InPerIn`, `Ratio`, `PerUnit`, `count...`. Decimal
 * text, exact: `Usd`, `Percent`, `Hours`, `Days`, `Lb`, and a `quantity` in the `unit` beside it. `Text` is a length as
 * a tape is read. Described in fixtures/job-file.md.
 * @param input - what the job was computed from.
 * @param result - the computed job.
 */
export function resultsJson(input: JobInput, result: JobResult) {
  const { fastening } = input.settings;
  const covered = eavesToTakeOff(input, result.eaves).map((eave) => coverEave(eave, input));
  return {
    format: 'eavewright-results',
    version: 1,
    job: input.job.name,
    asOf: input.asOf,
    eaves: result.eaves.flatMap((layout) => {
      const design = input.design.eaves.find(({ eaveId }) => eaveId === layout.eaveId);
      return design === undefined ? [] : [eaveJson(layout, design, fastening)];
    }),
    rakes: result.rakes.map(rakeJson),
    pieces: result.takeoff.pieces.map(pieceJson),
    takeoff: {
      lines: result.takeoff.lines.map(takeoffLineJson),
      labour: labourJson(covered, input, result.rakes),
      nails: nailUsesJson(covered, fastening, coverRakes(input, result.rakes, result.eaves)),
      sheathing: sheathingJson(covered),
      soffits: soffitJson(covered),
      labourHours: result.takeoff.labourHours,
      crewDays: result.takeoff.crewDays,
      lacks: result.takeoff.lacks.map(problemJson),
    },
    cutPlans: result.cutPlans.map((plan, index) =>
      cutPlanJson(plan, result.cuttingProblems[index]?.problem, input),
    ),
    unplanned: result.unplanned.map(unplannedJson),
    estimate: estimateJson(result.estimate, input),
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
    rakeId: piece.rakeId ?? null,
    stationIn: piece.stationIn,
    cuts: piece.cuts,
    shortSixteenths: piece.shortSixteenths ?? null,
    slantSixteenths: piece.slantSixteenths ?? null,
    hand: piece.hand ?? null,
    method: piece.method ?? null,
    inPlace: piece.inPlace ?? false,
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
  switch (need.kind) {
    case 'lumber':
      return { kind: need.kind, ...need.stock, marks: need.marks } satisfies Json;
    case 'nails':
      return {
        kind: need.kind,
        nail: need.nail,
        countNails: need.count,
        weightLb: need.pounds,
      } satisfies Json;
    case 'sheets':
      return {
        kind: need.kind,
        itemId: need.itemId,
        countSheets: need.sheets,
        areaSqFt: need.areaSqFt,
      } satisfies Json;
    case 'planks':
      return {
        kind: need.kind,
        itemId: need.itemId,
        lengthFt: Number(need.lengthFt),
        areaSqFt: need.areaSqFt,
      } satisfies Json;
    case 'edge':
      return { kind: need.kind, lengthIn: need.lengthIn, countPieces: need.pieces } satisfies Json;
    case 'vents':
      return {
        kind: need.kind,
        itemId: need.itemId,
        countVents: need.count,
        lengthFt: need.lengthFt === null ? null : Number(need.lengthFt),
      } satisfies Json;
    case 'labour':
      return {
        kind: need.kind,
        task: need.task,
        labourHours: need.hours,
        hoursPerUnit: need.unitHours,
        rateMark: need.rateMark,
      } satisfies Json;
    case 'extra':
      return { kind: need.kind, extraId: need.extraId } satisfies Json;
    default:
      return assertNever(need);
  }
}

function unplannedJson(stock: UnplannedStock) {
  return { group: stock.group, marks: stock.marks, problem: problemJson(stock.problem) } satisfies Json;
}

function estimateJson(estimate: Estimate, input: JobInput) {
  return {
    asOf: estimate.asOf,
    validUntil: estimate.validUntil,
    lines: estimate.lines.map((line) => costLineJson(line, input)),
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

function costLineJson(line: CostLine, input: JobInput) {
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
    price: priceUsed(line, input),
    stalePriceOf: line.stalePriceOf,
    rateMark: line.rateMark,
  } satisfies Json;
}

/** The observation that a line was bought at, with its day; null where nothing on the price list was bought. */
function priceUsed(line: CostLine, { priceList, asOf, settings }: JobInput) {
  const ref = line.madeOf.findLast((part) => part.ref?.startsWith('price/') === true)?.ref;
  const item = priceList.find(({ id }) => ref === `price/${id}`);
  const price = item === undefined ? undefined : priceOn(item, asOf, settings.money.priceStaleDays);
  if (item === undefined || price?.ok !== true) return null;
  const { observation, ageDays } = price.value;
  return {
    itemId: item.id,
    unitOfSale: item.unit,
    observedUsd: observation.priceUsd,
    observedOn: observation.observedOn,
    validUntil: observation.validUntil,
    source: observation.source,
    ageDays: String(ageDays),
  } satisfies Json;
}

function findingJson(finding: Finding) {
  return {
    eaveId: finding.eaveId,
    rakeId: finding.rakeId ?? null,
    stationIn: finding.stationIn,
    topic: finding.topic,
    text: finding.text,
    structural: finding.structural,
  } satisfies Json;
}

/** An advisory check; its ratio has no unit, above 1 is beyond. Decisions stand beside the figures and change none. */
function checkJson(check: CheckResult, input: JobInput) {
  return {
    id: check.id,
    check: check.check,
    eaveId: check.eaveId,
    rakeId: check.rakeId ?? null,
    what: check.what,
    where: check.where,
    stationIn: check.stationIn,
    value: check.value === null ? null : { ...check.value },
    limit: check.limit === null ? null : { ...check.limit },
    limitRatio: check.ratio,
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
