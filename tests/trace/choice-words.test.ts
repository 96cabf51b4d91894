import { expect, test } from 'vitest';
import { eaveDesignSchema } from '../../core/eave/design-document.ts';
import { shopSettingsSchema } from '../../core/pricing/shop-settings.ts';
import { eaveSurveySchema } from '../../core/survey/survey-document.ts';
import { entryValue } from '../../core/trace/entry-value.ts';

const design = eaveDesignSchema.shape;
const survey = eaveSurveySchema.shape;
const money = shopSettingsSchema.shape.money.def.innerType.shape;

test.each([
  ['fasciaLine', design.fasciaLine],
  ['overhangMeasured', design.overhangMeasured],
  ['overhangTo', design.overhangTo],
  ['readingMode', survey.readingMode],
  ['readingTo', survey.readingTo],
  ['taxRule', money.taxRule],
  ['profitMethod', money.profitMethod],
])('every choice of %s is walked back to in plain words', (name, schema) => {
  for (const choice of schema.def.innerType.options) {
    expect(entryValue(name, choice)).not.toMatch(/[a-z]-[a-z]/);
    expect(entryValue(name, choice)).not.toBe('');
  }
});

test('a setting is said as on its screen', () => {
  expect(entryValue('fasciaLine', 'as-found')).toBe('as found');
  expect(entryValue('taxRule', 'contractor-pays')).toBe('contractor pays, on materials');
  expect(entryValue('roundToUsd', '0')).toBe('not rounded');
  expect(entryValue('itemId', 'osb-716')).toBe('osb-716');
});
