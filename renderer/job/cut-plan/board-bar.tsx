import type { Saw } from '../../../core/cutting/board-use.ts';
import type { Board } from '../../../core/cutting/cut-plan-types.ts';
import { type CutLine, layBoard } from '../../../core/drawings/board-geometry.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { inchesOf } from '../../../core/units/sixteenths.ts';
import { Figure } from '../parts/figure.tsx';

/** Height of the drawn bar in units of its own drawing; across it, nothing is to scale. */
const barHeight = 100;

/**
 * A board drawn as a bar, its lengths to one scale for the whole plan: end trim and saw cuts, pieces in the order of the
 * saw with slanted ends as they are, mark and length, and what is left over. Each piece can be walked back.
 * @param longestSixteenths - length that fills the width. [1/16 in]
 * @param saw - kerf, end trim and depth. [1/16 in]
 */
export function BoardBar(props: {
  readonly board: Board;
  readonly longestSixteenths: number;
  readonly saw: Saw;
}) {
  const { board, saw } = props;
  const length = board.lengthSixteenths;
  const { pieces, leftOver } = layBoard(saw, board);
  const share = (sixteenths: number) => `${(sixteenths / length) * 100}%`;
  return (
    <div className="board-bar" style={{ width: `${(length / props.longestSixteenths) * 100}%` }}>
      <svg
        className="board-drawn"
        viewBox={`0 0 ${length} ${barHeight}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        {pieces.map(({ item, from, to }) => (
          <polygon key={item.mark} className="board-shape" points={corners(from, to)} />
        ))}
      </svg>
      {pieces.map(({ item, from, to }) => (
        <div
          key={item.mark}
          className="board-piece"
          style={{ left: share(from.bottom), width: share(to.top - from.bottom) }}
          title={`${item.mark}, ${formatLength(inchesOf(item.lengthSixteenths))}`}
        >
          <span className="board-mark">{item.mark}</span>
          <Figure refText={`piece/${item.mark}`} what={`Length of ${item.mark}`}>
            {formatLength(inchesOf(item.lengthSixteenths))}
          </Figure>
        </div>
      ))}
      {leftOver === null ? null : (
        <div
          className="board-left"
          style={{
            left: share(leftOver.from.bottom),
            width: share(leftOver.to.bottom - leftOver.from.bottom),
          }}
          title={`Left over, ${formatLength(inchesOf(board.offcutSixteenths))}`}
        />
      )}
    </div>
  );
}

function corners(from: CutLine, to: CutLine): string {
  return `${from.top},0 ${to.top},0 ${to.bottom},${barHeight} ${from.bottom},${barHeight}`;
}
