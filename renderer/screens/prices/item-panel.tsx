import { X } from 'lucide-react';
import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { SavedLine } from '../../kit/saved-line.tsx';
import { ItemEntries } from './item-entries.tsx';
import { ObservePrice } from './observe-price.tsx';
import { OtherSuppliers } from './other-suppliers.tsx';
import { PriceHistory } from './price-history.tsx';
import { usePriceItem } from './price-item-store.ts';

/** The chosen item: what it is, a new price for it, and every price that it had. */
export function ItemPanel(props: {
  readonly item: PriceItem;
  /** The whole list, for the same thing at other suppliers. */
  readonly list: readonly PriceItem[];
  readonly today: string;
  readonly staleDays: number;
  /** For an item that was just made: the keyboard goes on in its panel. */
  readonly takesFocus: boolean;
  readonly onClose: () => void;
}) {
  const { item, today, staleDays, onClose } = props;
  const { entries, saveState } = usePriceItem(item);
  const history = useAnswer('prices.ofItem', { itemId: item.id });
  const heading = useRef<HTMLHeadingElement>(null);
  const { takesFocus } = props;
  useEffect(() => {
    if (takesFocus) heading.current?.focus();
  }, [takesFocus]);
  return (
    <aside className="price-item" aria-label={`Item ${item.description}`}>
      <Panel
        title={entries.description}
        headingRef={heading}
        actions={
          <>
            <SavedLine state={saveState} />
            <IconButton label="Close the item" icon={<X size={16} aria-hidden="true" />} onPress={onClose} />
          </>
        }
      >
        <ItemEntries item={item} entries={entries} />
      </Panel>
      <Panel title="New price">
        <ObservePrice item={item} today={today} />
      </Panel>
      <OtherSuppliers item={item} list={props.list} today={today} staleDays={staleDays} />
      <Panel
        title="Prices so far"
        look="flush"
        actions={
          <Link href={`/prices-over-time/${encodeURIComponent(item.id)}`} className="row-link">
            As a chart
          </Link>
        }
      >
        <Answer query={history}>
          {({ prices }) => <PriceHistory item={{ ...item, prices }} today={today} staleDays={staleDays} />}
        </Answer>
      </Panel>
    </aside>
  );
}
