import { useCommand } from '../../../commands/command-handlers.ts';
import type { CommandId } from '../../../commands/command-table.ts';
import type { Extender } from '../../../../core/layout/layout-types.ts';
import { isPinned } from '../../editor/tail-edits.ts';
import { useTailHand } from './tail-hand.ts';
import {
  hangBehind,
  pinMove,
  releaseMove,
  removeMove,
  stepTail,
  type TailMove,
  type Tails,
} from './tail-moves.ts';
import { useTailMoves } from './use-tail-moves.ts';

/** What the commands do with the tail that is taken up. */
export function TailCommands() {
  const { tail, take } = useTailHand();
  const { tails } = useTailMoves();
  if (tails === null || tail === undefined) return null;
  const { extenders } = tails.layout;
  const at = extenders.findIndex(({ id }) => id === tail.id);
  const step = (by: number) => () => {
    const next = extenders[at + by];
    if (next !== undefined) take(next.id);
  };
  const held = isPinned(tails.design, tail);
  return (
    <>
      <Does id="tail.before" run={step(-1)} />
      <Does id="tail.next" run={step(1)} />
      <Moves id="tail.left" move={stepTail(tails, tail, -1 / 16)} />
      <Moves id="tail.right" move={stepTail(tails, tail, 1 / 16)} />
      <Moves id="tail.inch-left" move={stepTail(tails, tail, -1)} />
      <Moves id="tail.inch-right" move={stepTail(tails, tail, 1)} />
      <Moves id="tail.hang" move={hangBehind(tails, tail)} />
      {held ? (
        <Moves id="tail.release" move={releaseMove(tails, tail)} />
      ) : (
        <Moves id="tail.pin" move={pinMove(tails, tail)} />
      )}
      <RemovesOne tails={tails} tail={tail} />
    </>
  );
}

function RemovesOne(props: { readonly tails: Tails; readonly tail: Extender }) {
  const { tails, tail } = props;
  return <Moves id="tail.remove" move={tail.inPlace ? null : removeMove(tails, tail)} />;
}

/** A command that changes the tails; without a move the keys are taken all the same, so that the page does not scroll. */
function Moves(props: { readonly id: CommandId; readonly move: TailMove | null }) {
  const { go } = useTailMoves();
  return <Does id={props.id} run={() => go(props.move)} />;
}

function Does(props: { readonly id: CommandId; readonly run: () => void }) {
  useCommand(props.id, props.run);
  return null;
}
