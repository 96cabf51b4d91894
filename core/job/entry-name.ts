/** Singular names of the lists of a job, so that `survey.eaves.0` reads `eave 1`. */
const singular: Readonly<Record<string, string>> = {
  eaves: 'eave',
  rafters: 'rafter',
  rakes: 'rake',
  obstructions: 'obstruction',
  wallReadings: 'wall reading',
  plateReadings: 'plate reading',
  otherOldBlocks: 'bay with another old block',
  pins: 'pin',
  addedTails: 'added tail',
  baysWithoutTail: 'bay without a tail',
  asBuilt: 'tail as built',
  openBays: 'open bay',
  extraCosts: 'extra cost',
  exclusions: 'exclusion',
  priceList: 'price item',
  prices: 'price',
  rates: 'labour rate',
  excludedLengthsFt: 'excluded length',
};

/** Endings that say a unit, which the sentence does not need. */
const unitEnding = / (in|ft|usd|lb|per 12)$/;

/**
 * Names an entry of a job in words from its dotted path.
 * @param field - e.g. `survey.eaves.0.rafters.3.readingIn`.
 * @returns e.g. `Survey, eave 1, rafter 4, reading`.
 */
export function entryName(field: string): string {
  if (field === '') return 'The job file';
  const words: string[] = [];
  const parts = field.split('.');
  for (const [index, part] of parts.entries()) {
    if (/^\d+$/.test(part)) continue;
    const next = parts[index + 1];
    const listed = singular[part];
    words.push(
      listed !== undefined && next !== undefined && /^\d+$/.test(next)
        ? `${listed} ${Number(next) + 1}`
        : plainWords(part),
    );
  }
  const name = words.join(', ');
  return name.charAt(0).toUpperCase() + name.slice(1);
}

function plainWords(name: string): string {
  return name
    .replace(/([A-Z])/g, ' $1')
    .replace(/(\d+)/g, ' $1')
    .replace(/\s+/g, ' ')
    .toLowerCase()
    .replace(unitEnding, '');
}
