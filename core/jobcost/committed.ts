import { Decimal } from 'decimal.js';
import { splitUsd, sumUsd, type Usd, usd } from '../units/money.ts';
import { billTotalUsd, type KeptBill, standingEntries } from './cost-entries.ts';
import { costOfLines } from './spread-tax.ts';

/** What is ordered and not yet come, by phase. [$] */
export type Committed = ReadonlyMap<string, Usd>;

/** How much of an order is still to come. */
export type OpenOrder = { readonly order: KeptBill; readonly receivedUsd: Usd; readonly openUsd: Usd };

/**
 * The orders that something is still to come of: ordered less what the papers that name the order came to; nothing once one
 * of them closes it, and never less than nothing.
 * @param bills - all papers of a job.
 */
export function openOrders(bills: readonly KeptBill[]): readonly OpenOrder[] {
  const standing = standingEntries(bills);
  // A corrected order keeps what came for the entry that it replaces.
  const replacedBy = new Map(bills.map(({ id, replaces }) => [replaces, id]));
  const newest = (id: string | null): string | null => {
    let at = id;
    for (let step = 0; at !== null && step < bills.length; step += 1) {
      const next = replacedBy.get(at);
      if (next === undefined) break;
      at = next;
    }
    return at;
  };
  return standing
    .filter(({ bill }) => bill.kind === 'order')
    .map((order): OpenOrder => {
      const came = standing.filter(({ bill }) => bill.kind !== 'order' && newest(bill.orderId) === order.id);
      const receivedUsd = sumUsd(came.map(({ bill }) => billTotalUsd(bill)));
      const closed = came.some(({ bill }) => bill.closesOrder);
      const open = new Decimal(billTotalUsd(order.bill)).minus(receivedUsd);
      return { order, receivedUsd, openUsd: closed ? usd(0) : usd(Decimal.max(0, open)) };
    })
    .filter(({ openUsd }) => Number(openUsd) > 0);
}

/** What is still to come of orders, by phase: each order's rest over its lines by their amounts (largest remainder). */
export function committedByPhase(bills: readonly KeptBill[]): Committed {
  const byPhase = new Map<string, Usd>();
  for (const { order, openUsd } of openOrders(bills)) {
    const parts = splitUsd(
      openUsd,
      costOfLines(order.bill).map((amount) => Decimal.max(0, amount)),
    );
    for (const [index, { phase }] of order.bill.lines.entries())
      byPhase.set(phase, sumUsd([byPhase.get(phase) ?? usd(0), parts[index] ?? usd(0)]));
  }
  return byPhase;
}
