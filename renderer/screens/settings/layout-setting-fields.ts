import type { SettingField, SettingGroup } from './setting-fields.ts';

const weight = (method: string, label: string): SettingField => ({
  kind: 'number',
  path: `layout.weights.${method}`,
  label,
  whole: false,
  unit: '',
  range: { least: 0, most: 1000 },
});

const gap = (path: string, label: string): SettingField => ({
  kind: 'length',
  path: `layout.${path}`,
  label,
  range: { least: 4, most: 96 },
});

/** Layout: how the program weighs the ways to set a tail, and how far tails may stand apart. */
export const layoutGroups: readonly SettingGroup[] = [
  {
    title: 'What a way to set a tail costs',
    note: 'Beside its rafter on the preferred side a tail costs nothing. Of the layouts that hold the largest gap, serve as many rafters and carry as many panel joints, the program takes the one of the least sum. The values that come with it are common practice without a source.',
    fields: [
      weight('otherSide', 'On the other side'),
      weight('filler', 'On a filler'),
      weight('outerFace', 'On the outer face'),
      weight('blockHung', 'Hung on header blocks'),
      weight('fullLength', 'Full length'),
      weight('endReplacement', 'In an end rafter’s place'),
    ],
  },
  {
    title: 'Largest gap between tails',
    note: 'Centre to centre, where a design states none of its own: the least of those that hold. Panels go by their span rating. The values that come with it are common practice without a source.',
    fields: [
      gap('plankGapIn', 'Under planks'),
      gap('thinFasciaGapIn', 'Behind a 1x fascia alone'),
      gap('thickFasciaGapIn', 'Behind a 2x fascia or sub-fascia'),
      gap('soffitGapIn', 'Over a soffit'),
    ],
  },
  {
    title: 'Joints of the fascia',
    note: 'Joints and lengths of fascia are chosen together with the boards. A joint more is taken where it saves more than this.',
    fields: [
      {
        kind: 'money',
        path: 'layout.fasciaJointUsd',
        label: 'A joint counts for',
        unit: 'a joint',
        range: { least: 0, most: 1000 },
      },
    ],
  },
];
