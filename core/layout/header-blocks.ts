import { sixteenthsDown } from '../units/sixteenths.ts';
import type { Extender, HeaderBlock, PlacedRafter } from './layout-types.ts';
import { pieceMark } from './marks.ts';

/**
 * An extender beside a rafter that reaches back past a header by no more than this is cut to it; one that reaches
 * further takes its thickness out of the header. [in] Common practice, no source.
 */
const cutToHeaderIn = 0.5;

type Solved = Pick<Extender, 'id' | 'method' | 'rafterNumber' | 'leftIn' | 'rightIn' | 'section'>;

/**
 * The header blocks that hung tails are nailed to (at the plate the bay's own blocks hold them): one across the bay at the back end of each, its near face against the
 * tail's back end, from face to face of what stands there up the slope: the rafters, or an extender that reaches back past
 * it. Joists lie at the plate, below the rafters, and take nothing out. Tails of one bay that end at the same place share
 * one block, which is told with each and marked once. Lengths are rounded down to a sixteenth, so that a block goes in.
 * Worked: rafters 1-1/2 thick at 16 and 40 -> a block of 22-1/2 in.; with an extender that reaches past -> 21 in.
 * @param rafters - in order. [in]
 * @param tails - solved, from left to right. [in]
 * @param letter - of the eave, for the marks.
 * @returns the blocks of each hung tail, by its id. [in, 1/16 in]
 */
export function headerBlocks(
  rafters: readonly PlacedRafter[],
  tails: readonly Solved[],
  letter: string,
): ReadonlyMap<string, readonly HeaderBlock[]> {
  const blocks = new Map<string, readonly HeaderBlock[]>();
  const cut: HeaderBlock[] = [];
  for (const tail of tails) {
    const left = rafters[tail.rafterNumber - 1];
    const right = rafters[tail.rafterNumber];
    if (tail.method !== 'block-hung' || left === undefined || right === undefined) continue;
    const alongIn = tail.section.backspanIn;
    const { fromIn, toIn } = clearUpSlope(left, right, tails, alongIn);
    const shared = cut.find(
      (block) =>
        Math.abs(block.alongIn - alongIn) <= cutToHeaderIn &&
        block.leftIn === fromIn &&
        block.rightIn === toIn,
    );
    const block: HeaderBlock = shared ?? {
      mark: pieceMark(letter, 'H', cut.length + 1),
      place: 'back',
      leftIn: fromIn,
      rightIn: toIn,
      alongIn,
      lengthSixteenths: sixteenthsDown(toIn - fromIn),
      sharedWith: null,
    };
    if (shared === undefined) cut.push(block);
    blocks.set(tail.id, [shared === undefined ? block : { ...block, sharedWith: ownerOf(blocks, block) }]);
  }
  return blocks;
}

function ownerOf(blocks: ReadonlyMap<string, readonly HeaderBlock[]>, block: HeaderBlock): string {
  for (const [id, own] of blocks) if (own.includes(block)) return id;
  throw new Error('a shared block without its first tail');
}

/** The clear distance between two rafters at a header: an extender beside either that reaches back past it counts. */
function clearUpSlope(
  left: PlacedRafter,
  right: PlacedRafter,
  tails: readonly Solved[],
  alongIn: number,
): { readonly fromIn: number; readonly toIn: number } {
  let fromIn = left.rightFaceIn;
  let toIn = right.leftFaceIn;
  for (const tail of tails) {
    if (tail.method === 'block-hung' || tail.section.backspanIn <= alongIn + cutToHeaderIn) continue;
    if (tail.rafterNumber === left.number && tail.leftIn >= left.centreIn)
      fromIn = Math.max(fromIn, tail.rightIn);
    if (tail.rafterNumber === right.number && tail.rightIn <= right.centreIn)
      toIn = Math.min(toIn, tail.leftIn);
  }
  return { fromIn, toIn };
}
