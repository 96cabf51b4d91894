import { ChevronLeft, ChevronRight } from 'lucide-react';
import { useMemo, useState } from 'react';
import { drawLookout } from '../../../core/drawings/draw-lookout.ts';
import { drawRake } from '../../../core/drawings/draw-rake.ts';
import type { RakeLayout } from '../../../core/rake/rake-types.ts';
import { rakeSoffitThicknessIn } from '../../../core/takeoff/rake-soffit.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { inchesOf } from '../../../core/units/sixteenths.ts';
import { DrawingView } from '../../drawings/drawing-view.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { Caution } from '../parts/caution.tsx';
import { Figure } from '../parts/figure.tsx';
import { OldMark } from '../parts/old-mark.tsx';

/** The pieces of each rake of an eave as laid out; its drawings stand among the others. */
export function RakeTables({ eaveId }: { readonly eaveId: string }) {
  const { computation } = useJob();
  const rakes = computation.good?.result.rakes.filter((rake) => rake.eaveId === eaveId) ?? [];
  return rakes.map((rake) => <RakeTable key={rake.rakeId} rake={rake} />);
}

/** A rake in elevation and at one lookout, to scale. */
export function RakeDrawings({ rake }: { readonly rake: RakeLayout }) {
  return (
    <div className="rake-drawings">
      <RakeElevation rake={rake} />
      <LookoutView rake={rake} />
    </div>
  );
}

function RakeElevation({ rake }: { readonly rake: RakeLayout }) {
  const { computation, walkBack } = useJob();
  const { good } = computation;
  const drawing = useMemo(() => {
    const layout = good?.result.eaves.find((eave) => eave.eaveId === rake.eaveId);
    const survey = good?.input.survey.eaves.find((eave) => eave.id === rake.eaveId);
    const design = good?.input.design.eaves.find((eave) => eave.eaveId === rake.eaveId);
    return layout && survey && design ? drawRake(rake, { layout, survey, design }) : null;
  }, [good, rake]);
  return drawing === null ? null : (
    <DrawingView drawing={drawing} heightPx={460} onRef={walkBack} beside={<OldMark />} />
  );
}

/** One lookout in place, cut square to the slope; steps from the eave up. */
function LookoutView({ rake }: { readonly rake: RakeLayout }) {
  const { computation, walkBack } = useJob();
  const [place, setPlace] = useState(1);
  const at = Math.max(0, Math.min(place, rake.lookouts.length - 1));
  const lookout = rake.lookouts[at];
  const { good } = computation;
  const drawing = useMemo(() => {
    const eave = good?.input.survey.eaves.find(({ id }) => id === rake.eaveId);
    const survey = good?.input.survey.rakes.find(({ id }) => id === rake.rakeId);
    return good && lookout && eave && survey
      ? drawLookout(
          rake,
          lookout,
          eave.deckThicknessIn,
          survey.finishIn,
          rakeSoffitThicknessIn(good.input, rake.rakeId),
        )
      : null;
  }, [good, rake, lookout]);
  if (drawing === null || lookout === undefined) return null;
  const what = rake.kind === 'ladder' ? 'rung' : 'lookout';
  return (
    <DrawingView
      drawing={drawing}
      heightPx={260}
      onRef={walkBack}
      beside={
        <>
          <IconButton
            label={`The ${what} below`}
            icon={<ChevronLeft size={16} aria-hidden="true" />}
            isDisabled={at === 0}
            onPress={() => setPlace(at - 1)}
          />
          <span role="status">
            <strong>{lookout.mark}</strong>, {formatLength(lookout.alongIn)} up the slope, {at + 1} of{' '}
            {rake.lookouts.length}
          </span>
          <IconButton
            label={`The ${what} above`}
            icon={<ChevronRight size={16} aria-hidden="true" />}
            isDisabled={at === rake.lookouts.length - 1}
            onPress={() => setPlace(at + 1)}
          />
        </>
      }
    />
  );
}

/** Every piece of a rake, from the eave up: where it goes and how long it is cut. */
function RakeTable({ rake }: { readonly rake: RakeLayout }) {
  const ref = (key: string) => `rake/${rake.rakeId}/${key}`;
  const boards = [
    ...rake.rails.map((board) => ({ board, what: 'Rail', key: 'rail' })),
    ...rake.barge.map((board) => ({ board, what: 'Barge rafter', key: 'barge' })),
    ...rake.fascia.map((board) => ({ board, what: 'Rake fascia', key: 'fascia' })),
  ];
  return (
    <Panel
      title={`Pieces of rake ${rake.mark}: ${rake.lookouts.length} ${rake.kind === 'ladder' ? 'rungs' : 'lookouts'}`}
      look="flush"
      actions={<OldMark />}
    >
      <table className="table">
        <caption className="visually-hidden">Pieces of {rake.name}</caption>
        <thead>
          <tr>
            <th scope="col">Mark</th>
            <th scope="col" className="align-right">
              Up the slope
            </th>
            <th scope="col" className="align-right">
              Cut
            </th>
            <th scope="col">Across</th>
            <th scope="col">Inner end at</th>
            <th scope="col" className="align-right">
              Backspan
            </th>
          </tr>
        </thead>
        <tbody>
          {rake.lookouts.map((lookout) => (
            <tr key={lookout.mark}>
              <th scope="row" className="no-wrap">
                {lookout.mark}
              </th>
              <td className="align-right">{formatLength(lookout.alongIn)}</td>
              <td className="align-right">
                <Figure refText={ref(`lookout/${lookout.mark}`)} what={`Length of ${lookout.mark}`}>
                  {formatLength(inchesOf(lookout.lengthSixteenths))}
                </Figure>
                {lookout.block === null
                  ? null
                  : ` and ${lookout.block.mark} ${formatLength(inchesOf(lookout.block.lengthSixteenths))}`}
              </td>
              <td>{lookout.crosses.map(({ label }) => label).join(', ')}</td>
              <td>{lookout.meets?.label ?? ''}</td>
              <td className="align-right">
                {lookout.backspanIn === null ? '' : formatLength(lookout.backspanIn)}
              </td>
            </tr>
          ))}
          {boards.map(({ board, what, key }) => (
            <tr key={board.mark}>
              <th scope="row" className="no-wrap">
                {board.mark}
              </th>
              <td className="align-right">
                {formatLength(board.fromIn)} to {formatLength(board.toIn)}
              </td>
              <td className="align-right">
                <Figure refText={ref(key)} what={`Length of ${board.mark}`}>
                  {formatLength(inchesOf(board.lengthSixteenths))}
                </Figure>
              </td>
              <td colSpan={3}>{what}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Caution />
    </Panel>
  );
}
