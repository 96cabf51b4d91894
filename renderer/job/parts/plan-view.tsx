import { useMemo } from 'react';
import { drawPlan } from '../../../core/drawings/draw-plan.ts';
import { dressedSection } from '../../../core/lumber/dressed-sizes.ts';
import { DrawingView } from '../../drawings/drawing-view.tsx';
import { useJob } from '../job-context.ts';
import { OldMark } from './old-mark.tsx';

/** The plan of an eave, live while the figures can be worked out. */
export function PlanView(props: { readonly eaveId: string; readonly heightPx: number }) {
  const { computation, walkBack } = useJob();
  const { good } = computation;
  const drawing = useMemo(() => {
    const layout = good?.result.eaves.find((eave) => eave.eaveId === props.eaveId);
    if (good === null || layout === undefined) return null;
    const survey = good.input.survey.eaves.find((eave) => eave.id === props.eaveId);
    const design = good.input.design.eaves.find((eave) => eave.eaveId === props.eaveId);
    const thickness = (section: string | undefined) => dressedSection(section ?? '')?.thicknessIn;
    return drawPlan(layout, {
      plateWidthIn: survey?.plateWidthIn ?? 3.5,
      fasciaThicknessIn: thickness(design?.fascia.stock.section) ?? 1.5,
      blockThicknessIn: thickness(design?.blocks.stock.section) ?? 1.5,
    });
  }, [good, props.eaveId]);
  if (drawing === null) {
    return (
      <p className="drawing-none">The plan is drawn here as soon as the eave and a rafter are measured.</p>
    );
  }
  return <DrawingView drawing={drawing} heightPx={props.heightPx} onRef={walkBack} beside={<OldMark />} />;
}
