import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { type ForgottenTopic, forgottenTopics } from './forgotten-topics.ts';

/** How something that is usually forgotten is answered. */
export type Answer =
  /** By a line of the estimate, an exclusion, an assumption or an entry, in its own words. */
  | { readonly kind: 'priced' | 'excluded' | 'said'; readonly words: string }
  | { readonly kind: 'not-needed'; readonly words: string };

/** Something that is usually forgotten, and how this quote answers it; null: not yet. */
export type Question = Pick<ForgottenTopic, 'id' | 'asks' | 'short'> & { readonly answer: Answer | null };

/**
 * Holds a quote against what is usually forgotten in such work (job.md 2 and 5; common practice, no source, but where a
 * topic names one). Each is answered by a line of the estimate, by an exclusion, by an entry, or by `not needed because`.
 * @returns the questions that this job raises, in the order of the work; then those that finished jobs taught the shop.
 */
export function completeness(input: JobInput, result: JobResult): readonly Question[] {
  return [...forgottenTopics, ...input.settings.reminders.map(reminderTopic)]
    .filter(({ raisedBy }) => raisedBy === undefined || raisedBy(input))
    .map((topic) => ({
      id: topic.id,
      asks: topic.asks,
      short: topic.short,
      answer: answerOf(topic, input, result),
    }));
}

/** What a finished job taught: no line is known to answer it, so the person does. */
function reminderTopic({ id, text, from }: JobInput['settings']['reminders'][number]): ForgottenTopic {
  return { id, asks: text, short: from === '' ? 'your own question' : `what ${from} taught` };
}

/** What a quote does not say yet, by short names. */
export function unanswered(questions: readonly Question[]): readonly string[] {
  return questions.flatMap(({ short, answer }) => (answer === null ? [short] : []));
}

function answerOf(topic: ForgottenTopic, input: JobInput, { estimate }: JobResult): Answer | null {
  const entered = topic.entered?.(input) ?? null;
  if (entered !== null) return { kind: 'said', words: entered };
  const { words } = topic;
  const { design } = input;
  if (words !== undefined) {
    const line = estimate.lines.find(
      ({ kind, description, clientWording }) =>
        kind === topic.lineKind || words.test(description) || words.test(clientWording),
    );
    if (line !== undefined) return { kind: 'priced', words: line.clientWording };
    const excluded = design.exclusions.find((text) => words.test(text));
    if (excluded !== undefined) return { kind: 'excluded', words: excluded };
    const assumed = [...design.offer.assumptions, ...design.offer.unitPrices.map(({ what }) => what)].find(
      (text) => words.test(text),
    );
    if (assumed !== undefined) return { kind: 'said', words: assumed };
  }
  const settled = design.offer.notNeeded.find(({ topic: id }) => id === topic.id);
  return settled === undefined || settled.because.trim() === ''
    ? null
    : { kind: 'not-needed', words: settled.because.trim() };
}
