import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { counted } from '../takeoff/takeoff-context.ts';
import { formatInches } from '../units/format-length.ts';
import { inchesOf } from '../units/sixteenths.ts';
import { structuralBlock } from './cautions.ts';
import { type CutGroup, cutGroups } from './cut-groups.ts';
import { eavesWithParts } from './eave-drawings.ts';
import { markList } from './mark-list.ts';
import type { Card, Sheet } from './sheet.ts';
import { sheetHead } from './sheet-head.ts';

/** Makes the set-up cards of the framing square, one a group of tails: what to set, and what to mark with it. */
export function setUpCardSheet(input: JobInput, result: JobResult): Sheet {
  const groups = cutGroups(eavesWithParts(input, result.eaves), input.settings.cutting.templateToleranceIn);
  return {
    ...sheetHead('set-up-card', input),
    blocks: [
      {
        kind: 'list',
        items: [
          'Hold the square with both figures on the crown edge of the piece, the tongue toward the tail: the tongue gives plumb lines, the blade level ones.',
          'Wall line first, plumb, as far from the back end as the lists say. Down it from the crown edge to the seat; from there the seat, level and inward; the heel is what is left of the wall line below.',
          'Cards are numbered as the templates are; those without a seat cut come last. Set every piece crown up.',
        ],
      },
      structuralBlock,
      groups.length === 0
        ? { kind: 'paragraph', text: 'Every tail is in place, so there is nothing to set up.' }
        : { kind: 'cards', cards: groups.map(card) },
    ],
  };
}

/**
 * What one card says. The square's setting is rise on the tongue and 12 in. of run on the blade: common practice, no source.
 */
function card({ number, model, tails }: CutGroup): Card {
  const { extender, design } = model;
  const { section, fit } = extender;
  const tongue = formatInches(section.pitchRisePer12);
  const seat =
    section.bearing.kind === 'notched'
      ? [
          `Down the wall line: ${formatInches(section.heightAbovePlateIn)}`,
          `Seat, level: ${formatInches(inchesOf(fit.seatSixteenths))}`,
          `Heel, plumb: ${formatInches(inchesOf(fit.heelSixteenths))}`,
        ]
      : [
          fit.shimSixteenths > 0
            ? `No seat cut; shim ${formatInches(inchesOf(fit.shimSixteenths))} or as listed`
            : 'No seat cut; it meets the corner',
        ];
  return {
    title: `${number}.  ${design.extender.section}, ${counted(tails.length, 'tail')}: ${markList(tails.map((tail) => tail.extender.mark))}`,
    setting: `Tongue ${tongue}  ·  Blade 12"`,
    lines: [
      `Saw off square: ${section.slopeAngleDeg.toFixed(1)} deg plumb, ${(90 - section.slopeAngleDeg).toFixed(1)} deg level`,
      ...seat,
      design.tailCut === 'plumb' ? 'Tail: plumb, along the tongue' : 'Tail: square to the crown edge',
    ],
  };
}
