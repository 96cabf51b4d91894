import type { TracePart } from '../trace/trace.ts';
import { formatUsd, type Usd } from '../units/money.ts';
import type { BuildUp, CostSums } from './build-up.ts';
import type { CostLine, EstimateTotal } from './estimate-types.ts';
import type { ShopSettings } from './shop-settings.ts';

/** The build-up as steps in print order, each with what it is made of. */
export function estimateTotals(
  lines: readonly CostLine[],
  sums: CostSums,
  built: BuildUp,
  clientTaxUsd: Usd,
  totalUsd: Usd,
  money: ShopSettings['money'],
): readonly EstimateTotal[] {
  const taxed = lines.filter((line) => line.taxable);
  const amounts: Record<EstimateTotal['key'], Usd> = {
    materials: sums.materialsUsd,
    labour: sums.labourUsd,
    other: sums.otherUsd,
    'materials-tax': built.materialsTaxUsd,
    direct: built.directUsd,
    contingency: built.contingencyUsd,
    overhead: built.overheadUsd,
    profit: built.profitUsd,
    rounding: built.roundingUsd,
    price: built.priceUsd,
    'client-tax': clientTaxUsd,
    total: totalUsd,
  };
  const step = (key: EstimateTotal['key']): TracePart => ({
    label: totalLabels[key],
    value: formatUsd(amounts[key]),
    ref: `total/${key}`,
  });
  const percent = (label: string, name: PercentSetting): TracePart => ({
    label,
    value: `${money[name]} %`,
    ref: `setting/money.${name}`,
  });
  const taxedBy = (rule: TaxRule, parts: readonly TracePart[]): readonly TracePart[] => [
    { label: 'Who pays the tax', value: taxRuleWords[money.taxRule], ref: 'setting/money.taxRule' },
    ...(money.taxRule === rule ? [percent('Sales tax rate', 'taxPercent'), ...parts] : []),
  ];
  const madeOf: Record<EstimateTotal['key'], readonly TracePart[]> = {
    materials: costTrace(lines.filter((line) => line.kind === 'material')),
    labour: costTrace(lines.filter((line) => line.kind === 'labour')),
    other: costTrace(lines.filter((line) => line.kind !== 'material' && line.kind !== 'labour')),
    'materials-tax': taxedBy('contractor-pays', costTrace(taxed.filter((line) => line.kind === 'material'))),
    direct: [step('materials'), step('labour'), step('other'), step('materials-tax')],
    contingency: [step('direct'), percent('Contingency', 'contingencyPercent')],
    overhead: [step('direct'), step('contingency'), percent('Overhead', 'overheadPercent')],
    profit: [
      step('direct'),
      step('contingency'),
      step('overhead'),
      percent(`Profit as a ${money.profitMethod}`, 'profitPercent'),
      { label: 'Profit is reckoned as', value: money.profitMethod, ref: 'setting/money.profitMethod' },
    ],
    rounding: [
      step('direct'),
      step('contingency'),
      step('overhead'),
      step('profit'),
      {
        label: 'Rounded up to a multiple of',
        value: `$${money.roundToUsd}`,
        ref: 'setting/money.roundToUsd',
      },
    ],
    price: [step('direct'), step('contingency'), step('overhead'), step('profit'), step('rounding')],
    'client-tax': taxedBy('client-pays', priceTrace(taxed)),
    total: [step('price'), step('client-tax')],
  };
  return totalOrder.map((key) => ({
    key,
    label: totalLabels[key],
    amountUsd: amounts[key],
    madeOf: madeOf[key],
  }));
}

const totalOrder = [
  'materials',
  'labour',
  'other',
  'materials-tax',
  'direct',
  'contingency',
  'overhead',
  'profit',
  'rounding',
  'price',
  'client-tax',
  'total',
] as const satisfies readonly EstimateTotal['key'][];

const totalLabels: Readonly<Record<EstimateTotal['key'], string>> = {
  materials: 'Materials',
  labour: 'Labour',
  other: 'Equipment, subs, permit and other',
  'materials-tax': 'Sales tax on materials',
  direct: 'Direct cost',
  contingency: 'Contingency',
  overhead: 'Overhead',
  profit: 'Profit',
  rounding: 'Rounding',
  price: 'Price before tax to the client',
  'client-tax': 'Sales tax to the client',
  total: 'Total',
};

const taxRuleWords: Readonly<Record<ShopSettings['money']['taxRule'], string>> = {
  'contractor-pays': 'The contractor, on the materials he buys',
  'client-pays': 'The client, on taxable lines',
  none: 'No tax',
};

type TaxRule = ShopSettings['money']['taxRule'];

type PercentSetting = 'taxPercent' | 'contingencyPercent' | 'overheadPercent' | 'profitPercent';

function costTrace(lines: readonly CostLine[]): readonly TracePart[] {
  return lines.map((line) => ({
    label: line.description,
    value: formatUsd(line.costUsd),
    ref: `cost/${line.id}`,
  }));
}

function priceTrace(lines: readonly CostLine[]): readonly TracePart[] {
  return lines.map((line) => ({
    label: `${line.description}, its share of the price`,
    value: formatUsd(line.priceUsd),
    ref: `cost/${line.id}`,
  }));
}
