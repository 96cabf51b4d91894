import { Plus } from 'lucide-react';
import { useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import { changeReasons } from '../../../core/documents/change-order-sheet.ts';
import { sumUsd, usd } from '../../../core/units/money.ts';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { useSubmit } from '../parts/submit.ts';
import { type Billing, signedDollars } from './billing-words.ts';
import {
  agreedLine,
  blankLine,
  blanksOf,
  type OpenedChange,
  type TypedChange,
  type TypedLine,
  typedChangeUsd,
  typedDays,
} from './change-form.ts';
import { ChangeLine, lineFields } from './change-line.tsx';
import { keepPhoto } from './photo.ts';
import { dollars } from '../../kit/amounts.ts';

type Reason = TypedChange['reason'];
const reasonChoices = (Object.entries(changeReasons) as [Reason, string][]).map(([id, label]) => ({
  id,
  label,
}));

/** A change order in the hand: why, what at which price, days, photo. Saved it is a draft; Enter saves. */
export function ChangeEditor(props: {
  readonly jobId: string;
  readonly billing: Billing;
  readonly opened: OpenedChange;
  readonly onChange: (opened: OpenedChange) => void;
  readonly onClose: () => void;
}) {
  const { jobId, billing, opened, onChange, onClose } = props;
  const { id, typed } = opened;
  const submit = useSubmit('billing.saveChange');
  const [isTried, setTried] = useState(false);
  const put = (part: Partial<TypedChange>): void => {
    submit.clear();
    onChange({ id, typed: { ...typed, ...part } });
  };
  const addLine = (line: TypedLine): void => put({ lines: [...typed.lines, line] });
  const days = typedDays(typed.days);
  const save = async (): Promise<void> => {
    setTried(true);
    if (days === null || typed.lines.some((line) => blanksOf(line).length > 0)) return;
    const saved = await submit.send({
      jobId,
      id,
      order: { ...typed, days, lines: [...typed.lines] },
    });
    if (saved === undefined) return;
    notify(`Change order ${saved.number} is saved as a draft.`);
    onClose();
  };
  const attach = async (files: FileList | null): Promise<void> => {
    const file = files?.[0];
    const photo = file === undefined ? undefined : await keepPhoto(jobId, file);
    if (photo !== undefined) put({ photo });
  };
  const known = [
    'order.reason',
    'order.description',
    'order.days',
    ...typed.lines.flatMap((_, index) => lineFields(index)),
  ];
  const problem = submit.problem(known);
  const changeUsd = typedChangeUsd(typed);
  const withIt = sumUsd([usd(billing.summary?.revisedUsd ?? 0), changeUsd]);
  const before = billing.changeOrders.find((change) => change.id === id);
  return (
    <Panel title={before === undefined ? 'New change order' : `Change order ${before.number}, a draft`}>
      <form
        className="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void save();
        }}
      >
        <div className="change-head">
          <SelectField
            label="Reason"
            value={typed.reason}
            choices={reasonChoices}
            onChange={(reason) => put({ reason })}
          />
          <TextField
            label="What changes"
            value={typed.description}
            onChange={(description) => put({ description })}
            problem={submit.problemAt('order.description')}
            maxLength={2000}
            autoFocus
          />
          <TextField
            label="Days longer"
            value={typed.days}
            onChange={(text) => put({ days: text })}
            problem={
              days === null
                ? 'Enter whole days, below zero where it is done earlier.'
                : submit.problemAt('order.days')
            }
            maxLength={12}
          />
        </div>
        {billing.unitPrices.length === 0 ? null : (
          <div className="agreed-prices" role="group" aria-label="Prices agreed for hidden work">
            <span className="field-label">Agreed in the quote:</span>
            {billing.unitPrices.map((agreed) => (
              <Button
                key={agreed.id}
                icon={<Plus size={14} aria-hidden="true" />}
                onPress={() => addLine(agreedLine(typed, billing, agreed))}
              >
                {agreed.what}, {dollars(agreed.priceUsd)}{' '}
                {agreed.unit === 'each' ? 'each' : `a ${agreed.unit}`}
              </Button>
            ))}
          </div>
        )}
        {typed.lines.length === 0 ? (
          <p className="muted">Add a line: at an agreed price, or by hand.</p>
        ) : (
          <ul className="change-lines">
            {typed.lines.map((line, index) => (
              <ChangeLine
                key={line.id}
                line={line}
                index={index}
                phases={billing.phases}
                isTaxed={Number(billing.clientTaxPercent) > 0}
                problemAt={submit.problemAt}
                tellsBlanks={isTried}
                onChange={(part) =>
                  put({ lines: typed.lines.map((one) => (one === line ? { ...one, ...part } : one)) })
                }
                onRemove={() => put({ lines: typed.lines.filter((one) => one !== line) })}
              />
            ))}
          </ul>
        )}
        {problem === null ? null : (
          <p className="field-problem" role="alert">
            {problem}
          </p>
        )}
        <div className="change-foot">
          <Button
            icon={<Plus size={14} aria-hidden="true" />}
            onPress={() => addLine(blankLine(typed, billing))}
          >
            Line by hand
          </Button>
          <FileTrigger
            acceptedFileTypes={['.jpg', '.jpeg', '.png', '.pdf']}
            onSelect={(files) => void attach(files)}
          >
            <Button>{typed.photo === null ? 'Photo or PDF…' : 'Another photo or PDF…'}</Button>
          </FileTrigger>
          {typed.photo === null ? null : <span className="tag">a photo is kept with it</span>}
          <p className="change-total">
            This change <b>{signedDollars(changeUsd)}</b>, the contract with it <b>{dollars(withIt)}</b>
            <span className="muted"> before tax</span>
          </p>
          <Button tone="main" type="submit" isDisabled={typed.lines.length === 0}>
            Save as draft
          </Button>
          <Button tone="quiet" onPress={onClose}>
            Put away
          </Button>
        </div>
      </form>
    </Panel>
  );
}
