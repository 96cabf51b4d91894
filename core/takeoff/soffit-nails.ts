import type { EaveLayout } from '../layout/layout-types.ts';
import type { Fastening } from '../pricing/shop-settings.ts';
import type { NailUse } from './nail-use.ts';
import { nailsAcross } from './sheathing-strip.ts';
import type { SoffitPlan } from './soffit.ts';
import { counted, eaveLabel } from './takeoff-context.ts';

/**
 * Nails of one eave's soffit. Panels: a row across on each tail or nailer, one more at each joint for the second panel,
 * and along ledger and sub-fascia between the rows, nowhere further apart than the spacing set. Without ledger or
 * sub-fascia that edge has no wood to nail to between the tails. Ledger: a group at each stud. Nailers: both ends.
 * @param layout - the eave.
 * @param plan - its soffit; null where none is counted.
 * @param fastening - nail kinds, counts and spacings. [in]
 */
export function soffitNails(
  layout: EaveLayout,
  plan: SoffitPlan | null,
  fastening: Fastening,
): readonly NailUse[] {
  if (plan === null) return [];
  return [
    panelNails(layout, plan, fastening),
    ledgerNails(layout, plan, fastening),
    nailerNails(layout, plan, fastening),
  ];
}

function panelNails(layout: EaveLayout, plan: SoffitPlan, fastening: Fastening): NailUse {
  const spacingIn = fastening.soffitSpacingIn;
  const stations = layout.extenders
    .map(({ centreIn }) => centreIn)
    .filter((stationIn) => stationIn >= plan.fromIn && stationIn <= plan.toIn);
  const courses = [...Map.groupBy(plan.boards, ({ course }) => course).values()];
  const across = courses.reduce((sum, ofCourse) => {
    const widthIn = ofCourse.reduce((width, { lowIn, highIn }) => Math.max(width, highIn - lowIn), 0);
    return sum + (stations.length + ofCourse.length - 1) * nailsAcross(widthIn, spacingIn);
  }, 0);
  const stops = [plan.fromIn, ...stations, plan.toIn];
  const alongEach = stops.slice(1).reduce((sum, toIn, index) => {
    const gapIn = toIn - (stops[index] ?? 0);
    // The rows across hold both ends of a gap between tails, and one end of what runs past the outermost.
    const there = index === 0 || index === stops.length - 2 ? 1 : 2;
    return sum + Math.max(0, nailsAcross(gapIn, spacingIn) - there);
  }, 0);
  const edges = (plan.ledger.length > 0 ? 1 : 0) + (layout.subFasciaRun === null ? 0 : 1);
  return {
    nail: fastening.soffitNail,
    use: 'soffit',
    phase: 'Soffit',
    eaveId: layout.eaveId,
    count: across + edges * alongEach,
    parts: [
      {
        label: `${eaveLabel(layout)}, soffit: across ${counted(stations.length, 'tail')} and ${counted(
          courses.reduce((sum, ofCourse) => sum + ofCourse.length - 1, 0),
          'joint',
        )} at ${spacingIn}"`,
        value: counted(across, 'nail'),
        ref: 'setting/fastening.soffitSpacingIn',
      },
      ...(edges === 0
        ? []
        : [
            {
              label: `${eaveLabel(layout)}, soffit: between them along ${counted(edges, 'edge')}`,
              value: counted(edges * alongEach, 'nail'),
              ref: 'setting/fastening.soffitSpacingIn',
            },
          ]),
    ],
  };
}

function ledgerNails(layout: EaveLayout, plan: SoffitPlan, fastening: Fastening): NailUse {
  const studs = plan.ledger.reduce(
    (sum, { lengthSixteenths }) => sum + nailsAcross(lengthSixteenths / 16, fastening.ledgerSpacingIn),
    0,
  );
  const count = studs * fastening.ledgerNailsPerStud;
  return {
    nail: fastening.soffitFramingNail,
    use: 'ledger',
    phase: 'Soffit',
    eaveId: layout.eaveId,
    count,
    parts: [
      {
        label: `${eaveLabel(layout)}, soffit ledger: ${counted(studs, 'stud')} at ${fastening.ledgerSpacingIn}", ${fastening.ledgerNailsPerStud} each`,
        value: counted(count, 'nail'),
        ref: 'setting/fastening.ledgerNailsPerStud',
      },
    ],
  };
}

function nailerNails(layout: EaveLayout, plan: SoffitPlan, fastening: Fastening): NailUse {
  const nailers = plan.nailers.length;
  const count = nailers * 2 * fastening.nailerNailsPerEnd;
  return {
    nail: fastening.soffitFramingNail,
    use: 'soffit-nailer',
    phase: 'Soffit',
    eaveId: layout.eaveId,
    count,
    parts: [
      {
        label: `${eaveLabel(layout)}, soffit nailers: ${counted(nailers, 'nailer')}, ${fastening.nailerNailsPerEnd} at each of 2 ends`,
        value: counted(count, 'nail'),
        ref: 'setting/fastening.nailerNailsPerEnd',
      },
    ],
  };
}
