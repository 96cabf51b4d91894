import type { PriceItem, PriceObservation } from '../../../core/pricing/price-list.ts';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { focusAfterRow } from '../../kit/focus-after-row.ts';
import { notify } from '../../kit/notices.tsx';
import { changePriceList } from './price-steps.ts';
import { priceText } from './price-text.ts';

/** Asks before a mistyped price is taken back. What was saved with it stays as it was saved. */
export function TakeBackPrice(props: {
  readonly item: PriceItem;
  readonly price: PriceObservation;
  readonly rowKey: string;
  readonly onClose: () => void;
}) {
  const { item, price, rowKey, onClose } = props;
  const words = `$${priceText(price.priceUsd)} of ${price.observedOn}`;
  const takeBack = async (): Promise<void> => {
    const moveFocus = focusAfterRow(rowKey);
    const isDone = await changePriceList(`${words} for ${item.description} taken back`, [
      { kind: 'take-back', itemId: item.id, price },
    ]);
    onClose();
    if (!isDone) return;
    moveFocus();
    notify(`${words} for ${item.description} is taken back.`);
  };
  return (
    <Dialog
      title="Take the price back?"
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button tone="danger" onPress={() => void takeBack()}>
            Take it back
          </Button>
          <Button autoFocus onPress={onClose}>
            Keep it
          </Button>
        </>
      }
    >
      <p>
        {words} for {item.description} goes out of the list, as if it had never been noted. Estimates that are
        saved keep their figures; others follow the prices that are left.
      </p>
    </Dialog>
  );
}
