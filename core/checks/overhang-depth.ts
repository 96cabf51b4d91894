import { found, held, type Check, source, step } from './answer.ts';
import { greatestOverhang } from './greatest-overhang.ts';
import { balconyCantilevers } from './data/cantilever-table.ts';
import { formatLength } from '../units/format-length.ts';
import { length } from './measured.ts';

const what = 'Level overhang against the table of balcony joists for its depth and spacing';
const sources = [source('IRC Table R502.3.3(2), balcony joists, No.2, backspan 2 to 1', 'published')];

/**
 * The overhang against what the code lets a joist of the same depth and spacing reach under a balcony, which weighs more than
 * a roof: beyond the table is no verdict on a roof, but within it there is room. Worked: 2x8 at 16 in. -> 36 in.
 */
export const overhangDepth: Check = {
  check: 'overhang-depth',
  group: 'Rules of thumb',
  title: 'Overhang to depth',
  run: (eave) => {
    const { nominalWidthIn, section } = eave.stock;
    const gapIn = eave.tails.reduce((most, tail) => Math.max(most, tail.gapIn), 0);
    const row = balconyCantilevers.find(
      ({ nominalDepthIn, spacingIn }) => nominalDepthIn === nominalWidthIn && spacingIn >= gapIn - 1e-9,
    );
    const { overhangIn, at } = greatestOverhang(eave);
    if (row === undefined || eave.stock.nominalThicknessIn !== 2)
      return found({
        what,
        at,
        value: length(overhangIn),
        source: sources,
        assumptions: [],
        why: [step('Largest gap between tails', 'centre to centre', section, formatLength(gapIn))],
        verdict: 'not-covered',
        remedy: `The table has no row for a ${section} at ${formatLength(gapIn)}: it begins at 2x8, and ends at 24" (16" for 2x8). Bending, sag and the nails below say more.`,
      });
    return held({
      what,
      at,
      value: length(overhangIn),
      limit: length(row.cantileverIn),
      worse: 'more',
      source: sources,
      assumptions: [
        'The table is for balconies with a full-depth rim and solid blocking; a roof carries less.',
      ],
      remedy: `An overhang of ${formatLength(row.cantileverIn)}, or deeper stock, would bring it within the table.`,
      why: [
        step(
          'Row of the table',
          'nominal depth and spacing',
          `${section} at ${formatLength(gapIn)}, row of ${row.spacingIn} in.`,
          length(row.cantileverIn).text,
        ),
      ],
    });
  },
};
