import type { EaveDesign } from '../eave/design-document.ts';
import type { Extender } from '../layout/layout-types.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { Fastening } from '../pricing/shop-settings.ts';
import { headerNailsEach } from '../takeoff/header-nails.ts';
import { lapOf } from '../takeoff/lap.ts';
import { staggeredNails } from '../takeoff/stagger.ts';
import { bothFacesFree } from '../takeoff/tail-nails.ts';
import { formatInches } from '../units/format-length.ts';
import { inchesOf, type Sixteenths } from '../units/sixteenths.ts';

/** How a tail meets the plate, as it is cut, e.g. `seat 2-5/16", heel 1-3/8"`, `shim 3/8"`, `on the corner`. */
export function plateWords({ fit }: Pick<Extender, 'fit'>): string {
  if (fit.shimSixteenths > 0) return `shim ${inches(fit.shimSixteenths)}`;
  if (fit.seatSixteenths > 0) return `seat ${inches(fit.seatSixteenths)}, heel ${inches(fit.heelSixteenths)}`;
  return 'on the corner';
}

function inches(sixteenths: Sixteenths): string {
  return formatInches(inchesOf(sixteenths));
}

/** Nails that set one tail, by where they go. */
export type NailsOfTail = {
  /** Into the rafter beside it. */
  readonly lap: number;
  readonly plate: number;
  /** Through its header block into its back end; as many go through each end of the block. */
  readonly header: number;
  readonly ridge: number;
};

/**
 * Nails that set one tail, by where they go; counts of the settings. Worked: a hung 2x6 with the settings as they come ->
 * none in the lap, 4 into the plate, 3 through the header.
 */
export function nailsOfTail(
  extender: Extender,
  design: Pick<EaveDesign, 'backEnd' | 'extender'>,
  fastening: Fastening,
): NailsOfTail {
  const depthIn = dressedSection(design.extender.section)?.depthIn ?? 0;
  const { method } = extender;
  return {
    lap: staggeredNails(lapOf(extender, design, depthIn), fastening.sister).length,
    plate: bothFacesFree(extender) ? fastening.plateToenailsBothFaces : fastening.plateToenailsOneFace,
    header: method === 'block-hung' ? headerNailsEach(fastening, depthIn) : 0,
    ridge: method === 'full-length' || method === 'end-replacement' ? fastening.ridgeNailsPerRafter : 0,
  };
}

/** e.g. `9 lap, 3 plate`, `3 header, 4 plate`. */
export function nailWords({ lap, plate, header, ridge }: NailsOfTail): string {
  return [
    [lap, 'lap'] as const,
    [header, 'header'] as const,
    [plate, 'plate'] as const,
    [ridge, 'ridge'] as const,
  ]
    .filter(([count]) => count > 0)
    .map(([count, where]) => `${count} ${where}`)
    .join(', ');
}
