import { formatLength } from '../units/format-length.ts';
import { soffitOf } from '../takeoff/soffit.ts';
import { ventAreaOf } from '../takeoff/vent-area.ts';
import { found, held, lacking, type Check, source, step, wholeEave } from './answer.ts';
import { plain, squareInches } from './measured.ts';

const what = "Net free area of the soffit vents against this eave's share";
const sources = [
  source(
    'IRC R806.2, older wording seen; the shares of upper and lower vents on secondary pages',
    'secondary',
  ),
];

/**
 * Net free area of the soffit vents, as laid out or else as entered by the foot, against half (or the share stated) of
 * 1/150 (or 1/300) of the attic, shared over the eaves by their length.
 * Source: IRC R806.2. Worked: 1500 sq ft at 1/300 -> 720 sq in. in all, 360 at the eaves.
 */
export const ventilation: Check = {
  check: 'ventilation',
  group: 'Sheathing and roof edge',
  title: 'Attic vents at the eave',
  run: (eave) => {
    const { atticAreaSqFt } = eave.input.survey.site;
    const { soffitVentSqInPerFt } = eave.design.structure;
    if (eave.design.soffit.kind === 'open')
      return found({
        what,
        at: wholeEave,
        source: sources,
        why: [],
        verdict: 'not-covered',
        remedy:
          'The tails stay open, so there is no soffit vent to hold. Vent the blocks where the attic is vented.',
      });
    const area = ventAreaOf(eave.input.survey, eave.survey);
    if (area === null || atticAreaSqFt === null)
      return lacking({
        what,
        source: sources,
        field: 'survey.site.atticAreaSqFt',
        enter: 'Enter the level area of the vented attic under Snow, wind and roof in the survey.',
      });
    const { parts, wholeSqIn, eaveShare, eavesIn, wantedSqIn } = area;
    const vents = soffitOf(eave, eave.input)?.vents ?? null;
    const wanted = [
      step(
        'Net free area in all',
        `area / ${parts} x 144`,
        `${plain(atticAreaSqFt)} / ${parts} x 144`,
        squareInches(wholeSqIn).text,
        {
          ref: 'survey/site.atticAreaSqFt',
        },
      ),
      step(
        "This eave's share",
        `${eaveShare === 0.5 ? 'half' : `${plain(eaveShare * 100)} %`} of it at the eaves, by length`,
        `${plain(wholeSqIn)} x ${plain(eaveShare, 2)} x ${formatLength(eave.survey.lengthIn)} / ${formatLength(eavesIn)}`,
        squareInches(wantedSqIn).text,
      ),
    ];
    if (vents === null && soffitVentSqInPerFt === null)
      return lacking({
        what,
        source: sources,
        why: wanted,
        field: `design.eaves.${eave.designIndex}.structure.soffitVentSqInPerFt`,
        enter: `Choose the vents of the soffit in Design, or enter the net free area of the soffit vent in a running foot, as its maker states it, under Structure there: ${plain((wantedSqIn * 12) / eave.survey.lengthIn, 1)} sq in. a foot is wanted here.`,
      });
    const perFoot = soffitVentSqInPerFt ?? 0;
    const isSqIn = vents?.reachedSqIn ?? (perFoot * eave.survey.lengthIn) / 12;
    return held({
      what,
      at: wholeEave,
      value: squareInches(isSqIn),
      limit: squareInches(wantedSqIn),
      worse: 'less',
      source: sources,
      assumptions: [
        `${eaveShare === 0.5 ? 'Half' : `${plain(eaveShare * 100)} %`} of the vent area is at the eaves, the rest within 3 ft of the ridge; upper vents are not surveyed here.`,
        `${vents === null ? 'The vent runs the whole wall, and at' : 'At'} least 1 in. stays clear between insulation and sheathing.`,
        'Only the surveyed eaves share the area.',
        ...(parts === 300 ? ['1/300 has conditions that differ between editions: ask which hold.'] : []),
      ],
      remedy: `A vent of ${plain(Math.ceil((wantedSqIn * 120) / eave.survey.lengthIn) / 10, 1)} sq in. in each foot would bring it within.`,
      why: [
        ...wanted,
        vents === null
          ? step(
              'Vent of the soffit',
              'in a foot x length',
              `${plain(perFoot, 2)} x ${formatLength(eave.survey.lengthIn)}`,
              squareInches(isSqIn).text,
              { ref: `design/${eave.layout.eaveId}/structure.soffitVentSqInPerFt` },
            )
          : step(
              'Vents as laid out',
              vents.lengthIn === null ? 'of one x count' : 'in a foot x length',
              `${plain(vents.eachSqIn, 2)} x ${vents.lengthIn === null ? vents.count : formatLength(vents.lengthIn)}`,
              squareInches(isSqIn).text,
              { ref: `design/${eave.layout.eaveId}/soffit.ventNetFreeSqIn` },
            ),
      ],
    });
  },
};
