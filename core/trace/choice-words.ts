/** What the choices of an entry mean, in the words of screen, paper and walk back; by the entry's name. */
export const choiceWords = {
  overhangMeasured: { level: 'level', 'along-slope': 'along the slope' },
  overhangTo: { framing: 'to the tail (framing)', 'fascia-face': 'to the fascia\u2019s face' },
  tailCut: { plumb: 'plumb', square: 'square to the slope' },
  preferredSide: { left: 'left of the rafter', right: 'right of the rafter' },
  method: {
    side: 'beside the rafter',
    filler: 'on a filler, joist between',
    'outer-face': 'on the outer face',
    'block-hung': 'hung on header blocks',
    'full-length': 'full length',
    'end-replacement': 'in the old one\u2019s place',
  },
  fasciaLine: {
    parallel: 'straight, parallel to the plate',
    level: 'straight and level',
    'best-fit': 'straight, best fit',
    'as-found': 'as found',
  },
  fasciaInPlan: { straight: 'straight', follow: "follows the wall's bow" },
  overhangFrom: { 'reference-line': 'the reference line', 'wall-mean': "the wall's mean" },
  faces: { plumb: 'plumb', square: 'square to the slope' },
  readingMode: {
    running: 'running, from the left end',
    'bays-clear': 'bay by bay, clear',
    'bays-centres': 'bay by bay, centre to centre',
  },
  readingTo: {
    centre: 'to the centre',
    'near-face': 'to the near (left) face',
    'far-face': 'to the far (right) face',
  },
  atGableRafter: { notched: 'let in, running through', butted: 'butted to its faces' },
  lookoutLaid: { flat: 'flat', 'on-edge': 'on edge' },
  profitMethod: { markup: 'markup on cost', margin: 'margin of the price' },
  taxRule: {
    'contractor-pays': 'contractor pays, on materials',
    'client-pays': 'client pays, on taxable lines',
    none: 'no sales tax',
  },
  roundToUsd: { '0': 'not rounded' },
  paperSize: { letter: 'letter, 8-1/2 by 11 in.', a4: 'A4, 210 by 297 mm' },
  groundSnowBasis: { nominal: 'Up to ASCE 7-16: as mapped', strength: 'ASCE 7-22: times 0.7' },
  windUpliftBasis: { strength: 'By ASCE 7: times 0.6', allowable: 'The 0.6 is in it' },
  icedEave: { doubled: 'Twice the flat roof snow', 'not-doubled': 'Not doubled' },
  roofing: {
    'asphalt-shingle': 'Asphalt shingles',
    'laminated-shingle': 'Asphalt, laminated',
    'wood-shingle': 'Wood shingles',
    'slate-3/16': 'Slate, 3/16 in.',
    'slate-1/4': 'Slate, 1/4 in.',
    'clay-tile': 'Clay tile',
    'cement-tile': 'Cement tile',
  },
  ventRatio: { '1/150': '1/150 of the attic', '1/300': '1/300 of the attic' },
  oldSpecies: speciesWords(),
  species: speciesWords(),
  grade: { 'no-1': 'No. 1', 'no-2': 'No. 2', stud: 'Stud' },
  notchRule: {
    quarter: 'A quarter of the depth at most',
    sixth: 'A sixth of the depth at most',
    remaining: '3-1/2 in. left, overhang to 24 in.',
  },
} as const satisfies Readonly<Record<string, Readonly<Record<string, string>>>>;

/** The words of a chosen value, where the entry's choices have some; undefined for any other entry. */
export function choiceWord(name: string, value: string): string | undefined {
  const all: Readonly<Record<string, Readonly<Record<string, string>>>> = choiceWords;
  const words = Object.hasOwn(all, name) ? all[name] : undefined;
  return words !== undefined && Object.hasOwn(words, value) ? words[value] : undefined;
}

/** Species groups as the grade stamp names them. */
function speciesWords() {
  return {
    'douglas-fir-larch': 'Douglas fir-larch (DF-L)',
    'southern-pine': 'Southern pine (SYP)',
    'hem-fir': 'Hem-fir (H-F)',
    'spruce-pine-fir': 'Spruce-pine-fir (S-P-F)',
  } as const;
}
