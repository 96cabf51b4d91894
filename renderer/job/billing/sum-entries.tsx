import { Decimal } from 'decimal.js';
import { Button } from '../../kit/button.tsx';
import { TextField } from '../../kit/text-field.tsx';
import type { TypedBill } from './bill-form.ts';
import type { Billing } from './billing-words.ts';
import { dollars } from '../../kit/amounts.ts';

/**
 * The sum of a deposit, or of a stage of the payments that were agreed; a planned one is taken with a press. Of a deposit a
 * word where the rule of the state that was chosen in the quote sets a limit.
 */
export function SumEntries(props: {
  readonly bill: TypedBill;
  readonly billing: Billing;
  readonly problem: string | null;
  readonly onChange: (part: Partial<TypedBill>) => void;
}) {
  const { bill, billing, problem, onChange } = props;
  const { depositLimitUsd: limit, planned } = billing;
  const isDeposit = bill.kind === 'deposit';
  return (
    <>
      <TextField
        label={isDeposit ? 'Deposit before tax, $' : 'Payment before tax, $'}
        value={bill.depositUsd}
        onChange={(depositUsd) => onChange({ depositUsd })}
        problem={problem}
        {...(isDeposit ? { hint: limitHint(limit) } : {})}
        maxLength={16}
      />
      {isDeposit ? null : (
        <div className="full">
          <TextField
            label="What it is for"
            value={bill.stage}
            onChange={(stage) => onChange({ stage })}
            placeholder="When the framing is in"
            maxLength={120}
          />
        </div>
      )}
      {planned.length === 0 ? null : (
        <div className="full agreed-prices" role="group" aria-label="Payments planned in the quote">
          <span className="field-label">Planned in the quote:</span>
          {planned.map(({ when, amountUsd }) => (
            <Button
              key={`${when}/${amountUsd}`}
              onPress={() =>
                onChange(isDeposit ? { depositUsd: amountUsd } : { depositUsd: amountUsd, stage: when })
              }
            >
              {when}, {dollars(amountUsd)}
            </Button>
          ))}
        </div>
      )}
      {isDeposit ? <LimitWord bill={bill} billing={billing} /> : null}
    </>
  );
}

function limitHint(limit: string | null): string {
  return limit === null
    ? 'Some states limit it; verify with yours.'
    : `The rule chosen in the quote allows ${dollars(limit)}; verify with your state.`;
}

/** Told where the deposits come to more than the rule allows; it warns and does not forbid. */
function LimitWord({ bill, billing }: { readonly bill: TypedBill; readonly billing: Billing }) {
  const { depositLimitUsd: limit } = billing;
  const typed = Number(bill.depositUsd.replace(/[$,\s]/g, ''));
  if (limit === null || !Number.isFinite(typed)) return null;
  const all = billing.invoices
    .filter(({ kind }) => kind === 'deposit')
    .reduce((sum, { totalUsd, creditedUsd }) => sum.plus(totalUsd).minus(creditedUsd), new Decimal(typed));
  if (all.lte(limit)) return null;
  return (
    <p className="full deposit-over" role="status">
      With this the deposits come to {dollars(all.toFixed(2))}, more than the {dollars(limit)} that the rule
      chosen in the quote allows before work begins. Verify with your state before you issue it.
    </p>
  );
}
