import type { Phase } from '../eave/phases.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { PricedWay } from '../offer/offered-ways.ts';
import type { CostLine } from '../pricing/estimate-types.ts';
import { formatUsd } from '../units/money.ts';
import { rakesLeftOpen } from '../takeoff/uncounted-rake-soffit.ts';
import { cautionBlocks } from './cautions.ts';
import { eavesWithParts, sectionOf } from './eave-drawings.ts';
import { lackSentences } from './lacks.ts';
import { priceTable } from './quote-price.ts';
import { cancellationBlocks, paymentBlocks, termBlocks } from './quote-terms.ts';
import { allowanceBlocks, hiddenWorkBlocks, wayBlocks } from './quote-ways.ts';
import { scopeParagraphs } from './scope-wording.ts';
import type { Block, Sheet } from './sheet.ts';
import { sheetHead } from './sheet-head.ts';

/**
 * Makes the client's quote: what is built, what it costs as far as it is broken out, choices, payments, terms, and what is
 * left out. Cost and hours never show.
 * @param input - the job, its design that of the way which is offered first.
 * @param result - of that way.
 * @param ways - every way of the job, the offered one first; none where there is that one alone.
 */
export function quoteSheet(input: JobInput, result: JobResult, ways: readonly PricedWay[] = []): Sheet {
  const { estimate } = result;
  const lacks = lackSentences(result);
  const incomplete = lacks.length > 0;
  const { offer, scopeNote, extraCosts } = input.design;
  const customer = { ...input.job.customer, name: input.job.customer.name.trim() };
  const shopName = input.settings.shopName.trim();
  const insurance = input.settings.letterhead.insurance.trim();
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
          ['Total', incomplete ? 'not complete, see below' : formatUsd(estimate.totalUsd)],
          ...(insurance === '' ? [] : ([['Insurance', insurance]] as const)),
        ],
      },
      ...incompleteBlocks(lacks.length),
      ...startedBlocks(result),
      { kind: 'heading', text: 'What we build' },
      ...scopeParagraphs(input, result).map((text): Block => ({ kind: 'paragraph', text })),
      ...(scopeNote.trim() === '' ? [] : [{ kind: 'paragraph' as const, text: scopeNote.trim() }]),
      ...sectionBlocks(input, result),
      { kind: 'heading', text: 'Price' },
      priceTable(estimate, offer.printLevel, incomplete),
      ...taxBlocks(input),
      ...wayBlocks(ways),
      ...allowanceBlocks(estimate.lines, extraCosts),
      ...hiddenWorkBlocks(offer),
      { kind: 'heading', text: 'Not in this price' },
      { kind: 'list', items: notIncluded(input, estimate.lines) },
      ...assumptionBlocks(offer.assumptions),
      ...paymentBlocks(input, estimate),
      ...termBlocks(input),
      ...cancellationBlocks(input),
      { kind: 'heading', text: 'Agreement' },
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

function assumptionBlocks(assumptions: readonly string[]): readonly Block[] {
  return assumptions.length === 0
    ? []
    : [
        { kind: 'heading', text: 'What this price rests on' },
        { kind: 'list', items: assumptions },
      ];
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
    return drawing === undefined ? [] : [{ kind: 'drawing', drawing, heightShare: 0.24 }];
  });
  if (drawings.length === 0) return [];
  const levelSoffit = input.design.eaves.some((eave) => eave.soffit.kind === 'level');
  const soffit = levelSoffit
    ? ', and how far the underside of a level soffit lies below the wall plate. The soffit is drawn where it would go; whether it is in the price is said below'
    : '';
  return [
    {
      kind: 'paragraph',
      small: true,
      text: `In the drawings outside is to the right, and shaded is new. The figures are the overhang, measured level${soffit}.`,
    },
    ...drawings,
  ];
}

function taxBlocks(input: JobInput): readonly Block[] {
  const text = {
    'contractor-pays': 'Sales tax on materials is included in the price.',
    'client-pays': `Sales tax of ${input.settings.money.taxPercent} % is charged on the taxable lines.`,
    none: 'No sales tax is charged.',
  }[input.settings.money.taxRule];
  return [{ kind: 'paragraph', text, small: true }];
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
    restOf(exclusions, lines),
  ];
}

/** What closes the list: gutters and hidden damage are named where nothing else speaks of them. */
function restOf(exclusions: readonly string[], lines: readonly CostLine[]): string {
  const says = (words: RegExp): boolean =>
    exclusions.some((text) => words.test(text)) || lines.some((line) => words.test(line.clientWording));
  const named = [
    ...(says(/gutter/i) ? [] : ['gutters']),
    ...(says(/hidden|\brot/i) ? [] : ['hidden damage']),
  ].join(', ');
  const text = `${named === '' ? '' : `${named}, and `}anything else that is not described above`;
  return text.charAt(0).toUpperCase() + text.slice(1);
}
