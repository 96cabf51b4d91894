import { atTail, found, held, type Check, source, step } from './answer.ts';
import { speciesGroups } from './data/species.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import type { Tail } from './tail-to-check.ts';
import { governingCase } from './governing.ts';
import { loadAssumptions, loadSource, loadSteps, mindingSnow } from './load-steps.ts';
import { adjustedBearing, valuesOf } from './lumber/adjusted-values.ts';
import { noValues, valuesSource } from './lumber/no-values.ts';
import { atLeast, plain, pounds, psi } from './measured.ts';
import type { CaseForces } from './statics/reckon-tail.ts';
import { spanAtPlate } from './statics/span-with-overhang.ts';
import { noTailHeld, reckonedHolds, tailsHeldBy } from './tails-held.ts';

const what = 'Bearing of the tail on the plate against the value across the grain';

/**
 * Bearing of the seat on the plate: (load + back pull) / (b l) against the lower value across the grain of extender and
 * plate. Duration does not count. Source: NDS 2018, 3.10 and 4.3. Worked: 200 lb on 1-1/2 x 2-1/4 in. -> 59 psi.
 */
export const plateBearing: Check = {
  check: 'plate-bearing',
  group: 'Lumber',
  title: 'Bearing on the plate',
  run: (eave) => {
    const plate = valuesOf({ species: eave.oldSpecies, grade: 'no-2', depthIn: 3.5 });
    if (eave.values === undefined || plate === undefined) return noValues(eave, what);
    const reckoned = tailsHeldBy(eave, reckonedHolds);
    const bare = eave.tails.find(({ bearingLengthIn }) => bearingLengthIn < 1 / 16);
    if (bare !== undefined)
      return found({
        what,
        at: atTail(bare.extender),
        source: [valuesSource],
        why: [step('Bearing length', 'level seat on the plate', 'edge on the corner', '0"')],
        verdict: 'beyond',
        remedy:
          'The tail bears on next to nothing. Cut a level seat of 1-1/2" or more, or set a bearing shim over the plate.',
      });
    if (reckoned.tails.length === 0) return noTailHeld(what, eave, reckoned);
    const wet = eave.design.structure.wetService;
    const lower = [eave.values, plate].reduce((a, b) => (b.acrossGrain.value < a.acrossGrain.value ? b : a));
    const limit = adjustedBearing(lower, { wet });
    const governing = governingCase(
      reckoned.tails,
      (tail, forces) => stressOf(eave, tail, forces) / limit.psi,
    );
    const { tail, forces } = governing;
    const stress = stressOf(eave, tail, forces);
    const fromSpanLb = spanLbOf(eave, tail, forces);
    const wallLb = forces.wallLb + fromSpanLb;
    const neededIn = wallLb / (eave.stock.thicknessIn * limit.psi);
    return mindingSnow(
      eave,
      held({
        what,
        at: atTail(tail.extender),
        value: psi(stress),
        limit: psi(limit.psi),
        worse: 'more',
        source: [source('NDS 2018, 3.10 and 4.3', 'published'), valuesSource, loadSource],
        assumptions: [
          ...eave.taken.extender,
          ...eave.taken.oldWood,
          ...(tail.extender.section.bearing.kind === 'shimmed'
            ? ['A tight bearing shim as long as the plate is wide stands under the tail.']
            : []),
          'The pressure spreads evenly over the seat.',
          ...reckoned.leftOut,
          ...loadAssumptions,
        ],
        remedy: `A bearing length of ${atLeast(neededIn)} would bring it within.`,
        why: [
          ...loadSteps(eave, governing),
          step(
            'Load on the plate',
            `load on the overhang + pull of the back end${fromSpanLb > 0 ? ' + half of the span' : ''}`,
            `${plain(forces.loadLb, 1)} + ${plain(forces.holdDownLb, 1)}${fromSpanLb > 0 ? ` + ${plain(fromSpanLb, 1)}` : ''}`,
            pounds(wallLb).text,
          ),
          step(
            'Pressure on the seat',
            'f = R / (b l)',
            `${plain(wallLb, 1)} / (${plain(eave.stock.thicknessIn, 3)} x ${plain(tail.bearingLengthIn, 3)})`,
            psi(stress).text,
            { ref: `section/${eave.layout.eaveId}/${tail.extender.id}` },
          ),
          step(
            `Adjusted value across the grain, the lower one (${speciesGroups[lower.species].name})`,
            "F_c,perp' = F_c,perp C_M",
            `${plain(limit.reference.value)} x ${wet ? 0.67 : 1}`,
            psi(limit.psi).text,
            { source: source('NDS Supplement 2018, Tables 4A and 4B', limit.reference.mark) },
          ),
        ],
      }),
    );
  },
};

function stressOf(eave: EaveToCheck, tail: Tail, forces: CaseForces): number {
  const wallLb = forces.wallLb + spanLbOf(eave, tail, forces);
  return wallLb / (eave.stock.thicknessIn * tail.bearingLengthIn);
}

/** What a whole rafter brings to the plate from its span. [lb] */
function spanLbOf(
  { survey }: EaveToCheck,
  { backHold }: Tail,
  { deadLbPerIn, transientLbPerIn, loadCase }: CaseForces,
): number {
  if (backHold !== 'ridge' || survey.rafterSpanIn === null) return 0;
  // Short-term loads of the overhang alone, an iced eave and a worker, do not lie on the span.
  const spanTransient = loadCase.id === 'roof-live' || loadCase.id === 'snow' ? transientLbPerIn : 0;
  return spanAtPlate(survey.rafterSpanIn, deadLbPerIn + spanTransient);
}
