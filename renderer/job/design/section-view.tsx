import { ChevronLeft, ChevronRight } from 'lucide-react';
import { useMemo, useState } from 'react';
import { drawSection } from '../../../core/drawings/draw-section.ts';
import { DrawingView } from '../../drawings/drawing-view.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { useJob } from '../job-context.ts';
import { OldMark } from '../parts/old-mark.tsx';

/** The section at one tail, to scale; steps through the eave rafter by rafter. */
export function SectionView({ eaveId }: { readonly eaveId: string }) {
  const { computation, walkBack } = useJob();
  const [place, setPlace] = useState(0);
  const { good } = computation;
  const layout = good?.result.eaves.find((eave) => eave.eaveId === eaveId);
  const at = Math.max(0, Math.min(place, (layout?.extenders.length ?? 1) - 1));
  const extender = layout?.extenders[at];
  const drawing = useMemo(() => {
    const survey = good?.input.survey.eaves.find((eave) => eave.id === eaveId);
    const design = good?.input.design.eaves.find((eave) => eave.eaveId === eaveId);
    return layout && extender && survey && design ? drawSection(layout, extender, survey, design) : null;
  }, [good, layout, extender, eaveId]);
  if (drawing === null || layout === undefined || extender === undefined) {
    return (
      <p className="drawing-none">
        The section is drawn here as soon as a tail can be set: an overhang, and a rafter with a free side.
      </p>
    );
  }
  return (
    <DrawingView
      drawing={drawing}
      heightPx={400}
      onRef={walkBack}
      beside={
        <>
          <IconButton
            label="Section at the tail before"
            icon={<ChevronLeft size={16} aria-hidden="true" />}
            isDisabled={at === 0}
            onPress={() => setPlace(at - 1)}
          />
          <span role="status">
            <strong>{extender.mark}</strong> at rafter {extender.rafterNumber}, {at + 1} of{' '}
            {layout.extenders.length}
          </span>
          <IconButton
            label="Section at the next tail"
            icon={<ChevronRight size={16} aria-hidden="true" />}
            isDisabled={at === layout.extenders.length - 1}
            onPress={() => setPlace(at + 1)}
          />
          <OldMark />
        </>
      }
    />
  );
}
