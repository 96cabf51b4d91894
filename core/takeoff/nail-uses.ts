import { numberList } from '../layout/number-list.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { Phase } from '../eave/design-document.ts';
import type { Fastening } from '../pricing/shop-settings.ts';
import type { TracePart } from '../trace/trace.ts';
import type { CoveredEave } from './cover.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import type { CoverBoard } from './panel-layout.ts';
import { nailsAcross } from './sheathing-strip.ts';
import { patternNails, staggeredNails } from './stagger.ts';
import { counted, eaveLabel } from './takeoff-context.ts';

/** Nails of one kind for one use on one eave or rake, net of loss. */
export type NailUse = {
  readonly nail: string;
  readonly use:
    | 'extender'
    | 'plate'
    | 'block'
    | 'fascia'
    | 'sheathing'
    | 'lookout'
    | 'ladder'
    | 'barge'
    | 'rake-fascia'
    | 'rake-sheathing';
  readonly phase: Phase;
  readonly eaveId: string;
  /** Present for a rake on that eave. */
  readonly rakeId?: string;
  readonly count: number;
  readonly parts: readonly TracePart[];
};

/** Deepest fascia that takes the shallow count of nails. [in] Common practice, no source. */
const shallowFasciaIn = 5.5;

/**
 * Counts the nails of one eave by use.
 *
 * - Extender to rafter: staggered rows over the backspan along the slope.
 * - Extender to plate: toenails on one face. An extender beside a rafter has that rafter on its other face, so both
 *   faces are never free; the setting for both faces waits for extenders that stand alone in a bay.
 * - Blocks: each end, two ends.
 * - Fascia: each tail, and once more for the second board at each joint.
 * - Sheathing: each panel edge and field at the one spacing across the strip on each extender, and once more for the
 *   second panel at each end joint; planks by nails per bearing and course.
 * Source of the counts: shop settings; where they come from stands there.
 * @param eave - the eave with its sheathing strip.
 * @param fastening - nail kinds, counts and spacings. [in]
 * @returns uses with a count above zero.
 */
export function nailUses(eave: CoveredEave, fastening: Fastening): readonly NailUse[] {
  const uses = [
    sisterJoints(eave, fastening),
    plateToenails(eave, fastening),
    blockNails(eave, fastening),
    fasciaNails(eave, fastening),
    sheathingNails(eave, fastening),
  ];
  return uses.filter((use) => use.count > 0);
}

function sisterJoints({ layout }: CoveredEave, { sister }: Fastening): NailUse {
  const groups = new Map<
    string,
    { count: number; raised: boolean; rafterIds: string[]; numbers: number[] }
  >();
  for (const { section, rafterId, rafterNumber } of layout.extenders) {
    const count = staggeredNails(section.backspanIn, sister).length;
    const raised = patternNails(section.backspanIn, sister).length < count;
    const key = `${count} ${raised}`;
    const group = groups.get(key) ?? { count, raised, rafterIds: [], numbers: [] };
    group.rafterIds.push(rafterId);
    group.numbers.push(rafterNumber);
    groups.set(key, group);
  }
  const mostFirst = [...groups.values()].sort(
    (a, b) => b.count - a.count || Number(a.raised) - Number(b.raised),
  );
  return {
    nail: sister.nail,
    use: 'extender',
    phase: 'Framing',
    eaveId: layout.eaveId,
    count: mostFirst.reduce((sum, { count, rafterIds }) => sum + count * rafterIds.length, 0),
    parts: mostFirst.map(({ count, raised, rafterIds, numbers }) => ({
      label: `${eaveLabel(layout)}, extender to rafter: ${counted(rafterIds.length, 'joint')} of ${count}${
        raised ? ' (our least for a joint)' : ''
      } at rafter ${numberList(numbers.toSorted((a, b) => a - b))}`,
      value: counted(count * rafterIds.length, 'nail'),
      ref: `section/${layout.eaveId}/${rafterIds[0] ?? ''}`,
    })),
  };
}

function plateToenails({ layout }: CoveredEave, fastening: Fastening): NailUse {
  const each = fastening.plateToenailsOneFace;
  const count = layout.extenders.length * each;
  return {
    nail: fastening.plateNail,
    use: 'plate',
    phase: 'Framing',
    eaveId: layout.eaveId,
    count,
    parts: [
      {
        label: `${eaveLabel(layout)}, extender to plate: ${counted(layout.extenders.length, 'extender')}, ${each} toenails on the open face`,
        value: counted(count, 'nail'),
        ref: 'setting/fastening.plateToenailsOneFace',
      },
    ],
  };
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

/**
 * Nails of a fascia at each tail or lookout, by its depth.
 * @param depthIn - actual depth of the fascia. [in]
 * @returns the count and the setting that gave it; 7-1/4 -> `fasciaNailsDeep`, 3.
 */
export function fasciaNailsEach(
  depthIn: number,
  fastening: Fastening,
): { readonly each: number; readonly setting: 'fasciaNailsShallow' | 'fasciaNailsDeep' } {
  const setting = depthIn <= shallowFasciaIn ? 'fasciaNailsShallow' : 'fasciaNailsDeep';
  return { each: fastening[setting], setting };
}

function fasciaNails({ layout, design }: CoveredEave, fastening: Fastening): NailUse {
  const depthIn = dressedSection(design.fascia.stock.section)?.depthIn ?? Number.POSITIVE_INFINITY;
  const { each, setting } = fasciaNailsEach(depthIn, fastening);
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
