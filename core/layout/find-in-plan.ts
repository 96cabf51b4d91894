import type { EaveDesign } from '../eave/design-document.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import type { EaveLayout, Extender, Finding, LineInPlan } from './layout-types.ts';

/** Less than this rounds to nothing on a tape, and is not told. [in] */
const untoldIn = 1 / 32;

type Laid = Pick<EaveLayout, 'eaveId' | 'extenders' | 'lineInPlan'>;

/**
 * What the bow of the wall does to the tails: how far their own overhangs vary, and where one leaves the limits that the
 * person set.
 * @param laid - the eave. [in]
 * @param design - limits of the tails' own overhang. [in]
 */
export function findInPlan(
  laid: Laid,
  design: Pick<EaveDesign, 'leastOverhangIn' | 'mostOverhangIn'>,
): readonly Finding[] {
  const { leastOverhangIn: least, mostOverhangIn: most } = design;
  return [
    ...findBow(laid),
    ...(least === null
      ? []
      : findBeyond(laid, `less than the ${formatInches(least)} asked for`, (own) => least - own)),
    ...(most === null
      ? []
      : findBeyond(laid, `more than the ${formatInches(most)} allowed`, (own) => own - most)),
  ];
}

function findBow({ eaveId, lineInPlan: { kind, bowed, least, most } }: Laid): readonly Finding[] {
  if (!bowed || least === null || most === null) return [];
  const varies = most.overhangIn - least.overhangIn;
  const text =
    kind === 'follow'
      ? 'The wall is not straight, and the fascia follows its bow: it will not look straight from the end.'
      : varies < untoldIn
        ? undefined
        : `The wall is not straight: with the fascia straight the tails stick out ${overhangAtWords(least)} to ${overhangAtWords(most)}. The soffit is ${formatInches(varies)} wider there: scribe it to the wall.`;
  return text === undefined ? [] : [{ eaveId, stationIn: null, topic: 'wall-bow', text, structural: false }];
}

function overhangAtWords({ overhangIn, stationIn }: NonNullable<LineInPlan['least']>): string {
  return `${formatInches(overhangIn)} (at ${formatLength(stationIn)})`;
}

/** One finding for each stretch of neighbouring tails that are beyond the limit, at the worst of them. */
function findBeyond(
  { eaveId, extenders }: Laid,
  limit: string,
  beyondBy: (ownIn: number) => number,
): readonly Finding[] {
  const stretches: Extender[][] = [];
  let open: Extender[] | undefined;
  for (const extender of extenders) {
    if (beyondBy(extender.overhangLevelIn) <= untoldIn) open = undefined;
    else if (open === undefined) stretches.push((open = [extender]));
    else open.push(extender);
  }
  return stretches.flatMap((stretch): readonly Finding[] => {
    const [first] = stretch;
    const last = stretch.at(-1);
    if (first === undefined || last === undefined) return [];
    const worst = stretch.reduce((most, one) =>
      beyondBy(one.overhangLevelIn) > beyondBy(most.overhangLevelIn) ? one : most,
    );
    const where =
      first === last
        ? `At ${formatLength(first.centreIn)} the tail sticks`
        : `From ${formatLength(first.centreIn)} to ${formatLength(last.centreIn)} the tails stick`;
    const figure = formatInches(worst.overhangLevelIn);
    const out =
      first === last ? `out ${figure}` : `out ${figure} at the worst, at ${formatLength(worst.centreIn)}`;
    return [
      {
        eaveId,
        stationIn: worst.centreIn,
        topic: 'overhang-limit',
        text: `${where} ${out}, ${limit}. Change the overhang, what it is measured from, or the limit.`,
        structural: false,
      },
    ];
  });
}
