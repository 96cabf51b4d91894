import { Decimal } from 'decimal.js';
import type { ChangeOrder, ChangeOrderLine, CostKind } from '../../../core/billing/change-order.ts';
import { sumUsd, type Usd, usd } from '../../../core/units/money.ts';
import type { Billing } from './billing-words.ts';

/** A line of a change order as it is typed. */
export type TypedLine = Omit<ChangeOrderLine, 'taxable'> & { readonly taxable: boolean };

/** A change order as it is typed: days and figures are the text in their fields. */
export type TypedChange = Omit<ChangeOrder, 'days' | 'lines'> & {
  readonly days: string;
  readonly lines: readonly TypedLine[];
};

/** A change order in the hand; `id` is null while it is not saved yet. */
export type OpenedChange = { readonly id: string | null; readonly typed: TypedChange };

/** A new one: blank, or with a blank line where no prices for hidden work were agreed. */
export function blankChange(billing: Billing): OpenedChange {
  const typed: TypedChange = {
    reason: 'hidden',
    description: '',
    days: '0',
    photo: null,
    fromDesign: false,
    lines: [],
  };
  return {
    id: null,
    typed: billing.unitPrices.length > 0 ? typed : { ...typed, lines: [blankLine(typed, billing)] },
  };
}

/** One that is there already, or that the program has made. */
export function openedFrom(id: string | null, order: ChangeOrder): OpenedChange {
  return { id, typed: { ...order, days: String(order.days) } };
}

/** A line to be written by hand. */
export function blankLine({ lines }: TypedChange, { phases }: Pick<Billing, 'phases'>): TypedLine {
  const last = lines.at(-1);
  return {
    id: nextId(lines),
    phase: last?.phase ?? (phases.includes('Framing') ? 'Framing' : (phases[0] ?? '')),
    kind: last?.kind ?? 'labour',
    description: '',
    quantity: '1',
    unit: 'each',
    unitPriceUsd: '',
    unitCostUsd: '0',
    unitHours: '0',
    taxable: false,
  };
}

/** A line at a price that was agreed for hidden work. */
export function agreedLine(
  typed: TypedChange,
  billing: Pick<Billing, 'phases'>,
  agreed: Billing['unitPrices'][number],
): TypedLine {
  return {
    ...blankLine(typed, billing),
    kind: Number(agreed.hours) > 0 ? 'labour' : 'material',
    description: agreed.what,
    unit: agreed.unit,
    unitPriceUsd: agreed.priceUsd,
    unitCostUsd: agreed.costUsd,
    unitHours: agreed.hours,
  };
}

/** The entries of a line that may not be left blank and are. */
export function blanksOf(line: TypedLine): readonly (keyof TypedLine)[] {
  return (['description', 'quantity', 'unit', 'unitPriceUsd'] as const).filter(
    (key) => line[key].trim() === '',
  );
}

/** What a typed line comes to; null while it does not read. [$] */
export function typedLineUsd({ quantity, unitPriceUsd }: TypedLine): Usd | null {
  const [count, price] = [figure(quantity), figure(unitPriceUsd)];
  return count === null || price === null ? null : usd(count.times(price));
}

/** What all lines that read come to. [$] */
export function typedChangeUsd({ lines }: TypedChange): Usd {
  return sumUsd(lines.map((line) => typedLineUsd(line) ?? usd(0)));
}

/** Whole days as typed; null where they do not read. [d] */
export function typedDays(text: string): number | null {
  const bare = text.trim().replace(/\s*d(ays?)?\.?$/i, '');
  return /^-?\d{1,3}$/.test(bare) ? Number(bare) : null;
}

export const kindChoices: readonly { readonly id: CostKind; readonly label: string }[] = [
  { id: 'labour', label: 'Labour' },
  { id: 'material', label: 'Material' },
  { id: 'equipment', label: 'Equipment' },
  { id: 'sub', label: 'Subcontract' },
  { id: 'other', label: 'Other' },
];

function figure(text: string): Decimal | null {
  const bare = text
    .trim()
    .replace(/^\$\s*/, '')
    .replace(/,(?=\d{3}\b)/g, '');
  return /^-?(\d+\.?\d*|\.\d+)$/.test(bare) ? new Decimal(bare) : null;
}

function nextId(lines: readonly TypedLine[]): string {
  const last = Math.max(0, ...lines.map(({ id }) => Number(/^line-(\d+)$/.exec(id)?.[1] ?? 0)));
  return `line-${last + 1}`;
}
