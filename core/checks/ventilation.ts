import { formatLength } from '../units/format-length.ts';
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
 * Net free area of the soffit vents against half of 1/150 (or 1/300) of the attic, shared over the eaves by their length.
 * Source: IRC R806.2. Worked: 1500 sq ft at 1/300 -> 720 sq in. in all, 360 at the eaves.
 */
export const ventilation: Check = {
  check: 'ventilation',
  group: 'Sheathing and roof edge',
  title: 'Attic vents at the eave',
  run: (eave) => {
    const { atticAreaSqFt, ventRatio } = eave.input.survey.site;
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
    if (atticAreaSqFt === null)
      return lacking({
        what,
        source: sources,
        field: 'survey.site.atticAreaSqFt',
        enter: 'Enter the level area of the vented attic under Snow, wind and roof in the survey.',
      });
    const share = ventRatio === '1/150' ? 150 : 300;
    const wholeSqIn = (atticAreaSqFt / share) * 144;
    const eavesIn = eave.input.survey.eaves.reduce((sum, { lengthIn }) => sum + lengthIn, 0);
    const wantedSqIn = ((wholeSqIn / 2) * eave.survey.lengthIn) / eavesIn;
    const wanted = [
      step(
        'Net free area in all',
        `area / ${share} x 144`,
        `${plain(atticAreaSqFt)} / ${share} x 144`,
        squareInches(wholeSqIn).text,
        {
          ref: 'survey/site.atticAreaSqFt',
        },
      ),
      step(
        "This eave's share",
        'half of it at the eaves, by length',
        `${plain(wholeSqIn)} / 2 x ${formatLength(eave.survey.lengthIn)} / ${formatLength(eavesIn)}`,
        squareInches(wantedSqIn).text,
      ),
    ];
    if (soffitVentSqInPerFt === null)
      return lacking({
        what,
        source: sources,
        why: wanted,
        field: `design.eaves.${eave.designIndex}.structure.soffitVentSqInPerFt`,
        enter: `Enter the net free area of the soffit vent in a running foot, as its maker states it, under Structure in Design: ${plain((wantedSqIn * 12) / eave.survey.lengthIn, 1)} sq in. a foot is wanted here.`,
      });
    const isSqIn = (soffitVentSqInPerFt * eave.survey.lengthIn) / 12;
    return held({
      what,
      at: wholeEave,
      value: squareInches(isSqIn),
      limit: squareInches(wantedSqIn),
      worse: 'less',
      source: sources,
      assumptions: [
        'Half of the vent area is at the eaves, the rest within 3 ft of the ridge; upper vents are not surveyed here.',
        'The vent runs the whole wall, and at least 1 in. stays clear between insulation and sheathing.',
        'Only the surveyed eaves share the area.',
        ...(share === 300 ? ['1/300 has conditions that differ between editions: ask which hold.'] : []),
      ],
      remedy: `A vent of ${plain(Math.ceil((wantedSqIn * 120) / eave.survey.lengthIn) / 10, 1)} sq in. in each foot would bring it within.`,
      why: [
        ...wanted,
        step(
          'Vent of the soffit',
          'in a foot x length',
          `${plain(soffitVentSqInPerFt, 2)} x ${formatLength(eave.survey.lengthIn)}`,
          squareInches(isSqIn).text,
          {
            ref: `design/${eave.layout.eaveId}/structure.soffitVentSqInPerFt`,
          },
        ),
      ],
    });
  },
};
