/** A beam on two supports that runs out past one of them. [in] */
export type SpanWithOverhang = { readonly spanIn: number; readonly overhangIn: number };

/** Even loads: dead on the whole beam, and short-term on the span alone. [lb/in] */
export type SpanLoads = { readonly deadLbPerIn: number; readonly spanLbPerIn: number };

/**
 * Largest moment within the span. The far support gives R = w L / 2 - w_D a^2 / (2 L) with w the whole load on the span, and
 * where the shear is nothing, R / w from there, M = R^2 / (2 w). Nothing where the overhang's weight lifts the far end.
 * Source: statics. Not rounded. Worked: L 144, a 16, w_D 1.5, 2.5 short-term: R = 288 - 1.33 = 286.67, M = 10,272 lb-in.
 */
export function spanMoment({ spanIn, overhangIn }: SpanWithOverhang, loads: SpanLoads): number {
  const w = loads.deadLbPerIn + loads.spanLbPerIn;
  const far = (w * spanIn) / 2 - (loads.deadLbPerIn * overhangIn ** 2) / (2 * spanIn);
  return far > 0 && w > 0 ? far ** 2 / (2 * w) : 0;
}

/**
 * What the support beside the overhang takes of the span's own load: half of it. [lb]
 * Source: statics. Worked: 4 lb/in. on 144 in. -> 288 lb.
 */
export function spanAtPlate(spanIn: number, lbPerIn: number): number {
  return (lbPerIn * spanIn) / 2;
}
