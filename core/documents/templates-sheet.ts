import { drawSeatTemplate } from '../drawings/draw-seat-template.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { counted } from '../takeoff/takeoff-context.ts';
import { formatInches } from '../units/format-length.ts';
import { structuralBlock } from './cautions.ts';
import { type CutGroup, cutGroups, isNotched } from './cut-groups.ts';
import { eavesWithParts } from './eave-drawings.ts';
import { markList } from './mark-list.ts';
import { overhangFacts } from './overhang-words.ts';
import type { Block, Sheet } from './sheet.ts';
import { sheetHead } from './sheet-head.ts';

/** Makes the full-size templates of the seat cuts, one a group of tails that share them. */
export function templatesSheet(input: JobInput, result: JobResult): Sheet {
  const { templateToleranceIn } = input.settings.cutting;
  const groups = cutGroups(eavesWithParts(input, result.eaves), templateToleranceIn);
  const notched = groups.filter(isNotched);
  const others = groups.filter((group) => !isNotched(group));
  return {
    ...sheetHead('templates', input),
    blocks: [
      { kind: 'facts', pairs: overhangFacts(result.eaves) },
      { kind: 'list', items: rules(templateToleranceIn, others) },
      ...(notched.length === 0
        ? [
            {
              kind: 'paragraph' as const,
              text: 'No tail that is still to be cut has a seat cut, so there is no template.',
            },
          ]
        : [{ kind: 'heading' as const, text: 'Templates' }, groupTable(notched)]),
      structuralBlock,
      ...notched.map((group) => template(group, notched.length)),
    ],
  };
}

function rules(toleranceIn: number, others: readonly CutGroup[]): readonly string[] {
  const bare = others.flatMap(marksOf);
  return [
    'Print at 100 % ("actual size"). Measure the ruler on every page before you cut anything: 6 in. and 150 mm.',
    "Lay the template's top edge on the crown edge of the piece, and its wall line on the piece's own: the lists say how far that is from the back end, along the top edge.",
    'The plumb cut of the tail, and of a back end that is cut plumb, is parallel to the wall line: slide the template along the top edge.',
    `Tails that share a template differ from it by no more than ${formatInches(toleranceIn)} in seat, heel, height over the seat and slant of the plumb line (Settings, Saw). Cut one, hold it in place, then cut the rest.`,
    ...(bare.length === 0 ? [] : [`No seat cut, so no template: ${markList(bare)}.`]),
  ];
}

function groupTable(groups: readonly CutGroup[]): Block {
  return {
    kind: 'table',
    large: true,
    columns: [
      { title: 'No.', align: 'right', share: 0 },
      { title: 'Lumber', align: 'left', share: 0 },
      { title: 'Tails, crown up', align: 'left', share: 1 },
      { title: 'Count', align: 'right', share: 0 },
      { title: 'Seat', align: 'right', share: 0 },
      { title: 'Heel', align: 'right', share: 0 },
      { title: 'Over seat', align: 'right', share: 0 },
      { title: 'Most off', align: 'right', share: 0 },
    ],
    rows: groups.map((group) => {
      const { extender, design } = group.model;
      const { bearing, heightAbovePlateIn } = extender.section;
      const [seatIn, heelIn] = bearing.kind === 'notched' ? [bearing.seatIn, bearing.heelCutIn] : [0, 0];
      return {
        cells: [
          String(group.number),
          design.extender.section,
          markList(marksOf(group)),
          String(group.tails.length),
          formatInches(seatIn),
          formatInches(heelIn),
          formatInches(heightAbovePlateIn),
          offWords(group.mostOffIn),
        ],
      };
    }),
  };
}

/** The furthest that one of the tails is off its template, in hundredths, finer than a tape. */
function offWords(offIn: number): string {
  return offIn < 0.005 ? '0' : `${offIn.toFixed(2)}"`;
}

function marksOf({ tails }: CutGroup): readonly string[] {
  return tails.map(({ extender }) => extender.mark);
}

function template(group: CutGroup, count: number): Block {
  const { extender, design } = group.model;
  return {
    kind: 'full-size',
    heading: `Template ${group.number} of ${count}: seat cut of ${counted(group.tails.length, 'tail')}, ${design.extender.section}`,
    note: `For ${markList(marksOf(group))}. Drawn from ${extender.mark}. Crown up, tail to the right.`,
    drawing: drawSeatTemplate(extender, `Seat template ${group.number}`),
  };
}
