import { Decimal } from 'decimal.js';
import { formatLength } from '../units/format-length.ts';
import { decimalText } from '../units/money.ts';
import { formatPitch } from '../units/pitch.ts';
import type { JobInput } from '../job/job-file.ts';
import type { Problem } from '../problems/problem.ts';
import type { TracePart } from '../trace/trace.ts';
import type { Cover, CoveredEave } from './cover.ts';
import { hundredths, hundredthsUp, sumDecimals } from './quantities.ts';
import { plankCourses, sheetsNeeded } from './sheathing-strip.ts';
import { counted, eaveLabel, idPart, whereText } from './takeoff-context.ts';
import type { TakeoffLine } from './takeoff-types.ts';

type Panelled = CoveredEave & { readonly cover: Extract<Cover, { kind: 'panels' }> };
type Planked = CoveredEave & { readonly cover: Extract<Cover, { kind: 'planks' }> };

/**
 * One line for each sheet or plank item that covers the overhangs: panels in square feet with the sheets to rip them
 * from, planks in running feet with waste.
 * @param eaves - the eaves with their cover.
 * @param input - for the saw kerf [in] and the waste on planks [%].
 * @returns lines such as `sheathing-PLY`, and what is missing to buy them.
 */
export function coverLines(
  eaves: readonly CoveredEave[],
  input: JobInput,
): { readonly lines: readonly TakeoffLine[]; readonly lacks: readonly Problem[] } {
  const panelled = eaves.filter((eave): eave is Panelled => eave.cover.kind === 'panels');
  const planked = eaves.filter((eave): eave is Planked => eave.cover.kind === 'planks');
  return {
    lines: [
      ...byItem(panelled).map((group) => panelLine(group, input)),
      ...byItem(planked).map((group) => plankLine(group, input)),
    ],
    lacks: eaves.flatMap(({ coverLacks }) => (coverLacks === null ? [] : [coverLacks])),
  };
}

function panelLine(group: readonly [Panelled, ...Panelled[]], input: JobInput): TakeoffLine {
  const { item, sheet } = group[0].cover;
  const sheets = sheetsNeeded(
    group.map(({ cover }) => cover.courses),
    sheet,
    input.settings.cutting.kerfIn,
  );
  const areas = group.map(({ cover }) => hundredths(cover.strip.areaSqFt));
  const area = sumDecimals(areas);
  return {
    id: `sheathing${item === undefined ? '-panels' : `-${idPart(item.id)}`}`,
    kind: 'sheet',
    phase: 'Sheathing and edge',
    description: `Sheathing ${item?.description ?? 'panels, none chosen'}, ${counted(sheets, 'sheet')}`,
    clientWording: 'Roof sheathing over the new overhang',
    quantity: decimalText(area),
    unit: 'SF',
    taxable: item?.taxable ?? true,
    where: whereText(group.map(({ layout }, index) => ({ layout, amount: `${areas[index] ?? ''} SF` }))),
    madeOf: [
      ...group.flatMap((eave) => stripParts(eave, eave.cover.strip)),
      {
        label: `Ripped from sheets ${formatLength(sheet.widthIn)} by ${formatLength(sheet.lengthIn)}, 1/8" gaps`,
        value: counted(sheets, 'sheet'),
        ...(item === undefined ? {} : { ref: `price/${item.id}` }),
      },
    ],
    need: { kind: 'sheets', itemId: item?.id ?? '', sheets, areaSqFt: area.toNumber() },
  };
}

function plankLine(group: readonly [Planked, ...Planked[]], input: JobInput): TakeoffLine {
  const { item, coverIn } = group[0].cover;
  const waste = input.settings.plankWastePercent;
  const runs = group.map(({ cover }) => {
    const courses = plankCourses(cover.strip.widthIn, cover.coverIn);
    return { courses, feet: hundredths(new Decimal(courses).times(cover.strip.lengthIn).div(12)) };
  });
  const net = sumDecimals(runs.map(({ feet }) => feet));
  const lengthFt = hundredthsUp(net.times(new Decimal(waste).plus(100)).div(100));
  const area = sumDecimals(group.map(({ cover }) => hundredths(cover.strip.areaSqFt)));
  return {
    id: `sheathing${item === undefined ? '-planks' : `-${idPart(item.id)}`}`,
    kind: 'plank',
    phase: 'Sheathing and edge',
    description: `Planks ${item?.description ?? 'none chosen'}, ${lengthFt} LF with waste`,
    clientWording: 'Roof boards over the new overhang',
    quantity: decimalText(net),
    unit: 'LF',
    taxable: item?.taxable ?? true,
    where: whereText(group.map(({ layout }, index) => ({ layout, amount: `${runs[index]?.feet ?? ''} LF` }))),
    madeOf: [
      ...group.flatMap((eave, index) => [
        ...stripParts(eave, eave.cover.strip),
        {
          label: `${eaveLabel(eave.layout)}: ${counted(runs[index]?.courses ?? 0, 'course')} of ${formatLength(coverIn)} cover`,
          value: `${runs[index]?.feet ?? ''} LF`,
          ...(item === undefined ? { ref: 'setting/plankCoverIn' } : { ref: `price/${item.id}` }),
        },
      ]),
      { label: `Waste, ${waste} %`, value: `${lengthFt} LF to buy`, ref: 'setting/plankWastePercent' },
    ],
    need: { kind: 'planks', itemId: item?.id ?? '', lengthFt, areaSqFt: area.toNumber() },
  };
}

function stripParts(
  { layout, survey }: CoveredEave,
  strip: Panelled['cover']['strip'],
): readonly TracePart[] {
  const label = eaveLabel(layout);
  const { eaveId } = layout;
  return [
    {
      label: `${label}: strip width up the slope, from the overhang`,
      value: formatLength(strip.widthIn),
      ref: `design/${eaveId}/overhangIn`,
    },
    {
      label: `${label}: length along the eave, wall and fascia ends`,
      value: formatLength(strip.lengthIn),
      ref: `eave/${eaveId}/lengthIn`,
    },
    {
      label: `${label}: pitch, for the slope factor`,
      value: formatPitch(survey.pitchRisePer12),
      ref: `eave/${eaveId}/pitchRisePer12`,
    },
    { label: `${label}: area of the strip`, value: `${hundredths(strip.areaSqFt)} SF` },
  ];
}

function byItem<E extends Panelled | Planked>(eaves: readonly E[]): readonly (readonly [E, ...E[]])[] {
  const groups = new Map<string, [E, ...E[]]>();
  for (const eave of eaves) {
    const key = eave.cover.item?.id ?? '';
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [eave]);
    else group.push(eave);
  }
  return [...groups.values()];
}
