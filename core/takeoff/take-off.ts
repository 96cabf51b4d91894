import { Decimal } from 'decimal.js';
import { phases } from '../eave/phases.ts';
import { decimalText } from '../units/money.ts';
import type { JobInput } from '../job/job-file.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import type { Problem } from '../problems/problem.ts';
import { coverEave } from './cover.ts';
import { plankLines, sheathingUse } from './cover-lines.ts';
import { edgeLines } from './edge-line.ts';
import { extraLines } from './extra-lines.ts';
import { labourLines } from './labour-lines.ts';
import { lumberLines } from './lumber-lines.ts';
import { nailLines } from './nail-lines.ts';
import { eavePieces } from './pieces.ts';
import { coverRakes, rakePlankLines, rakeSheathingUse } from './rake-cover.ts';
import { rakePieces } from './rake-pieces.ts';
import { rakeSoffitUse } from './rake-soffit.ts';
import { sumDecimals } from './quantities.ts';
import { sheetLines } from './sheet-lines.ts';
import { soffitUse } from './soffit-pieces.ts';
import { fillerSheets } from './tail-pieces.ts';
import { eaveLabel, eavesToTakeOff } from './takeoff-context.ts';
import type { Takeoff } from './takeoff-types.ts';
import { uncutPieces } from './uncut-pieces.ts';
import { ventLines } from './vent-lines.ts';

/**
 * Counts everything that the job needs: pieces to cut, and lines of lumber, nails, sheathing, edge, labour and
 * entered costs, grouped by phase in the order of the work. What cannot be counted is named in `lacks`.
 *
 * Lengths in whole sixteenths, feet and hours in hundredths half up, things to buy rounded up; each line says how.
 * @param input - survey, design, settings and price list. [in, %, h]
 * @param eaves - the laid-out eaves. [in]
 * @param rakes - the laid-out rakes. [in]
 * @returns the takeoff; 29 extenders at 0.45 h -> a line `labour-install-extenders` of 13.05 h.
 */
export function takeOff(
  input: JobInput,
  eaves: readonly EaveLayout[],
  rakes: readonly RakeLayout[] = [],
): Takeoff {
  const counted = eavesToTakeOff(input, eaves);
  const covered = counted.map((eave) => coverEave(eave, input));
  const pieces = [...counted.flatMap((eave) => eavePieces(eave, input)), ...rakes.flatMap(rakePieces)];
  const coveredRakes = coverRakes(input, rakes, eaves);
  const nails = nailLines(covered, input, coveredRakes);
  const labour = labourLines(covered, input, rakes);
  const lines = [
    ...lumberLines(pieces, counted, rakes),
    ...nails.lines,
    ...sheetLines(
      [
        ...covered.flatMap(sheathingUse),
        ...coveredRakes.flatMap(rakeSheathingUse),
        ...covered.flatMap(soffitUse),
        ...coveredRakes.flatMap(({ rake, layout, soffit }) => rakeSoffitUse(rake, layout, soffit)),
        ...counted.flatMap((eave) => fillerSheets(eave, input)),
      ],
      input.settings.cutting.kerfIn,
    ),
    ...plankLines(covered, input),
    ...rakePlankLines(coveredRakes, input),
    ...ventLines(covered),
    ...edgeLines(counted, input, coveredRakes),
    ...labour,
    ...extraLines(input),
  ].toSorted((a, b) => phases.indexOf(a.phase) - phases.indexOf(b.phase));
  const hours = sumDecimals(labour.map((line) => line.quantity));
  const { crewSize, hoursPerDay } = input.settings.labour;
  return {
    pieces,
    lines,
    lacks: [
      ...eaves.flatMap((eave) => uncountedEave(input, eave)),
      ...uncutPieces(input, counted),
      ...covered.flatMap(({ coverLacks }) => (coverLacks === null ? [] : [coverLacks])),
      ...coveredRakes.flatMap(({ coverLack }) => (coverLack === null ? [] : [coverLack])),
      ...covered.flatMap(({ soffit }) => soffit?.lacks ?? []),
      ...coveredRakes.flatMap(({ soffit }) => soffit?.lack ?? []),
      ...nails.lacks,
      ...(Number(input.settings.labour.wageUsdPerHour) === 0 && labour.length > 0
        ? [{ code: 'no-wage', field: 'settings.labour.wageUsdPerHour' } as const]
        : []),
    ],
    labourHours: decimalText(hours),
    crewDays: decimalText(
      hours.div(new Decimal(crewSize).times(hoursPerDay)).toDecimalPlaces(1, Decimal.ROUND_HALF_UP),
    ),
  };
}

function uncountedEave(input: JobInput, layout: EaveLayout): readonly Problem[] {
  const what = `${eaveLabel(layout)} (${layout.name})`;
  if (layout.extenders.length > 0) return [];
  const index = input.design.eaves.findIndex((design) => design.eaveId === layout.eaveId);
  return [
    {
      code: 'entry-invalid',
      what,
      detail:
        'no rafter of it takes an extender, so nothing of it is counted. Free a side of its rafters in Design, or take the eave out.',
      field: `design.eaves.${index}.pins`,
    },
  ];
}
