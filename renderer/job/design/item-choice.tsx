import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { SelectField } from '../../kit/select-field.tsx';
import { valueAt, withValueAt } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';

/** Stands for "none" in a list whose ids are the price list's. */
const noneId = '(none)';

/** An item of the price list that something is bought as. */
export function ItemChoice(props: {
  readonly path: string;
  readonly label: string;
  readonly category: PriceItem['category'];
  /** What choosing none means; none has to be chosen where absent. */
  readonly noneMeans?: string | undefined;
  readonly hint?: string | undefined;
}) {
  const { path, label, noneMeans } = props;
  const { editor, documents, surroundings } = useJob();
  const value = valueAt(documents, path) as string;
  const items = surroundings.prices.filter((item) => item.category === props.category && !item.retired);
  const none = noneMeans === undefined ? [] : [{ id: noneId, label: noneMeans }];
  const chosen = items.some((item) => item.id === value)
    ? value
    : value === '' && none.length > 0
      ? noneId
      : null;
  return (
    <SelectField
      label={label}
      value={chosen}
      none={items.length === 0 ? 'None on the price list' : 'Choose'}
      choices={[...none, ...items.map((item) => ({ id: item.id, label: item.description }))]}
      hint={props.hint}
      path={path}
      onChange={(id) => editor.change(label, (now) => withValueAt(now, path, id === noneId ? '' : id))}
    />
  );
}
