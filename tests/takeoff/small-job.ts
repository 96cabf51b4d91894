import { jobFileSchema, type JobFile } from '../../core/job/job-file.ts';
import { layOutEaves } from '../../core/job/lay-out-eaves.ts';
import { takeOff } from '../../core/takeoff/take-off.ts';
import type { EaveLayout } from '../../core/layout/layout-types.ts';
import type { Takeoff, TakeoffLine } from '../../core/takeoff/takeoff-types.ts';

/** What a test changes about the small job; the rest is an invented wall of 10 ft with rafters at 24 in. on centre. */
export type SmallJob = {
  readonly stations?: readonly number[];
  readonly survey?: object;
  readonly eave?: object;
  readonly design?: object;
  readonly eaveDesign?: object;
  readonly settings?: object;
  readonly priceList?: readonly object[];
  /** Further eaves like the first, by their rafters' stations. [in] */
  readonly moreEaves?: readonly (readonly number[])[];
};

/** Builds a job file, checked by its schema, with one eave or more of invented data. */
export function smallJob(change: SmallJob = {}): JobFile {
  const walls = [change.stations ?? [12, 36, 60, 84, 108], ...(change.moreEaves ?? [])];
  return jobFileSchema.parse({
    format: 'eavewright-job',
    version: 1,
    asOf: '2026-04-30',
    job: { name: 'Small job' },
    survey: {
      version: 1,
      eaves: walls.map((stations, index) => ({
        id: `wall-${index + 1}`,
        name: `Wall ${index + 1}`,
        lengthIn: 120,
        pitchRisePer12: 6,
        heightAbovePlateIn: 4.5,
        rafters: stations.map((readingIn, rafter) => ({ id: `r${rafter + 1}`, readingIn })),
        ...change.eave,
      })),
      ...change.survey,
    },
    design: {
      version: 1,
      eaves: walls.map((_, index) => ({
        eaveId: `wall-${index + 1}`,
        overhangIn: 16,
        extender: { section: '2x6', grade: 'No.2' },
        fascia: { stock: { section: '1x8', grade: 'primed' } },
        blocks: { stock: { section: '2x6', grade: 'No.2' } },
        soffit: { kind: 'open' },
        sheathing: {},
        // One tail a rafter: what the layout adds for gaps and panel joints is tried in tests/layout.
        layout: { panelJointsOnTails: false, largestGapIn: 48 },
        ...change.eaveDesign,
      })),
      ...change.design,
    },
    settings: { labour: { wageUsdPerHour: '30' }, ...change.settings },
    priceList: change.priceList ?? [],
  });
}

/** Lays out every eave of a job; throws where a test's own data cannot be laid out. */
export function layOut(job: JobFile): readonly EaveLayout[] {
  const layouts = layOutEaves(job);
  if (!layouts.ok) throw new Error(`not laid out: ${JSON.stringify(layouts.problem)}`);
  return layouts.value;
}

/** Takes off a small job. */
export function smallTakeoff(change: SmallJob = {}): Takeoff {
  const job = smallJob(change);
  return takeOff(job, layOut(job));
}

/** The line with this id; throws where there is none. */
export function lineOf(takeoff: Takeoff, id: string): TakeoffLine {
  const line = takeoff.lines.find((candidate) => candidate.id === id);
  if (line === undefined)
    throw new Error(`no line ${id} among ${takeoff.lines.map((one) => one.id).join(', ')}`);
  return line;
}
