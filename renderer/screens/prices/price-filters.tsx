import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { priceOn } from '../../../core/pricing/price-on.ts';
import { SearchField } from '../../kit/search-field.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { Switch } from '../../kit/switch.tsx';
import { categoryChoices, isWanted, type Category } from './price-words.ts';

/** Which items of the list are shown. */
export type PriceFilter = {
  readonly search: string;
  readonly category: Category | 'all';
  /** A supplier's name behind a sign, so that no name can be taken for `all`. */
  readonly supplier: string;
  readonly state: 'all' | 'old' | 'no-price';
  readonly showsRetired: boolean;
};

export const everyItem: PriceFilter = {
  search: '',
  category: 'all',
  supplier: 'all',
  state: 'all',
  showsRetired: false,
};

const anyCategory = { id: 'all', label: 'Every kind' } as const;
const stateChoices = [
  { id: 'all', label: 'Old and new prices' },
  { id: 'old', label: 'Old prices' },
  { id: 'no-price', label: 'No price' },
] as const;

/** The filters above the table of prices. */
export function PriceFilters(props: {
  readonly filter: PriceFilter;
  readonly suppliers: readonly string[];
  readonly onChange: (filter: PriceFilter) => void;
}) {
  const { filter, onChange } = props;
  return (
    <div className="filters">
      <SearchField
        label="Search item, section or supplier"
        value={filter.search}
        onChange={(search) => onChange({ ...filter, search })}
      />
      <SelectField
        label="Kind of item"
        labelHidden
        value={filter.category}
        choices={[anyCategory, ...categoryChoices]}
        onChange={(category) => onChange({ ...filter, category })}
      />
      <SelectField
        label="Supplier of the items"
        labelHidden
        value={filter.supplier}
        choices={[
          { id: 'all', label: 'Every supplier' },
          ...props.suppliers.map((name) => ({ id: `=${name}`, label: name === '' ? 'No supplier' : name })),
        ]}
        onChange={(supplier) => onChange({ ...filter, supplier })}
      />
      <SelectField
        label="Age of prices"
        labelHidden
        value={filter.state}
        choices={stateChoices}
        onChange={(state) => onChange({ ...filter, state })}
      />
      <Switch
        isSelected={filter.showsRetired}
        onChange={(showsRetired) => onChange({ ...filter, showsRetired })}
      >
        Show retired
      </Switch>
    </div>
  );
}

/** The items that a filter lets through. */
export function filteredItems(
  items: readonly PriceItem[],
  filter: PriceFilter,
  today: string,
  staleDays: number,
): readonly PriceItem[] {
  const search = filter.search.trim();
  return items.filter(
    (item) =>
      (filter.category === 'all' || item.category === filter.category) &&
      (filter.supplier === 'all' || `=${item.supplier}` === filter.supplier) &&
      (filter.showsRetired || !item.retired) &&
      isInState(item, filter.state, today, staleDays) &&
      isWanted(item, search),
  );
}

function isInState(item: PriceItem, state: PriceFilter['state'], today: string, staleDays: number): boolean {
  if (state === 'all') return true;
  const price = priceOn(item, today, staleDays);
  return state === 'no-price' ? !price.ok : price.ok && price.value.stale;
}
