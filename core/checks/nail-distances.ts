import { held, type Check, source, step, wholeEave } from './answer.ts';
import { fine, plain } from './measured.ts';
import { unknownNail } from './nails/unknown-nail.ts';

const what = 'End distance, spacing and edge distance of the sister nails against splitting';
/** Advice in diameters for side members that are not bored. [-] */
const ends = 15;
const spacings = 15;
const edges = 2.5;

/**
 * Nails near ends and edges split lumber. The standard asks only that splitting be kept off; its commentary advises 15 D to
 * an end, 15 D between nails and 2.5 D to an edge. The one that is shortest for its advice is shown.
 * Source: NDS commentary, from memory. Worked: 16d common -> 2.43, 2.43 and 0.405 in.
 */
export const nailDistances: Check = {
  check: 'nail-distances',
  group: 'Rules of thumb',
  title: 'Nails near ends and edges',
  run: (eave) => {
    const { sister } = eave.input.settings.fastening;
    const nail = eave.sisterNail;
    if (nail === undefined) return unknownNail(what, sister.nail);
    const d = nail.diameterIn;
    const kept = [
      {
        name: 'to the ends',
        isIn: sister.endDistanceIn,
        wantIn: ends * d,
        ref: 'setting/fastening.sister.endDistanceIn',
      },
      {
        name: 'between nails of a row',
        isIn: sister.spacingIn,
        wantIn: spacings * d,
        ref: 'setting/fastening.sister.spacingIn',
      },
      {
        name: 'to the edges',
        isIn: eave.design.structure.nailEdgeDistanceIn,
        wantIn: edges * d,
        ref: `design/${eave.layout.eaveId}/structure.nailEdgeDistanceIn`,
      },
    ];
    const worst = kept.reduce((a, b) => (b.wantIn / b.isIn > a.wantIn / a.isIn ? b : a));
    return held({
      what: `${what}: ${worst.name}`,
      at: wholeEave,
      value: fine(worst.isIn),
      limit: fine(worst.wantIn),
      worse: 'less',
      source: [source('NDS 2018, commentary table of nail distances', 'from-memory')],
      remedy: `Keep ${plain(worst.wantIn, 2)} in. ${worst.name} (Settings, Fastening, or Structure in Design), or bore for the nails.`,
      why: kept.map(({ name, isIn, wantIn, ref }) =>
        step(
          `Distance ${name}`,
          `${plain(wantIn / d, 1)} D`,
          `${plain(wantIn / d, 1)} x ${d} = ${plain(wantIn, 3)} in.`,
          `${plain(isIn, 3)} in.`,
          { ref },
        ),
      ),
    });
  },
};
