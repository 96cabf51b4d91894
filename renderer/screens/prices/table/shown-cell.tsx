import { ChevronRight } from 'lucide-react';
import { Link } from 'wouter';
import type { PriceItem } from '../../../../core/pricing/price-list.ts';
import { priceOn } from '../../../../core/pricing/price-on.ts';
import { priceText } from '../price-text.ts';
import { categoryChoices, labelOf } from '../price-words.ts';
import type { PriceColumn } from './table-columns.ts';

/** What a cell of the table shows while it is not typed into. */
export function ShownCell(props: {
  readonly column: PriceColumn;
  readonly item: PriceItem;
  readonly today: string;
  readonly staleDays: number;
  readonly isChecked: boolean;
  readonly onCheck: () => void;
}) {
  const { item, today } = props;
  switch (props.column.id) {
    case 'chosen':
      return (
        <input
          type="checkbox"
          tabIndex={-1}
          aria-label={`Choose ${item.description}`}
          checked={props.isChecked}
          onChange={props.onCheck}
        />
      );
    case 'open':
      return (
        <Link
          href={`/prices/${encodeURIComponent(item.id)}`}
          className="price-open"
          tabIndex={-1}
          aria-label={`Open ${item.description}`}
        >
          <ChevronRight size={16} aria-hidden="true" />
        </Link>
      );
    case 'item':
      return (
        <>
          <span className="price-cell-text">{item.description}</span>
          {item.retired ? <span className="tag">retired</span> : null}
        </>
      );
    case 'price': {
      const price = priceOn(item, today, props.staleDays);
      return price.ok ? (
        `$${priceText(price.value.observation.priceUsd)}`
      ) : (
        <span className="tag tag-care">no price</span>
      );
    }
    case 'observed': {
      const price = priceOn(item, today, props.staleDays);
      return price.ok ? (
        <>
          {price.value.observation.observedOn}
          {price.value.stale ? <span className="tag tag-care">old</span> : null}
        </>
      ) : null;
    }
    case 'unit':
      return item.unit;
    case 'supplier':
      return item.supplier;
    case 'kind':
      return labelOf(categoryChoices, item.category);
    case 'section':
      return item.section;
    case 'grade':
      return item.grade;
    case 'species':
      return item.species;
    case 'length':
      return item.lengthFt;
    case 'pack':
      return item.minimumPack === 1 ? null : item.minimumPack;
    case 'taxable':
      return item.taxable ? 'yes' : 'no';
    case 'notes':
      return <span className="price-cell-text">{item.notes}</span>;
    default:
      return null;
  }
}
