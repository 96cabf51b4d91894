import { Decimal } from 'decimal.js';
import type { JobInfo } from '../job/job-file.ts';
import { overPercent } from '../jobcost/learning/spread.ts';
import { type CloseOut, varianceReasonWords } from '../jobcost/learning/finished-job.ts';
import { jobOutcome } from '../jobcost/learning/job-outcome.ts';
import type { ShopSettings } from '../pricing/shop-settings.ts';
import { type DecimalText, formatUsd, type Usd, usd } from '../units/money.ts';
import type { Block, Row, Sheet } from './sheet.ts';
import { moneyHead } from './sheet-head.ts';

type Phase = CloseOut['figures']['phases'][number];

/** Makes the shop's own one-page report of a finished job: what was reckoned, what it took, why, what it earned, what changes. */
export function jobReportSheet(of: {
  readonly settings: ShopSettings;
  readonly job: JobInfo;
  readonly finishedOn: string;
  readonly closeOut: CloseOut;
}): Sheet {
  const { settings, job, finishedOn, closeOut } = of;
  const { figures, words } = closeOut;
  return {
    ...moneyHead(
      'job-report',
      { settings, job },
      { title: 'Job report', sorting: `${finishedOn} job report`, date: finishedOn },
    ),
    blocks: [
      {
        kind: 'facts',
        pairs: [
          ['Job', job.name],
          ['Work at', job.siteAddress],
          ['Finished', finishedOn],
        ],
      },
      { kind: 'heading', text: 'What it earned' },
      earnedFacts(closeOut),
      { kind: 'heading', text: 'Reckoned and taken' },
      {
        kind: 'table',
        columns: [
          { title: 'Phase', align: 'left', share: 2 },
          { title: 'Hours reckoned', align: 'right', share: 0 },
          { title: 'Hours taken', align: 'right', share: 0 },
          { title: 'Cost reckoned', align: 'right', share: 0 },
          { title: 'Cost taken', align: 'right', share: 0 },
          { title: 'More or less', align: 'right', share: 0 },
          { title: 'Why', align: 'left', share: 2 },
        ],
        rows: [
          ...figures.phases.map(
            (phase): Row => ({ cells: [...phaseCells(phase), reasonOf(closeOut, phase)] }),
          ),
          { cells: [...phaseCells(wholeOf(figures)), ''], style: 'total' },
        ],
      },
      {
        kind: 'paragraph',
        small: true,
        text: `Reckoned is the direct cost of the accepted quote with its approved changes; its contingency of ${formatUsd(usd(figures.contingencyUsd))} stands beside it.`,
      },
      ...wordsBlocks(words.surprise, 'What surprised us'),
      ...wordsBlocks(words.willChange, 'What we will do otherwise'),
    ],
  };
}

function earnedFacts(closeOut: CloseOut): Block {
  const outcome = jobOutcome(closeOut);
  const { owner } = closeOut.words;
  const hours =
    owner === null
      ? []
      : ([
          ["Owner's hours", `${outcome.ownerHours}, ${owner}`],
          [
            'Each of them earned',
            `${perHour(outcome.ownerHourUsd)}; ${perHour(outcome.ownerHourAfterOverheadUsd)} after overhead`,
          ],
        ] as const);
  return {
    kind: 'facts',
    pairs: [
      [
        'Contract, before tax',
        `${formatUsd(outcome.contractUsd)}, changes of ${formatUsd(usd(closeOut.figures.changesUsd))} in it`,
      ],
      ['Margin as reckoned', margin(outcome.plannedMarginUsd, outcome.plannedMarginPercent)],
      ['Margin made', margin(outcome.madeMarginUsd, outcome.madeMarginPercent)],
      ...hours,
    ],
  };
}

function margin(amount: Usd, percent: DecimalText | null): string {
  return percent === null ? formatUsd(amount) : `${formatUsd(amount)}, ${percent} % of the contract`;
}

function perHour(amount: Usd | null): string {
  return amount === null ? 'not said' : formatUsd(amount);
}

function wholeOf({ phases, budgetUsd, actualUsd }: CloseOut['figures']): Phase {
  const sum = (pick: (phase: Phase) => string): string =>
    phases.reduce((total, phase) => total.plus(pick(phase)), new Decimal(0)).toFixed();
  return {
    phase: 'Whole job',
    budgetUsd,
    actualUsd,
    budgetHours: sum((phase) => phase.budgetHours),
    actualHours: sum((phase) => phase.actualHours),
  };
}

function phaseCells({ phase, budgetUsd, actualUsd, budgetHours, actualHours }: Phase): readonly string[] {
  const over = new Decimal(actualUsd).minus(budgetUsd);
  const percent = overPercent(actualUsd, budgetUsd);
  const sign = over.gt(0) ? '+' : '';
  return [
    phase,
    hours(budgetHours),
    hours(actualHours),
    formatUsd(usd(budgetUsd)),
    formatUsd(usd(actualUsd)),
    `${sign}${formatUsd(usd(over))}${percent === null ? '' : ` (${sign}${percent.toFixed()} %)`}`,
  ];
}

function hours(value: string): string {
  return new Decimal(value).isZero() ? '' : new Decimal(value).toDecimalPlaces(2).toFixed();
}

function reasonOf({ words }: CloseOut, { phase }: Phase): string {
  const reason = words.reasons[phase];
  return reason === undefined ? '' : varianceReasonWords[reason];
}

function wordsBlocks(text: string, heading: string): readonly Block[] {
  return text.trim() === ''
    ? []
    : [
        { kind: 'heading', text: heading },
        { kind: 'paragraph', text: text.trim() },
      ];
}
