import { findNail } from '../takeoff/nails.ts';
import { type Check, source } from './answer.ts';
import { heldCount } from './held-count.ts';

/**
 * Nails of a block into the plate against the row for blocking: 3 of 8d common or 10d box at each end, 4 of 8d box.
 * Source: IRC Table R602.3(1), as seen in transcription; 8d box from memory.
 */
export const blockNails: Check = {
  check: 'block-nails',
  group: 'Nails',
  title: 'Blocks at the plate',
  run: (eave) => {
    const { blockNail, blockNailsPerEnd } = eave.input.settings.fastening;
    const thick = (findNail(blockNail)?.diameterIn ?? 0) >= 0.128;
    return heldCount({
      what: 'Nails at each end of a block against the row for blocking at the plate',
      nails: blockNailsPerEnd,
      least: thick ? 3 : 4,
      nail: blockNail,
      field: 'blockNailsPerEnd',
      sources: [source('IRC Table R602.3(1), blocking to top plate', 'published')],
      ...(eave.design.blocks.wanted ? {} : { assumptions: ['No blocks are wanted in this design.'] }),
    });
  },
};
