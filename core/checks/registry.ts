import type { Check } from './answer.ts';
import { backspan } from './backspan.ts';
import { bending } from './bending.ts';
import { blockHung } from './block-hung.ts';
import { blockNails } from './block-nails.ts';
import { deflection } from './deflection.ts';
import { dripEdge } from './drip-edge.ts';
import { fasciaCover } from './fascia-cover.ts';
import { fasciaJoints } from './fascia-joints.ts';
import { fasciaNails } from './fascia-nails.ts';
import { fullLength } from './full-length.ts';
import { iceBarrier } from './ice-barrier.ts';
import { lateralSupport } from './lateral-support.ts';
import { lotLine } from './lot-line.ts';
import { nailCorrosion } from './nail-corrosion.ts';
import { nailDistances } from './nail-distances.ts';
import { nailPenetration } from './nail-penetration.ts';
import { nailSpacing } from './nail-spacing.ts';
import { notch } from './notch.ts';
import { oldRafter } from './old-rafter.ts';
import { overhangDepth } from './overhang-depth.ts';
import { overhangLength } from './overhang-length.ts';
import { overhangSpan } from './overhang-span.ts';
import { paintedArea } from './painted-area.ts';
import { panelWidth } from './panel-width.ts';
import { plateBearing } from './plate-bearing.ts';
import { plateToenails } from './plate-toenails.ts';
import { roofingPitch } from './roofing-pitch.ts';
import { seatLength } from './seat-length.ts';
import { serviceDrop } from './service-drop.ts';
import { shear } from './shear.ts';
import { sheathingLoad } from './sheathing-load.ts';
import { sheathingNails } from './sheathing-nails.ts';
import { sheathingSpan } from './sheathing-span.ts';
import { sisterNails } from './sister-nails.ts';
import { upliftAtPlate } from './uplift-at-plate.ts';
import { upliftAtSister } from './uplift-at-sister.ts';
import { ventilation } from './ventilation.ts';
import { windowHead } from './window-head.ts';

/** Every check there is, by group and in the order shown. To add one: write its file, and name it here. */
export const registry: readonly Check[] = [
  backspan,
  overhangLength,
  overhangSpan,
  overhangDepth,
  notch,
  seatLength,
  lateralSupport,
  fasciaCover,
  fasciaJoints,
  nailSpacing,
  nailDistances,
  nailCorrosion,
  bending,
  shear,
  plateBearing,
  deflection,
  fullLength,
  oldRafter,
  nailPenetration,
  sisterNails,
  plateToenails,
  blockNails,
  blockHung,
  fasciaNails,
  sheathingNails,
  upliftAtPlate,
  upliftAtSister,
  sheathingSpan,
  sheathingLoad,
  panelWidth,
  ventilation,
  roofingPitch,
  iceBarrier,
  dripEdge,
  paintedArea,
  serviceDrop,
  windowHead,
  lotLine,
];
