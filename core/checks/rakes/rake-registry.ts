import { rakeBackspan } from './rake-backspan.ts';
import type { RakeCheck } from './rake-check.ts';
import { rakeNotchRafter } from './rake-notch-rafter.ts';
import { rakeNotchTail } from './rake-notch-tail.ts';
import { rakeOverhang } from './rake-overhang.ts';

/** Every check of a rake, by group and in the order shown. */
export const rakeRegistry: readonly RakeCheck[] = [
  rakeBackspan,
  rakeOverhang,
  rakeNotchTail,
  rakeNotchRafter,
];
