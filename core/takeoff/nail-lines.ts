import { Decimal } from 'decimal.js';
import { decimalText } from '../units/money.ts';
import type { JobInput } from '../job/job-file.ts';
import type { Problem } from '../problems/problem.ts';
import type { CoveredEave } from './cover.ts';
import { findNail } from './nails.ts';
import { nailUses } from './nail-uses.ts';
import { hundredthsUp, withAllowance } from './quantities.ts';
import type { CoveredRake } from './rake-cover.ts';
import { rakeNailUses } from './rake-nails.ts';
import { counted, eaveLabel, heaviestPhase, idPart, rakeLabel, whereLabels } from './takeoff-context.ts';
import type { TakeoffLine } from './takeoff-types.ts';

/**
 * One line for each kind of nail over all its uses. The quantity is the net count; the need adds the loss allowance
 * (rounded up to whole nails) and turns it into pounds (rounded up to hundredths) by nails per pound.
 * @param eaves - the eaves with their cover.
 * @param input - for the fastening settings. [in, %]
 * @param rakes - the rakes with what covers them.
 * @returns lines such as `nails-16d-common`, and a problem for each nail that the program does not know.
 */
export function nailLines(
  eaves: readonly CoveredEave[],
  input: JobInput,
  rakes: readonly CoveredRake[] = [],
): { readonly lines: readonly TakeoffLine[]; readonly lacks: readonly Problem[] } {
  const { fastening } = input.settings;
  const uses = [
    ...eaves.flatMap((eave) => nailUses(eave, fastening)),
    ...rakes.flatMap((rake) => rakeNailUses(rake, fastening)),
  ];
  const lines: TakeoffLine[] = [];
  const lacks: Problem[] = [];
  for (const name of new Set(uses.map((use) => use.nail))) {
    const nail = findNail(name);
    if (nail === undefined) {
      lacks.push({
        code: 'entry-invalid',
        what: `Nail "${name}"`,
        detail:
          'is not known here, so it cannot be counted in pounds. Choose one like 16d common in Settings.',
        field: 'settings.fastening',
      });
      continue;
    }
    const ofNail = uses.filter((use) => use.nail === name);
    const net = ofNail.reduce((sum, use) => sum + use.count, 0);
    const count = withAllowance(net, fastening.lossPercent);
    const pounds = hundredthsUp(new Decimal(count).div(nail.perPound));
    lines.push({
      id: `nails-${idPart(nail.name)}`,
      kind: 'nails',
      phase: heaviestPhase(ofNail.map((use) => ({ phase: use.phase, weight: use.count }))),
      description: `Nails ${nail.name}, ${pounds} lb with loss`,
      clientWording: 'Nails and fasteners',
      quantity: decimalText(net),
      unit: 'nails',
      taxable: true,
      where: whereLabels(
        [
          ...eaves.map(({ layout }) => ({
            label: eaveLabel(layout),
            here: ofNail.filter(({ eaveId, rakeId }) => eaveId === layout.eaveId && rakeId === undefined),
          })),
          ...rakes.map(({ rake }) => ({
            label: rakeLabel(rake),
            here: ofNail.filter(({ rakeId }) => rakeId === rake.rakeId),
          })),
        ]
          .map(({ label, here }) => ({ label, count: here.reduce((sum, use) => sum + use.count, 0) }))
          .filter(({ count }) => count > 0)
          .map(({ label, count }) => ({ label, amount: String(count) })),
      ),
      madeOf: [
        ...ofNail.flatMap((use) => use.parts),
        {
          label: `Loss, ${fastening.lossPercent} %, whole nails`,
          value: counted(count - net, 'nail'),
          ref: 'setting/fastening.lossPercent',
        },
        {
          label: `${count} nails at ${nail.perPound} to the pound (${nail.evidence})`,
          value: `${pounds} lb`,
        },
      ],
      need: { kind: 'nails', nail: nail.name, count, pounds },
    });
  }
  return { lines, lacks };
}
