import type { Extender } from '../../../../core/layout/layout-types.ts';
import { choiceWords } from '../../../../core/trace/choice-words.ts';
import { formatLength } from '../../../../core/units/format-length.ts';
import { isHung } from '../../editor/tail-edits.ts';

/** Where a tail stands and how it is fastened: `right of rafter 6 at 5' 3-1/4", beside the rafter`. */
export function placeWords(tail: Extender): string {
  const at = formatLength(tail.centreIn);
  return isHung(tail)
    ? `at ${at}, ${choiceWords.method[tail.method]}`
    : `${tail.side} of rafter ${tail.rafterNumber} at ${at}, ${choiceWords.method[tail.method]}`;
}

/** Why a tail stands where it does. */
export function whyWords(tail: Extender): string {
  switch (tail.because) {
    case 'preferred':
      return 'Preferred side';
    case 'pinned':
      return 'Pinned';
    case 'moved':
      return isHung(tail) ? 'No side free' : 'Preferred side taken';
    case 'built':
      return 'As built';
    case 'gap':
      return 'For the largest gap';
    case 'panel-joint':
      return 'Under a panel joint';
    case 'even':
      return 'To even the gaps';
    default:
      return tail.because satisfies never;
  }
}

/** Whether something stands where the tail does. Where the program moved it, the clash is what it moved away from. */
export function isClashing(tail: Extender): boolean {
  return tail.clash !== null && (tail.because === 'pinned' || tail.because === 'built');
}

/** What stands at a tail while it is moved: its station, and what it runs into. */
export function flagWords(tail: Extender): string {
  const clash = isClashing(tail) ? `: ${tail.clash ?? ''}` : '';
  const place = isHung(tail) ? 'hung' : `${tail.side} of ${tail.rafterNumber}`;
  return `${formatLength(tail.centreIn)}, ${place}${clash}`;
}

/** All of it in one sentence, read aloud as a tail is taken up or moved. */
export function tailSentence(tail: Extender): string {
  const clash = isClashing(tail) ? ` Clash: ${tail.clash ?? ''}.` : '';
  const place = tail.inPlace ? ' In place.' : '';
  return `${tail.mark}, ${placeWords(tail)}. ${whyWords(tail)}.${clash}${place}`;
}
