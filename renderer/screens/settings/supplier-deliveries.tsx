import type { ShopSettings } from '../../../core/pricing/shop-settings.ts';
import { MoneyField } from '../../fields/money-field.tsx';
import { useKeptDrafts } from '../../host/kept-drafts.ts';
import { useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { Panel } from '../../kit/panel.tsx';
import { changeSettings } from './settings-store.ts';

const path = 'suppliers';

/** What each supplier that lumber is priced from charges to deliver, which decides where a job's lumber is cheapest. */
export function SupplierDeliveries({ settings }: { readonly settings: ShopSettings }) {
  const prices = useAnswer('prices.list', {});
  const drafts = useKeptDrafts('settings');
  return (
    <Panel title="Delivery of lumber">
      <p className="panel-note">
        Charged once for each supplier that a job buys lumber from, whatever it buys. It stands in the
        estimate, untaxed, and in the comparison of suppliers on Cut plan.
      </p>
      <Answer query={prices}>
        {(items) => {
          const sellers = new Set(
            items.flatMap(({ section, supplier }) =>
              section === '' || supplier.trim() === '' ? [] : [supplier],
            ),
          );
          const names = [...new Set([...sellers, ...settings.suppliers.map(({ name }) => name)])].sort();
          return names.length === 0 ? (
            <p className="muted">No lumber on the price list names its supplier yet.</p>
          ) : (
            <div className="fields">
              {names.map((name) => {
                const entry = `${path}/${name}`;
                return (
                  <MoneyField
                    key={name}
                    label={name}
                    value={settings.suppliers.find((one) => one.name === name)?.deliveryUsd ?? '0'}
                    range={{ least: 0, most: 10_000 }}
                    after="a delivery"
                    draft={drafts.get(entry)}
                    onEntry={({ value, text, problem }) => {
                      drafts.set(entry, problem === null ? null : text);
                      if (problem === null && value !== null) setDelivery(name, value);
                    }}
                  />
                );
              })}
            </div>
          );
        }}
      </Answer>
    </Panel>
  );
}

function setDelivery(name: string, deliveryUsd: string): void {
  changeSettings((settings) => ({
    ...settings,
    suppliers: settings.suppliers.some((one) => one.name === name)
      ? settings.suppliers.map((one) => (one.name === name ? { ...one, deliveryUsd } : one))
      : [...settings.suppliers, { name, deliveryUsd }],
  }));
}
