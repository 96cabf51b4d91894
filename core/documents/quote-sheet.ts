import { type Phase, phases } from '../eave/phases.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { CostLine, EstimateTotal } from '../pricing/estimate-types.ts';
import { formatUsd, sumUsd } from '../units/money.ts';
import { rakesLeftOpen } from '../takeoff/uncounted-rake-soffit.ts';
import { cautionBlocks } from './cautions.ts';
import { eavesWithParts, sectionOf } from './eave-drawings.ts';
import { lackSentences } from './lacks.ts';
import { scopeParagraphs } from './scope-wording.ts';
import type { Block, Row, Sheet } from './sheet.ts';
import { sheetHead } from './sheet-head.ts';

/** Makes the client's quote: what is built, what it costs by phase, what is left out. Cost and hours never show. */
export function quoteSheet(input: JobInput, result: JobResult): Sheet {
  const { estimate } = result;
  const lacks = lackSentences(result);
  const customer = { ...input.job.customer, name: input.job.customer.name.trim() };
  const shopName = input.settings.shopName.trim();
  return {
    ...sheetHead('quote', input),
    blocks: [
      {
        kind: 'facts',
        pairs: [
          ['For', customer.name === '' ? 'Client not named' : customer.name],
          ['Address', customer.address],
          ['Work at', input.job.siteAddress],
          ['Date', input.asOf],
          ['Price good until', estimate.validUntil],
          ['Total', lacks.length === 0 ? formatUsd(estimate.totalUsd) : 'not complete, see below'],
        ],
      },
      ...incompleteBlocks(lacks.length),
      ...startedBlocks(result),
      { kind: 'heading', text: 'What we build' },
      ...scopeParagraphs(input, result).map((text): Block => ({ kind: 'paragraph', text })),
      ...(input.design.scopeNote.trim() === ''
        ? []
        : [{ kind: 'paragraph' as const, text: input.design.scopeNote.trim() }]),
      ...sectionBlocks(input, result),
      { kind: 'heading', text: 'Price' },
      priceTable(result, lacks.length > 0),
      ...taxBlocks(input),
      ...allowanceBlocks(estimate.lines),
      { kind: 'heading', text: 'Not in this price' },
      { kind: 'list', items: notIncluded(input, estimate.lines) },
      {
        kind: 'paragraph',
        text: `This price is good until ${estimate.validUntil}. Work beyond what is described here, or that hidden damage makes necessary, is agreed in writing before it is done.`,
      },
      ...cautionBlocks(input),
      {
        kind: 'signatures',
        parties: [
          shopName === '' ? 'Contractor' : `For ${shopName}`,
          customer.name === '' ? 'Client' : customer.name,
        ],
      },
    ],
  };
}

/** The client reads that something is missing; what, is on the shop's own papers, since it names prices and rates. */
function incompleteBlocks(count: number): readonly Block[] {
  if (count === 0) return [];
  return [
    { kind: 'heading', text: 'This quote is not complete' },
    {
      kind: 'paragraph',
      text: `${count === 1 ? 'One thing' : `${count} things`} that the job needs ${count === 1 ? 'is' : 'are'} not priced yet. The sum below leaves ${count === 1 ? 'it' : 'them'} out and is not the price of the job. Do not sign this paper.`,
    },
  ];
}

/** A quote that is printed while the work goes on prices what is left of it. */
function startedBlocks({ takeoff }: JobResult): readonly Block[] {
  if (takeoff.pieces.every(({ inPlace }) => inPlace !== true)) return [];
  return [
    {
      kind: 'paragraph',
      text: 'Part of this work is in place already. The price below is of what is still to be done.',
    },
  ];
}

function sectionBlocks(input: JobInput, result: JobResult): readonly Block[] {
  const drawings = eavesWithParts(input, result.eaves).flatMap((parts): readonly Block[] => {
    const drawing = sectionOf(parts, 'client');
    return drawing === undefined ? [] : [{ kind: 'drawing', drawing, heightShare: 0.34 }];
  });
  if (drawings.length === 0) return [];
  const levelSoffit = input.design.eaves.some((eave) => eave.soffit.kind === 'level');
  const soffit = levelSoffit
    ? ', and how far the underside of a level soffit lies below the wall plate. The soffit is drawn where it would go; whether it is in the price is said below'
    : '';
  return [
    ...drawings,
    {
      kind: 'paragraph',
      small: true,
      text: `Outside is to the right; shaded is new. The figures are the overhang, measured level${soffit}.`,
    },
  ];
}

function priceTable(result: JobResult, incomplete: boolean): Block {
  const { estimate } = result;
  const total = (key: EstimateTotal['key']) => estimate.totals.find((step) => step.key === key);
  const byPhase = phases.flatMap((phase): readonly Row[] => {
    const lines = estimate.lines.filter((line) => line.phase === phase);
    if (lines.length === 0) return [];
    const price = sumUsd(lines.map((line) => line.priceUsd));
    const shown = incomplete && Number(price) === 0 ? 'no price yet' : formatUsd(price);
    return [{ cells: [phase, wording(lines), shown] }];
  });
  const tax = total('client-tax');
  const taxRows: readonly Row[] =
    tax === undefined || Number(tax.amountUsd) === 0
      ? []
      : [
          { cells: ['Price before tax', '', formatUsd(estimate.priceUsd)], style: 'subtotal' },
          { cells: ['Sales tax', '', formatUsd(tax.amountUsd)] },
        ];
  return {
    kind: 'table',
    columns: [
      { title: 'Phase', align: 'left', share: 2 },
      { title: 'What it covers', align: 'left', share: 5 },
      { title: 'Price', align: 'right', share: 0 },
    ],
    rows: [
      ...byPhase,
      ...taxRows,
      {
        cells: [incomplete ? 'Sum so far, not complete' : 'Total', '', formatUsd(estimate.totalUsd)],
        style: 'total',
      },
    ],
  };
}

/** The client's words for a phase's lines, each once, as one sentence. */
function wording(lines: readonly CostLine[]): string {
  const words = [...new Set(lines.map((line) => line.clientWording))];
  return words
    .map((word, index) => (index === 0 ? word : word.charAt(0).toLowerCase() + word.slice(1)))
    .join('; ');
}

function taxBlocks(input: JobInput): readonly Block[] {
  const text = {
    'contractor-pays': 'Sales tax on materials is included in the price.',
    'client-pays': `Sales tax of ${input.settings.money.taxPercent} % is charged on the taxable lines.`,
    none: 'No sales tax is charged.',
  }[input.settings.money.taxRule];
  return [{ kind: 'paragraph', text, small: true }];
}

function allowanceBlocks(lines: readonly CostLine[]): readonly Block[] {
  const allowances = lines.filter((line) => line.kind === 'allowance');
  if (allowances.length === 0) return [];
  return [
    {
      kind: 'paragraph',
      text: 'These are allowances: sums set aside, adjusted to what the work really takes once it is known.',
    },
    {
      kind: 'list',
      items: allowances.map((line) => `${line.clientWording}: ${formatUsd(line.priceUsd)}`),
    },
  ];
}

/** What a client may expect at a new eave, by the phase that would price it and the words that would exclude it. */
const expected: readonly { readonly phase: Phase; readonly what: string; readonly said: RegExp }[] = [
  { phase: 'Survey and permit', what: 'Building permit and its fees', said: /permit/i },
  { phase: 'Soffit', what: 'Soffit and vents under the new overhang', said: /soffit/i },
  {
    phase: 'Roofing tie-in',
    what: 'Roofing, flashing and ice barrier where the new edge meets the old roof',
    said: /roofing|shingle|flashing/i,
  },
  { phase: 'Paint', what: 'Painting and priming', said: /paint/i },
];

function notIncluded(input: JobInput, lines: readonly CostLine[]): readonly string[] {
  const { exclusions } = input.design;
  const priced = new Set(lines.map((line) => line.phase));
  const permitPriced = lines.some((line) => line.kind === 'permit');
  const silent = expected.filter(
    ({ phase, said }) =>
      !(phase === 'Survey and permit' ? permitPriced : priced.has(phase)) &&
      !exclusions.some((exclusion) => said.test(exclusion)),
  );
  return [
    ...exclusions,
    ...silent.map(({ what }) => what),
    ...(priced.has('Soffit') && rakesLeftOpen(input).length > 0
      ? ['Soffit under the overhang at the gable']
      : []),
    'Gutters, hidden damage, and anything else that is not described above',
  ];
}
