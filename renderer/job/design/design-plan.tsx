import { useCallback, useMemo, useState } from 'react';
import { drawPlan, planSizes } from '../../../core/drawings/draw-plan.ts';
import { DrawingView } from '../../drawings/drawing-view.tsx';
import type { OnScreen } from '../../drawings/fit-drawing.ts';
import { useJob } from '../job-context.ts';
import { OldMark } from '../parts/old-mark.tsx';
import { PlanView } from '../parts/plan-view.tsx';
import { useWindowHeight } from '../parts/use-window-height.ts';
import { PlanHands } from './hand/plan-hands.tsx';
import { TailBar } from './hand/tail-bar.tsx';
import { TailCommands } from './hand/tail-commands.tsx';
import { useTailHand } from './hand/tail-hand.ts';

/** With a running dimension at every tail a plan takes more of the window than on Survey. [px] */
function planHeight(windowPx: number): number {
  return Math.round(Math.min(480, Math.max(320, windowPx * 0.54)));
}

/** The plan of an eave with its tails in the person's hand; the old framing alone until there is something designed. */
export function DesignPlan() {
  const { walkBack } = useJob();
  const { eaveId, layout, madeOf } = useTailHand();
  const heightPx = planHeight(useWindowHeight());
  const [like, hold] = useState<OnScreen | null>(null);
  const drawing = useMemo(
    () => (layout && madeOf ? drawPlan(layout, planSizes(madeOf.survey, madeOf.design)) : null),
    [layout, madeOf],
  );
  const over = useCallback((onScreen: OnScreen) => <PlanHands onScreen={onScreen} hold={hold} />, []);
  if (drawing === null) return <PlanView eaveId={eaveId} />;
  return (
    <div className="plan-in-hand">
      <TailCommands />
      <DrawingView
        drawing={drawing}
        heightPx={heightPx}
        onRef={walkBack}
        like={like}
        over={over}
        beside={<OldMark />}
      />
      <TailBar />
    </div>
  );
}
