import { Undo2 } from 'lucide-react';
import { labourTasks, type LabourTask } from '../../../core/takeoff/labour-tasks.ts';
import type { LabourRate, ShopSettings } from '../../../core/pricing/shop-settings.ts';
import { NumberField } from '../../fields/number-field.tsx';
import { useAnswer } from '../../host/queries.ts';
import { useKeptDrafts, type KeptDrafts } from '../../host/kept-drafts.ts';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { LearnedOffer } from '../money/learned-offer.tsx';
import type { LearnedRate } from '../money/money-words.ts';
import { changeSettings } from './settings-store.ts';

type RateRow = { readonly task: LabourTask; readonly rate: LabourRate | undefined };

/** Hours by task: the placeholder that comes with the program, or the shop's own number in its place. */
export function LabourRates({ settings }: { readonly settings: ShopSettings }) {
  const drafts = useKeptDrafts('labour-rate');
  const learned = useAnswer('learning.get', {}).data?.rates ?? [];
  const rows: readonly RateRow[] = labourTasks.map((task) => ({
    task,
    rate: settings.labour.rates.find((rate) => rate.task === task.key),
  }));
  const own = rows.filter((row) => markOf(row) === 'own').length;
  return (
    <Panel
      title="Hours by task"
      look="flush"
      actions={
        <span className="muted">
          {own === 0
            ? `All ${rows.length} are placeholders: common practice without a source`
            : `${own} of ${rows.length} are your own`}
        </span>
      }
    >
      <DataTable
        label="Hours by task"
        columns={[...columnsFor(drafts), ...learnedColumn(learned)]}
        rows={rows}
        rowKey={(row) => row.task.key}
      />
    </Panel>
  );
}

function columnsFor(drafts: KeptDrafts): readonly TableColumn<RateRow>[] {
  return [
    { id: 'task', title: 'Task', isRowHeader: true, cell: (row) => row.task.label },
    { id: 'phase', title: 'Phase', cell: (row) => row.task.phase },
    {
      id: 'hours',
      title: 'Hours of one person',
      align: 'right',
      cell: (row) => (
        <div className="rate-entry">
          <NumberField
            label={`Hours for ${row.task.label}`}
            labelHidden
            value={row.rate?.hoursPerUnit ?? row.task.hoursPerUnit}
            range={{ least: 0, most: 1000 }}
            draft={drafts.get(row.task.key)}
            onEntry={(entry) => {
              drafts.set(row.task.key, entry.problem === null ? null : entry.text);
              if (entry.value !== null) setRate(row.task.key, entry.value);
            }}
            path={`labour.rates.${row.task.key}`}
          />
        </div>
      ),
    },
    { id: 'unit', title: 'for each', cell: (row) => row.task.unit },
    {
      id: 'mark',
      title: 'Where the number is from',
      cell: (row) =>
        markOf(row) === 'own' ? (
          <>
            Your own <span className="muted">(placeholder was {row.task.hoursPerUnit})</span>
          </>
        ) : (
          <span className="tag">Placeholder</span>
        ),
    },
    {
      id: 'back',
      title: 'Go back to the placeholder',
      titleHidden: true,
      align: 'right',
      cell: (row) =>
        row.rate === undefined || markOf(row) === 'placeholder' ? null : (
          <IconButton
            label={`Go back to the placeholder for ${row.task.label}`}
            icon={<Undo2 size={16} aria-hidden="true" />}
            onPress={() => {
              drafts.set(row.task.key, null);
              dropRate(row.task.key);
            }}
          />
        ),
    },
  ];
}

/** What finished jobs took, beside the rate in use; no column while none has taught anything. */
function learnedColumn(learned: readonly LearnedRate[]): readonly TableColumn<RateRow>[] {
  if (learned.length === 0) return [];
  return [
    {
      id: 'learned',
      title: 'From finished jobs',
      cell: ({ task }) => {
        const rate = learned.find((one) => one.task === task.key);
        return rate === undefined ? null : <LearnedOffer rate={rate} what={task.label} />;
      },
    },
  ];
}

function markOf(row: RateRow): LabourRate['mark'] {
  return row.rate?.mark ?? 'placeholder';
}

function setRate(task: string, hoursPerUnit: number): void {
  changeSettings((settings) => withRates(settings, task, { task, hoursPerUnit, mark: 'own' }));
}

function dropRate(task: string): void {
  changeSettings((settings) => withRates(settings, task, undefined));
}

function withRates(settings: ShopSettings, task: string, rate: LabourRate | undefined): ShopSettings {
  const others = settings.labour.rates.filter((one) => one.task !== task);
  return {
    ...settings,
    labour: { ...settings.labour, rates: rate === undefined ? others : [...others, rate] },
  };
}
