import { held, type Check, source, step, wholeEave } from './answer.ts';
import { inches } from './measured.ts';

/** Spacing of 16d common where two framing members are nailed face to face. [in] */
const twoMemberSpacingIn = 24;
/** The same for nails thinner than 16d common. [in] */
const thinNailSpacingIn = 16;
const sixteenCommonIn = 0.162;

/**
 * Spacing of the sister nails in a row against the nearest row of the code's nailing table; the table has none for this joint.
 * Source: IRC Table R602.3(1), two members nailed face to face: 16d common at 24 in., thinner nails at 16 in.
 */
export const nailSpacing: Check = {
  check: 'nail-spacing',
  group: 'Rules of thumb',
  title: 'Spacing of the sister nails',
  run: (eave) => {
    const { sister } = eave.input.settings.fastening;
    const thin = (eave.sisterNail?.diameterIn ?? 0) < sixteenCommonIn - 1e-9;
    const limitIn = thin ? thinNailSpacingIn : twoMemberSpacingIn;
    return held({
      what: 'Spacing of the sister nails in a row against two-member face nailing',
      at: wholeEave,
      value: inches(sister.spacingIn),
      limit: inches(limitIn),
      worse: 'more',
      source: [
        source(
          'IRC Table R602.3(1), two members face nailed (the nearest row; layout seen, pairing of nails from memory)',
          'from-memory',
        ),
      ],
      assumptions: [
        'The code has no row for a tail nailed beside a rafter; the load on the worst nail decides.',
      ],
      remedy: `Nails at ${limitIn} in. or closer in each row would bring it within (Settings, Fastening).`,
      why: [
        step('Spacing in a row', 'as set', sister.nail, inches(sister.spacingIn).text, {
          ref: 'setting/fastening.sister.spacingIn',
        }),
      ],
    });
  },
};
