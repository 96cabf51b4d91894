import { fieldNames } from '../../../../core/pricing/import/field-names.ts';
import { guessDecimalSign } from '../../../../core/pricing/import/guess-layout.ts';
import {
  constantFields,
  importFields,
  type ConstantField,
  type ImportField,
  type ImportLayout,
} from '../../../../core/pricing/import/layout.ts';
import { guessDayOrder } from '../../../../core/pricing/import/written-day.ts';
import { ScrollBox } from '../../../kit/scroll-box.tsx';
import { Panel } from '../../../kit/panel.tsx';
import { SelectField, type Choice } from '../../../kit/select-field.tsx';
import { TextField } from '../../../kit/text-field.tsx';

const none = { id: 'none', label: 'left out' } as const;
const meanings: readonly Choice<ImportField | 'none'>[] = [
  none,
  ...importFields.map((field) => ({ id: field, label: fieldNames[field] })),
];

/** Rows of the file that stand under each title, to tell what a column is. */
const samplesShown = 3;

const hints: Readonly<Partial<Record<ConstantField, string>>> = {
  kind: 'lumber, planks, sheet goods, nails, edge metal, other',
  unit: 'each, LF, BF, MBF, lb, box, sheet, SF, roll',
  day: 'Blank takes today.',
  source: 'list, quote or receipt',
};

/** What the first cells of a column tell of how prices and days are written. */
function styleOf(
  field: ImportField | null,
  cells: readonly string[],
  layout: ImportLayout,
): Partial<ImportLayout> {
  if (field === 'price') return { decimalSign: guessDecimalSign(cells) };
  return field === 'day' ? { dayOrder: guessDayOrder(cells) ?? layout.dayOrder } : {};
}

/** What each column of the file is, and what stands for the columns that it lacks. */
export function ImportColumns(props: {
  readonly layout: ImportLayout;
  readonly head: readonly (readonly string[])[];
  readonly onChange: (layout: ImportLayout) => void;
}) {
  const { layout, onChange } = props;
  const under = props.head.slice(layout.headerRow, layout.headerRow + samplesShown);
  const mean = (index: number, field: ImportField | null): void =>
    onChange({
      ...layout,
      ...styleOf(
        field,
        props.head.slice(layout.headerRow).map((row) => row[index] ?? ''),
        layout,
      ),
      // A meaning is given once: the column that had it before is left out.
      columns: layout.columns.map((column, at) =>
        at === index ? { ...column, field } : column.field === field ? { ...column, field: null } : column,
      ),
    });
  const mapped = new Set(layout.columns.map(({ field }) => field));
  return (
    <>
      <Panel title="Columns of the file" look="flush">
        <ScrollBox label="Columns of the file" className="import-columns">
          <table className="table">
            <caption className="visually-hidden">Columns of the file</caption>
            <thead>
              <tr>
                <th scope="col">Column</th>
                <th scope="col">First rows</th>
                <th scope="col">Is read as</th>
              </tr>
            </thead>
            <tbody>
              {layout.columns.map((column, index) => (
                <tr key={`${index} ${column.title}`} data-state={column.field === null ? 'faded' : undefined}>
                  <th scope="row">{column.title}</th>
                  <td>
                    {under
                      .map((row) => row[index] ?? '')
                      .filter((cell) => cell !== '')
                      .join(' · ')}
                  </td>
                  <td>
                    <SelectField
                      label={`${column.title} is read as`}
                      labelHidden
                      look="cell"
                      value={column.field ?? 'none'}
                      choices={meanings}
                      onChange={(field) => mean(index, field === 'none' ? null : field)}
                    />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollBox>
      </Panel>
      <Panel title="The same for every row">
        <div className="fields">
          {constantFields
            .filter((field) => field !== 'validUntil' && field !== 'taxable')
            .map((field) => (
              <TextField
                key={field}
                label={
                  mapped.has(field) ? `${fieldNames[field]}, where its cell is blank` : fieldNames[field]
                }
                value={layout.constants[field] ?? ''}
                onChange={(text) =>
                  onChange({ ...layout, constants: { ...layout.constants, [field]: text } })
                }
                maxLength={120}
                hint={hints[field]}
              />
            ))}
        </div>
      </Panel>
    </>
  );
}
