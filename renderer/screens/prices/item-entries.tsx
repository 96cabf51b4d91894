import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { NumberField } from '../../fields/number-field.tsx';
import { useKeptDrafts } from '../../host/kept-drafts.ts';
import { SelectField } from '../../kit/select-field.tsx';
import { Switch } from '../../kit/switch.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { ItemSizes } from './item-sizes.tsx';
import type { PriceItemEntries } from './price-item-edits.ts';
import { changePriceItem } from './price-item-store.ts';
import { categoryChoices, unitChoices } from './price-words.ts';

/** What an item is: saved as it is typed. Which sizes are asked for follows from the kind. */
export function ItemEntries(props: { readonly item: PriceItem; readonly entries: PriceItemEntries }) {
  const { item, entries } = props;
  const drafts = useKeptDrafts(`price/${item.id}`);
  const change = (next: Partial<PriceItemEntries>): void => changePriceItem(item, next);
  const emptied = drafts.get('description');
  return (
    <div className="fields">
      <div className="full">
        <TextField
          label="Description"
          value={emptied ?? entries.description}
          onChange={(text) => {
            const isEmpty = text.trim() === '';
            drafts.set('description', isEmpty ? text : null);
            if (!isEmpty) change({ description: text });
          }}
          problem={emptied === null ? null : 'Give the item a description, such as 2x6 DF #2, 12 ft.'}
          maxLength={120}
        />
      </div>
      <SelectField
        label="Kind"
        value={entries.category}
        choices={categoryChoices}
        onChange={(category) => change({ category })}
      />
      <SelectField
        label="Sold by"
        value={entries.unit}
        choices={unitChoices}
        onChange={(unit) => change({ unit })}
      />
      <ItemSizes entries={entries} drafts={drafts} change={change} />
      <TextField
        label="Supplier"
        value={entries.supplier}
        onChange={(supplier) => change({ supplier })}
        maxLength={80}
      />
      <NumberField
        label="Sold in packs of"
        value={entries.minimumPack === 1 ? null : entries.minimumPack}
        blankMeans="singly"
        range={{ least: 1, most: 100_000 }}
        whole
        draft={drafts.get('minimumPack')}
        onEntry={(entry) => {
          drafts.set('minimumPack', entry.problem === null ? null : entry.text);
          if (entry.problem === null) change({ minimumPack: entry.value ?? 1 });
        }}
      />
      <div className="full">
        <TextField
          label="Note"
          value={entries.notes}
          onChange={(notes) => change({ notes })}
          maxLength={1000}
          multiline
          rows={2}
        />
      </div>
      <div className="full switches">
        <Switch isSelected={entries.taxable} onChange={(taxable) => change({ taxable })}>
          Sales tax is due on it
        </Switch>
        <Switch isSelected={entries.retired} onChange={(retired) => change({ retired })}>
          Retired: not offered for new work
        </Switch>
      </div>
    </div>
  );
}
