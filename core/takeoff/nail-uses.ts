import type { EaveLayout } from '../layout/layout-types.ts';
import type { Fastening } from '../pricing/shop-settings.ts';
import type { CoveredEave } from './cover.ts';
import { edgeNails } from './edge-nails.ts';
import type { NailUse } from './nail-use.ts';
import type { CoverBoard } from './panel-layout.ts';
import { nailsAcross } from './sheathing-strip.ts';
import { soffitNails } from './soffit-nails.ts';
import { tailNails } from './tail-nails.ts';
import { counted, eaveLabel } from './takeoff-context.ts';

/**
 * Counts the nails of one eave by use: tails (tail-nails.ts), blocks at each of two ends, edge boards (edge-nails.ts),
 * sheathing, soffit (soffit-nails.ts). Sheathing: in each course a row across on each tail, and once more for the second
 * board at each joint; panels at the one spacing at edges and in the field, planks by nails per bearing.
 * Source of the counts: shop settings; where they come from stands there.
 * @param eave - the eave with its sheathing and soffit.
 * @param fastening - nail kinds, counts and spacings. [in]
 * @returns uses with a count above zero.
 */
export function nailUses(eave: CoveredEave, fastening: Fastening): readonly NailUse[] {
  const uses = [
    ...tailNails(eave, fastening),
    blockNails(eave, fastening),
    ...edgeNails(eave, fastening),
    sheathingNails(eave, fastening),
    ...soffitNails(eave.layout, eave.soffit, fastening),
  ];
  return uses.filter((use) => use.count > 0);
}

function blockNails({ layout }: CoveredEave, fastening: Fastening): NailUse {
  const blocks = layout.bays.filter((bay) => bay.block === 'block').length;
  const count = blocks * 2 * fastening.blockNailsPerEnd;
  return {
    nail: fastening.blockNail,
    use: 'block',
    phase: 'Framing',
    eaveId: layout.eaveId,
    count,
    parts: [
      {
        label: `${eaveLabel(layout)}, blocks: ${counted(blocks, 'block')}, ${fastening.blockNailsPerEnd} at each of 2 ends`,
        value: counted(count, 'nail'),
        ref: 'setting/fastening.blockNailsPerEnd',
      },
    ],
  };
}

function sheathingNails({ layout, cover }: CoveredEave, fastening: Fastening): NailUse {
  const { planks, parts, count } = coverNails(layout, cover, fastening);
  return {
    nail: fastening.sheathingNail,
    use: 'sheathing',
    phase: 'Sheathing and edge',
    eaveId: layout.eaveId,
    count,
    parts: parts.map(({ course, tails, joints, each }) => ({
      label: `${eaveLabel(layout)}, sheathing, course ${course}: ${counted(tails, 'tail')}${
        joints === 0 ? '' : ` and ${counted(joints, 'joint')}`
      }, ${each} nails each`,
      value: counted((tails + joints) * each, 'nail'),
      ref: `setting/fastening.${planks ? 'plankNailsPerBearing' : 'sheathingSpacingIn'}`,
    })),
  };
}

/** Rows of nails in each course: one on each tail, one more at each joint for the second board. */
function coverNails(layout: EaveLayout, cover: CoveredEave['cover'], fastening: Fastening) {
  const planks = cover.kind === 'planks';
  const boards = cover.kind === 'none' ? [] : cover.boards;
  const parts = [...Map.groupBy(boards, ({ course }) => course)].map(([course, ofCourse]) => {
    const { fromIn, toIn } = runOf(ofCourse);
    const tails = layout.extenders.filter(({ centreIn }) => centreIn >= fromIn && centreIn <= toIn).length;
    const widthIn = ofCourse.reduce((width, { lowIn, highIn }) => Math.max(width, highIn - lowIn), 0);
    const each = planks ? fastening.plankNailsPerBearing : nailsAcross(widthIn, fastening.sheathingSpacingIn);
    return { course, tails, joints: ofCourse.length - 1, each };
  });
  const count = parts.reduce((sum, { tails, joints, each }) => sum + (tails + joints) * each, 0);
  return { planks, parts, count };
}

function runOf(boards: readonly CoverBoard[]): { readonly fromIn: number; readonly toIn: number } {
  return { fromIn: boards[0]?.fromIn ?? 0, toIn: boards.at(-1)?.toIn ?? 0 };
}
