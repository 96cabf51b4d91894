/** The phases a job's lines are grouped by, in the order of the work. */
export const phases = [
  'Survey and permit',
  'Protect and stage',
  'Strip-back',
  'Framing',
  'Fascia and trim',
  'Sheathing and edge',
  'Soffit',
  'Roofing tie-in',
  'Paint',
  'Clean-up',
] as const;
export type Phase = (typeof phases)[number];
