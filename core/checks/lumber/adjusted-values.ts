import { lumberValues, sizeFactors, type Cell, type LumberValues } from '../data/lumber-values.ts';
import type { StructuralGrade } from '../../eave/structure.ts';
import type { Species } from '../../survey/site.ts';

/** A stick of lumber as far as its design values go. */
export type Lumber = {
  readonly species: Species;
  readonly grade: StructuralGrade;
  /** Actual. [in] */
  readonly depthIn: number;
};

/** Conditions that adjust a reference value. */
export type Service = {
  /** C_D. [-] */
  readonly duration: number;
  readonly wet: boolean;
  /** Three or more members at no more than 24 in. on centre, joined. */
  readonly repetitive: boolean;
};

/** A reference value, the factors on it, and what comes out. [psi, -] */
export type Adjusted = {
  readonly reference: Cell;
  readonly factors: readonly { readonly name: string; readonly factor: number }[];
  readonly psi: number;
};

const repetitiveFactor = 1.15;

/**
 * The row of reference values for a stick, or undefined where none is on file: southern pine of stud grade, or a stud
 * deeper than 5-1/2 in. (the standard sends that one to No.3, which is not on file).
 * @param lumber - species group, grade and actual depth. [in]
 */
export function valuesOf({ species, grade, depthIn }: Lumber): LumberValues | undefined {
  if (grade === 'stud' && depthIn > 5.5) return undefined;
  const rows = lumberValues.filter((row) => row.species === species && row.grade === grade);
  return rows.find((row) => row.depthIn === null || depthIn <= row.depthIn + 1e-9);
}

/**
 * Adjusted bending value F_b' = F_b C_D C_M C_F C_r. Not rounded.
 * Source: NDS 2018, Table 4.3.1, factors of the Supplement's Table 4A; C_M 0.85 unless F_b C_F is 1150 psi or less.
 * Worked: Douglas fir-larch No.2 2x4, snow, repetitive: 900 x 1.15 x 1.5 x 1.15 = 1785.4 psi.
 */
export function adjustedBending(row: LumberValues, lumber: Lumber, service: Service): Adjusted {
  const size = sizeFactor(row, lumber);
  const wet = service.wet && row.bending.value * size > 1150 ? 0.85 : 1;
  return adjust(row.bending, [
    { name: 'C_D', factor: service.duration },
    { name: 'C_M', factor: wet },
    { name: 'C_F', factor: size },
    { name: 'C_r', factor: service.repetitive ? repetitiveFactor : 1 },
  ]);
}

/** Adjusted shear value F_v' = F_v C_D C_M. Source: NDS 2018, Table 4.3.1; C_M 0.97. [psi] */
export function adjustedShear(row: LumberValues, service: Service): Adjusted {
  return adjust(row.shear, [
    { name: 'C_D', factor: service.duration },
    { name: 'C_M', factor: service.wet ? 0.97 : 1 },
  ]);
}

/** Adjusted bearing value across the grain F_c,perp' = F_c,perp C_M; duration does not count. C_M 0.67. [psi] */
export function adjustedBearing(row: LumberValues, service: Pick<Service, 'wet'>): Adjusted {
  return adjust(row.acrossGrain, [{ name: 'C_M', factor: service.wet ? 0.67 : 1 }]);
}

/** Adjusted modulus of elasticity E' = E C_M; duration does not count. C_M 0.9. [psi] */
export function adjustedElasticity(row: LumberValues, service: Pick<Service, 'wet'>): Adjusted {
  return adjust(row.elasticity, [{ name: 'C_M', factor: service.wet ? 0.9 : 1 }]);
}

function sizeFactor(row: LumberValues, { grade, depthIn }: Lumber): number {
  if (row.depthIn !== null) return 1;
  const steps = sizeFactors[grade === 'stud' ? 'stud' : 'visual'];
  return steps.find(({ toDepthIn }) => depthIn <= toDepthIn + 1e-9)?.factor ?? 0.9;
}

function adjust(reference: Cell, factors: Adjusted['factors']): Adjusted {
  return { reference, factors, psi: factors.reduce((value, { factor }) => value * factor, reference.value) };
}
