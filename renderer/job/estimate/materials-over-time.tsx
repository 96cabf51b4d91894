import { useState } from 'react';
import { basketOn, type BasketLineOn } from '../../../core/pricing/history/material-basket.ts';
import { changePercent } from '../../../core/pricing/history/price-changes-since.ts';
import { stepOn } from '../../../core/pricing/history/price-steps.ts';
import { formatUsd, sumUsd, usd } from '../../../core/units/money.ts';
import type { ChartLine } from '../../charts/chart-frame.ts';
import { StepChart } from '../../charts/step-chart.tsx';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { FoldPanel } from '../../kit/fold-panel.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { useJob } from '../job-context.ts';
import { type MaterialHistory, useMaterialHistory } from '../quote/use-material-history.ts';

/** What the materials of this job would have cost on any past day: the boards as they are planned today, at the prices of then. */
export function MaterialsOverTime() {
  const history = useMaterialHistory();
  const { good } = useJob().computation;
  if (good === null || history === null || history.basket.lines.length === 0) return null;
  return (
    <FoldPanel title="The materials over time">
      <OverTime history={history} asOf={good.input.asOf} />
    </FoldPanel>
  );
}

function OverTime({ history, asOf }: { readonly history: MaterialHistory; readonly asOf: string }) {
  const [day, setDay] = useState(asOf);
  const { basket, items } = history;
  const steps = history.steps.filter(({ from }) => from <= asOf);
  const nowUsd = sumUsd([basket.fixedUsd, ...basket.lines.map(({ costUsd }) => costUsd)]);
  const then = basketOn(basket, items, day === '' ? asOf : day);
  const unpriced = then.lines.filter(({ thenUsd }) => thenUsd === null);
  const lines: readonly ChartLine[] = [
    {
      id: 'materials',
      name: 'Materials',
      points: steps.map(({ from, costUsd }) => ({
        from,
        value: Number(costUsd),
        text: formatUsd(usd(costUsd)),
        mark: 'list',
      })),
    },
  ];
  return (
    <>
      {steps.length === 0 ? (
        <p className="muted">There was no day yet on which every material of this job had a price.</p>
      ) : (
        <StepChart
          label="What the materials of this job would have cost"
          lines={lines}
          until={asOf}
          writeValue={(value) => formatUsd(usd(value))}
          markedDay={day === '' ? undefined : day}
        />
      )}
      <div className="history-tools">
        <TextField
          label="Bought on"
          type="date"
          value={day}
          onChange={setDay}
          problem={day === '' ? 'Give a day.' : null}
        />
        <p className="as-of" role="status">
          {then.totalUsd === null ? (
            `No sum: ${unpriced.length} ${unpriced.length === 1 ? 'material has' : 'materials have'} no price on that day.`
          ) : (
            <>
              <b>{formatUsd(then.totalUsd)}</b>, {comparedWords(then.totalUsd, nowUsd)} {formatUsd(nowUsd)} on{' '}
              {asOf}
            </>
          )}
        </p>
      </div>
      <p className="muted risk-words">
        The boards are those planned today, so that prices alone are compared; on another day another plan
        might have been the cheapest.
        {basket.fixed.length === 0
          ? ''
          : ` Counted alike on every day, since the price list does not have it: ${basket.fixed.join(', ')}.`}
        {stepOn(steps, day) === undefined && steps[0] !== undefined
          ? ` All prices are known from ${steps[0].from} on.`
          : ''}
      </p>
      <DataTable
        label={`The materials on ${day}`}
        columns={columns}
        rows={then.lines}
        rowKey={(line) => line.lineId}
        rowsAtOnce={60}
      />
    </>
  );
}

function comparedWords(then: string, now: string): string {
  const percent = changePercent(now, then);
  if (percent === null || percent === '0.0') return 'the same as';
  return percent.startsWith('-') ? `${percent.slice(1)} % less than` : `${percent} % more than`;
}

const columns: readonly TableColumn<BasketLineOn>[] = [
  { id: 'what', title: 'Material', isRowHeader: true, cell: (line) => line.description },
  { id: 'quantity', title: 'Quantity', align: 'right', cell: (line) => line.quantity },
  { id: 'unit', title: 'Unit', cell: (line) => line.unit },
  {
    id: 'then',
    title: 'Then',
    align: 'right',
    cell: (line) => (line.thenUsd === null ? 'no price' : formatUsd(line.thenUsd)),
  },
  { id: 'now', title: 'In the estimate', align: 'right', cell: (line) => formatUsd(line.costUsd) },
  {
    id: 'of',
    title: 'Price of',
    cell: (line) => <span className="no-wrap">{line.priceOf ?? ''}</span>,
  },
];
