import { Paperclip, Plus } from 'lucide-react';
import { useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import { Decimal } from 'decimal.js';
import { type Bill, billKinds, type BillKind, type BillLine } from '../../../core/jobcost/cost-entries.ts';
import { attempt } from '../../host/attempt.ts';
import { toBase64 } from '../../host/base64.ts';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { notify } from '../../kit/notices.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { Switch } from '../../kit/switch.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { useSubmit } from '../parts/submit.ts';
import { BillLineEntry } from './bill-line-entry.tsx';
import { billWords, type Costs, type ShownBill } from './cost-words.ts';
import { PurchaseChoice } from './purchase-choice.tsx';
import { dollars } from '../../kit/amounts.ts';

/** Asks for a receipt, an order, a bill or a return, or for the correction of one. */
export function BillDialog(props: {
  readonly jobId: string;
  readonly costs: Costs;
  readonly start: { readonly kind: BillKind } | { readonly bill: ShownBill };
  readonly onClose: () => void;
}) {
  const { jobId, costs, start, onClose } = props;
  const old = 'bill' in start ? start.bill : null;
  const [bill, setBill] = useState<Bill>(
    () => old?.bill ?? newBill('kind' in start ? start.kind : 'receipt', costs),
  );
  const adding = useSubmit('costs.addBill');
  const correcting = useSubmit('costs.correctBill');
  const form = old === null ? adding : correcting;
  const change = (part: Partial<Bill>): void => setBill({ ...bill, ...part });
  const changeLine = (index: number, part: Partial<BillLine>): void =>
    change({ lines: bill.lines.map((line, at) => (at === index ? { ...line, ...part } : line)) });
  const save = async (): Promise<void> => {
    const done =
      old === null ? await adding.send({ jobId, bill }) : await correcting.send({ id: old.id, bill });
    if (done === undefined) return;
    const noted = 'pricesNoted' in done ? done.pricesNoted : 0;
    notify(
      `${billWords[bill.kind]} of ${bill.supplier} saved${noted === 0 ? '' : `, ${noted === 1 ? 'one price' : `${noted} prices`} noted`}.`,
    );
    onClose();
  };
  const attachTo = async (file: File): Promise<void> => {
    const attachmentId = await attach(jobId, file);
    if (attachmentId !== undefined) setBill((now) => ({ ...now, attachmentId }));
  };
  const takeBack = async (): Promise<void> => {
    if (old !== null && (await correcting.send({ id: old.id, bill: null })) !== undefined) onClose();
  };
  const fields = [
    ...['kind', 'supplier', 'number', 'datedOn', 'taxUsd', 'orderId', 'attachmentId'].map(at),
    ...bill.lines.flatMap((_, index) =>
      ['description', 'amountUsd', 'quantity', 'phase'].map((key) => at(`lines.${index}.${key}`)),
    ),
  ];
  const other = form.problem(fields);
  const orders = costs.openOrders.flatMap(({ id, openUsd }) => {
    const order = costs.bills.find((one) => one.id === id);
    return order === undefined
      ? []
      : [{ id, label: `${order.bill.supplier}, ${order.bill.datedOn}: ${dollars(openUsd)} to come` }];
  });
  return (
    <Dialog
      title={
        old === null
          ? `${billWords[bill.kind]} to enter`
          : `Correct the ${billWords[bill.kind].toLowerCase()}`
      }
      isOpen
      size="large"
      onClose={onClose}
      actions={
        <>
          <Button tone="main" onPress={() => void save()}>
            {old === null ? 'Save' : 'Save the correction'}
          </Button>
          {old === null ? null : (
            <Button tone="danger" onPress={() => void takeBack()}>
              Take it back
            </Button>
          )}
          <Button onPress={onClose}>Leave it</Button>
        </>
      }
    >
      <div className="stack">
        <div className="bill-head">
          <SelectField
            label="What it is"
            value={bill.kind}
            choices={billKinds.map((kind) => ({ id: kind, label: billWords[kind] }))}
            onChange={(kind) => change({ kind })}
          />
          <TextField
            label="From"
            value={bill.supplier}
            onChange={(supplier) => change({ supplier })}
            problem={form.problemAt(at('supplier'))}
            maxLength={80}
          />
          <TextField
            label="Day"
            type="date"
            value={bill.datedOn}
            onChange={(datedOn) => change({ datedOn })}
            problem={form.problemAt(at('datedOn'))}
          />
          <TextField
            label="Its number"
            value={bill.number}
            onChange={(number) => change({ number })}
            maxLength={60}
          />
        </div>
        {costs.purchaseLines.length === 0 || old !== null ? null : (
          <PurchaseChoice costs={costs} bill={bill} onChange={change} />
        )}
        <ul className="bill-lines" aria-label="Lines">
          {bill.lines.map((line, index) => (
            <BillLineEntry
              key={line.id}
              line={line}
              isFirst={index === 0}
              phases={costs.phases}
              mayNotePrice={bill.kind === 'receipt' && line.itemId !== null && old === null}
              problemAt={(key) => form.problemAt(at(`lines.${index}.${key}`))}
              onChange={(part) => changeLine(index, part)}
              onRemove={
                bill.lines.length === 1
                  ? null
                  : () => change({ lines: bill.lines.filter((_, one) => one !== index) })
              }
            />
          ))}
        </ul>
        <div className="bill-foot">
          <Button
            icon={<Plus size={14} aria-hidden="true" />}
            onPress={() => change({ lines: [...bill.lines, blankLine(bill, costs)] })}
          >
            Another line
          </Button>
          <TextField
            label="Sales tax on it"
            value={bill.taxUsd}
            onChange={(taxUsd) => change({ taxUsd })}
            problem={form.problemAt(at('taxUsd'))}
            maxLength={14}
          />
          <b className="bill-total numeric">{totalWords(bill)}</b>
        </div>
        <div className="bill-foot">
          {bill.kind === 'order' || orders.length === 0 ? null : (
            <>
              <SelectField
                label="Fills the order"
                value={bill.orderId ?? 'none'}
                choices={[{ id: 'none', label: 'No order' }, ...orders]}
                onChange={(orderId) => change({ orderId: orderId === 'none' ? null : orderId })}
              />
              {bill.orderId === null ? null : (
                <Switch isSelected={bill.closesOrder} onChange={(closesOrder) => change({ closesOrder })}>
                  Nothing more of it is to come
                </Switch>
              )}
            </>
          )}
          <FileTrigger
            acceptedFileTypes={['image/jpeg', 'image/png', 'application/pdf']}
            onSelect={(files) => {
              const file = files?.[0];
              if (file !== undefined) void attachTo(file);
            }}
          >
            <Button icon={<Paperclip size={14} aria-hidden="true" />}>
              {bill.attachmentId === null ? 'Attach a photo or PDF' : 'Attach another instead'}
            </Button>
          </FileTrigger>
          {bill.attachmentId === null ? null : <span className="tag">attached</span>}
        </div>
        {other === null ? null : (
          <p className="field-problem" role="alert">
            {other}
          </p>
        )}
      </div>
    </Dialog>
  );
}

function newBill(kind: BillKind, costs: Costs): Bill {
  const blank: Bill = {
    kind,
    supplier: '',
    number: '',
    datedOn: costs.today,
    lines: [],
    taxUsd: '0',
    orderId: null,
    closesOrder: false,
    attachmentId: null,
    note: '',
  };
  return { ...blank, lines: [blankLine(blank, costs)] };
}

function blankLine(bill: Bill, { phases }: Costs): BillLine {
  const last = bill.lines.at(-1);
  const numbers = bill.lines.map(({ id }) => Number(id.replace('line-', '')) || 0);
  return {
    id: `line-${Math.max(0, ...numbers) + 1}`,
    phase: last?.phase ?? (phases.includes('Framing') ? 'Framing' : (phases[0] ?? '')),
    kind: last?.kind ?? (bill.kind === 'sub-bill' ? 'sub' : 'material'),
    description: '',
    quantity: '1',
    unit: '',
    amountUsd: '',
    costLineId: null,
    itemId: null,
    notesPrice: false,
  };
}

function amount(text: string): Decimal {
  return /^-?\d+(?:\.\d+)?$/.test(text.trim()) ? new Decimal(text.trim()) : new Decimal(0);
}

/** The sum as it stands; amounts that do not read yet count as nothing. */
function totalWords({ lines, taxUsd }: Bill): string {
  const total = lines.reduce((sum, line) => sum.plus(amount(line.amountUsd)), amount(taxUsd));
  return dollars(total.toFixed());
}

async function attach(jobId: string, file: File): Promise<string | undefined> {
  const base64 = await toBase64(new Uint8Array(await file.arrayBuffer()));
  const kept = await attempt('costs.attach', { jobId, name: file.name, base64 });
  return kept?.id;
}

/** Where the host names a field of the form. */
function at(key: string): string {
  return `bill.${key}`;
}
