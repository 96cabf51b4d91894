import type { RakeDesign } from '../eave/design-document.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import { assertNever } from '../result.ts';
import type { RakeTaskKey } from './rake-labour-tasks.ts';
import { rakeSoffitLengthIn } from './rake-soffit.ts';

/** Length up the slope that boards, edge and work are counted by: from the corner's long point to the ridge. [in] */
export function rakeLengthIn(rake: Pick<RakeLayout, 'alongIn' | 'corner'>): number {
  return rake.alongIn + rake.corner.rakeLongAlongIn;
}

/**
 * How much of a task a rake asks for. [sides, LF, pieces, SF]
 * Worked: 178 up the slope with a long point of 0.84 -> 14.9 LF of framing, barge and fascia.
 */
export function rakeTaskQuantity(
  key: RakeTaskKey,
  rake: RakeLayout,
  design: Pick<RakeDesign, 'dripEdge' | 'soffit'>,
): number {
  const feet = rakeLengthIn(rake) / 12;
  switch (key) {
    case 'rake-set-up':
    case 'rake-clean-up':
    case 'rake-corner':
      return 1;
    case 'rake-strip-back':
    case 'rake-framing':
    case 'rake-barge':
      return feet;
    case 'rake-fascia':
      return rake.fascia.length === 0 ? 0 : feet;
    case 'rake-sheathing':
      return rake.strip?.areaSqFt ?? 0;
    case 'rake-soffit':
      return rakeSoffitLengthIn(rake, design) / 12;
    case 'rake-drip-edge':
      return design.dripEdge ? feet : 0;
    default:
      return assertNever(key);
  }
}
