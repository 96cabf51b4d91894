import { useMemo } from 'react';
import type { Stock } from '../../../core/eave/stock.ts';
import { dressedSection } from '../../../core/lumber/dressed-sizes.ts';
import { formatInches } from '../../../core/units/format-length.ts';
import { SelectField } from '../../kit/select-field.tsx';
import { valueAt, withValueAt } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';
import { stockKey, stockOffers } from './stock-list.ts';

/** Lumber for a use: every size, what has a price first. */
export function StockChoice(props: { readonly path: string; readonly label: string }) {
  const { editor, documents, surroundings, computation } = useJob();
  const set = valueAt(documents, props.path) as Stock;
  const offers = useMemo(() => stockOffers(surroundings.prices, set), [surroundings.prices, set]);
  const isPriced = offers.some((offer) => offer.isPriced && offer.key === stockKey(set));
  const problem = computation.problems.find((one) => one.field?.startsWith(props.path));
  return (
    <SelectField
      label={props.label}
      value={stockKey(set)}
      choices={offers.map(({ key, isPriced: has }) => ({
        id: key,
        label: has ? key : `${key}, no price yet`,
      }))}
      path={props.path}
      hint={isPriced ? sizeOf(set) : [sizeOf(set), 'no price yet'].filter(Boolean).join(', ')}
      problem={problem === undefined ? null : 'Choose a size that is known here.'}
      onChange={(key) => {
        const offer = offers.find((one) => one.key === key);
        if (offer !== undefined)
          editor.change(props.label, (now) => withValueAt(now, props.path, offer.stock));
      }}
    />
  );
}

function sizeOf({ section }: Stock): string | undefined {
  const dressed = dressedSection(section);
  return dressed && `Actual ${formatInches(dressed.thicknessIn)} x ${formatInches(dressed.depthIn)}`;
}
