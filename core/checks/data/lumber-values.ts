import type { StructuralGrade } from '../../eave/structure.ts';
import type { Species } from '../../survey/site.ts';
import type { SourceMark } from '../check-types.ts';

/** A tabulated figure, and how well it was seen by us. */
export type Cell = { readonly value: number; readonly mark: SourceMark };

/** Reference design values of one species group, grade and, for southern pine, size. */
export type LumberValues = {
  readonly species: Species;
  readonly grade: StructuralGrade;
  /** Actual depth the row is for; null where the row holds for all and the size factor is still to come. [in] */
  readonly depthIn: number | null;
  /** Bending. [psi] */
  readonly bending: Cell;
  /** Shear along the grain. [psi] */
  readonly shear: Cell;
  /** Compression square to the grain. [psi] */
  readonly acrossGrain: Cell;
  /** Modulus of elasticity. [psi] */
  readonly elasticity: Cell;
};

const seen = (value: number): Cell => ({ value, mark: 'published' });
const second = (value: number): Cell => ({ value, mark: 'secondary' });
const memory = (value: number): Cell => ({ value, mark: 'from-memory' });

type Marked = (value: number) => Cell;
type Row = readonly [
  Species,
  StructuralGrade,
  Marked,
  number,
  Marked,
  number,
  Marked,
  number,
  Marked,
  number,
];

/**
 * NDS Supplement 2018, Table 4A, lumber 2 in. and wider; the size factor is not in it.
 * [species, grade, bending, shear, across the grain, elasticity], each behind how well it was seen. [psi]
 */
const table4a: readonly Row[] = [
  ['douglas-fir-larch', 'no-1', memory, 1000, memory, 180, memory, 625, seen, 1_700_000],
  ['douglas-fir-larch', 'no-2', seen, 900, seen, 180, seen, 625, seen, 1_600_000],
  ['douglas-fir-larch', 'stud', second, 700, second, 180, second, 625, second, 1_400_000],
  ['hem-fir', 'no-1', memory, 975, memory, 150, memory, 405, seen, 1_500_000],
  ['hem-fir', 'no-2', seen, 850, seen, 150, memory, 405, seen, 1_300_000],
  ['hem-fir', 'stud', memory, 675, memory, 150, memory, 405, seen, 1_200_000],
  ['spruce-pine-fir', 'no-1', seen, 875, seen, 135, seen, 425, seen, 1_400_000],
  ['spruce-pine-fir', 'no-2', seen, 875, seen, 135, seen, 425, seen, 1_400_000],
  ['spruce-pine-fir', 'stud', memory, 675, memory, 135, memory, 425, seen, 1_200_000],
];

/** NDS Supplement 2018, Table 4B, southern pine: size is in it. [actual depth in, No.1 psi, No.2 psi] */
const southernPineBending: readonly (readonly [number, number, number])[] = [
  [3.5, 1500, 1100],
  [5.5, 1350, 1000],
  [7.25, 1250, 925],
  [9.25, 1050, 800],
  [11.25, 1000, 750],
];

/** Every row that is on file. Source: NDS Supplement 2018, Tables 4A and 4B, as seen in transcription; cells marked. */
export const lumberValues: readonly LumberValues[] = [
  ...table4a.map(
    ([species, grade, b, bending, v, shear, c, across, e, elasticity]): LumberValues => ({
      species,
      grade,
      depthIn: null,
      bending: b(bending),
      shear: v(shear),
      acrossGrain: c(across),
      elasticity: e(elasticity),
    }),
  ),
  ...southernPineBending.flatMap(([depthIn, first, other]): readonly LumberValues[] => [
    southernPine('no-1', depthIn, first, 1_600_000),
    southernPine('no-2', depthIn, other, 1_400_000),
  ]),
];

function southernPine(
  grade: StructuralGrade,
  depthIn: number,
  bending: number,
  elasticity: number,
): LumberValues {
  return {
    species: 'southern-pine',
    grade,
    depthIn,
    bending: seen(bending),
    shear: seen(175),
    acrossGrain: seen(565),
    elasticity: seen(elasticity),
  };
}

/**
 * Size factor C_F for bending of lumber 2 in. thick, by the greatest actual depth it holds for.
 * Source: NDS Supplement 2018, Table 4A, as seen in transcription. [in, -]
 */
export const sizeFactors: Readonly<
  Record<'visual' | 'stud', readonly { readonly toDepthIn: number; readonly factor: number }[]>
> = {
  visual: [
    { toDepthIn: 3.5, factor: 1.5 },
    { toDepthIn: 4.5, factor: 1.4 },
    { toDepthIn: 5.5, factor: 1.3 },
    { toDepthIn: 7.25, factor: 1.2 },
    { toDepthIn: 9.25, factor: 1.1 },
    { toDepthIn: 11.25, factor: 1 },
  ],
  stud: [
    { toDepthIn: 3.5, factor: 1.1 },
    { toDepthIn: 5.5, factor: 1 },
  ],
};
