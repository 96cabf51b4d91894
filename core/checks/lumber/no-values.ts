import { found, source, wholeEave, type Answer } from '../answer.ts';
import type { EaveToCheck } from '../eave-to-check.ts';

export const valuesSource = source(
  'NDS Supplement 2018, Tables 4A and 4B, as seen in transcription; cells not seen are marked from memory',
  'published',
);

/** What a lumber check says where no design value is on file for the stock chosen. */
export function noValues({ stock, lumber }: EaveToCheck, what: string): Answer {
  const thin = stock.nominalThicknessIn !== 2;
  return found({
    what,
    at: wholeEave,
    source: [valuesSource],
    why: [],
    verdict: 'not-covered',
    remedy: thin
      ? `Design values are on file for lumber of 2 in. nominal thickness; a ${stock.section} has none. Choose 2-in. stock for the extenders, or ask an engineer.`
      : `No design values are on file for ${stock.section} of ${lumber.grade} grade in this species. Choose No.1 or No.2 in Design, or ask an engineer.`,
  });
}
