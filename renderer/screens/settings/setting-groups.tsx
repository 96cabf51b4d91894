import type { ShopSettings } from '../../../core/pricing/shop-settings.ts';
import { useKeptDrafts } from '../../host/kept-drafts.ts';
import { Panel } from '../../kit/panel.tsx';
import { SettingEntry } from './setting-entry.tsx';
import type { SettingGroup } from './setting-fields.ts';

/** Groups of entries, each in its panel. */
export function SettingGroups(props: {
  readonly groups: readonly SettingGroup[];
  readonly settings: ShopSettings;
}) {
  const drafts = useKeptDrafts('settings');
  return props.groups.map((group) => (
    <Panel key={group.title} title={group.title}>
      {group.note === undefined ? null : <p className="panel-note">{group.note}</p>}
      <div className="fields">
        {group.fields.map((field) => (
          <SettingEntry key={field.path} field={field} settings={props.settings} drafts={drafts} />
        ))}
      </div>
    </Panel>
  ));
}
