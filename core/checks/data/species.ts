import type { Species } from '../../survey/site.ts';

/** A species group, for people and for nails. */
export type SpeciesGroup = {
  readonly name: string;
  /** Specific gravity for connections. [-] Source: NDS 2018, Table 12.3.3A. */
  readonly gravity: number;
};

/** Specific gravities: NDS 2018, Table 12.3.3A, as seen in transcription. */
export const speciesGroups: Readonly<Record<Species, SpeciesGroup>> = {
  'douglas-fir-larch': { name: 'Douglas fir-larch', gravity: 0.5 },
  'southern-pine': { name: 'southern pine', gravity: 0.55 },
  'hem-fir': { name: 'hem-fir', gravity: 0.43 },
  'spruce-pine-fir': { name: 'spruce-pine-fir', gravity: 0.42 },
};

/** Taken where nobody chose: the one of the four groups with the least nail values. */
export const speciesWhereUnknown: Species = 'spruce-pine-fir';
