import { type PointerEvent, type RefObject, useCallback, useRef } from 'react';
import type { Extender } from '../../../../core/layout/layout-types.ts';
import type { OnScreen } from '../../../drawings/fit-drawing.ts';
import { dropPlace } from '../../editor/drop-place.ts';
import { useTailHand } from './tail-hand.ts';
import { moveTo, type TailMove, type Tails, thicknessOf } from './tail-moves.ts';

/** Below this a press is a press, not a drag. [px] */
const dragsFromPx = 4;
/** How near the side of a rafter draws a tail: as far as a pointer is steady, and not far on the wall. */
const reachPx = 10;
const mostReachIn = 3;
/** Beside the ends of the view a drag moves the view along. [px] */
const edgePx = 28;

type Drag = {
  readonly tail: Extender;
  /** As they stood when the drag began. */
  readonly tails: Tails;
  readonly onScreen: OnScreen;
  readonly room: HTMLElement | null;
  readonly fromX: number;
  readonly fromScroll: number;
  readonly wasTaken: boolean;
  readonly hasMoved: boolean;
  readonly move: TailMove | null;
};

/**
 * Dragging a tail along the wall: the rest of the eave is solved again as it goes; letting go makes it a step that can be
 * undone, Escape lets it be.
 */
export function useTailDrag(options: {
  readonly group: RefObject<HTMLDivElement | null>;
  readonly onScreen: OnScreen;
  readonly hold: (like: OnScreen | null) => void;
  readonly openMenu: (tailId: string) => void;
}) {
  const { group, onScreen, hold, openMenu } = options;
  const { designIndex, design, layout, take, show, make } = useTailHand();
  const drag = useRef<Drag | null>(null);

  const end = useCallback(() => {
    drag.current = null;
    hold(null);
  }, [hold]);
  const cancel = useCallback(() => {
    show(null);
    end();
  }, [show, end]);

  const moved = (event: PointerEvent): void => {
    const now = drag.current;
    if (now === null) return;
    const { tail, tails, room } = now;
    const scrolled = (room?.scrollLeft ?? 0) - now.fromScroll;
    const byPx = event.clientX - now.fromX + scrolled;
    if (!now.hasMoved && Math.abs(byPx) < dragsFromPx) return;
    if (!now.hasMoved) hold(now.onScreen);
    scrollAlong(room, event.clientX);
    const { pxPerInch } = now.onScreen.painted;
    const place = dropPlace(
      tails.layout,
      thicknessOf(tail),
      tail.centreIn + byPx / pxPerInch,
      Math.min(mostReachIn, reachPx / pxPerInch),
    );
    const move = moveTo(tails, tail, place);
    drag.current = { ...now, hasMoved: true, move };
    show({ edit: move?.edit ?? null, tailId: move?.thenTake ?? tail.id });
  };

  return {
    cancel,
    onGroup: {
      onPointerMove: moved,
      onPointerUp: () => {
        const now = drag.current;
        if (now === null) return;
        if (now.move !== null) make(now.move.what, now.move.edit, now.move.thenTake);
        else show(null);
        if (!now.hasMoved && now.wasTaken) openMenu(now.tail.id);
        end();
      },
      onPointerCancel: cancel,
    },
    onGrip: (tail: Extender, isTaken: boolean) => ({
      onPointerDown: (event: PointerEvent) => {
        // The drawing under it would be moved instead.
        event.stopPropagation();
        if (event.button !== 0 || layout === null) return;
        const room = group.current?.closest<HTMLElement>('.drawing-room') ?? null;
        group.current?.setPointerCapture(event.pointerId);
        take(tail.id);
        drag.current = {
          tail,
          tails: { designIndex, design, layout },
          onScreen,
          room,
          fromX: event.clientX,
          fromScroll: room?.scrollLeft ?? 0,
          wasTaken: isTaken,
          hasMoved: false,
          move: null,
        };
      },
      onClick: (event: { readonly detail: number }) => {
        // By keyboard: a pointer's press is settled as it is let go.
        if (event.detail === 0) openMenu(tail.id);
      },
    }),
  };
}

function scrollAlong(room: HTMLElement | null, clientX: number): void {
  if (room === null) return;
  const box = room.getBoundingClientRect();
  if (clientX > box.right - edgePx) room.scrollBy(edgePx / 2, 0);
  else if (clientX < box.left + edgePx) room.scrollBy(-edgePx / 2, 0);
}
