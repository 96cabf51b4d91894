import { nails } from '../../../core/takeoff/nails.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import type { ShopSettings } from '../../../core/pricing/shop-settings.ts';
import type { Entry } from '../../fields/entry.ts';
import { LengthField } from '../../fields/length-field.tsx';
import { MoneyField } from '../../fields/money-field.tsx';
import { PitchField } from '../../fields/pitch-field.tsx';
import { DecimalField, NumberField } from '../../fields/number-field.tsx';
import type { KeptDrafts } from '../../host/kept-drafts.ts';
import { SelectField } from '../../kit/select-field.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { atPath, withPath } from './at-path.ts';
import { profitMethodPath, profitPercentPath, refusalOf, withProfitMethod } from './profit.ts';
import type { SettingField } from './setting-fields.ts';
import { changeSettings } from './settings-store.ts';

const nailChoices = nails.map((nail) => ({ id: nail.name, label: nail.name }));

/** One entry of the settings, saved as it is typed; text that does not read is kept and not saved. */
export function SettingEntry(props: {
  readonly field: SettingField;
  readonly settings: ShopSettings;
  readonly drafts: KeptDrafts;
}) {
  return (
    <div className={props.field.width}>
      <SettingControl {...props} />
    </div>
  );
}

function SettingControl({
  field,
  settings,
  drafts,
}: {
  readonly field: SettingField;
  readonly settings: ShopSettings;
  readonly drafts: KeptDrafts;
}) {
  const value = atPath(settings, field.path);
  const change = (next: unknown): void => changeSettings((all) => withPath(all, field.path, next));
  const common = { label: field.label, hint: field.hint, path: field.path };
  const draft = drafts.get(field.path);
  const refused = refusalOf(field.path, settings, draft);
  const take = (entry: Entry<unknown>): void => {
    const refusal = entry.problem ?? refusalOf(field.path, settings, entry.value);
    drafts.set(field.path, refusal === null ? null : entry.text);
    if (refusal !== null || entry.value === null) return;
    change(entry.value);
    if (field.path === profitPercentPath) drafts.set(profitMethodPath, null);
  };
  const choose = (next: string): void => {
    if (field.path !== profitMethodPath) return change(next);
    if (refusalOf(field.path, settings, next) !== null) return drafts.set(field.path, next);
    drafts.set(field.path, null);
    const typedPercent = drafts.get(profitPercentPath);
    if (withProfitMethod(settings, next, typedPercent).tookTyped) drafts.set(profitPercentPath, null);
    changeSettings((all) => withProfitMethod(all, next, typedPercent).settings);
  };
  const entry = { ...common, draft, problem: refused, onEntry: take };
  switch (field.kind) {
    case 'text':
      return (
        <TextField
          {...common}
          value={String(value)}
          onChange={change}
          maxLength={field.maxLength}
          multiline={field.multiline ?? false}
          rows={2}
        />
      );
    case 'decimal':
      return <DecimalField {...entry} value={String(value)} range={field.range} unit={field.unit} />;
    case 'money':
      return <MoneyField {...entry} value={String(value)} range={field.range} after={field.unit} />;
    case 'number':
      return (
        <NumberField
          {...entry}
          value={Number(value)}
          range={field.range}
          whole={field.whole}
          {...(field.unit === '' ? {} : { unit: field.unit })}
        />
      );
    case 'length':
      return <LengthField {...entry} value={Number(value)} range={field.range} />;
    case 'pitch':
      return <PitchField {...entry} value={Number(value)} mayBeLevel />;
    case 'choice':
      return (
        <SelectField
          {...common}
          value={String(value)}
          choices={field.choices}
          onChange={choose}
          problem={refused === null ? null : problemSentence(refused)}
        />
      );
    case 'nail':
      return <SelectField {...common} value={String(value)} choices={nailChoices} onChange={change} />;
    default:
      return field satisfies never;
  }
}
