import { Decimal } from 'decimal.js';
import { TextField } from '../../kit/text-field.tsx';
import type { TypedBill } from './bill-form.ts';
import { type Billing, dollars } from './billing-words.ts';

/** How much is asked for before the work begins, with a word where a rule of the state sets a limit. */
export function DepositEntries(props: {
  readonly bill: TypedBill;
  readonly billing: Billing;
  readonly problem: string | null;
  readonly onChange: (part: Partial<TypedBill>) => void;
}) {
  const { bill, billing, problem, onChange } = props;
  const { depositLimitUsd: limit } = billing;
  const typed = Number(bill.depositUsd.replace(/[$,\s]/g, ''));
  const earlier = billing.invoices
    .filter(({ kind }) => kind === 'deposit')
    .reduce((sum, { totalUsd, creditedUsd }) => sum.plus(totalUsd).minus(creditedUsd), new Decimal(0));
  const isOver = limit !== null && Number.isFinite(typed) && earlier.plus(typed).gt(limit);
  return (
    <>
      <TextField
        label="Deposit before tax, $"
        value={bill.depositUsd}
        onChange={(depositUsd) => onChange({ depositUsd })}
        problem={problem}
        hint={
          limit === null
            ? 'Some states limit it; verify with yours.'
            : `The rule chosen in the quote allows ${dollars(limit)}; verify with your state.`
        }
        maxLength={16}
      />
      {isOver && limit !== null ? (
        <p className="full deposit-over" role="status">
          With this the deposits come to {dollars(earlier.plus(typed).toFixed(2))}, more than the{' '}
          {dollars(limit)} that the rule chosen in the quote allows before work begins. Verify with your state
          before you issue it.
        </p>
      ) : null}
    </>
  );
}
