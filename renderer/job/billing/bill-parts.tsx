import { useState } from 'react';
import { Button } from '../../kit/button.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { allAt, firstPercent, fromJobCost, inPlaceAt, percentInPlace, type TypedBill } from './bill-form.ts';
import { type ShownPart, typedPercent } from './billing-words.ts';
import { dollars } from '../../kit/amounts.ts';

/** How far each part of the contract is: by percent, by what is in place, all at once, or as the job cost says. */
export function BillParts(props: {
  readonly parts: readonly ShownPart[];
  readonly bill: TypedBill;
  readonly onChange: (part: Partial<TypedBill>) => void;
}) {
  const { parts, bill, onChange } = props;
  const [all, setAll] = useState('');
  const allProblem = all.trim() === '' ? null : percentProblem(all);
  const put = (key: string, percent: string): void =>
    onChange({ percents: { ...bill.percents, [key]: percent } });
  const knowsCost = parts.some(({ percentDone }) => percentDone !== null);
  return (
    <>
      <div className="bill-all">
        <TextField label="All parts at, %" value={all} onChange={setAll} problem={allProblem} maxLength={8} />
        <Button
          isDisabled={all.trim() === '' || allProblem !== null}
          onPress={() => onChange({ percents: allAt(parts, all) })}
        >
          Set all
        </Button>
        {knowsCost ? (
          <Button onPress={() => onChange({ percents: fromJobCost(parts, bill.percents) })}>
            As far as Cost says
          </Button>
        ) : null}
      </div>
      <table className="table bill-parts">
        <caption className="visually-hidden">How far each part of the contract is</caption>
        <thead>
          <tr>
            <th scope="col">Part of the contract</th>
            <th scope="col" className="align-right">
              In the contract
            </th>
            <th scope="col" className="align-right">
              Billed
            </th>
            <th scope="col">In place</th>
            <th scope="col">Done now, %</th>
          </tr>
        </thead>
        <tbody>
          {parts.map((part) => (
            <PartRow
              key={part.key}
              part={part}
              percent={bill.percents[part.key] ?? firstPercent(part)}
              onPercent={(percent) => put(part.key, percent)}
            />
          ))}
        </tbody>
      </table>
    </>
  );
}

function PartRow(props: {
  readonly part: ShownPart;
  readonly percent: string;
  readonly onPercent: (percent: string) => void;
}) {
  const { part, percent, onPercent } = props;
  const { counted } = part;
  const [count, setCount] = useState<string | null>(null);
  const isBehind =
    percentProblem(percent) === null && Number(typedPercent(percent)) < Number(part.percentBilled);
  return (
    <tr>
      <th scope="row">{part.label}</th>
      <td className="align-right">{dollars(part.priceUsd)}</td>
      <td className="align-right">{part.percentBilled} %</td>
      <td>
        {counted === null ? null : (
          <span className="bill-count">
            <TextField
              label={`${part.label}, ${counted.what}, ${counted.unit}`}
              labelHidden
              value={count ?? inPlaceAt(percent, counted.total)}
              onChange={(text) => {
                setCount(text);
                const read = percentInPlace(text, counted.total);
                if (read !== null) onPercent(read);
              }}
              problem={
                count === null || count.trim() === '' || percentInPlace(count, counted.total) !== null
                  ? null
                  : `0 to ${counted.total}`
              }
              maxLength={10}
            />
            <span className="muted">
              of {counted.total} {counted.unit}
            </span>
          </span>
        )}
      </td>
      <td>
        <TextField
          label={`${part.label}, done now, %`}
          labelHidden
          value={percent}
          onChange={(text) => {
            setCount(null);
            onPercent(text);
          }}
          problem={percentProblem(percent)}
          maxLength={8}
        />
        {isBehind ? <span className="tag tag-care">less than billed</span> : null}
      </td>
    </tr>
  );
}

function percentProblem(text: string): string | null {
  const bare = typedPercent(text);
  return /^(\d+\.?\d*|\.\d+)$/.test(bare) && Number(bare) <= 100 ? null : '0 to 100';
}
