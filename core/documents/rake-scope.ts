import type { RakeDesign } from '../eave/design-document.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import { formatLength } from '../units/format-length.ts';
import type { ScopeParagraph } from './scope-wording.ts';
import { stockName } from './stock-name.ts';

/** What is built at the rakes of an eave, in plain words, one paragraph a rake: only what the takeoff counts is promised. */
export function rakeParagraphs(
  input: JobInput,
  result: JobResult,
  eaveId: string,
): readonly ScopeParagraph[] {
  return result.rakes
    .filter((rake) => rake.eaveId === eaveId)
    .flatMap((rake) => {
      const design = input.design.rakes.find(({ rakeId }) => rakeId === rake.rakeId);
      return design === undefined
        ? []
        : [{ key: `rake/${rake.rakeId}`, name: rake.name, text: rakeParagraph(rake, design, result) }];
    });
}

function rakeParagraph(rake: RakeLayout, design: RakeDesign, result: JobResult): string {
  const counted = (id: string): boolean =>
    result.takeoff.lines.some((line) => line.id.startsWith(id) && line.where.includes(`Rake ${rake.mark}`));
  const framing =
    rake.kind === 'ladder'
      ? `a ladder of ${stockName(design.lookout)} lumber on the gable`
      : `${rake.lookouts.length} lookouts of ${stockName(design.lookout)} lumber, ${design.atGableRafter === 'notched' ? 'let into the old gable rafter and run back into the roof' : 'fastened to the old gable rafter'}`;
  const sentences = [
    `${rake.name}: ${framing}, and a ${stockName(design.barge)} rafter at the edge carry a new overhang of ${formatLength(rake.overhangIn)} past the gable wall, measured level, up to the ridge.`,
  ];
  if (rake.fasciaStock !== null)
    sentences.push(
      `A fascia of ${stockName(rake.fasciaStock)} covers the edge${rake.corner.mitred ? ' and meets that of the eave at the corner' : ''}.`,
    );
  if (counted('rake-sheathing'))
    sentences.push(
      `New roof ${design.sheathing.kind === 'planks' ? 'planks cover' : 'sheathing panels cover'} it, back to the old deck.`,
    );
  if (counted('rake-soffit')) sentences.push('Soffit panels close it from below.');
  if (counted('drip-edge')) sentences.push('A metal drip edge finishes it, set with the roofing.');
  return sentences.join(' ');
}
