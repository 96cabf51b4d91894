import { drawHeaderDetail } from '../drawings/draw-header-detail.ts';
import { drawNailPattern } from '../drawings/draw-nail-pattern.ts';
import type { Drawing } from '../drawings/drawing.ts';
import type { Extender } from '../layout/layout-types.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { Fastening } from '../pricing/shop-settings.ts';
import { lapOf } from '../takeoff/lap.ts';
import { staggeredNails } from '../takeoff/stagger.ts';
import type { EaveParts } from './eave-drawings.ts';
import { nailsOfTail } from './tail-words.ts';

/**
 * The joints of an eave, one drawing a kind: the lap of the tail with the most nails, that of a tail on a filler, and the
 * header block of a hung tail.
 */
export function jointDrawings(parts: EaveParts, fastening: Fastening): readonly Drawing[] {
  const { extenders } = parts.layout;
  const most = (tails: readonly Extender[]): Extender | undefined =>
    tails.toSorted(
      (a, b) => nailsOfTail(b, parts.design, fastening).lap - nailsOfTail(a, parts.design, fastening).lap,
    )[0];
  const plain = most(extenders.filter(({ method }) => method === 'side'));
  const filled = most(extenders.filter(({ method }) => method === 'filler'));
  const hung = extenders.find(({ method, headers }) => method === 'block-hung' && headers.length > 0);
  return [
    ...[plain, filled].flatMap((extender) => {
      const drawing = extender === undefined ? undefined : nailPatternOf(parts, extender, fastening);
      return drawing === undefined ? [] : [drawing];
    }),
    ...(hung === undefined ? [] : [headerDetailOf(parts, hung, fastening)]),
  ];
}

/** The nails of one tail's lap; nothing to draw where it has none. */
export function nailPatternOf(
  parts: EaveParts,
  extender: Extender,
  fastening: Fastening,
): Drawing | undefined {
  const { design } = parts;
  const { sister } = fastening;
  const { section } = extender;
  const depthIn = dressedSection(design.extender.section)?.depthIn ?? 0;
  const lapIn = lapOf(extender, design, depthIn);
  if (lapIn <= 0) return undefined;
  // The lap is counted on the shorter edge, so that it ends where the back end's cut comes out on it.
  const shorterIn = design.backEnd === 'parallel' ? (depthIn * Math.abs(extender.pitchRisePer12)) / 12 : 0;
  const toIn = (section.kickUp?.lap?.toIn ?? section.backspanIn) - shorterIn;
  return drawNailPattern(
    { ...parts, extender },
    {
      nail: extender.method === 'filler' ? fastening.throughFillerNail : sister.nail,
      rows: sister.rows,
      edgeDistanceIn: design.structure.nailEdgeDistanceIn,
      lap: { fromIn: toIn - lapIn, toIn },
      nails: staggeredNails(lapIn, sister),
    },
  );
}

/** The header block of a hung tail with its nails. */
export function headerDetailOf(parts: EaveParts, extender: Extender, fastening: Fastening): Drawing {
  const each = nailsOfTail(extender, parts.design, fastening).header;
  return drawHeaderDetail(parts.layout, extender, {
    nail: fastening.headerNail,
    eachEnd: each,
    intoTail: each,
  });
}
