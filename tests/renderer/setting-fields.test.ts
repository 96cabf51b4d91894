import { describe, expect, test } from 'vitest';
import { shopSettingsSchema } from '../../core/pricing/shop-settings.ts';
import { findNail } from '../../core/takeoff/nails.ts';
import { atPath, withPath } from '../../renderer/screens/settings/at-path.ts';
import { everySettingField } from '../../renderer/screens/settings/setting-fields.ts';

const defaults = shopSettingsSchema.parse({});
const accepts = (path: string, value: unknown): boolean =>
  shopSettingsSchema.safeParse(withPath(defaults, path, value)).success;

/** Every entry of the settings that is no list and no version. */
function leaves(part: unknown, path: readonly string[] = []): readonly string[] {
  if (typeof part !== 'object' || part === null) return [path.join('.')];
  if (Array.isArray(part)) return [];
  return Object.entries(part).flatMap(([name, value]) => leaves(value, [...path, name]));
}

test('every entry of the settings can be typed on the settings screen', () => {
  expect(everySettingField.map((field) => field.path).sort()).toEqual(
    leaves(defaults)
      .filter((path) => path !== 'version')
      .sort(),
  );
});

describe.each(everySettingField)('the entry $path', (field) => {
  test('holds its default', () => {
    expect(atPath(defaults, field.path)).toBeDefined();
  });

  test('is offered exactly what the document takes', () => {
    switch (field.kind) {
      case 'text':
        expect(accepts(field.path, 'x'.repeat(field.maxLength))).toBe(true);
        expect(accepts(field.path, 'x'.repeat(field.maxLength + 1))).toBe(false);
        break;
      case 'choice':
        expect(field.choices.every((choice) => accepts(field.path, choice.id))).toBe(true);
        expect(accepts(field.path, 'none of these')).toBe(false);
        break;
      case 'nail':
        expect(findNail(String(atPath(defaults, field.path)))).toBeDefined();
        break;
      default: {
        const text = field.kind === 'decimal' || field.kind === 'money';
        const value = (number: number): unknown => (text ? String(number) : number);
        expect(accepts(field.path, value(field.range.least))).toBe(true);
        expect(accepts(field.path, value(field.range.most))).toBe(true);
        expect(accepts(field.path, value(field.range.least - 1))).toBe(false);
        expect(accepts(field.path, value(field.range.most + 1))).toBe(false);
      }
    }
  });
});
