import { noSource, type Check } from './answer.ts';
import { heldCount } from './held-count.ts';

/** Deepest fascia that takes two nails. [in] Common practice, no source. */
const shallowFasciaIn = 5.5;

/** Nails of the fascia at each tail: two up to 5-1/2 in., three above. Common practice, no source. */
export const fasciaNails: Check = {
  check: 'fascia-nails',
  group: 'Nails',
  title: 'Fascia to tails',
  run: (eave) => {
    const { fasciaNail, fasciaNailsShallow, fasciaNailsDeep } = eave.input.settings.fastening;
    const shallow = eave.fasciaStock.depthIn <= shallowFasciaIn;
    return heldCount({
      what: 'Nails of the fascia at each tail against the usual number',
      nails: shallow ? fasciaNailsShallow : fasciaNailsDeep,
      least: shallow ? 2 : 3,
      nail: fasciaNail,
      field: shallow ? 'fasciaNailsShallow' : 'fasciaNailsDeep',
      sources: [noSource],
    });
  },
};
