import type { KickedFrom, KickUp, SectionInput } from './section-types.ts';

/** A kick-up before its back end is known: over which stretch it would lie against the rafter. */
export type BesideRafter = Omit<KickUp, 'lap' | 'leavesRafterIn'> & {
  readonly beside: { readonly fromIn: number; readonly toIn: number } | null;
};

/**
 * The kick-up of a tail that reaches so far back: its lap ends there at the latest. Not rounded.
 * @param kickUp - as `kickUpOf` gives it. [in]
 * @param backspanIn - as built, along the tail's own slope. [in]
 */
export function toBackEnd({ beside, ...kickUp }: BesideRafter, backspanIn: number): KickUp {
  const toIn = Math.min(beside?.toIn ?? 0, backspanIn);
  return {
    ...kickUp,
    leavesRafterIn: beside?.toIn ?? null,
    lap: beside !== null && toIn > beside.fromIn ? { fromIn: beside.fromIn, toIn } : null,
  };
}

/**
 * Where a kicked-up tail leaves the old roof, and over how much of its length it lies against the rafter. The rafter's
 * band falls at the roof's slope m, the tail's at its own flatter slope k; their top edges cross raise / (m - k) inside the
 * wall, and further in the tail sinks below the rafter's top. Source: geometry (two lines). Not rounded.
 * Worked: roof 8/12, HAP 6, tail 4/12 on 9, both 2x6 -> break 3 / (1/3) = 9 in. inside the wall, at 12 in. above the plate.
 * @param input - of the tail's own edge. [in]
 * @param roof - the old roof there, steeper than the tail, and the least lap. [in]
 */
export function kickUpOf(
  input: Pick<SectionInput, 'pitchRisePer12' | 'heightAbovePlateIn' | 'depthIn' | 'overhangLevelIn'>,
  roof: KickedFrom,
): BesideRafter {
  const [m, k] = [roof.pitchRisePer12 / 12, input.pitchRisePer12 / 12];
  const ownFactor = Math.hypot(1, k);
  const raiseAtWallIn = input.heightAbovePlateIn - roof.heightAbovePlateIn;
  const breakOutIn = -raiseAtWallIn / (m - k);
  return {
    roofPitchRisePer12: roof.pitchRisePer12,
    raiseAtWallIn,
    breakOutIn,
    breakAbovePlateIn: roof.heightAbovePlateIn - m * breakOutIn,
    breakToTailIn: (input.overhangLevelIn - breakOutIn) * ownFactor,
    beside: roof.rafterDepthIn === null ? null : besideOf(roof.rafterDepthIn),
  };

  function besideOf(rafterDepthIn: number): BesideRafter['beside'] {
    const roofFactor = Math.hypot(1, m);
    const leastPlumbIn = roof.leastLapIn * roofFactor;
    // So far inside the wall the tail's top has sunk by u (m - k) - raise below the rafter's.
    const toIn = (rafterDepthIn * roofFactor - leastPlumbIn + raiseAtWallIn) / (m - k);
    const fromIn = Math.max(0, (raiseAtWallIn - (input.depthIn * ownFactor - leastPlumbIn)) / (m - k));
    return toIn > fromIn && Math.min(rafterDepthIn, input.depthIn) >= roof.leastLapIn
      ? { fromIn: fromIn * ownFactor, toIn: toIn * ownFactor }
      : null;
  }
}
