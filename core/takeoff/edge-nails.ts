import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { Fastening } from '../pricing/shop-settings.ts';
import type { NailUse } from './nail-use.ts';
import { nailsAcross } from './sheathing-strip.ts';
import { counted, eaveLabel, type EaveToTakeOff } from './takeoff-context.ts';

/** Deepest edge board that takes the shallow count. [in] Common practice, no source. */
const shallowBoardIn = 5.5;

/**
 * Nails of the edge boards of one eave. Without a sub-fascia the fascia goes to each tail, and once more for the second
 * board at each joint. With one, the 2x goes to each tail and joint, and the fascia to the 2x: a group of nails at each
 * end of a board and between at no more than the spacing set.
 * @param eave - the eave as laid out.
 * @param fastening - nail kinds, counts and spacings. [in]
 */
export function edgeNails(eave: EaveToTakeOff, fastening: Fastening): readonly NailUse[] {
  const { layout } = eave;
  return layout.subFasciaRun === null
    ? [fasciaToTails(eave, fastening)]
    : [subFasciaToTails(eave, fastening), fasciaToSubFascia(eave, fastening)];
}

/**
 * Nails of a fascia at each tail or lookout, by its depth.
 * @param depthIn - actual depth of the fascia. [in]
 * @returns the count and the setting that gave it; 7-1/4 -> `fasciaNailsDeep`, 3.
 */
export function fasciaNailsEach(
  depthIn: number,
  fastening: Fastening,
): { readonly each: number; readonly setting: 'fasciaNailsShallow' | 'fasciaNailsDeep' } {
  const setting = depthIn <= shallowBoardIn ? 'fasciaNailsShallow' : 'fasciaNailsDeep';
  return { each: fastening[setting], setting };
}

function fasciaToTails({ layout, design }: EaveToTakeOff, fastening: Fastening): NailUse {
  const { each, setting } = fasciaNailsEach(depthOf(design.fascia.stock.section), fastening);
  const tails = layout.extenders.length;
  const joints = Math.max(0, layout.fascia.length - 1);
  const count = layout.fascia.length === 0 ? 0 : (tails + joints) * each;
  return {
    nail: fastening.fasciaNail,
    use: 'fascia',
    phase: 'Fascia and trim',
    eaveId: layout.eaveId,
    count,
    parts: [
      {
        label: `${eaveLabel(layout)}, fascia: ${counted(tails, 'tail')} and ${counted(joints, 'joint')}, ${each} each`,
        value: counted(count, 'nail'),
        ref: `setting/fastening.${setting}`,
      },
    ],
  };
}

function subFasciaToTails({ layout, design }: EaveToTakeOff, fastening: Fastening): NailUse {
  const shallow = depthOf(design.fascia.subFascia.stock.section) <= shallowBoardIn;
  const setting = shallow ? 'subFasciaNailsShallow' : 'subFasciaNailsDeep';
  const each = fastening[setting];
  const tails = layout.extenders.length;
  const joints = Math.max(0, layout.subFascia.length - 1);
  const count = layout.subFascia.length === 0 ? 0 : (tails + joints) * each;
  return {
    nail: fastening.subFasciaNail,
    use: 'sub-fascia',
    phase: 'Fascia and trim',
    eaveId: layout.eaveId,
    count,
    parts: [
      {
        label: `${eaveLabel(layout)}, sub-fascia: ${counted(tails, 'tail')} and ${counted(joints, 'joint')}, ${each} each`,
        value: counted(count, 'nail'),
        ref: `setting/fastening.${setting}`,
      },
    ],
  };
}

function fasciaToSubFascia({ layout, design }: EaveToTakeOff, fastening: Fastening): NailUse {
  const { each, setting } = fasciaNailsEach(depthOf(design.fascia.stock.section), fastening);
  const spacingIn = fastening.fasciaOnSubFasciaSpacingIn;
  const groups = layout.fascia.reduce(
    (sum, { fromIn, toIn }) => sum + nailsAcross(toIn - fromIn, spacingIn),
    0,
  );
  return {
    nail: fastening.fasciaNail,
    use: 'fascia',
    phase: 'Fascia and trim',
    eaveId: layout.eaveId,
    count: groups * each,
    parts: [
      {
        label: `${eaveLabel(layout)}, fascia to sub-fascia: ${counted(groups, 'group')} at no more than ${spacingIn}", ${each} each`,
        value: counted(groups * each, 'nail'),
        ref: `setting/fastening.${setting}`,
      },
    ],
  };
}

/** A section that is not known counts as deep. */
function depthOf(section: string): number {
  return dressedSection(section)?.depthIn ?? Number.POSITIVE_INFINITY;
}
