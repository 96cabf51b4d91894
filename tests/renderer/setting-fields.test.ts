import { describe, expect, test } from 'vitest';
import { shopSettingsSchema } from '../../core/pricing/shop-settings.ts';
import { findNail } from '../../core/takeoff/nails.ts';
import { atPath, withPath } from '../../renderer/screens/settings/at-path.ts';
import { everySettingField, type SettingField } from '../../renderer/screens/settings/setting-fields.ts';

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
      // The logo is chosen as a file, and its hash stands for it.
      .filter((path) => path !== 'version' && path !== 'letterhead.logoSha256')
      .sort(),
  );
});

describe.each(everySettingField)('the entry $path', (field) => {
  test('holds its default', () => {
    expect(atPath(defaults, field.path)).toBeDefined();
  });

  test('is offered exactly what the document takes', () => {
    const { taken, refused } = edgesOf(field);
    expect(taken.filter((value) => !accepts(field.path, value))).toEqual([]);
    expect(refused.filter((value) => accepts(field.path, value))).toEqual([]);
  });
});

test('every nail that the settings begin with is known to the takeoff', () => {
  const paths = everySettingField.filter((field) => field.kind === 'nail').map((field) => field.path);
  expect(paths.map((path) => findNail(String(atPath(defaults, path)))?.name)).toEqual(
    paths.map((path) => atPath(defaults, path)),
  );
});

/** Values at the edge of what the screen offers: the last that are taken, and the first that are not. */
function edgesOf(field: SettingField): { taken: readonly unknown[]; refused: readonly unknown[] } {
  switch (field.kind) {
    case 'text':
      return { taken: ['', 'x'.repeat(field.maxLength)], refused: ['x'.repeat(field.maxLength + 1)] };
    case 'choice':
      return { taken: field.choices.map((choice) => choice.id), refused: ['none of these'] };
    case 'nail':
      return { taken: ['16d common'], refused: [''] };
    default: {
      const { least, most } = field.range;
      const asText = field.kind === 'decimal' || field.kind === 'money';
      const write = (value: number): unknown => (asText ? String(value) : value);
      return { taken: [write(least), write(most)], refused: [write(least - 1), write(most + 1)] };
    }
  }
}
