import { atTail, held, type Check, source, step } from './answer.ts';
import { governingTail } from './governing.ts';
import { atLeast, inches, plain } from './measured.ts';

/** What the fascia has to cover against its actual depth. Source: geometry; actual sizes of PS 20. */
export const fasciaCover: Check = {
  check: 'fascia-cover',
  group: 'Rules of thumb',
  title: 'Fascia cover',
  run: (eave) => {
    const tail = governingTail(eave.tails, ({ extender }) => extender.section.fasciaNeededIn);
    const { tailFaceIn, fasciaNeededIn } = tail.extender.section;
    const { depthIn, section } = eave.fasciaStock;
    return held({
      what: "Depth of the tail's cut and the fascia's drop against the fascia's actual depth",
      at: atTail(tail.extender),
      value: inches(fasciaNeededIn),
      limit: inches(depthIn),
      worse: 'more',
      source: [source('Geometry; dressed sizes of PS 20-20', 'published')],
      remedy: `A fascia ${atLeast(fasciaNeededIn)} deep or more, a square tail, or shallower stock would bring it within.`,
      why: [
        step(
          'To cover',
          eave.design.tailCut === 'plumb' ? 'd x slope factor + drop' : 'd + drop',
          `${plain(tailFaceIn, 3)} + ${plain(eave.design.fascia.dropIn, 3)}`,
          inches(fasciaNeededIn).text,
          { ref: `section/${eave.layout.eaveId}/${tail.extender.id}` },
        ),
        step('Fascia', 'actual depth', section, inches(depthIn).text, {
          ref: `design/${eave.layout.eaveId}/fascia.stock`,
        }),
      ],
    });
  },
};
