import { expect, test } from 'vitest';
import { completeness, unanswered } from '../../../core/offer/completeness.ts';
import { computed, sampleJob } from '../../documents/sample.ts';

test('what a finished job taught is asked before every later quote, until it is answered', () => {
  const job = sampleJob();
  const result = computed(job);
  const taught = {
    ...job,
    settings: {
      ...job.settings,
      reminders: [
        { id: 'job-1', text: 'Is the soffit width read at both ends?', from: 'Brackenhall cottage' },
      ],
    },
  };
  const before = unanswered(completeness(job, result));
  expect(unanswered(completeness(taught, result))).toEqual([...before, 'what Brackenhall cottage taught']);
  const { offer } = taught.design;
  const answered = {
    ...taught,
    design: {
      ...taught.design,
      offer: { ...offer, notNeeded: [...offer.notNeeded, { topic: 'job-1', because: 'read at both ends' }] },
    },
  };
  expect(unanswered(completeness(answered, result))).toEqual(before);
});
