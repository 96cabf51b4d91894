import { findNail } from '../takeoff/nails.ts';
import { type Check, source } from './answer.ts';
import { heldCount } from './held-count.ts';

/**
 * Toenails of a tail into the plate against the row for rafters: 3 of 10d common or 16d box, 4 of 10d box or thinner.
 * Source: IRC Table R602.3(1); number seen in transcription, sides on secondary pages.
 */
export const plateToenails: Check = {
  check: 'plate-toenails',
  group: 'Nails',
  title: 'Extender to plate',
  run: (eave) => {
    const { plateNail, plateToenailsOneFace, plateToenailsBothFaces } = eave.input.settings.fastening;
    const hung = eave.tails.filter(({ backHold }) => backHold === 'blocks').length;
    // A hung tail has both faces free and a count of its own; the lesser of the two counts is held.
    const bothFaces =
      hung === eave.tails.length || (hung > 0 && plateToenailsBothFaces < plateToenailsOneFace);
    const thick = (findNail(plateNail)?.diameterIn ?? 0) >= 0.135;
    return heldCount({
      what: 'Toenails of a tail into the plate against the row for rafters',
      nails: bothFaces ? plateToenailsBothFaces : plateToenailsOneFace,
      least: thick ? 3 : 4,
      nail: plateNail,
      field: bothFaces ? 'plateToenailsBothFaces' : 'plateToenailsOneFace',
      sources: [source('IRC Table R602.3(1), rafter to plate', 'published')],
      assumptions: [
        'The table wants two on one side and one on the other; a tail beside a rafter has one face free, so all stand on that face.',
      ],
    });
  },
};
