import type { Design, EaveEnd } from '../eave/design-document.ts';
import type { Side, Survey } from '../survey/survey-document.ts';
import { formatLength } from '../units/format-length.ts';
import { lineHeightIn } from './fascia-line.ts';
import type { EaveLayout, Finding } from './layout-types.ts';

/** Edges that meet within this are level to the eye. [in] Common practice, no source. */
const levelToTheEyeIn = 1 / 8;

const sides = ['left', 'right'] as const satisfies readonly Side[];
const kindWords: Readonly<Record<Exclude<EaveEnd['kind'], 'free'>, string>> = {
  rake: 'a rake',
  'outside-corner': 'an outside corner',
  'inside-corner': 'an inside corner',
};

/**
 * What a person should know of the ends of the eaves: what they should meet and do not, edges that come to a corner at
 * different heights, and what of a corner is not counted.
 * @param documents - survey and design of the job.
 * @param eaves - laid out.
 */
export function findAtEnds(
  documents: { readonly survey: Survey; readonly design: Design },
  eaves: readonly EaveLayout[],
): readonly Finding[] {
  return eaves
    .filter(({ extenders }) => extenders.length > 0)
    .flatMap((eave) => sides.flatMap((side) => findAtEnd(documents, eaves, eave, side)));
}

function findAtEnd(
  { survey, design }: { readonly survey: Survey; readonly design: Design },
  eaves: readonly EaveLayout[],
  eave: EaveLayout,
  side: Side,
): readonly Finding[] {
  const { kind, meets } = eave.ends[side];
  if (kind === 'free') return [];
  const tell = (text: string, structural = false): Finding => ({
    eaveId: eave.eaveId,
    stationIn: side === 'left' ? 0 : eave.wallLengthIn,
    topic: 'corner',
    text: `The ${side} end ${text}`,
    structural,
  });
  if (kind === 'rake') {
    const rake = survey.rakes.find(({ id }) => id === meets);
    const built = design.rakes.find(({ rakeId }) => rakeId === meets);
    if (rake === undefined)
      return [
        tell('is set to meet a rake, and none is chosen: its edge ends free. Choose the rake in Design.'),
      ];
    if (built === undefined || built.kind === 'none')
      return [tell(`is set to meet ${rake.name.trim()}, which is not built: its edge ends free.`)];
    return rake.eaveId === eave.eaveId && rake.end === side
      ? []
      : [
          tell(
            `is set to meet ${rake.name.trim()}, which rises from another end. Choose the rake that rises here.`,
          ),
        ];
  }
  const other = eaves.find(({ eaveId }) => eaveId === meets && eaveId !== eave.eaveId);
  if (other === undefined)
    return [
      tell(
        `is set to make ${kindWords[kind]}, and no other eave is chosen for it: its edge ends free. Choose the eave that it meets in Design.`,
      ),
    ];
  const answers = sides.find((end) => other.ends[end].kind === kind && other.ends[end].meets === eave.eaveId);
  if (answers === undefined)
    return [
      tell(
        `makes ${kindWords[kind]} with ${other.name}, but no end of ${other.name} makes one with it. Set it there too in Design.`,
      ),
    ];
  return [
    ...findStep(eave, side, other, answers, tell),
    tell(
      kind === 'outside-corner'
        ? `makes an outside corner with ${other.name}. A hip tail there, and what carries fascia and sheathing past the last tail, are not laid out or counted.`
        : `makes an inside corner with ${other.name}. What carries the roof in the valley there is not laid out or counted.`,
      true,
    ),
  ];
}

function heightAt(eave: EaveLayout, side: Side): number {
  return lineHeightIn(eave.fasciaLine, eave.fasciaRun[side].faceIn);
}

/** Heights are above each eave's own plate; both plates are taken to lie at one height. */
function findStep(
  eave: EaveLayout,
  side: Side,
  other: EaveLayout,
  otherSide: Side,
  tell: (text: string) => Finding,
): readonly Finding[] {
  const stepIn = heightAt(eave, side) - heightAt(other, otherSide);
  if (Math.abs(stepIn) <= levelToTheEyeIn) return [];
  return [
    tell(
      `comes to the corner ${formatLength(Math.abs(stepIn))} ${stepIn > 0 ? 'higher' : 'lower'} than the edge of ${other.name}, both plates at one height. Change an overhang, a pitch or a kick-up, so that the edges meet.`,
    ),
  ];
}
