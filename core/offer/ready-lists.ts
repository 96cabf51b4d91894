/** What quotes for this work usually leave out, to pick from. Common practice, no source. */
export const readyExclusions: readonly string[] = [
  'Drawings and calculations by an engineer',
  'Building permit and its fees (by the owner)',
  'Repair of hidden rot in rafters, plate or planks, beyond the prices for hidden work above',
  'Roofing, ice barrier and flashing (by the owner’s roofer)',
  'Testing for and removal of asbestos',
  'Removal of birds, bats, wasps or other animals and their nests',
  'Moving of wires, the power drop, its mast, lights and cameras',
  'Painting beyond the new work',
  'Painting',
  'Gutters and downspouts',
  'Repair of plants and lawn beside the house',
  'Cracks in ceilings and walls inside',
  'Matching of shingles that are no longer made',
  'Straightening of walls or roof beyond the new edge',
];

/** What the price rests on, to pick from. Common practice, no source. */
export const readyAssumptions: readonly string[] = [
  'The old rafters and the wall plate are sound where the new tails are fastened.',
  'Ladders and staging can stand on firm, level ground along the wall.',
  'Power and water at the house may be used.',
  'Work is done on weekdays between 7 in the morning and 5 in the evening.',
  'Days of rain, snow or strong wind move the days of work.',
  'Driveway and a place for material and a trailer are free.',
  'The new roofing meets the old at the line that is drawn; old roofing further up stays as it is.',
  'Colours of new and old paint or roofing may differ.',
];

/** Plans of payment to begin with, each `when`, kind and value. Common practice, no source. */
export const readyPayments = [
  { when: 'At signing', kind: 'percent', value: '10' },
  { when: 'When the framing lumber is on site', kind: 'percent', value: '30' },
  { when: 'When the framing is in and looked at', kind: 'percent', value: '30' },
  { when: 'When the work is done and cleaned up', kind: 'rest', value: '0' },
] as const;

/** Hidden work that old eaves show once they are open, with the unit it is counted by. Common practice, no source. */
export const readyHiddenWork = [
  { what: 'Rotted rafter tail cut back and repaired', unit: 'each' },
  { what: 'Rotted roof plank replaced', unit: 'foot' },
  { what: 'Rotted wall plate replaced', unit: 'foot' },
  { what: 'Missing tie between rafter and plate', unit: 'each' },
] as const;
