import { useMemo, useState } from 'react';
import { lastDayOf, rebased } from '../../../../core/pricing/history/index-series.ts';
import { priceSteps } from '../../../../core/pricing/history/price-steps.ts';
import { changePercent } from '../../../../core/pricing/history/price-changes-since.ts';
import { thingOf } from '../../../../core/pricing/history/supplier-spread.ts';
import { priceOn } from '../../../../core/pricing/price-on.ts';
import type { PriceItem } from '../../../../core/pricing/price-list.ts';
import type { ChartLine } from '../../../charts/chart-frame.ts';
import { StepChart } from '../../../charts/step-chart.tsx';
import { useAnswer } from '../../../host/queries.ts';
import { Answer } from '../../../kit/answer.tsx';
import { Button } from '../../../kit/button.tsx';
import { DataTable, type TableColumn } from '../../../kit/data-table.tsx';
import { Panel } from '../../../kit/panel.tsx';
import { SearchField } from '../../../kit/search-field.tsx';
import { SelectField } from '../../../kit/select-field.tsx';
import { TextField } from '../../../kit/text-field.tsx';
import { priceText } from '../price-text.ts';
import { isWanted, labelOf, sourceChoices } from '../price-words.ts';

/** Matches shown at once; more words narrow them. */
const mostFound = 12;
/** Lines in one chart, beyond which none can be told from the other. */
const mostLines = 5;

/** One item's price over time, with the same thing at other suppliers and an index beside it. */
export function ItemOverTime(props: {
  readonly items: readonly PriceItem[];
  readonly today: string;
  readonly itemId: string | undefined;
  readonly onChoose: (itemId: string) => void;
}) {
  const { items } = props;
  const [search, setSearch] = useState('');
  // Where none is asked for, the first of the list shows what there is to see.
  const chosen =
    props.itemId === undefined
      ? items.find(({ retired }) => !retired)
      : items.find(({ id }) => id === props.itemId);
  const found = search.trim() === '' ? [] : items.filter((item) => isWanted(item, search.trim()));
  return (
    <Panel title={chosen === undefined ? 'An item over time' : chosen.description}>
      <div className="history-tools">
        <SearchField label="Find an item" value={search} onChange={setSearch} />
      </div>
      {search.trim() === '' ? null : (
        <ul className="history-found" aria-label="Items found">
          {found.slice(0, mostFound).map((item) => (
            <li key={item.id}>
              <Button
                onPress={() => {
                  setSearch('');
                  props.onChoose(item.id);
                }}
              >
                {item.supplier === '' ? item.description : `${item.description}, ${item.supplier}`}
              </Button>
            </li>
          ))}
          {found.length > mostFound ? <li className="muted">and {found.length - mostFound} more</li> : null}
          {found.length === 0 ? <li className="muted">No item fits.</li> : null}
        </ul>
      )}
      {chosen === undefined ? (
        <p className="muted">
          {items.length === 0
            ? 'The price list is empty. Add items and prices first; each price stays with its day.'
            : 'Find an item to see what it cost, from the first price that was noted.'}
        </p>
      ) : (
        <OneItem key={chosen.id} item={chosen} items={items} today={props.today} />
      )}
    </Panel>
  );
}

function OneItem(props: {
  readonly item: PriceItem;
  readonly items: readonly PriceItem[];
  readonly today: string;
}) {
  const { item, items, today } = props;
  const alike = useMemo(() => {
    const { key } = thingOf(item);
    const others = items.filter((other) => other.id !== item.id && thingOf(other).key === key);
    return [item, ...others].slice(0, mostLines).map(({ id }) => id);
  }, [item, items]);
  const histories = useAnswer('prices.histories', { itemIds: alike });
  const indexes = useAnswer('prices.indexes', {});
  const settings = useAnswer('settings.get', {});
  const [series, setSeries] = useState('none');
  const [day, setDay] = useState(today);
  const index = indexes.data?.find((one) => one.series === series);
  return (
    <Answer query={histories}>
      {(found) => {
        const own = found.find(({ id }) => id === item.id);
        if (own === undefined || own.prices.length === 0)
          return <p className="muted">It has no price yet.</p>;
        const staleDays = settings.data?.settings.money.priceStaleDays ?? 45;
        const held = priceOn(own, day === '' ? today : day, staleDays);
        return (
          <>
            <div className="history-tools">
              <TextField label="Price as of" type="date" value={day} onChange={setDay} />
              <p className="as-of" role="status">
                {held.ok ? (
                  <>
                    <b>
                      ${priceText(held.value.observation.priceUsd)} for {item.unit}
                    </b>
                    , {labelOf(sourceChoices, held.value.observation.source).toLowerCase()} of{' '}
                    {held.value.observation.observedOn}
                    {held.value.stale ? ' ' : null}
                    {held.value.stale ? <span className="tag tag-care">old by then</span> : null}
                  </>
                ) : (
                  'It had no price yet on that day.'
                )}
              </p>
              {indexes.data === undefined || indexes.data.length === 0 ? null : (
                <SelectField
                  label="Beside an index"
                  value={series}
                  choices={[
                    { id: 'none', label: 'None' },
                    ...indexes.data.map((one) => ({ id: one.series, label: one.series })),
                  ]}
                  onChange={setSeries}
                />
              )}
            </div>
            <div className="history-beside">
              <div>
                <Chart
                  items={found.toSorted((a, b) => alike.indexOf(a.id) - alike.indexOf(b.id))}
                  today={today}
                  day={day}
                  index={index}
                />
              </div>
              <div className="history-scroll">
                <DataTable
                  label={`Prices of ${item.description} over time`}
                  columns={columns}
                  rows={stepRows(own)}
                  rowKey={(row) => row.from}
                  rowsAtOnce={200}
                />
              </div>
            </div>
          </>
        );
      }}
    </Answer>
  );
}

function Chart(props: {
  readonly items: readonly PriceItem[];
  readonly today: string;
  readonly day: string;
  readonly index:
    | { readonly series: string; readonly values: readonly { month: string; value: string }[] }
    | undefined;
}) {
  const { items, index } = props;
  const [own] = items;
  const units = new Set(items.map(({ unit }) => unit));
  const lines = useMemo(
    (): readonly ChartLine[] =>
      // Another unit of sale is another scale, and has no place beside it.
      items.flatMap((item) => (item.unit === own?.unit && item.prices.length > 0 ? [priceLine(item)] : [])),
    [items, own],
  );
  const against =
    own === undefined || index === undefined
      ? undefined
      : rebased(
          priceSteps(own).map(({ from, observation }) => ({ from, costUsd: observation.priceUsd })),
          index.values,
        );
  if (own === undefined) return null;
  if (index !== undefined && against !== undefined)
    return (
      <>
        <StepChart
          label={`${own.description} beside ${index.series}, both 100 in ${against.baseMonth}`}
          lines={[
            {
              id: own.id,
              name: own.description,
              points: against.prices.map(({ from, value }) => ({ from, value: Number(value), text: value })),
            },
            {
              id: 'index',
              name: index.series,
              points: against.index.map(({ month, value }) => ({
                from: `${month}-01`,
                // An index says nothing of months that it leaves out.
                until: lastDayOf(month),
                value: Number(value),
                text: value,
              })),
            },
          ]}
          until={props.today}
          writeValue={(value) => String(value)}
        />
        <p className="chart-shapes muted">
          Both stand at 100 in {against.baseMonth}, the first month that both have; the price of a month is
          the one that held on its last day.
        </p>
      </>
    );
  return (
    <>
      <StepChart
        label={`What ${own.description} cost`}
        lines={lines}
        until={props.today}
        writeValue={(value) => `$${priceText(value.toFixed(6).replace(/0+$/, ''))}`}
        markedDay={props.day === '' ? undefined : props.day}
      />
      <p className="chart-shapes muted">
        Circle: list. Diamond: quote. Square: receipt. A price holds until the next.
        {units.size > 1 ? ' Suppliers who sell it by another unit are left out; see below.' : null}
        {index !== undefined ? ` ${index.series} has no month in common with these prices.` : null}
      </p>
    </>
  );
}

function priceLine(item: PriceItem): ChartLine {
  return {
    id: item.id,
    name: item.supplier === '' ? item.description : item.supplier,
    points: priceSteps(item).map(({ from, observation }) => ({
      from,
      value: Number(observation.priceUsd),
      text: `$${priceText(observation.priceUsd)} for ${item.unit}`,
      mark: observation.source,
    })),
  };
}

type StepRow = {
  readonly from: string;
  readonly priceUsd: string;
  readonly source: string;
  readonly change: string;
};

function stepRows(item: PriceItem): readonly StepRow[] {
  const steps = priceSteps(item);
  return steps
    .map(({ from, observation }, at): StepRow => {
      const before = steps[at - 1]?.observation.priceUsd;
      const percent = before === undefined ? null : changePercent(before, observation.priceUsd);
      return {
        from,
        priceUsd: observation.priceUsd,
        source: labelOf(sourceChoices, observation.source),
        change: percent === null ? '' : percentWords(percent),
      };
    })
    .toReversed();
}

/** E.g. `+3.2 %`, `same`. */
export function percentWords(percent: string): string {
  if (percent === '0.0') return 'same';
  return `${percent.startsWith('-') ? '' : '+'}${percent} %`;
}

const columns: readonly TableColumn<StepRow>[] = [
  {
    id: 'from',
    title: 'From',
    isRowHeader: true,
    cell: (row) => <span className="no-wrap">{row.from}</span>,
  },
  { id: 'price', title: 'Price', align: 'right', cell: (row) => `$${priceText(row.priceUsd)}` },
  {
    id: 'change',
    title: 'Change',
    align: 'right',
    cell: (row) => <span className="no-wrap">{row.change}</span>,
  },
  { id: 'source', title: 'Known from', cell: (row) => row.source },
];
