/** Names of the entries that the checks ask for, the same at the entry and wherever a missing one is told. */
export const checkEntryLabels = {
  groundSnowPsf: 'Ground snow',
  groundSnowBasis: 'Snow map',
  exposureFactor: 'Exposure factor Ce',
  thermalFactor: 'Thermal factor Ct',
  importanceFactor: 'Importance factor Is',
  icedEave: 'Ice at the eave',
  roofing: 'Roofing',
  roofingLayers: 'Layers of roofing',
  windUpliftPsf: 'Wind uplift on the overhang',
  windUpliftBasis: 'Wind uplift given as',
  iceBarrierRequired: 'Ice barrier asked for',
  atticAreaSqFt: 'Attic area',
  ventRatio: 'Vent area asked for',
  eaveVentShare: 'Share of it at the eaves',
  rafterSpanIn: 'Rafter span, level',
  oldSpecies: 'Old lumber',
  lotLineIn: 'Wall to lot line',
  gutterWidthIn: 'Gutter width',
  serviceDropAboveRoofIn: 'Power drop above roof',
  serviceDropToMast: 'The power drop comes to a mast through the overhang',
  wallThicknessIn: 'Wall thickness',
  paintedFasciaDepthIn: 'Painted fascia, depth',
  paintedFriezeDepthIn: 'Painted frieze, depth',
  windowHeadBelowPlateIn: 'Window head below plate',
  yearBuilt: 'Year built',
  species: 'Species, as stamped',
  grade: 'Design values for',
  wetService: 'The lumber stays wet in service',
  treated: 'Preservative-treated',
  panelRating: 'Panel span rating',
  edgeClips: 'Clips or blocks at panel edges',
  soffitVentSqInPerFt: 'Soffit vent, net free area',
  plateTieUpliftLb: 'Metal tie at each extender',
  soffitWeightPsf: 'Weight of soffit and trim',
  nailEdgeDistanceIn: 'Nails from the edge',
  notchRule: 'Notch held to',
} as const;

/** The name of an entry by the last part of its path; undefined where the checks do not ask for it. */
export function checkEntryName(key: string): string | undefined {
  const names: Readonly<Record<string, string>> = checkEntryLabels;
  return Object.hasOwn(names, key) ? names[key] : undefined;
}

/** Names of entries of an eave whose own words would say too little, the same on paper and in the walk back. */
export const eaveEntryLabels = {
  wallReadings: 'Wall readings from a string',
  plateReadings: 'Plate readings from a level',
  backEnd: 'Back end',
  fasciaLine: 'Fascia line',
  fasciaInPlan: 'Fascia in plan',
  overhangFrom: 'Overhang measured from',
  leastOverhangIn: 'Least overhang of a tail',
  mostOverhangIn: 'Greatest overhang of a tail',
  tailFaceIn: "Left of the tail's face",
  kickUpPitchRisePer12: 'Tails kicked up to',
  kickUpRaiseIn: 'Kick-up raised at the wall',
} as const;

/** Names of what a job wants of its boards, the same at the entry and wherever it is told. */
export const boardEntryLabels = {
  pins: 'Pinned boards',
  forbiddenLengthsFt: 'Lengths to buy on this job',
  usdPerBoard: 'A board fewer is worth',
  useOnHand: 'Use what is on hand',
  section: 'Section',
  grade: 'Grade',
  lengthIn: 'Length',
  count: 'Count',
  valueUsd: 'Worth of one',
  suppliers: 'Where to buy',
} as const;

/** The name of an entry of what a job wants of its boards, by the last part of its path; undefined for any other. */
export function boardEntryName(key: string): string | undefined {
  const names: Readonly<Record<string, string>> = boardEntryLabels;
  return Object.hasOwn(names, key) ? names[key] : undefined;
}

/** The name of an entry of an eave or of what the checks ask for; undefined where its own words say enough. */
export function eaveEntryName(key: string): string | undefined {
  const names: Readonly<Record<string, string>> = eaveEntryLabels;
  return Object.hasOwn(names, key) ? names[key] : checkEntryName(key);
}

/** Names of the entries of a rake by their paths in its survey or design, the same on screen and in the walk back. */
export const rakeEntryLabels = {
  name: 'Name',
  end: 'End of the eave',
  runIn: 'Wall to ridge, level',
  ridgeThicknessIn: 'Ridge thickness',
  pitchRisePer12: 'Pitch at the gable',
  endRafterThicknessIn: 'Gable rafter thickness',
  endRafterDepthIn: 'Gable rafter depth',
  firstInsideIn: 'First rafter inside',
  deckPastIn: 'Old deck past the wall',
  finishIn: 'Left on the wall',
  studsUnder: 'Studs stand under the gable rafter',
  note: 'Note',
  kind: 'Built with',
  overhangIn: 'Overhang',
  lookout: 'Lookouts',
  lookoutLaid: 'Laid',
  spacingIn: 'Largest spacing',
  atGableRafter: 'At the gable rafter',
  trimAllowanceIn: 'Long by, to trim',
  barge: 'Barge rafter',
  'fascia.wanted': 'A fascia on the barge rafter',
  'fascia.stock': 'Rake fascia',
  'sheathing.kind': 'Sheathing',
  'sheathing.itemId': 'Bought as',
  'sheathing.coversFascia': 'Sheathing covers the fascia',
  'sheathing.stripBackIn': 'Old deck stripped back',
  'sheathing.everySecondIn': 'Every second course',
  'soffit.itemId': 'Soffit',
  dripEdge: 'Drip edge',
} as const;

/** The name of an entry of a rake by its path; undefined where it has none of its own. */
export function rakeEntryName(path: string): string | undefined {
  const names: Readonly<Record<string, string>> = rakeEntryLabels;
  return Object.hasOwn(names, path) ? names[path] : undefined;
}
