import type { LabourTask } from './labour-tasks.ts';

/**
 * Tasks of the crew at a rake, in the order of the work. All hours are placeholders, the middle of a range of common
 * practice without a source, for a rake of a one-storey house; a gable has two, so setting up and cleaning up count half
 * a side each.
 */
export const rakeTasks = [
  {
    key: 'rake-set-up',
    label: 'Set up, protect and stage a rake',
    unit: 'side',
    phase: 'Protect and stage',
    clientWording: 'Protection of the house and staging along the gable',
    hoursPerUnit: 6,
    aloft: true,
  },
  {
    key: 'rake-strip-back',
    label: 'Strip back the deck at a rake',
    unit: 'LF',
    phase: 'Strip-back',
    clientWording: 'Opening the roof edge at the gable',
    hoursPerUnit: 0.08,
    aloft: true,
  },
  {
    key: 'rake-framing',
    label: 'Notch for and set lookouts, or build and hang a ladder',
    unit: 'LF',
    phase: 'Framing',
    clientWording: 'Framing the overhang at the gable',
    hoursPerUnit: 0.375,
    aloft: true,
  },
  {
    key: 'rake-barge',
    label: 'Cut and set barge rafters',
    unit: 'LF',
    phase: 'Framing',
    clientWording: 'Setting the outer rafters at the gable',
    hoursPerUnit: 0.16,
    aloft: true,
  },
  {
    key: 'rake-fascia',
    label: 'Set rake fascia',
    unit: 'LF',
    phase: 'Fascia and trim',
    clientWording: 'Setting the new fascia at the gable',
    hoursPerUnit: 0.08,
    aloft: true,
  },
  {
    key: 'rake-corner',
    label: 'Close the corner of eave and rake',
    unit: 'piece',
    phase: 'Fascia and trim',
    clientWording: 'Closing the corner where eave and gable edge meet',
    hoursPerUnit: 2.5,
    aloft: true,
  },
  {
    key: 'rake-sheathing',
    label: 'Sheathe the overhang at a rake',
    unit: 'SF',
    phase: 'Sheathing and edge',
    clientWording: 'Sheathing the new overhang at the gable',
    hoursPerUnit: 0.04,
    aloft: true,
  },
  {
    key: 'rake-drip-edge',
    label: 'Set drip edge at a rake, over the underlayment',
    unit: 'LF',
    phase: 'Sheathing and edge',
    clientWording: 'Setting the metal edge along the gable',
    hoursPerUnit: 0.025,
    aloft: true,
  },
  {
    key: 'rake-soffit',
    label: 'Set soffit panels at a rake',
    unit: 'LF',
    phase: 'Soffit',
    clientWording: 'Setting the soffit at the gable',
    hoursPerUnit: 0.14,
    aloft: true,
  },
  {
    key: 'rake-clean-up',
    label: 'Clean up at a rake',
    unit: 'side',
    phase: 'Clean-up',
    clientWording: 'Clean-up along the gable',
    hoursPerUnit: 2.25,
    aloft: false,
  },
] as const satisfies readonly LabourTask[];

/** Key of a task at a rake. */
export type RakeTaskKey = (typeof rakeTasks)[number]['key'];
