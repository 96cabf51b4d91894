import { useState } from 'react';
import { Form } from 'react-aria-components';
import { priceEntriesSchema } from '../../../core/pricing/price-changes.ts';
import type { UnitOfSale } from '../../../core/pricing/price-list.ts';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { changePriceList } from './price-steps.ts';
import { categoryChoices, newItemId, unitChoices, usualUnit, type Category } from './price-words.ts';

/** Asks what a new item is; its sizes and its first price are entered beside the list afterwards. */
export function NewItemDialog(props: {
  readonly taken: ReadonlySet<string>;
  readonly onClose: () => void;
  readonly onMade: (id: string) => void;
}) {
  const { taken, onClose, onMade } = props;
  const [description, setDescription] = useState('');
  const [category, setCategory] = useState<Category>('lumber');
  const [unit, setUnit] = useState<UnitOfSale>(usualUnit.lumber);
  const [tried, setTried] = useState(false);
  const isEmpty = description.trim() === '';
  const make = async (): Promise<void> => {
    setTried(true);
    if (isEmpty) return;
    const id = newItemId(description, taken);
    const item = priceEntriesSchema.parse({ id, category, description: description.trim(), unit });
    if (!(await changePriceList(`new item ${item.description}`, [{ kind: 'add-item', item }]))) return;
    onClose();
    onMade(id);
  };
  return (
    <Dialog
      title="New item"
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button tone="main" onPress={() => void make()}>
            Add the item
          </Button>
          <Button onPress={onClose}>Cancel</Button>
        </>
      }
    >
      <Form
        className="fields"
        validationBehavior="aria"
        onSubmit={(event) => {
          event.preventDefault();
          void make();
        }}
      >
        <div className="full">
          <TextField
            label="Description"
            value={description}
            onChange={setDescription}
            problem={tried && isEmpty ? 'Give the item a description, such as 2x6 DF #2, 12 ft.' : null}
            maxLength={120}
            autoFocus
          />
        </div>
        <SelectField
          label="Kind"
          value={category}
          choices={categoryChoices}
          onChange={(next) => {
            setCategory(next);
            setUnit(usualUnit[next]);
          }}
        />
        <SelectField label="Sold by" value={unit} choices={unitChoices} onChange={setUnit} />
      </Form>
    </Dialog>
  );
}
