import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { layoutGroups } from '../../screens/settings/layout-setting-fields.ts';
import {
  labourGroups,
  moneyGroups,
  nailGroups,
  sawGroups,
  type SettingGroup,
  shopGroups,
} from '../../screens/settings/setting-fields.ts';

/** The settings by the part of their screen that they stand in. */
const settingParts: Readonly<Record<string, readonly SettingGroup[]>> = {
  shop: shopGroups,
  money: moneyGroups,
  labour: labourGroups,
  saw: sawGroups,
  layout: layoutGroups,
  nails: nailGroups,
};

/** The address of the shop's screen on which an entry stands; undefined for one of the job. */
export function screenOfField(path: string, prices: readonly PriceItem[]): string | undefined {
  const [root, ...keys] = path.split('.');
  if (root === 'settings') return `/settings/${settingPart(keys.join('.'))}`;
  if (root !== 'priceList') return undefined;
  const item = prices[Number(keys[0])];
  return item === undefined ? '/prices' : `/prices/${encodeURIComponent(item.id)}`;
}

/** What a setting is called on its screen; the name of its part where it is none of one entry. */
export function settingName(setting: string): string {
  const field = Object.values(settingParts)
    .flatMap((groups) => groups.flatMap((group) => group.fields))
    .find((one) => one.path === setting);
  return field?.label ?? settingPart(setting).replace(/^./, (first) => first.toUpperCase());
}

function settingPart(setting: string): string {
  const found = Object.entries(settingParts).find(([, groups]) =>
    groups.some(({ fields }) =>
      fields.some((field) => field.path === setting || field.path.startsWith(`${setting}.`)),
    ),
  );
  return found?.[0] ?? 'shop';
}
