import type { Board } from '../../../core/cutting/cut-plan-types.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { inchesOf } from '../../../core/units/sixteenths.ts';
import { Figure } from '../parts/figure.tsx';

/**
 * A bought board drawn as a bar, its lengths to one scale for the whole plan: end trim, pieces in the order of the saw
 * with mark and length, and what is left over. Each piece can be walked back.
 * @param longestSixteenths - length that fills the width. [1/16 in]
 * @param endTrimSixteenths - cut off each end. [1/16 in]
 * @param kerfSixteenths - width of the saw's cut. [1/16 in]
 */
export function BoardBar(props: {
  readonly board: Board;
  readonly longestSixteenths: number;
  readonly endTrimSixteenths: number;
  readonly kerfSixteenths: number;
}) {
  const { board } = props;
  const share = (sixteenths: number) => `${(sixteenths / props.longestSixteenths) * 100}%`;
  const starts = board.items.map(
    (_, index) =>
      props.endTrimSixteenths +
      board.items
        .slice(0, index)
        .reduce((sum, item) => sum + item.lengthSixteenths + props.kerfSixteenths, 0),
  );
  const used = (starts.at(-1) ?? 0) + (board.items.at(-1)?.lengthSixteenths ?? 0);
  return (
    <div className="board-bar" style={{ width: share(board.lengthSixteenths) }}>
      {board.items.map((item, index) => (
        <div
          key={item.mark}
          className="board-piece"
          style={{
            left: `${((starts[index] ?? 0) / board.lengthSixteenths) * 100}%`,
            width: `${(item.lengthSixteenths / board.lengthSixteenths) * 100}%`,
          }}
          title={`${item.mark}, ${formatLength(inchesOf(item.lengthSixteenths))}`}
        >
          <span className="board-mark">{item.mark}</span>
          <Figure refText={`piece/${item.mark}`} what={`Length of ${item.mark}`}>
            {formatLength(inchesOf(item.lengthSixteenths))}
          </Figure>
        </div>
      ))}
      {board.offcutSixteenths <= 0 ? null : (
        <div
          className="board-left"
          style={{
            left: `${((used + props.kerfSixteenths) / board.lengthSixteenths) * 100}%`,
            width: `${(board.offcutSixteenths / board.lengthSixteenths) * 100}%`,
          }}
          title={`Left over, ${formatLength(inchesOf(board.offcutSixteenths))}`}
        />
      )}
    </div>
  );
}
