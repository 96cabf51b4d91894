import { describe, expect, test } from 'vitest';
import { computeJob } from '../../core/job/compute-job.ts';
import { lackSentences } from '../../core/documents/lacks.ts';
import { makeSheet } from '../../core/documents/make-sheet.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { smallJob, smallTakeoff } from './small-job.ts';

const sentencesOf = (eave: object): readonly string[] =>
  smallTakeoff({ eave })
    .lacks.map(problemSentence)
    .filter((sentence) => sentence.startsWith('Wall 1'));

describe('a piece that nobody can make as drawn is named as missing', () => {
  test('where the notch leaves less than an inch of it', () => {
    // Throat square to the slope: HAP cos t = 0.5 x 0.8944 = 0.447 in., 7/16 in. to the sixteenth.
    expect(sentencesOf({ heightAbovePlateIn: 0.5 })).toEqual([
      `Wall 1, rafters 1-5: the notch leaves 7/16" of the piece above the plate and all but cuts it in two. Measure the height above plate again; if it is so, take these rafters' extenders out in Design and enter what carries the eave there instead.`,
    ]);
  });

  test('and where the plate stands as high as the rafter it says that nothing is left', () => {
    expect(sentencesOf({ heightAbovePlateIn: 0 })).toEqual([
      expect.stringContaining('rafters 1-5: the notch leaves nothing of the piece above the plate'),
    ]);
  });

  test('where it would take a shim higher than 6 in.', () => {
    // HAP - d s = 13 - 5.5 x 1.11803 = 6.851 in., 6-7/8 in. to the sixteenth.
    expect(sentencesOf({ heightAbovePlateIn: 13 })).toEqual([
      `Wall 1, rafters 1-5: the piece stands 6-7/8" over the plate, too high for a shim, and what carries it there is not counted. Measure the height above plate again, or choose deeper stock in Design.`,
    ]);
  });

  test('but neither an inch of throat nor a shim of 6 in. is', () => {
    // HAP 1.125: throat 1.006 in. HAP 12.14: shim 5.991 in.
    expect(sentencesOf({ heightAbovePlateIn: 1.125 })).toEqual([]);
    expect(sentencesOf({ heightAbovePlateIn: 12.14 })).toEqual([]);
  });

  test('at its own rafter, with the reading to mend, and the quote is not to be signed', () => {
    const job = smallJob({ eave: { heightAbovePlateIn: 4.5 }, eaveDesign: { fasciaLine: 'as-found' } });
    const third = job.survey.eaves[0]?.rafters[2];
    if (third !== undefined) third.heightAbovePlateIn = 0.75;
    const result = computeJob(job);
    if (!result.ok) throw new Error(problemSentence(result.problem));
    expect(result.value.takeoff.lacks).toContainEqual(
      expect.objectContaining({
        what: 'Wall 1, rafter 3',
        field: 'survey.eaves.0.heightAbovePlateIn',
      }),
    );
    expect(lackSentences(result.value).some((sentence) => sentence.includes('all but cuts it in two'))).toBe(
      true,
    );
    const quote = makeSheet('quote', job, result.value);
    expect(JSON.stringify(quote.blocks)).toContain('Do not sign this paper');
  });
});
