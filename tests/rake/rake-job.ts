import type { JobFile } from '../../core/job/job-file.ts';
import { type SmallJob, smallJob } from '../takeoff/small-job.ts';

/** Rafters 1-1/2 thick on a wall of 10 ft, the first and last flush with its ends. [in] */
export const stations = [0.75, 16, 40, 64, 88, 119.25];

/** What a test changes about the small job's rake. */
export type RakeJob = SmallJob & { readonly rake?: object; readonly rakeDesign?: object };

/** The small job with a rake of 12 in. at the left end of its eave, 12 ft of run, invented. */
export function rakeJob(change: RakeJob = {}): JobFile {
  const { rake, rakeDesign, survey, design, eaveDesign, ...rest } = change;
  return smallJob({
    stations,
    survey: {
      rakes: [{ id: 'gable', name: 'West rake', eaveId: 'wall-1', end: 'left', runIn: 144, ...rake }],
      ...survey,
    },
    design: {
      rakes: [
        {
          rakeId: 'gable',
          overhangIn: 12,
          lookout: { section: '2x4', grade: 'No.2' },
          barge: { section: '2x6', grade: 'No.2' },
          fascia: { stock: { section: '1x8', grade: 'primed' } },
          ...rakeDesign,
        },
      ],
      ...design,
    },
    eaveDesign: { ends: { left: { kind: 'rake', meets: 'gable' } }, ...eaveDesign },
    ...rest,
  });
}

/** Prices for everything that the rake's job buys, invented. */
export const prices: readonly object[] = [
  ...[8, 12, 16].map((lengthFt) => lumber('2x6', 'No.2', lengthFt, `${0.9 * lengthFt}`)),
  ...[8, 12].map((lengthFt) => lumber('2x4', 'No.2', lengthFt, `${0.5 * lengthFt}`)),
  ...[8, 12, 16].map((lengthFt) => lumber('1x8', 'primed', lengthFt, `${2 * lengthFt}`)),
  ...['16d common', '8d common', '8d common galvanized'].map((nail) => ({
    id: nail,
    category: 'nails',
    description: nail,
    unit: 'lb',
    nail,
    packageLb: 1,
    prices: [{ priceUsd: '5', observedOn: '2026-04-01' }],
  })),
  {
    id: 'sheet',
    category: 'sheet',
    description: 'Sheathing, 4 x 8 ft',
    unit: 'each',
    widthIn: 48,
    lengthIn: 96,
    prices: [{ priceUsd: '30', observedOn: '2026-04-01' }],
  },
  {
    id: 'plank',
    category: 'plank',
    description: 'Roof boards',
    unit: 'LF',
    section: '1x6',
    prices: [{ priceUsd: '1', observedOn: '2026-04-01' }],
  },
  {
    id: 'edge',
    category: 'edge',
    description: 'Drip edge, 10 ft',
    unit: 'each',
    lengthIn: 120,
    prices: [{ priceUsd: '9', observedOn: '2026-04-01' }],
  },
];

function lumber(section: string, grade: string, lengthFt: number, priceUsd: string): object {
  return {
    id: `${section}-${lengthFt}`,
    category: 'lumber',
    description: `${section} ${grade}, ${lengthFt} ft`,
    unit: 'each',
    section,
    grade,
    lengthFt,
    prices: [{ priceUsd, observedOn: '2026-04-01' }],
  };
}
