/** The sections of a job, in the order of the work: address and name. */
export const sections = {
  survey: 'Survey',
  design: 'Design',
  checks: 'Checks',
  takeoff: 'Takeoff',
  'cut-plan': 'Cut plan',
  estimate: 'Estimate',
  quote: 'Quote',
  sheets: 'Sheets',
  cost: 'Job cost',
  billing: 'Billing',
} as const;

export type SectionId = keyof typeof sections;

/** Whether a part of the address names a section. */
export function isSection(text: string | undefined): text is SectionId {
  return text !== undefined && Object.hasOwn(sections, text);
}
