import { type ReactNode, useMemo, useState } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { deckBoards, lowestJoints } from '../../../core/documents/deck-boards.ts';
import { headerDetailOf, nailPatternOf } from '../../../core/documents/joint-drawings.ts';
import { drawDeck } from '../../../core/drawings/draw-deck.ts';
import { drawElevation } from '../../../core/drawings/draw-elevation.ts';
import { drawFasciaLine } from '../../../core/drawings/draw-fascia-line.ts';
import { drawWallBow } from '../../../core/drawings/draw-wall-bow.ts';
import type { Drawing } from '../../../core/drawings/drawing.ts';
import {
  drawSectionAt,
  placeAt,
  type SectionPlace,
  sectionPlaces,
} from '../../../core/drawings/section-at.ts';
import type { EaveParts } from '../../../core/documents/eave-drawings.ts';
import { DrawingView } from '../../drawings/drawing-view.tsx';
import { useJob } from '../job-context.ts';
import { OldMark } from '../parts/old-mark.tsx';
import { useTailHand } from './hand/tail-hand.ts';
import { RakeDrawings } from './rake-view.tsx';
import { StationSteps } from './station-steps.tsx';

/** The drawings of an eave besides its plan: one in view at a time, section and nails at any station. */
export function DrawingsPanel() {
  const { eaveId, layout, madeOf, tail } = useTailHand();
  const { computation } = useJob();
  const parts = useMemo(
    () => (layout === null || madeOf === null ? null : { layout, ...madeOf }),
    [layout, madeOf],
  );
  const places = useMemo(() => (layout === null ? [] : sectionPlaces(layout)), [layout]);
  // A station chosen here holds until another tail is taken up.
  const [chosen, choose] = useState<{ readonly stationIn: number; readonly tailId: string | undefined }>();
  const stationIn =
    chosen !== undefined && chosen.tailId === tail?.id ? chosen.stationIn : (tail?.centreIn ?? 0);
  const place = placeAt(places, stationIn);
  if (parts === null || place === undefined) {
    return (
      <p className="drawing-none">
        Section, fascia, nails and deck are drawn here as soon as a tail can be set: an overhang, and a rafter
        with a free side.
      </p>
    );
  }
  const rakes = computation.good?.result.rakes.filter((rake) => rake.eaveId === eaveId) ?? [];
  const at = {
    parts,
    place,
    steps: (
      <StationSteps
        places={places}
        place={place}
        wallIn={parts.layout.wallLengthIn}
        onStation={(next) => choose({ stationIn: next, tailId: tail?.id })}
      />
    ),
  };
  return (
    <Tabs className="drawing-tabs">
      <TabList aria-label="Drawings" className="drawing-tab-list">
        <Tab id="section">Section</Tab>
        <Tab id="fascia">Fascia</Tab>
        <Tab id="nails">Nails</Tab>
        <Tab id="deck">Deck</Tab>
        <Tab id="wave">Wave</Tab>
        {rakes.map((rake) => (
          <Tab key={rake.rakeId} id={`rake-${rake.rakeId}`}>
            Rake {rake.mark}
          </Tab>
        ))}
      </TabList>
      <TabPanel id="section">
        <SectionDrawing {...at} />
      </TabPanel>
      <TabPanel id="fascia">
        <FasciaDrawing parts={parts} />
      </TabPanel>
      <TabPanel id="nails">
        <NailDrawings {...at} />
      </TabPanel>
      <TabPanel id="deck">
        <DeckDrawing parts={parts} />
      </TabPanel>
      <TabPanel id="wave">
        <WaveDrawings parts={parts} />
      </TabPanel>
      {rakes.map((rake) => (
        <TabPanel key={rake.rakeId} id={`rake-${rake.rakeId}`}>
          <RakeDrawings rake={rake} />
        </TabPanel>
      ))}
    </Tabs>
  );
}

type At = {
  readonly parts: EaveParts;
  readonly place: SectionPlace;
  readonly steps: ReactNode;
};

function SectionDrawing({ parts, place, steps }: At) {
  const drawing = useMemo(
    () => drawSectionAt(place, parts.layout, parts.survey, parts.design),
    [place, parts],
  );
  return <Shown drawing={drawing} heightPx={400} beside={steps} />;
}

function FasciaDrawing({ parts }: { readonly parts: EaveParts }) {
  const { computation } = useJob();
  const input = computation.good?.input;
  const { layout, survey, design } = parts;
  const drawing = useMemo(() => {
    if (layout.fascia.length === 0 || input === undefined) return null;
    const panelJointsIn = lowestJoints(deckBoards(layout, input));
    return drawElevation(layout, survey, design, { panelJointsIn });
  }, [layout, survey, design, input]);
  return drawing === null ? (
    <None>This eave gets no fascia.</None>
  ) : (
    <Shown drawing={drawing} heightPx={360} />
  );
}

function NailDrawings({ parts, place, steps }: At) {
  const { surroundings } = useJob();
  const { fastening } = surroundings.settings;
  const drawings = useMemo(() => {
    if (place.kind === 'rafter') return [];
    const { extender } = place;
    const lap = nailPatternOf(parts, extender, fastening);
    return [
      ...(lap === undefined ? [] : [lap]),
      ...(extender.headers.length === 0 ? [] : [headerDetailOf(parts, extender, fastening)]),
    ];
  }, [parts, place, fastening]);
  const [first, ...others] = drawings;
  if (first === undefined)
    return (
      <>
        <None>Nothing is nailed along a lap here.</None>
        <div className="drawing-line">{steps}</div>
      </>
    );
  return (
    <>
      <Shown drawing={first} heightPx={300} beside={steps} />
      {others.map((drawing) => (
        <Shown key={drawing.title} drawing={drawing} heightPx={300} />
      ))}
    </>
  );
}

function DeckDrawing({ parts }: { readonly parts: EaveParts }) {
  const { computation } = useJob();
  const input = computation.good?.input;
  const { layout } = parts;
  const drawing = useMemo(() => {
    const boards = input === undefined ? [] : deckBoards(layout, input);
    return boards.length === 0 ? null : drawDeck(layout, boards);
  }, [layout, input]);
  return drawing === null ? (
    <None>This eave gets no sheathing.</None>
  ) : (
    <Shown drawing={drawing} heightPx={360} />
  );
}

function WaveDrawings({ parts }: { readonly parts: EaveParts }) {
  const { layout, survey } = parts;
  const heights = useMemo(() => (layout.extenders.length < 2 ? null : drawFasciaLine(layout)), [layout]);
  const bow = useMemo(
    () => (layout.lineInPlan.bowed ? drawWallBow(layout, survey.wallReadings) : null),
    [layout, survey],
  );
  return (
    <>
      {heights === null ? (
        <None>A line is fitted to two tails or more.</None>
      ) : (
        <Shown drawing={heights} heightPx={320} />
      )}
      {bow === null ? null : <Shown drawing={bow} heightPx={320} />}
    </>
  );
}

function Shown(props: { readonly drawing: Drawing; readonly heightPx: number; readonly beside?: ReactNode }) {
  const { walkBack } = useJob();
  return (
    <DrawingView
      drawing={props.drawing}
      heightPx={props.heightPx}
      onRef={walkBack}
      beside={
        <>
          {props.beside}
          <OldMark />
        </>
      }
    />
  );
}

function None({ children }: { readonly children: ReactNode }) {
  return <p className="drawing-none">{children}</p>;
}
