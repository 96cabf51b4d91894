/** What the choices of the documents are called on the screen, by entry and choice. */
const words: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  overhangMeasured: { level: 'level', 'along-slope': 'along the slope' },
  overhangTo: { framing: 'to the tail (framing)', 'fascia-face': 'to the fascia\u2019s face' },
  tailCut: { plumb: 'plumb', square: 'square to the slope' },
  preferredSide: { left: 'left of the rafter', right: 'right of the rafter' },
  fasciaLine: { parallel: 'level with the plate', 'best-fit': 'straight, best fit', 'as-found': 'as found' },
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
  profitMethod: { markup: 'markup on cost', margin: 'margin of the price' },
  taxRule: {
    'contractor-pays': 'contractor pays, on materials',
    'client-pays': 'client pays, on taxable lines',
    none: 'no sales tax',
  },
  roundToUsd: { '0': 'not rounded' },
  paperSize: { letter: 'letter, 8-1/2 by 11 in.', a4: 'A4, 210 by 297 mm' },
};

/**
 * Says a choice in plain words.
 * @param name - of the entry, e.g. `fasciaLine`.
 * @param choice - as the document holds it, e.g. `as-found`.
 * @returns e.g. `as found`; undefined where the entry is no choice.
 */
export function choiceWords(name: string, choice: string): string | undefined {
  const ofEntry = words[name];
  return ofEntry !== undefined && Object.hasOwn(ofEntry, choice) ? ofEntry[choice] : undefined;
}
