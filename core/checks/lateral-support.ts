import { held, type Check, source, step, wholeEave } from './answer.ts';
import { plain } from './measured.ts';

/**
 * Depth to thickness of the tails by nominal size: above 5 to 1 they want support against turning over at the plate.
 * Source: IRC R802.8, as seen in transcription of the 2024 text. Worked: 2x12 -> 6, beyond; 2x10 -> 5, not over.
 */
export const lateralSupport: Check = {
  check: 'lateral-support',
  group: 'Rules of thumb',
  title: 'Turning over at the plate',
  run: (eave) => {
    const { nominalWidthIn, nominalThicknessIn, section } = eave.stock;
    const ratio = nominalWidthIn / nominalThicknessIn;
    return held({
      what: 'Nominal depth to thickness of the tails against 5 to 1 without side support at the plate',
      at: wholeEave,
      value: { text: `${plain(ratio, 1)} : 1`, number: ratio, unit: '-' },
      limit: { text: '5 : 1', number: 5, unit: '-' },
      worse: 'more',
      source: [source('IRC R802.8 (2024 text)', 'published')],
      assumptions: [
        eave.design.blocks.wanted
          ? 'Blocks between the tails at the plate, and the rafter beside each, give side support; they are not counted here.'
          : 'No blocks are wanted in this design.',
      ],
      remedy: 'Block every bay at the plate (Design, Blocks), or choose shallower stock.',
      why: [
        step(
          `Nominal size of ${section}`,
          'depth / thickness',
          `${nominalWidthIn} / ${nominalThicknessIn}`,
          `${plain(ratio, 1)} : 1`,
          {
            ref: `design/${eave.layout.eaveId}/extender`,
          },
        ),
      ],
    });
  },
};
