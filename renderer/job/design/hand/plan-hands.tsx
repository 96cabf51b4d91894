import { type CSSProperties, type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react';
import { tailEnd, backspanLevel } from '../../../../core/drawings/plan-view.ts';
import type { Extender } from '../../../../core/layout/layout-types.ts';
import type { OnScreen } from '../../../drawings/fit-drawing.ts';
import { useTailHand } from './tail-hand.ts';
import { TailMenu } from './tail-menu.tsx';
import { flagWords, isClashing, tailSentence } from './tail-words.ts';
import { useTailDrag } from './use-tail-drag.ts';

/** Least width that a finger or pointer finds, where the neighbours leave it. [px] */
const leastWidthPx = 16;

/**
 * The tails of the plan to take hold of: each is a button over its piece; the one taken up is dragged along the wall, moved
 * and stepped through by the keys of the command table, and opens what can be done with it.
 * @param onScreen - the plan as it is painted.
 * @param hold - called with the painting whose scale is kept as a drag begins, and with null as it ends.
 */
export function PlanHands(props: {
  readonly onScreen: OnScreen;
  readonly hold: (like: OnScreen | null) => void;
}) {
  const { onScreen } = props;
  const hand = useTailHand();
  const group = useRef<HTMLDivElement>(null);
  const menuTrigger = useRef<Element>(null);
  const [menuAt, setMenuAt] = useState<string | null>(null);
  const openMenu = (id: string): void => {
    menuTrigger.current = gripOf(group.current, id);
    setMenuAt(id);
  };
  const drag = useTailDrag({ group, onScreen, hold: props.hold, openMenu });
  const takenId = hand.tail?.id;
  useFocusFollows(group, takenId);
  const tails = hand.layout?.extenders;
  const widths = useMemo(() => widthsOf(tails ?? [], onScreen.painted.pxPerInch), [tails, onScreen]);
  if (tails === undefined) return null;
  const first = tails.find(({ id }) => id === takenId)?.id ?? tails[0]?.id;

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || !hand.isMoving) return;
    event.stopPropagation();
    drag.cancel();
  };

  return (
    <div
      ref={group}
      className="tail-hands"
      role="group"
      aria-label="Tails on the plan. Up and down step from one to the next, left and right move, Enter opens what can be done."
      data-keys="tails"
      onKeyDown={onKeyDown}
      {...drag.onGroup}
    >
      {tails.map((tail, index) => {
        const isTaken = tail.id === takenId;
        const flag = isTaken && hand.isMoving ? flagWords(tail) : isClashing(tail) ? tail.clash : null;
        return (
          <div key={tail.id} className="tail-hand" style={placeOf(tail, widths[index] ?? 0, onScreen)}>
            <button
              type="button"
              className={isClashing(tail) ? 'tail-grip tail-grip-clash' : 'tail-grip'}
              aria-label={tailSentence(tail)}
              aria-pressed={isTaken}
              aria-haspopup="menu"
              data-tail={tail.id}
              tabIndex={tail.id === first ? 0 : -1}
              onFocus={() => {
                if (!isTaken) hand.take(tail.id);
              }}
              onContextMenu={(event) => {
                event.preventDefault();
                openMenu(tail.id);
              }}
              {...drag.onGrip(tail, isTaken)}
            />
            {flag === null ? null : (
              <span className={isClashing(tail) ? 'tail-flag tail-flag-clash' : 'tail-flag'}>
                {isClashing(tail) ? <span aria-hidden="true">&#9650; </span> : null}
                {flag}
              </span>
            )}
          </div>
        );
      })}
      <TailMenu trigger={menuTrigger} tailId={menuAt} onClose={() => setMenuAt(null)} />
    </div>
  );
}

function gripOf(group: HTMLElement | null, tailId: string): HTMLElement | null {
  return group?.querySelector<HTMLElement>(`[data-tail="${CSS.escape(tailId)}"]`) ?? null;
}

/** A tail's room on the screen, in the drawing's pixels. */
function placeOf(tail: Extender, widthPx: number, { painted }: OnScreen): CSSProperties {
  const { originPx, pxPerInch } = painted;
  const topIn = backspanLevel(tail) - tail.wallOutIn;
  return {
    left: originPx[0] + tail.centreIn * pxPerInch - widthPx / 2,
    width: widthPx,
    top: originPx[1] - topIn * pxPerInch,
    height: (topIn - tailEnd(tail)) * pxPerInch,
  };
}

/** How wide each tail can be taken hold of, so that neighbours do not cover one another. [px] */
function widthsOf(tails: readonly Extender[], pxPerInch: number): readonly number[] {
  return tails.map((tail, index) => {
    const own = (tail.rightIn - tail.leftIn) * pxPerInch;
    const toNext = [tails[index - 1], tails[index + 1]].map((next) =>
      next === undefined ? Infinity : Math.abs(next.centreIn - tail.centreIn) * pxPerInch,
    );
    return Math.max(own, Math.min(leastWidthPx, ...toNext));
  });
}

/** Brings the focus along where another tail is taken up while one of them has it. */
function useFocusFollows(
  group: { readonly current: HTMLDivElement | null },
  takenId: string | undefined,
): void {
  const hadFocus = useRef(false);
  useEffect(() => {
    const element = group.current;
    const onFocus = (event: FocusEvent): void => {
      hadFocus.current = element !== null && event.target instanceof Node && element.contains(event.target);
    };
    document.addEventListener('focusin', onFocus);
    return () => document.removeEventListener('focusin', onFocus);
  }, [group]);
  useEffect(() => {
    if (!hadFocus.current || takenId === undefined) return;
    const grip = gripOf(group.current, takenId);
    if (grip !== document.activeElement) grip?.focus();
  }, [group, takenId]);
}
