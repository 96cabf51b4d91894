import type { CheckResult } from '../../core/checks/check-types.ts';
import { runChecks } from '../../core/checks/run-checks.ts';
import { computeJob } from '../../core/job/compute-job.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import type { JobResult } from '../../core/job/job-result.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { smallJob, type SmallJob } from '../takeoff/small-job.ts';

/** Every entry that a check may want, invented: a small house of 1930 in a snowy place. */
export const entered = {
  site: {
    groundSnowPsf: 40,
    windUpliftPsf: 30,
    iceBarrierRequired: true,
    atticAreaSqFt: 300,
  },
  eave: {
    rafterSpanIn: 144,
    oldSpecies: 'douglas-fir-larch',
    lotLineIn: 180,
    serviceDropAboveRoofIn: 60,
    paintedFasciaDepthIn: 5.5,
    paintedFriezeDepthIn: 7.25,
    windowHeadBelowPlateIn: 14,
  },
  structure: { species: 'douglas-fir-larch', panelRating: '32/16', soffitVentSqInPerFt: 9 },
} as const;

export type Change = {
  readonly site?: object;
  readonly eave?: object;
  readonly survey?: object;
  readonly structure?: object;
  readonly eaveDesign?: object;
  readonly design?: object;
  readonly settings?: object;
  readonly stations?: readonly number[];
  readonly priceList?: readonly object[];
};

/** A tail beside every rafter that has a side free, and nothing else: so that a test says itself what else there is. */
export const besideOnly = {
  allowFiller: false,
  allowBlockHung: false,
  allowFullLength: false,
  largestGapIn: 96,
} as const;

/** The small job of the takeoff's tests with everything entered, and what a test changes. */
export function fullJob(change: Change = {}): JobFile {
  const job: SmallJob = {
    stations: change.stations ?? [12, 36, 60, 84, 108],
    survey: { yearBuilt: 1930, site: { ...entered.site, ...change.site }, ...change.survey },
    eave: { deckStaysOn: false, ...entered.eave, ...change.eave },
    eaveDesign: {
      soffit: { kind: 'level' },
      // Worked by hand with laps as long as the backspan.
      backEnd: 'square',
      layout: besideOnly,
      ...change.eaveDesign,
      structure: { ...entered.structure, ...change.structure },
    },
    design: { notchRule: 'remaining', ...change.design },
    ...(change.settings === undefined ? {} : { settings: change.settings }),
    ...(change.priceList === undefined ? {} : { priceList: change.priceList }),
  };
  return smallJob(job);
}

/** Computes a job that must compute. */
export function resultOf(job: JobFile): JobResult {
  const result = computeJob(job);
  if (!result.ok) throw new Error(problemSentence(result.problem));
  return result.value;
}

/** Runs the checks of a job that must compute. */
export function checksOf(job: JobFile): readonly CheckResult[] {
  return runChecks(job, resultOf(job));
}

/** One check of the first eave. */
export function checkOf(check: string, change: Change = {}): CheckResult {
  const found = checksOf(fullJob(change)).find((one) => one.check === check);
  if (found === undefined) throw new Error(`no check ${check}`);
  return found;
}
