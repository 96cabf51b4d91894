import type { Check } from './answer.ts';
import { bending } from './bending.ts';
import { deflection } from './deflection.ts';
import { lateralSupport } from './lateral-support.ts';
import { plateBearing } from './plate-bearing.ts';
import { shear } from './shear.ts';

/** Every check there is, in the order shown. To add one: write its file, and name it here. */
export const registry: readonly Check[] = [lateralSupport, bending, shear, plateBearing, deflection];
