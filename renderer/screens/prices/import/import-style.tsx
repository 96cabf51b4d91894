import {
  encodings,
  separators,
  type ImportLayout,
  type Separator,
  type TextEncoding,
} from '../../../../core/pricing/import/layout.ts';
import { NumberField } from '../../../fields/number-field.tsx';
import { Panel } from '../../../kit/panel.tsx';
import { SelectField } from '../../../kit/select-field.tsx';
import { Switch } from '../../../kit/switch.tsx';

const encodingNames: Readonly<Record<TextEncoding, string>> = {
  'utf-8': 'UTF-8',
  'windows-1252': 'Western (Latin-1, Windows)',
  'utf-16le': 'UTF-16, little end first',
  'utf-16be': 'UTF-16, big end first',
};
const separatorNames: Readonly<Record<Separator, string>> = {
  ',': 'comma',
  ';': 'semicolon',
  '\t': 'tab',
  '|': 'upright stroke',
};
const signChoices = [
  { id: 'point', label: 'point: 1,234.50' },
  { id: 'comma', label: 'comma: 1.234,50' },
] as const;
const dayChoices = [
  { id: 'month-first', label: 'month first: 4/30/2026' },
  { id: 'day-first', label: 'day first: 30/4/2026' },
  { id: 'year-first', label: 'year first: 2026-04-30' },
] as const;
const lengthChoices = [
  { id: 'ft', label: 'feet' },
  { id: 'in', label: 'inches' },
] as const;

/** How the file is written: its letters, signs, days and lengths. Nothing is guessed while rows are read. */
export function ImportStyle(props: {
  readonly layout: ImportLayout;
  readonly encoding: TextEncoding;
  readonly separator: Separator;
  readonly onChange: (layout: ImportLayout) => void;
  /** Reads the file anew. */
  readonly onReopen: (how: {
    readonly encoding: TextEncoding;
    readonly separator: Separator;
    readonly headerRow: number;
  }) => void;
}) {
  const { layout, encoding, separator, onChange, onReopen } = props;
  const how = { encoding, separator, headerRow: layout.headerRow };
  return (
    <Panel title="How it is written">
      <div className="fields">
        <SelectField
          label="Letters"
          value={encoding}
          choices={encodings.map((id) => ({ id, label: encodingNames[id] }))}
          onChange={(next) => onReopen({ ...how, encoding: next })}
        />
        <SelectField
          label="Between cells"
          value={separator}
          choices={separators.map((id) => ({ id, label: separatorNames[id] }))}
          onChange={(next) => onReopen({ ...how, separator: next })}
        />
        <NumberField
          label="Row of the titles"
          hint="0 where the file has none."
          value={layout.headerRow}
          range={{ least: 0, most: 50 }}
          whole
          onEntry={(entry) => {
            if (entry.value !== null && entry.value !== layout.headerRow)
              onReopen({ ...how, headerRow: entry.value });
          }}
        />
        <SelectField
          label="Decimal sign"
          value={layout.decimalSign}
          choices={signChoices}
          onChange={(decimalSign) => onChange({ ...layout, decimalSign })}
        />
        <SelectField
          label="Days"
          value={layout.dayOrder}
          choices={dayChoices}
          onChange={(dayOrder) => onChange({ ...layout, dayOrder })}
        />
        <SelectField
          label="Stock lengths without a unit are"
          value={layout.lengthUnit}
          choices={lengthChoices}
          onChange={(lengthUnit) => onChange({ ...layout, lengthUnit })}
        />
        <div className="full switches">
          <Switch
            isSelected={layout.skipsUnpriced}
            onChange={(skipsUnpriced) => onChange({ ...layout, skipsUnpriced })}
          >
            Leave out rows without a price
          </Switch>
          <Switch
            isSelected={layout.takesWording}
            onChange={(takesWording) => onChange({ ...layout, takesWording })}
          >
            Take the file’s descriptions for items on the list
          </Switch>
        </div>
      </div>
    </Panel>
  );
}
