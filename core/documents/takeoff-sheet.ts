import { Decimal } from 'decimal.js';
import { phases } from '../eave/phases.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { stillToCut, stillToCutSentence } from '../job/still-to-cut.ts';
import type { TakeoffLine } from '../takeoff/takeoff-types.ts';
import { decimalText, formatUsd, sumUsd } from '../units/money.ts';
import { cautionBlocks } from './cautions.ts';
import { eavesWithParts } from './eave-drawings.ts';
import { lackBlocks } from './lacks.ts';
import { rakeBlocks } from './rake-blocks.ts';
import type { Block, Row, Sheet } from './sheet.ts';
import { sheetHead } from './sheet-head.ts';
import { eaveBlocks } from './takeoff-eave.ts';

/** Makes the takeoff: what the job needs by phase, what to buy, hours, and each eave with its schedules. */
export function takeoffSheet(input: JobInput, result: JobResult): Sheet {
  const { takeoff } = result;
  const { labour } = input.settings;
  return {
    ...sheetHead('takeoff', input),
    blocks: [
      {
        kind: 'facts',
        pairs: [
          ['Client', input.job.customer.name],
          ['Site', input.job.siteAddress],
          ['Prices of', input.asOf],
          ['Eaves', String(result.eaves.length)],
          ...(result.rakes.length === 0 ? [] : [['Rakes', String(result.rakes.length)] as const]),
          ['Labour', `${takeoff.labourHours} hours`],
          [
            'Time on site',
            `${takeoff.crewDays} days, crew of ${labour.crewSize} at ${labour.hoursPerDay} h a day`,
          ],
        ],
      },
      ...lackBlocks('takeoff', result),
      ...inPlaceBlocks(input, result),
      { kind: 'heading', text: 'What the job needs' },
      needTable(takeoff.lines),
      { kind: 'heading', text: 'Materials to buy' },
      buyTable(result),
      {
        kind: 'paragraph',
        small: true,
        text: `Shop paper: it shows cost before overhead, profit and tax, at the prices of ${input.asOf}. A price marked with a day is older than ${input.settings.money.priceStaleDays} days: ask again.`,
      },
      { kind: 'heading', text: 'Hours' },
      hoursTable(takeoff.lines),
      ...findingBlocks(result),
      ...cautionBlocks(input),
      ...eavesWithParts(input, result.eaves).flatMap((parts) => [
        ...eaveBlocks(input, result, parts),
        ...rakeBlocks(input, result, parts),
      ]),
    ],
  };
}

function grouped(
  lines: readonly TakeoffLine[],
  row: (line: TakeoffLine) => Row,
  closing?: (ofPhase: readonly TakeoffLine[]) => Row,
): readonly Row[] {
  return phases.flatMap((phase): readonly Row[] => {
    const ofPhase = lines.filter((line) => line.phase === phase);
    if (ofPhase.length === 0) return [];
    return [
      { cells: [phase], style: 'group' },
      ...ofPhase.map(row),
      ...(closing === undefined ? [] : [closing(ofPhase)]),
    ];
  });
}

function needTable(lines: readonly TakeoffLine[]): Block {
  return {
    kind: 'table',
    columns: [
      { title: 'What', align: 'left', share: 3 },
      { title: 'Quantity', align: 'right', share: 0 },
      { title: 'Unit', align: 'left', share: 0 },
      { title: 'Where used', align: 'left', share: 2 },
    ],
    rows: grouped(
      lines.filter((line) => line.kind !== 'labour'),
      (line) => ({ cells: [line.description, line.quantity, line.unit, line.where] }),
    ),
  };
}

function buyTable(result: JobResult): Block {
  const lines = result.estimate.lines.filter((line) => line.kind === 'material');
  return {
    kind: 'table',
    columns: [
      { title: 'Item', align: 'left', share: 3 },
      { title: 'Supplier', align: 'left', share: 2 },
      { title: 'Quantity', align: 'right', share: 0 },
      { title: 'Unit', align: 'left', share: 0 },
      { title: 'Price', align: 'right', share: 0 },
      { title: 'Cost', align: 'right', share: 0 },
    ],
    rows: [
      ...lines.map((line) => ({
        cells: [
          line.description,
          line.stalePriceOf === null ? line.supplier : `${line.supplier}, price of ${line.stalePriceOf}`,
          line.quantity,
          line.unit,
          formatUsd(line.unitCostUsd),
          formatUsd(line.costUsd),
        ],
      })),
      {
        cells: ['Materials', '', '', '', '', formatUsd(sumUsd(lines.map((line) => line.costUsd)))],
        style: 'total' as const,
      },
    ],
  };
}

function hoursTable(lines: readonly TakeoffLine[]): Block {
  const labour = lines.filter((line) => line.kind === 'labour');
  return {
    kind: 'table',
    columns: [
      { title: 'Task', align: 'left', share: 3 },
      { title: 'Where', align: 'left', share: 2 },
      { title: 'Hours', align: 'right', share: 0 },
      { title: 'Rate', align: 'left', share: 0 },
    ],
    rows: [
      ...grouped(
        labour,
        (line) => ({ cells: [line.description, line.where, line.quantity, rateWords(line)] }),
        (ofPhase) => ({
          cells: [`Sum, ${ofPhase[0]?.phase ?? ''}`, '', sumHours(ofPhase), ''],
          style: 'subtotal',
        }),
      ),
      { cells: ['All hours', '', sumHours(labour), ''], style: 'total' },
    ],
  };
}

/** A placeholder is marked, so that nobody takes its hours for the shop's own. */
function rateWords({ need }: TakeoffLine): string {
  return need.kind === 'labour' && need.rateMark === 'placeholder' ? 'placeholder' : 'own';
}

function sumHours(lines: readonly TakeoffLine[]): string {
  return decimalText(lines.reduce((sum, line) => sum.plus(line.quantity), new Decimal(0)));
}

/** What stands already is no longer in the quantities below. */
function inPlaceBlocks({ design }: JobInput, { eaves, takeoff }: JobResult): readonly Block[] {
  const left = stillToCut(eaves, takeoff.pieces, design);
  if (left.inPlace.length === 0) return [];
  return [
    { kind: 'heading', text: 'In place already' },
    {
      kind: 'paragraph',
      text: `${stillToCutSentence(left)} The quantities, costs and hours here are of what is still to be done. In place: ${left.inPlace.map(({ mark }) => mark).join(', ')}.`,
    },
  ];
}

function findingBlocks(result: JobResult): readonly Block[] {
  if (result.findings.length === 0) return [];
  const name = new Map(result.eaves.map((eave) => [eave.eaveId, eave.name]));
  return [
    { kind: 'heading', text: 'Look at these before work begins' },
    {
      kind: 'list',
      items: result.findings.map(
        (finding) => `${name.get(finding.eaveId) ?? finding.eaveId}: ${finding.text}`,
      ),
    },
  ];
}
