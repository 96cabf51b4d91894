import { found, source, wholeEave, type Answer } from '../answer.ts';

export const nailSource = source(
  'NDS 2018, chapter 12 and Appendix L, as seen in transcription',
  'published',
);

/** What a nail check says where the settings name a nail that is not known here. */
export function unknownNail(what: string, nail: string): Answer {
  return found({
    what,
    at: wholeEave,
    source: [nailSource],
    why: [],
    verdict: 'not-covered',
    remedy: `The nail "${nail}" is not known here. Choose one like 16d common in Settings.`,
  });
}
