import type { Range } from '../../fields/entry-kinds.ts';
import { layoutGroups } from './layout-setting-fields.ts';

/** One entry of the settings: where it stands in the document, what it is called, and how it is typed. */
export type SettingField = {
  /** Dotted path in the settings document. */
  readonly path: string;
  readonly label: string;
  readonly hint?: string;
  readonly width?: 'wide' | 'full';
} & (
  | { readonly kind: 'text'; readonly maxLength: number; readonly multiline?: boolean }
  | { readonly kind: 'decimal'; readonly range: Range; readonly unit: string }
  | { readonly kind: 'money'; readonly range: Range; readonly unit: string }
  | { readonly kind: 'number'; readonly range: Range; readonly whole: boolean; readonly unit: string }
  | { readonly kind: 'length'; readonly range: Range }
  | { readonly kind: 'pitch'; readonly range: Range }
  | { readonly kind: 'choice'; readonly choices: readonly { readonly id: string; readonly label: string }[] }
  | { readonly kind: 'nail' }
);

/** A group of entries under one heading. */
export type SettingGroup = {
  readonly title: string;
  readonly note?: string;
  readonly fields: readonly SettingField[];
};

const text = (path: string, label: string, maxLength: number) =>
  ({ kind: 'text', path, label, maxLength }) as const;
const percent = (path: string, label: string, most: number, hint?: string) =>
  ({
    kind: 'decimal',
    path,
    label,
    unit: '%',
    range: { least: 0, most },
    ...(hint === undefined ? {} : { hint }),
  }) as const;
const count = (path: string, label: string, least: number, most: number, unit: string) =>
  ({ kind: 'number', path, label, whole: true, unit, range: { least, most } }) as const;
const factor = (path: string, label: string, least: number, hint: string) =>
  ({ kind: 'number', path, label, whole: false, unit: 'times', range: { least, most: 5 }, hint }) as const;

/** Shop: what stands at the head of every sheet. */
export const shopGroups: readonly SettingGroup[] = [
  {
    title: 'Shop',
    note: 'These stand at the head of every sheet.',
    fields: [
      { ...text('shopName', 'Name of the shop', 120), width: 'wide' },
      text('licenceNumber', 'Licence number', 60),
      text('letterhead.insurance', 'Insurance', 200),
      text('phone', 'Telephone', 60),
      { ...text('email', 'E-mail', 120), width: 'wide' },
      { ...text('address', 'Address', 300), width: 'full', multiline: true },
    ],
  },
  {
    title: 'Paper and numbers',
    fields: [
      {
        kind: 'choice',
        path: 'paperSize',
        label: 'Paper',
        choices: [
          { id: 'letter', label: 'Letter, 8-1/2 by 11 in.' },
          { id: 'a4', label: 'A4, 210 by 297 mm' },
        ],
      },
      count('nextQuoteNumber', 'Next quote number', 1, Number.MAX_SAFE_INTEGER, ''),
      {
        ...count('nextInvoiceNumber', 'Next invoice number', 1, Number.MAX_SAFE_INTEGER, ''),
        hint: 'Holds for the first invoice; from then on they follow without a gap.',
      },
    ],
  },
];

/** Money: how cost becomes price. */
export const moneyGroups: readonly SettingGroup[] = [
  {
    title: 'From cost to price',
    note: 'Contingency is taken on the direct cost; overhead on both; profit on all three.',
    fields: [
      percent('money.contingencyPercent', 'Contingency', 100),
      percent('money.overheadPercent', 'Overhead', 500),
      {
        kind: 'choice',
        path: 'money.profitMethod',
        label: 'Profit is reckoned as',
        choices: [
          { id: 'markup', label: 'Markup on cost' },
          { id: 'margin', label: 'Margin of the price' },
        ],
        hint: 'A markup of 25 % and a margin of 20 % give the same price.',
      },
      percent('money.profitPercent', 'Profit', 1000),
      {
        kind: 'choice',
        path: 'money.roundToUsd',
        label: 'Price rounded up to',
        choices: [
          { id: '0', label: 'Not rounded' },
          { id: '1', label: 'Whole dollars' },
          { id: '5', label: 'Whole $5' },
          { id: '10', label: 'Whole $10' },
          { id: '50', label: 'Whole $50' },
        ],
        hint: 'The difference is a line of its own.',
      },
    ],
  },
  {
    title: 'Sales tax',
    note: 'Which rule holds is a matter of your state: verify it with its revenue department.',
    fields: [
      {
        kind: 'choice',
        path: 'money.taxRule',
        label: 'Who pays it',
        choices: [
          { id: 'contractor-pays', label: 'The shop, on materials' },
          { id: 'client-pays', label: 'The client, on taxable lines' },
          { id: 'none', label: 'No sales tax' },
        ],
      },
      percent('money.taxPercent', 'Rate', 50),
    ],
  },
  {
    title: 'How long prices hold',
    fields: [
      count('money.quoteValidDays', 'A quote holds for', 1, 365, 'days'),
      count('money.priceStaleDays', 'A price is flagged after', 1, 3650, 'days'),
    ],
  },
];

/** Jobs: how work is billed. */
export const jobGroups: readonly SettingGroup[] = [
  {
    title: 'Bills',
    note: 'What a contract may hold back, and deposits, are a matter of your state: verify them there.',
    fields: [
      count('jobCost.dueDays', 'A bill is due after', 0, 365, 'days'),
      percent('jobCost.retainagePercent', 'Held back until the end', 50, 'Usually nothing on small houses.'),
    ],
  },
];

/** Labour: what an hour costs and what makes it longer; the rates by task stand in their own table. */
export const labourGroups: readonly SettingGroup[] = [
  {
    title: 'What an hour costs',
    fields: [
      {
        kind: 'money',
        path: 'labour.wageUsdPerHour',
        label: 'Wage',
        unit: 'an hour',
        range: { least: 0, most: 1000 },
      },
      percent('labour.burdenPercent', 'Burden on wage', 300, 'Payroll taxes, insurance, paid time off.'),
      count('labour.crewSize', 'Crew', 1, 20, 'people'),
      {
        kind: 'number',
        path: 'labour.hoursPerDay',
        label: 'A day has',
        whole: false,
        unit: 'hours',
        range: { least: 1, most: 24 },
      },
    ],
  },
  {
    title: 'What makes it longer or shorter',
    note: 'Hours are multiplied by these. The values that come with the program are common practice without a source.',
    fields: [
      factor('labour.perStoreyAboveOne', 'Each storey above the first', 1, 'For work at the roof edge.'),
      {
        kind: 'pitch',
        path: 'labour.steepAbovePitch',
        label: 'Steep begins above',
        range: { least: 0, most: 24 },
      },
      factor('labour.steepFactor', 'Steep roof', 1, 'For work at the roof edge.'),
      factor('labour.easyAccessFactor', 'Easy access', 0.1, 'Below 1 shortens the work.'),
      factor('labour.hardAccessFactor', 'Hard access', 0.1, 'Above 1 lengthens it.'),
    ],
  },
];

/** Saw: what a cut takes, and allowances on quantities. */
export const sawGroups: readonly SettingGroup[] = [
  {
    title: 'Saw',
    fields: [
      { kind: 'length', path: 'cutting.kerfIn', label: 'Kerf of the saw', range: { least: 0, most: 1 } },
      {
        kind: 'length',
        path: 'cutting.endTrimIn',
        label: 'Cut off each end of a board',
        range: { least: 0, most: 24 },
        hint: 'To square it and lose the check.',
      },
      {
        kind: 'length',
        path: 'cutting.templateToleranceIn',
        label: 'Tails share a template within',
        range: { least: 0, most: 0.5 },
        hint: 'None of its lines is off by more on any of them.',
      },
    ],
  },
  {
    title: 'Cut plan and saw list',
    note: 'The values that come with the program are common practice without a source.',
    fields: [
      {
        kind: 'length',
        path: 'cutting.keepOffcutIn',
        label: 'Offcuts kept from',
        range: { least: 0, most: 240 },
        hint: 'The saw list names those as long as this.',
      },
      {
        kind: 'number',
        path: 'cutting.thumbWastePercent',
        label: 'Waste by rule of thumb',
        whole: false,
        unit: '%',
        range: { least: 0, most: 100 },
        hint: 'To compare the plan with; the plan itself knows its waste.',
      },
    ],
  },
  {
    title: 'Planks',
    fields: [
      {
        kind: 'number',
        path: 'plankWastePercent',
        label: 'Added for waste',
        whole: false,
        unit: '%',
        range: { least: 0, most: 100 },
      },
      {
        kind: 'length',
        path: 'plankCoverIn',
        label: 'A plank covers',
        range: { least: 1, most: 24 },
        hint: 'Face width, square to its length.',
      },
    ],
  },
];

/** Nails: which, and how many. */
export const nailGroups: readonly SettingGroup[] = [
  {
    title: 'Extender to rafter',
    note: 'Rows are staggered by half the spacing. The values that come with the program are common practice without a source; the code and your engineer decide.',
    fields: [
      { kind: 'nail', path: 'fastening.sister.nail', label: 'Nail' },
      count('fastening.sister.rows', 'Rows', 1, 4, ''),
      {
        kind: 'length',
        path: 'fastening.sister.spacingIn',
        label: 'Spacing in a row',
        range: { least: 1, most: 48 },
      },
      {
        kind: 'length',
        path: 'fastening.sister.endDistanceIn',
        label: 'First nail from the end',
        range: { least: 0.5, most: 24 },
      },
      { kind: 'nail', path: 'fastening.throughFillerNail', label: 'Nail through a filler' },
    ],
  },
  {
    title: 'Plate and blocks',
    fields: [
      { kind: 'nail', path: 'fastening.plateNail', label: 'Nail into the plate' },
      count('fastening.plateToenailsOneFace', 'Toenails, one face in reach', 0, 20, 'a piece'),
      count('fastening.plateToenailsBothFaces', 'Toenails, both faces in reach', 0, 20, 'a piece'),
      { kind: 'nail', path: 'fastening.blockNail', label: 'Nail for blocks' },
      count('fastening.blockNailsPerEnd', 'Nails in a block', 0, 20, 'an end'),
    ],
  },
  {
    title: 'Header blocks, fillers and whole rafters',
    note: 'Common practice without a source; at the ridge the code has a row for rafters.',
    fields: [
      { kind: 'nail', path: 'fastening.headerNail', label: 'Nail for header blocks' },
      count('fastening.headerNailsShallow', 'Header of 2x4', 1, 20, 'an end, and into the tail'),
      count('fastening.headerNailsDeep', 'Deeper header', 1, 20, 'an end, and into the tail'),
      { kind: 'nail', path: 'fastening.fillerNail', label: 'Nail for fillers' },
      count('fastening.fillerNailsPerLayer', 'Nails in a filler', 0, 20, 'a layer'),
      { kind: 'nail', path: 'fastening.ridgeNail', label: 'Nail at the ridge' },
      count('fastening.ridgeNailsPerRafter', 'Toenails of a whole rafter at the ridge', 0, 20, 'a rafter'),
    ],
  },
  {
    title: 'Fascia and sub-fascia',
    note: 'Common practice without a source.',
    fields: [
      { kind: 'nail', path: 'fastening.fasciaNail', label: 'Nail for fascia' },
      count('fastening.fasciaNailsShallow', 'Fascia up to 5-1/2" deep', 1, 20, 'a tail'),
      count('fastening.fasciaNailsDeep', 'Deeper fascia', 1, 20, 'a tail'),
      {
        kind: 'length',
        path: 'fastening.fasciaOnSubFasciaSpacingIn',
        label: 'Fascia on a sub-fascia, groups apart',
        range: { least: 1, most: 48 },
      },
      { kind: 'nail', path: 'fastening.subFasciaNail', label: 'Nail for sub-fascia' },
      count('fastening.subFasciaNailsShallow', 'Sub-fascia up to 5-1/2" deep', 1, 20, 'a tail'),
      count('fastening.subFasciaNailsDeep', 'Deeper sub-fascia', 1, 20, 'a tail'),
    ],
  },
  {
    title: 'Rakes',
    note: 'Common practice without a source.',
    fields: [
      { kind: 'nail', path: 'fastening.lookoutNail', label: 'Nail for lookouts, rungs and barge rafters' },
      count('fastening.lookoutNailsPerJoint', 'Nails in a joint', 1, 20, 'a joint'),
    ],
  },
  {
    title: 'Soffit',
    note: 'Common practice without a source.',
    fields: [
      { kind: 'nail', path: 'fastening.soffitNail', label: 'Nail for panels' },
      {
        kind: 'length',
        path: 'fastening.soffitSpacingIn',
        label: 'Spacing in panels',
        range: { least: 1, most: 24 },
      },
      { kind: 'nail', path: 'fastening.soffitFramingNail', label: 'Nail for ledger and nailers' },
      {
        kind: 'length',
        path: 'fastening.ledgerSpacingIn',
        label: 'Studs behind the ledger, apart',
        range: { least: 4, most: 48 },
      },
      count('fastening.ledgerNailsPerStud', 'Nails in the ledger', 1, 10, 'a stud'),
      count('fastening.nailerNailsPerEnd', 'Nails in a nailer', 1, 10, 'an end'),
    ],
  },
  {
    title: 'Sheathing, planks and loss',
    fields: [
      { kind: 'nail', path: 'fastening.sheathingNail', label: 'Nail' },
      {
        kind: 'length',
        path: 'fastening.sheathingSpacingIn',
        label: 'Spacing in panels',
        range: { least: 1, most: 24 },
      },
      count('fastening.plankNailsPerBearing', 'Nails in a plank', 1, 10, 'a bearing'),
      {
        kind: 'number',
        path: 'fastening.lossPercent',
        label: 'Added for loss',
        whole: false,
        unit: '%',
        range: { least: 0, most: 100 },
      },
    ],
  },
];

/** Every entry of every part, for tests and for finding one by its path. */
export const everySettingField: readonly SettingField[] = [
  ...shopGroups,
  ...moneyGroups,
  ...labourGroups,
  ...jobGroups,
  ...sawGroups,
  ...layoutGroups,
  ...nailGroups,
].flatMap((group) => group.fields);
