import type { Stock } from '../../../core/eave/design-document.ts';
import { dressedSection } from '../../../core/lumber/dressed-sizes.ts';
import { formatInches } from '../../../core/units/format-length.ts';
import { SelectField } from '../../kit/select-field.tsx';
import { valueAt, withValueAt } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';

/** Lumber for a use, among what the price list has; the one that is set stays in the list even when it has no price. */
export function StockChoice(props: { readonly path: string; readonly label: string }) {
  const { editor, documents, surroundings, computation } = useJob();
  const set = valueAt(documents, props.path) as Stock;
  const stocks = new Map<string, Stock>();
  for (const item of surroundings.prices) {
    if (item.category !== 'lumber' || item.retired || dressedSection(item.section) === undefined) continue;
    stocks.set(keyOf(item), { section: item.section, grade: item.grade });
  }
  const priced = stocks.has(keyOf(set));
  stocks.set(keyOf(set), set);
  const choices = [...stocks.values()]
    .sort((a, b) => keyOf(a).localeCompare(keyOf(b), 'en', { numeric: true }))
    .map((stock) => ({ id: keyOf(stock), label: keyOf(stock) }));
  const problem = computation.problems.find((one) => one.field?.startsWith(props.path));
  return (
    <SelectField
      label={props.label}
      value={keyOf(set)}
      choices={choices}
      path={props.path}
      hint={priced ? sizeOf(set) : 'Not on the price list yet'}
      problem={problem === undefined ? null : 'Choose a size that is known here.'}
      onChange={(key) => {
        const stock = stocks.get(key);
        if (stock !== undefined) editor.change(props.label, (now) => withValueAt(now, props.path, stock));
      }}
    />
  );
}

function keyOf({ section, grade }: Stock): string {
  return `${section} ${grade}`.trim();
}

function sizeOf({ section }: Stock): string | undefined {
  const dressed = dressedSection(section);
  return dressed && `Actual ${formatInches(dressed.thicknessIn)} x ${formatInches(dressed.depthIn)}`;
}
