import { dressedSections } from '../../../core/lumber/dressed-sizes.ts';
import { nails } from '../../../core/takeoff/nails.ts';
import type { Entry } from '../../fields/entry.ts';
import { LengthField } from '../../fields/length-field.tsx';
import { NumberField } from '../../fields/number-field.tsx';
import type { KeptDrafts } from '../../host/kept-drafts.ts';
import { SelectField, type Choice } from '../../kit/select-field.tsx';
import { TextField } from '../../kit/text-field.tsx';
import type { PriceItemEntries } from './price-item-edits.ts';

type SizesProps = {
  readonly entries: PriceItemEntries;
  readonly drafts: KeptDrafts;
  readonly change: (next: Partial<PriceItemEntries>) => void;
};

type SizeName = 'lengthFt' | 'packageLb' | 'packageCount' | 'widthIn' | 'lengthIn' | 'thicknessIn';

/** The sizes that an item of its kind is computed from. */
export function ItemSizes(props: SizesProps) {
  const { entries, change } = props;
  switch (entries.category) {
    case 'lumber':
    case 'plank':
      return (
        <>
          <SelectField
            label="Section"
            value={entries.section === '' ? null : entries.section}
            choices={withOwn(
              dressedSections.map((one) => one.section),
              entries.section,
            )}
            onChange={(section) => change({ section })}
            none="Choose the section"
          />
          <TextField
            label="Grade"
            value={entries.grade}
            onChange={(grade) => change({ grade })}
            maxLength={60}
            hint="As the overhang design names it."
          />
          <TextField
            label="Species"
            value={entries.species}
            onChange={(species) => change({ species })}
            maxLength={60}
          />
          <NumberField
            {...size(props, 'lengthFt', 'Stock length')}
            range={{ least: 1, most: 60 }}
            unit="ft"
          />
        </>
      );
    case 'nails':
      return (
        <>
          <SelectField
            label="Nail"
            value={entries.nail === '' ? null : entries.nail}
            choices={withOwn(
              nails.map((nail) => nail.name),
              entries.nail,
            )}
            onChange={(nail) => change({ nail })}
            none="Choose the nail"
          />
          <NumberField
            {...size(props, 'packageLb', 'A package holds')}
            range={{ least: 0.1, most: 1000 }}
            unit="lb"
          />
          <NumberField
            {...size(props, 'packageCount', 'or, by count')}
            range={{ least: 1, most: 1_000_000 }}
            whole
            unit="nails"
          />
        </>
      );
    case 'sheet':
      return (
        <>
          <LengthField {...size(props, 'widthIn', 'Width')} range={{ least: 0.5, most: 240 }} />
          <LengthField {...size(props, 'lengthIn', 'Length')} range={{ least: 1, most: 12_000 }} />
          <LengthField {...size(props, 'thicknessIn', 'Thickness')} range={{ least: 0.01, most: 6 }} />
        </>
      );
    case 'edge':
    case 'other':
      return (
        <>
          <LengthField
            {...size(props, 'lengthIn', 'Length of a piece or roll')}
            range={{ least: 1, most: 12_000 }}
          />
          <LengthField {...size(props, 'widthIn', 'Width')} range={{ least: 0.5, most: 240 }} />
        </>
      );
    default:
      return entries.category satisfies never;
  }
}

function size({ entries, drafts, change }: SizesProps, name: SizeName, label: string) {
  return {
    label,
    value: entries[name],
    blankMeans: 'not given',
    draft: drafts.get(name),
    onEntry(entry: Entry<number>): void {
      drafts.set(name, entry.problem === null ? null : entry.text);
      if (entry.problem === null) change({ [name]: entry.value });
    },
  };
}

function withOwn(names: readonly string[], own: string): readonly Choice<string>[] {
  const all = own === '' || names.includes(own) ? names : [...names, own];
  return all.map((name) => ({ id: name, label: name }));
}
