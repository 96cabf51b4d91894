import { useState } from 'react';
import { Form } from 'react-aria-components';
import type { Problem } from '../../../core/problems/problem.ts';
import type { PriceItem, PriceObservation } from '../../../core/pricing/price-list.ts';
import { MoneyField } from '../../fields/money-field.tsx';
import { useKeptDrafts } from '../../host/kept-drafts.ts';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { changePriceList } from './price-steps.ts';
import { priceText } from './price-text.ts';
import { sourceChoices } from './price-words.ts';

/** Adds a price of a day to an item. Earlier prices stay, so that an old estimate can always be reckoned again. */
export function ObservePrice({ item, today }: { readonly item: PriceItem; readonly today: string }) {
  const drafts = useKeptDrafts(`new-price/${item.id}`);
  const [priceUsd, setPriceUsd] = useState<string | null>(null);
  const [observedOn, setObservedOn] = useState(today);
  const [source, setSource] = useState<PriceObservation['source']>('list');
  const [validUntil, setValidUntil] = useState('');
  const [tried, setTried] = useState(false);
  const missing: Problem | null =
    tried && priceUsd === null ? { code: 'money-unreadable', typed: drafts.get('price') ?? '' } : null;
  const add = async (): Promise<void> => {
    setTried(true);
    if (priceUsd === null || observedOn === '') return;
    const observation = {
      priceUsd,
      observedOn,
      source,
      validUntil: validUntil === '' ? null : validUntil,
    };
    const isNoted = await changePriceList(`price of ${item.description}`, [
      { kind: 'note-price', itemId: item.id, price: observation },
    ]);
    if (!isNoted) return;
    notify(`$${priceText(priceUsd)} for ${item.description} is noted as of ${observedOn}.`);
    setTried(false);
    setPriceUsd(null);
    drafts.set('price', null);
    setValidUntil('');
  };
  return (
    <Form
      className="fields"
      validationBehavior="aria"
      onSubmit={(event) => {
        event.preventDefault();
        void add();
      }}
    >
      <MoneyField
        label="Price"
        value={priceUsd}
        range={{ least: 0, most: 1_000_000 }}
        after={`for ${item.unit}`}
        blankMeans=""
        draft={drafts.get('price')}
        problem={missing}
        onEntry={(entry) => {
          drafts.set('price', entry.problem === null ? null : entry.text);
          setPriceUsd(entry.value);
        }}
      />
      <TextField
        label="Observed on"
        type="date"
        value={observedOn}
        onChange={setObservedOn}
        problem={observedOn === '' ? 'Give the day on which the price was seen.' : null}
      />
      <SelectField label="Known from" value={source} choices={sourceChoices} onChange={setSource} />
      <TextField
        label="Valid until, if the supplier said"
        type="date"
        value={validUntil}
        onChange={setValidUntil}
      />
      <div className="full">
        <Button type="submit" tone="main">
          Add the price
        </Button>
      </div>
    </Form>
  );
}
