import { numberList } from '../layout/number-list.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { Phase } from '../eave/design-document.ts';
import type { Fastening } from '../pricing/shop-settings.ts';
import type { TracePart } from '../trace/trace.ts';
import type { CoveredEave } from './cover.ts';
import { nailsAcross, plankCourses } from './sheathing-strip.ts';
import { patternNails, staggeredNails } from './stagger.ts';
import { counted, eaveLabel } from './takeoff-context.ts';

/** Nails of one kind for one use on one eave, net of loss. */
export type NailUse = {
  readonly nail: string;
  readonly use: 'extender' | 'plate' | 'block' | 'fascia' | 'sheathing';
  readonly phase: Phase;
  readonly eaveId: string;
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

function fasciaNails({ layout, design }: CoveredEave, fastening: Fastening): NailUse {
  const depthIn = dressedSection(design.fascia.stock.section)?.depthIn ?? Number.POSITIVE_INFINITY;
  const shallow = depthIn <= shallowFasciaIn;
  const each = shallow ? fastening.fasciaNailsShallow : fastening.fasciaNailsDeep;
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
        ref: `setting/fastening.${shallow ? 'fasciaNailsShallow' : 'fasciaNailsDeep'}`,
      },
    ],
  };
}

function sheathingNails({ layout, cover }: CoveredEave, fastening: Fastening): NailUse {
  const supports = layout.extenders.length;
  const crossings =
    cover.kind === 'panels'
      ? supports + cover.courses.panelsAlong - 1
      : cover.kind === 'planks'
        ? supports
        : 0;
  const each =
    cover.kind === 'panels'
      ? cover.courses.courseWidthsIn.reduce(
          (sum, widthIn) => sum + nailsAcross(widthIn, fastening.sheathingSpacingIn),
          0,
        )
      : cover.kind === 'planks'
        ? plankCourses(cover.strip.widthIn, cover.coverIn) * fastening.plankNailsPerBearing
        : 0;
  const onWhat =
    cover.kind === 'panels'
      ? `${counted(supports, 'extender')} and ${counted(crossings - supports, 'panel joint')}`
      : counted(supports, 'bearing');
  return {
    nail: fastening.sheathingNail,
    use: 'sheathing',
    phase: 'Sheathing and edge',
    eaveId: layout.eaveId,
    count: crossings * each,
    parts: [
      {
        label: `${eaveLabel(layout)}, sheathing: ${onWhat}, ${each} across the strip`,
        value: counted(crossings * each, 'nail'),
        ref: `setting/fastening.${cover.kind === 'planks' ? 'plankNailsPerBearing' : 'sheathingSpacingIn'}`,
      },
    ],
  };
}
