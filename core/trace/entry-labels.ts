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
