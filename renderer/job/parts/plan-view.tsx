import { useMemo } from 'react';
import { DrawingView } from '../../drawings/drawing-view.tsx';
import { useMeasuredEave } from '../compute/use-measured-eave.ts';
import { useJob } from '../job-context.ts';
import { OldMark } from './old-mark.tsx';
import { useWindowHeight } from './use-window-height.ts';
import { designedPlan, measuredPlan } from './plan-drawing.ts';

/** A long eave takes a strip of the window, and leaves the rest to the entries. [px] */
function planHeight(windowPx: number): number {
  return Math.round(Math.min(440, Math.max(300, windowPx * 0.45)));
}

/**
 * The plan of an eave: with its new work while the figures follow from what is typed, else the old framing as soon as it
 * is measured. Figures from before stay where the readings did not change since.
 */
export function PlanView({ eaveId }: { readonly eaveId: string }) {
  const { documents, computation, walkBack } = useJob();
  const { good, current } = computation;
  const measured = useMeasuredEave(eaveId);
  const heightPx = planHeight(useWindowHeight());
  const eave = documents.survey.eaves.find(({ id }) => id === eaveId);
  const designed = useMemo(() => (good === null ? null : designedPlan(good, eaveId)), [good, eaveId]);
  const asMeasured = useMemo(
    () => (eave === undefined || measured === undefined ? null : measuredPlan(eave, measured)),
    [eave, measured],
  );
  const wasMeasured = good?.input.survey.eaves.find((one) => one.id === eaveId);
  const isMeasuredAnew = !current && wasMeasured !== eave && measured?.problem === null;
  const drawing = designed === null || isMeasuredAnew ? (asMeasured ?? designed) : designed;
  if (drawing === null) {
    return (
      <p className="drawing-none">The plan is drawn here as soon as the wall and a rafter are measured.</p>
    );
  }
  return (
    <DrawingView
      drawing={drawing}
      heightPx={heightPx}
      onRef={walkBack}
      beside={
        drawing === designed ? (
          <OldMark />
        ) : (
          <span className="muted">
            The old framing as measured; the new work is drawn once it is designed.
          </span>
        )
      }
    />
  );
}
