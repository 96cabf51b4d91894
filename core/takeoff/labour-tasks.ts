import type { Phase } from '../eave/phases.ts';
import { rakeTasks, type RakeTaskKey } from './rake-labour-tasks.ts';

/** What a task is counted in. */
export type LabourUnit = 'side' | 'rafter' | 'LF' | 'bay' | 'piece' | 'SF';

/** A task of the crew, with the production rate that holds until the shop enters its own. */
export type LabourTask = {
  readonly key: string;
  readonly label: string;
  readonly unit: LabourUnit;
  readonly phase: Phase;
  readonly clientWording: string;
  /** Placeholder: the middle of a range of common practice, no source. Labour hours of one person. [h/unit] */
  readonly hoursPerUnit: number;
  /** Done at the roof edge, so that storeys and a steep pitch slow it down. */
  readonly aloft: boolean;
};

/**
 * Every task that the takeoff counts along an eave, in the order of the work.
 * All hours are placeholders (common practice, no source) for a straight eave of a one-storey house; the shop's own
 * rates, set in Settings, take their place.
 */
export const eaveTasks = [
  {
    key: 'survey-rafters',
    label: 'Survey and number rafters',
    unit: 'rafter',
    phase: 'Survey and permit',
    clientWording: 'Measuring each rafter and laying out the work',
    hoursPerUnit: 0.12,
    aloft: true,
  },
  {
    key: 'set-up-side',
    label: 'Set up, protect and stage',
    unit: 'side',
    phase: 'Protect and stage',
    clientWording: 'Protection of the house and staging along the eave',
    hoursPerUnit: 12,
    aloft: true,
  },
  {
    key: 'strip-roof-edge',
    label: 'Strip back the roof edge',
    unit: 'LF',
    phase: 'Strip-back',
    clientWording: 'Opening the lower roof edge',
    hoursPerUnit: 0.08,
    aloft: true,
  },
  {
    key: 'strip-fascia',
    label: 'Take off old fascia and trim',
    unit: 'LF',
    phase: 'Strip-back',
    clientWording: 'Taking off the old fascia and trim',
    hoursPerUnit: 0.075,
    aloft: true,
  },
  {
    key: 'old-blocks-out',
    label: 'Take out old blocks',
    unit: 'bay',
    phase: 'Strip-back',
    clientWording: 'Taking out old blocking between the rafters',
    hoursPerUnit: 0.18,
    aloft: true,
  },
  {
    key: 'cut-extenders',
    label: 'Cut extenders',
    unit: 'piece',
    phase: 'Framing',
    clientWording: 'Cutting the new rafter extensions, each to its rafter',
    hoursPerUnit: 0.2,
    aloft: false,
  },
  {
    key: 'install-extenders',
    label: 'Install extenders to the string',
    unit: 'piece',
    phase: 'Framing',
    clientWording: 'Setting the new rafter extensions in line',
    hoursPerUnit: 0.45,
    aloft: true,
  },
  {
    key: 'install-over-fillers',
    label: 'Build fillers and set tails over them',
    unit: 'piece',
    phase: 'Framing',
    clientWording: 'Setting the new rafter extensions in line',
    hoursPerUnit: 0.6,
    aloft: true,
  },
  {
    key: 'install-hung',
    label: 'Hang tails between rafters on header blocks',
    unit: 'piece',
    phase: 'Framing',
    clientWording: 'Hanging new tails between the old rafters',
    hoursPerUnit: 0.8,
    aloft: true,
  },
  {
    key: 'install-whole',
    label: 'Set whole rafters beside old ones',
    unit: 'piece',
    phase: 'Framing',
    clientWording: 'Setting whole new rafters beside old ones',
    hoursPerUnit: 1.5,
    aloft: true,
  },
  {
    key: 'replace-end',
    label: 'Cut out an end rafter and set a new one',
    unit: 'piece',
    phase: 'Framing',
    clientWording: 'Replacing old rafters at the gable',
    hoursPerUnit: 2,
    aloft: true,
  },
  {
    key: 'shims',
    label: 'Rip and set shims and packers',
    unit: 'piece',
    phase: 'Framing',
    clientWording: 'Bringing the new tails to one line',
    hoursPerUnit: 0.1,
    aloft: true,
  },
  {
    key: 'cut-tails',
    label: 'Snap and cut tails in place',
    unit: 'piece',
    phase: 'Framing',
    clientWording: 'Cutting the new tails to one straight line',
    hoursPerUnit: 0.065,
    aloft: true,
  },
  {
    key: 'blocks',
    label: 'Cut and set blocks',
    unit: 'piece',
    phase: 'Framing',
    clientWording: 'Blocking between the rafters at the wall',
    hoursPerUnit: 0.15,
    aloft: true,
  },
  {
    key: 'sub-fascia',
    label: 'Set sub-fascia',
    unit: 'LF',
    phase: 'Fascia and trim',
    clientWording: 'Setting the lumber behind the fascia',
    hoursPerUnit: 0.065,
    aloft: true,
  },
  {
    key: 'fascia',
    label: 'Set fascia',
    unit: 'LF',
    phase: 'Fascia and trim',
    clientWording: 'Setting the new fascia',
    hoursPerUnit: 0.08,
    aloft: true,
  },
  {
    key: 'mitres',
    label: 'Fit a mitre at a corner',
    unit: 'piece',
    phase: 'Fascia and trim',
    clientWording: 'Fitting the fascia at the corners',
    hoursPerUnit: 0.5,
    aloft: true,
  },
  {
    key: 'sheathing',
    label: 'Sheathe the overhang',
    unit: 'SF',
    phase: 'Sheathing and edge',
    clientWording: 'Sheathing the new overhang',
    hoursPerUnit: 0.04,
    aloft: true,
  },
  {
    key: 'drip-edge',
    label: 'Set drip edge',
    unit: 'LF',
    phase: 'Sheathing and edge',
    clientWording: 'Setting the metal drip edge',
    hoursPerUnit: 0.025,
    aloft: true,
  },
  {
    key: 'soffit-framing',
    label: 'Set soffit ledger and nailers',
    unit: 'LF',
    phase: 'Soffit',
    clientWording: 'Framing for the soffit',
    hoursPerUnit: 0.07,
    aloft: true,
  },
  {
    key: 'soffit',
    label: 'Set soffit panels',
    unit: 'LF',
    phase: 'Soffit',
    clientWording: 'Setting the soffit',
    hoursPerUnit: 0.1,
    aloft: true,
  },
  {
    key: 'soffit-vents',
    label: 'Cut in and set soffit vents',
    unit: 'piece',
    phase: 'Soffit',
    clientWording: 'Setting vents in the soffit',
    hoursPerUnit: 0.15,
    aloft: true,
  },
  {
    key: 'clean-up-side',
    label: 'Clean up, magnet sweep, load debris',
    unit: 'side',
    phase: 'Clean-up',
    clientWording: 'Clean-up along the eave',
    hoursPerUnit: 4.5,
    aloft: false,
  },
] as const satisfies readonly LabourTask[];

/** Every task that the takeoff counts: along the eaves, then at the rakes. */
export const labourTasks: readonly (LabourTask & { readonly key: LabourTaskKey })[] = [
  ...eaveTasks,
  ...rakeTasks,
];

/** Key of a task along an eave. */
export type EaveTaskKey = (typeof eaveTasks)[number]['key'];

/** Key of a task. */
export type LabourTaskKey = EaveTaskKey | RakeTaskKey;

/**
 * Looks up a task by its key.
 * @param key - e.g. `install-extenders`.
 * @returns the task with its placeholder rate, or undefined. [h/unit]
 */
export function findLabourTask(key: string): LabourTask | undefined {
  return labourTasks.find((candidate) => candidate.key === key);
}
