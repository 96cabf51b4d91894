import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { SelectField } from '../../kit/select-field.tsx';
import { valueAt, withValueAt } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';

/** What is bought for a use: an item of the price list that is still sold, kept by its id at a path of the job. */
export function ItemChoice(props: {
  readonly path: string;
  readonly label: string;
  readonly category: PriceItem['category'];
}) {
  const { path, label, category } = props;
  const { editor, documents, surroundings } = useJob();
  const items = surroundings.prices.filter((item) => item.category === category && !item.retired);
  const itemId = valueAt(documents, path);
  const chosen = items.find((item) => item.id === itemId);
  return (
    <SelectField
      label={label}
      value={chosen?.id ?? null}
      none={items.length === 0 ? 'None on the price list' : 'Choose'}
      choices={items.map((item) => ({ id: item.id, label: item.description }))}
      path={path}
      onChange={(id) => editor.change(label, (now) => withValueAt(now, path, id))}
    />
  );
}
