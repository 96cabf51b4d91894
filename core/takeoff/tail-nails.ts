import { numberList } from '../layout/number-list.ts';
import type { Extender } from '../layout/layout-types.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { Fastening, SisterPattern } from '../pricing/shop-settings.ts';
import { headerNailsEach } from './header-nails.ts';
import { lapOf } from './lap.ts';
import type { NailUse } from './nail-use.ts';
import { patternNails, staggeredNails } from './stagger.ts';
import { counted, eaveLabel, type EaveToTakeOff } from './takeoff-context.ts';

/**
 * Nails of the tails of one eave, by method; tails that are in place have theirs.
 *
 * - Beside a rafter, over a filler, on an outer face, or whole beside it: staggered rows over the lap; through a filler of a
 *   longer nail.
 * - Into the plate: toenails on the one face that is free; on both of a tail that hangs or replaces a rafter.
 * - Header blocks: through both ends, and through the block into each tail that hangs on it.
 * - Fillers: each layer is tacked on before the tail.
 * - A whole rafter: toenails at the ridge.
 * Source of the counts: shop settings; where they come from stands there.
 * @param eave - the eave as laid out.
 * @param fastening - nail kinds, counts and spacings. [in]
 */
export function tailNails(eave: EaveToTakeOff, fastening: Fastening): readonly NailUse[] {
  const tails = eave.layout.extenders.filter(({ inPlace }) => !inPlace);
  return [
    sisterJoints(
      eave,
      tails.filter(({ method }) => method !== 'filler'),
      fastening.sister,
      fastening.sister.nail,
    ),
    sisterJoints(
      eave,
      tails.filter(({ method }) => method === 'filler'),
      fastening.sister,
      fastening.throughFillerNail,
    ),
    plateToenails(eave, tails, fastening),
    headerNails(eave, tails, fastening),
    fillerNails(eave, tails, fastening),
    ridgeNails(eave, tails, fastening),
  ];
}

function sisterJoints(
  { layout, design }: EaveToTakeOff,
  tails: readonly Extender[],
  sister: SisterPattern,
  nail: string,
): NailUse {
  const depthIn = dressedSection(design.extender.section)?.depthIn ?? 0;
  const groups = new Map<string, { count: number; raised: boolean; ids: string[]; numbers: number[] }>();
  for (const extender of tails) {
    const lapIn = lapOf(extender, design, depthIn);
    const count = staggeredNails(lapIn, sister).length;
    if (count === 0) continue;
    const raised = patternNails(lapIn, sister).length < count;
    const key = `${count} ${raised}`;
    const group = groups.get(key) ?? { count, raised, ids: [], numbers: [] };
    group.ids.push(extender.id);
    group.numbers.push(extender.rafterNumber);
    groups.set(key, group);
  }
  const mostFirst = [...groups.values()].sort(
    (a, b) => b.count - a.count || Number(a.raised) - Number(b.raised),
  );
  return {
    nail,
    use: 'extender',
    phase: 'Framing',
    eaveId: layout.eaveId,
    count: mostFirst.reduce((sum, { count, ids }) => sum + count * ids.length, 0),
    parts: mostFirst.map(({ count, raised, ids, numbers }) => ({
      label: `${eaveLabel(layout)}, extender to rafter: ${counted(ids.length, 'joint')} of ${count}${
        raised ? ' (our least for a joint)' : ''
      } at rafter ${numberList(numbers.toSorted((a, b) => a - b))}`,
      value: counted(count * ids.length, 'nail'),
      ref: `section/${layout.eaveId}/${ids[0] ?? ''}`,
    })),
  };
}

/** Whether both faces of a tail can be reached at the plate: no rafter stands beside it. */
export function bothFacesFree({ method }: Pick<Extender, 'method'>): boolean {
  return method === 'block-hung' || method === 'end-replacement';
}

function plateToenails({ layout }: EaveToTakeOff, tails: readonly Extender[], fastening: Fastening): NailUse {
  const both = tails.filter(bothFacesFree).length;
  const one = tails.length - both;
  const { plateToenailsOneFace, plateToenailsBothFaces } = fastening;
  const label = `${eaveLabel(layout)}, extender to plate`;
  return {
    nail: fastening.plateNail,
    use: 'plate',
    phase: 'Framing',
    eaveId: layout.eaveId,
    count: one * plateToenailsOneFace + both * plateToenailsBothFaces,
    parts: [
      {
        label: `${label}: ${counted(one, 'extender')}, ${plateToenailsOneFace} toenails on the open face`,
        value: counted(one * plateToenailsOneFace, 'nail'),
        ref: 'setting/fastening.plateToenailsOneFace',
      },
      ...(both === 0
        ? []
        : [
            {
              label: `${label}: ${counted(both, 'tail')} with both faces free, ${plateToenailsBothFaces} toenails each`,
              value: counted(both * plateToenailsBothFaces, 'nail'),
              ref: 'setting/fastening.plateToenailsBothFaces',
            },
          ]),
    ],
  };
}

function headerNails(
  { layout, design }: EaveToTakeOff,
  tails: readonly Extender[],
  fastening: Fastening,
): NailUse {
  const depthIn = dressedSection(design.extender.section)?.depthIn ?? 0;
  const each = headerNailsEach(fastening, depthIn);
  const hung = tails.filter(({ method }) => method === 'block-hung');
  const headers = hung.flatMap((tail) => tail.headers);
  const set = new Set(
    layout.extenders.flatMap(({ headers: own, inPlace }) => (inPlace ? own.map(({ mark }) => mark) : [])),
  );
  const blocks = new Set(headers.map(({ mark }) => mark).filter((mark) => !set.has(mark))).size;
  const count = (blocks * 2 + headers.length) * each;
  return {
    nail: fastening.headerNail,
    use: 'header',
    phase: 'Framing',
    eaveId: layout.eaveId,
    count,
    parts: [
      {
        label: `${eaveLabel(layout)}, header blocks: ${counted(blocks, 'block')}, ${each} through each of 2 ends; ${counted(headers.length, 'tail')}, ${each} through the block into each`,
        value: counted(count, 'nail'),
        ref: `setting/fastening.${each === fastening.headerNailsDeep ? 'headerNailsDeep' : 'headerNailsShallow'}`,
      },
    ],
  };
}

function fillerNails({ layout }: EaveToTakeOff, tails: readonly Extender[], fastening: Fastening): NailUse {
  const layers = tails.reduce(
    (sum, { filler }) => sum + (filler === null || filler.lengthSixteenths <= 0 ? 0 : filler.layers.length),
    0,
  );
  const each = fastening.fillerNailsPerLayer;
  return {
    nail: fastening.fillerNail,
    use: 'filler',
    phase: 'Framing',
    eaveId: layout.eaveId,
    count: layers * each,
    parts: [
      {
        label: `${eaveLabel(layout)}, fillers: ${counted(layers, 'layer')}, ${each} each`,
        value: counted(layers * each, 'nail'),
        ref: 'setting/fastening.fillerNailsPerLayer',
      },
    ],
  };
}

function ridgeNails({ layout }: EaveToTakeOff, tails: readonly Extender[], fastening: Fastening): NailUse {
  const whole = tails.filter(({ method }) => method === 'full-length' || method === 'end-replacement').length;
  const each = fastening.ridgeNailsPerRafter;
  return {
    nail: fastening.ridgeNail,
    use: 'ridge',
    phase: 'Framing',
    eaveId: layout.eaveId,
    count: whole * each,
    parts: [
      {
        label: `${eaveLabel(layout)}, at the ridge: ${counted(whole, 'whole rafter')}, ${each} each`,
        value: counted(whole * each, 'nail'),
        ref: 'setting/fastening.ridgeNailsPerRafter',
      },
    ],
  };
}
