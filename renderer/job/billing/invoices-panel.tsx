import { Lock, Plus } from 'lucide-react';
import { useState } from 'react';
import { ages } from '../../../core/billing/ledger.ts';
import { ageWords } from '../../../core/documents/statement-sheet.ts';
import { Button } from '../../kit/button.tsx';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { type Billing, invoiceWords, type ShownInvoice } from './billing-words.ts';
import { CreditDialog } from './credit-dialog.tsx';
import { savePaper } from './save-paper.ts';
import { dollars } from '../../kit/amounts.ts';

/** The issued papers of the job: numbered, frozen, each with what is open on it. */
export function InvoicesPanel(props: {
  readonly billing: Billing;
  readonly isBilling: boolean;
  readonly onBill: () => void;
}) {
  const { billing, isBilling, onBill } = props;
  const { surroundings } = useJob();
  const [crediting, setCrediting] = useState<ShownInvoice | null>(null);
  return (
    <Panel
      title="Invoices"
      look="flush"
      actions={
        <Button
          tone="main"
          icon={<Plus size={14} aria-hidden="true" />}
          isDisabled={isBilling || billing.summary === null}
          onPress={onBill}
        >
          Make a bill
        </Button>
      }
    >
      {billing.invoices.length === 0 ? (
        <p className="muted panel-words">
          None yet. A bill is looked at first; issued it takes the next number and stays as it is. What was
          wrong is taken back by a credit with a number of its own.
        </p>
      ) : (
        <>
          <DataTable
            label="Invoices and credits"
            columns={columnsOf(surroundings.settings.paperSize, setCrediting)}
            rows={billing.invoices}
            rowKey={(invoice) => invoice.id}
          />
          {billing.summary === null ? null : <OpenByAge aged={billing.summary.aged} />}
        </>
      )}
      {crediting === null ? null : (
        <CreditDialog invoice={crediting} billing={billing} onClose={() => setCrediting(null)} />
      )}
    </Panel>
  );
}

/** What is open, by how long it is past the day it was due. */
function OpenByAge({ aged }: { readonly aged: NonNullable<Billing['summary']>['aged'] }) {
  const open = ages.filter((age) => Number(aged[age] ?? 0) !== 0);
  return (
    <p className="muted panel-words open-by-age">
      {open.length === 0
        ? 'Nothing is open.'
        : `Open: ${open.map((age) => `${ageWords[age].toLowerCase()} ${dollars(aged[age] ?? '0')}`).join('; ')}.`}
    </p>
  );
}

function columnsOf(
  paperSize: 'letter' | 'a4',
  onCredit: (invoice: ShownInvoice) => void,
): readonly TableColumn<ShownInvoice>[] {
  return [
    ...figureColumns,
    {
      id: 'steps',
      title: 'What to do with it',
      titleHidden: true,
      align: 'right',
      cell: (invoice) => (
        <span className="invoice-steps">
          <Button
            tone="quiet"
            aria-label={`${paperName(invoice)} as PDF`}
            isDisabled={!invoice.intact}
            onPress={() => void savePaper('billing.invoicePaper', invoice.id, paperSize)}
          >
            PDF
          </Button>
          {invoice.kind === 'credit' ? null : (
            <Button
              tone="quiet"
              aria-label={`Credit ${paperName(invoice)}`}
              onPress={() => onCredit(invoice)}
            >
              Credit…
            </Button>
          )}
        </span>
      ),
    },
  ];
}

function paperName({ kind, number }: ShownInvoice): string {
  return `${kind === 'credit' ? 'credit' : 'invoice'} ${number}`;
}

const money = (
  id: 'amountUsd' | 'taxUsd' | 'totalUsd' | 'creditedUsd' | 'paidUsd' | 'openUsd',
  title: string,
): TableColumn<ShownInvoice> => ({
  id,
  title,
  align: 'right',
  cell: (invoice) => {
    if (invoice.kind === 'credit') {
      if (id === 'totalUsd') return dollars(invoice.totalUsd);
      return id === 'amountUsd' || id === 'taxUsd' ? dollars(`-${invoice[id]}`) : '';
    }
    return id === 'openUsd' ? <b>{dollars(invoice.openUsd)}</b> : dollars(invoice[id]);
  },
});

const figureColumns: readonly TableColumn<ShownInvoice>[] = [
  {
    id: 'number',
    title: 'No.',
    isRowHeader: true,
    cell: (invoice) => (
      <span className="invoice-number">
        {invoice.number}
        <Lock size={11} aria-hidden="true" />
        <span className="visually-hidden">, frozen</span>
      </span>
    ),
  },
  {
    id: 'kind',
    title: 'What',
    cell: (invoice) => (
      <>
        {invoice.credits === null ? invoiceWords[invoice.kind] : `Credit for ${invoice.credits}`}
        {invoice.intact ? null : <span className="tag tag-care">damaged on the disk</span>}
      </>
    ),
  },
  { id: 'issued', title: 'Issued', cell: (invoice) => invoice.issuedOn },
  { id: 'due', title: 'Due', cell: (invoice) => (invoice.kind === 'credit' ? '' : invoice.dueOn) },
  money('amountUsd', 'Before tax'),
  money('taxUsd', 'Tax'),
  money('totalUsd', 'Total'),
  money('creditedUsd', 'Credited'),
  money('paidUsd', 'Paid'),
  money('openUsd', 'Open'),
  {
    id: 'age',
    title: 'Stands',
    cell: (invoice) => {
      if (invoice.kind === 'credit') return '';
      if (Number(invoice.openUsd) === 0) return Number(invoice.paidUsd) === 0 ? 'taken back' : 'paid';
      return (
        <span className={invoice.daysPast > 0 ? 'tag tag-care' : 'tag'}>
          {ageWords[invoice.age].toLowerCase()}
        </span>
      );
    },
  },
];
