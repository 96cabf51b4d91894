import type { EaveDesign, EaveEnd } from '../../../core/eave/design-document.ts';

/** An end that meets nothing. */
export const freeEnd: EaveEnd = { kind: 'free', meets: '' };

/** The ends of an eave, once what one of them met is gone. */
export function withoutMeeting(ends: EaveDesign['ends'], goneId: string): EaveDesign['ends'] {
  return {
    left: ends.left.meets === goneId ? freeEnd : ends.left,
    right: ends.right.meets === goneId ? freeEnd : ends.right,
  };
}
