import { Pin, PinOff } from 'lucide-react';
import type { Board } from '../../../core/cutting/cut-plan-types.ts';
import type { PinnedBoardEntry } from '../../../core/eave/job-cutting.ts';
import { IconButton } from '../../kit/icon-button.tsx';
import type { Documents } from '../editor/documents.ts';
import { withValueAt } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';
import { ChoiceCost } from './choice-cost.tsx';

/** Keeps a board as it is cut now, whatever the plan does besides, or lets it go again; with what that costs. */
export function PinBoard({ board }: { readonly board: Board }) {
  const { editor, documents } = useJob();
  const { pins } = documents.design.cutting;
  const at = pins.findIndex((pin) => isPinOf(pin, board));
  return at < 0 ? (
    <IconButton
      label={`Pin board ${board.number} as it is`}
      icon={<Pin size={15} aria-hidden="true" />}
      onPress={() =>
        editor.change(`pinning board ${board.number}`, (now) =>
          withPins(now, [...now.design.cutting.pins, pinOf(board)]),
        )
      }
    />
  ) : (
    <span className="pinned">
      <IconButton
        label={`Let board ${board.number} go`}
        icon={<PinOff size={15} aria-hidden="true" />}
        onPress={() =>
          editor.change(`letting board ${board.number} go`, (now) =>
            withPins(
              now,
              now.design.cutting.pins.filter((_, index) => index !== at),
            ),
          )
        }
      />
      <span className="tag">pinned</span>
      <ChoiceCost id={`pin/${at}`} than="the board free" />
    </span>
  );
}

/** A board's pieces as a pin, in the order of the saw. */
export function pinOf({ itemId, items }: Board): PinnedBoardEntry {
  return { itemId, marks: items.map(({ mark }) => mark) };
}

/** True where a board is cut just as a pin says. */
export function isPinOf(pin: PinnedBoardEntry, { itemId, items }: Board): boolean {
  return (
    pin.itemId === itemId &&
    pin.marks.length === items.length &&
    items.every(({ mark }) => pin.marks.includes(mark))
  );
}

/** The job with other pins. */
export function withPins(documents: Documents, pins: readonly PinnedBoardEntry[]): Documents {
  return withValueAt(documents, 'design.cutting.pins', pins);
}
