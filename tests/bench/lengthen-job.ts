import type { JobInput } from '../../core/job/job-file.ts';

/**
 * A job as the sample, with each eave many times as long: its rafters repeated along the wall.
 * @param file - the job to lengthen.
 * @param times - how many times as long. [-]
 */
export function lengthenJob(file: JobInput, times: number): JobInput {
  return {
    ...file,
    survey: {
      ...file.survey,
      eaves: file.survey.eaves.map((eave) => {
        const spacing = 18;
        const period = eave.lengthIn + spacing;
        return {
          ...eave,
          lengthIn: period * times - spacing,
          rafters: Array.from({ length: times }, (_, repeat) =>
            eave.rafters.map((rafter) => ({
              ...rafter,
              id: `${rafter.id}-${repeat}`,
              readingIn: rafter.readingIn + repeat * period,
            })),
          ).flat(),
        };
      }),
    },
  };
}
