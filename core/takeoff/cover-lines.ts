import { Decimal } from 'decimal.js';
import { formatLength } from '../units/format-length.ts';
import { decimalText } from '../units/money.ts';
import { formatPitch } from '../units/pitch.ts';
import type { JobInput } from '../job/job-file.ts';
import type { TracePart } from '../trace/trace.ts';
import type { Cover, CoveredEave } from './cover.ts';
import { courseCount } from './lay-cover.ts';
import type { SheetPart } from './pack-sheets.ts';
import { type CoverBoard, jointsOfCourse } from './panel-layout.ts';
import { hundredths, hundredthsUp, sumDecimals } from './quantities.ts';
import type { SheathingStrip } from './sheathing-strip.ts';
import type { SheetUse } from './sheet-lines.ts';
import { counted, eaveLabel, idPart, whereText } from './takeoff-context.ts';
import type { TakeoffLine } from './takeoff-types.ts';

type Planked = CoveredEave & { readonly cover: Extract<Cover, { kind: 'planks' }> };

/**
 * What the sheathing of an eave is cut from sheets: every panel as laid, with how the strip came about.
 * @param eave - with its cover.
 * @returns nothing where planks or nothing cover it.
 */
export function sheathingUse(eave: CoveredEave): readonly SheetUse[] {
  const { cover, layout } = eave;
  if (cover.kind !== 'panels') return [];
  return [
    {
      use: 'sheathing',
      item: cover.item,
      sheet: cover.sheet,
      layout,
      parts: cover.boards.map(partOf),
      areaSqFt: cover.strip.areaSqFt,
      trace: [...stripParts(eave, cover.strip), ...coursesParts(eave, cover.boards)],
    },
  ];
}

/** The rectangle that a laid panel is cut to. [in] */
export function partOf({ fromIn, toIn, lowIn, highIn }: CoverBoard): SheetPart {
  return { lengthIn: toIn - fromIn, widthIn: highIn - lowIn };
}

/** How the courses of an eave are made up, with their joints. */
export function coursesParts(
  { layout }: Pick<CoveredEave, 'layout'>,
  boards: readonly CoverBoard[],
): readonly TracePart[] {
  return [...Map.groupBy(boards, ({ course }) => course)].map(([course, ofCourse]) => {
    const loose = jointsOfCourse(ofCourse).filter(({ tailId }) => tailId === null).length;
    return {
      label: `${eaveLabel(layout)}: course ${course} from the edge, ${counted(ofCourse.length, 'piece')}, joints on tails${
        loose === 0 ? '' : `, ${loose} between tails over a block`
      }`,
      value: formatLength(ofCourse.reduce((width, { lowIn, highIn }) => Math.max(width, highIn - lowIn), 0)),
    };
  });
}

/**
 * One line for each plank item that covers the overhangs, in running feet with waste.
 * @param eaves - the eaves with their cover.
 * @param input - for the waste on planks [%].
 * @returns lines such as `sheathing-1x6`.
 */
export function plankLines(eaves: readonly CoveredEave[], input: JobInput): readonly TakeoffLine[] {
  const planked = eaves.filter((eave): eave is Planked => eave.cover.kind === 'planks');
  return byItem(planked).map((group) => plankLine(group, input));
}

function plankLine(group: readonly [Planked, ...Planked[]], input: JobInput): TakeoffLine {
  const { item, coverIn } = group[0].cover;
  const waste = input.settings.plankWastePercent;
  const runs = group.map(({ cover }) => {
    const courses = courseCount(cover.boards);
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

function stripParts({ layout, survey }: CoveredEave, strip: SheathingStrip): readonly TracePart[] {
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

function byItem(eaves: readonly Planked[]): readonly (readonly [Planked, ...Planked[]])[] {
  const groups = new Map<string, [Planked, ...Planked[]]>();
  for (const eave of eaves) {
    const key = eave.cover.item?.id ?? '';
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [eave]);
    else group.push(eave);
  }
  return [...groups.values()];
}
