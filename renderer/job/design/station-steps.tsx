import { ChevronLeft, ChevronRight } from 'lucide-react';
import { useState } from 'react';
import { type SectionPlace, placeAt } from '../../../core/drawings/section-at.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { SettledField } from '../../fields/settled-field.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { readStation } from './hand/station-entry.tsx';

const stepKeys: Readonly<Record<string, -1 | 1>> = {
  ArrowLeft: -1,
  ArrowDown: -1,
  ArrowRight: 1,
  ArrowUp: 1,
};

/** Where along the wall a drawing is cut: by steps from tail to tail, by a slider, or by a typed station. */
export function StationSteps(props: {
  readonly places: readonly SectionPlace[];
  readonly place: SectionPlace;
  readonly wallIn: number;
  readonly onStation: (stationIn: number) => void;
}) {
  const { places, place, wallIn, onStation } = props;
  const [draft, setDraft] = useState<string | null>(null);
  const at = places.indexOf(place);
  const step = (by: number) => () => {
    const next = places[at + by];
    if (next !== undefined) onStation(next.stationIn);
  };
  const words = placeWords(place);
  return (
    <div className="station-steps">
      <IconButton
        label="Section at the tail before"
        icon={<ChevronLeft size={16} aria-hidden="true" />}
        isDisabled={at === 0}
        onPress={step(-1)}
      />
      <input
        type="range"
        aria-label="Station along the wall"
        aria-valuetext={words}
        min={0}
        max={wallIn}
        step={1}
        value={place.stationIn}
        onChange={(event) => onStation(placeAt(places, Number(event.target.value))?.stationIn ?? 0)}
        onKeyDown={(event) => {
          // A step of the slider is a step from tail to tail, not an inch that leads back to the same one.
          const by = stepKeys[event.key];
          if (by === undefined) return;
          event.preventDefault();
          step(by)();
        }}
      />
      <IconButton
        label="Section at the next tail"
        icon={<ChevronRight size={16} aria-hidden="true" />}
        isDisabled={at === places.length - 1}
        onPress={step(1)}
      />
      <SettledField
        label="Station to draw"
        labelHidden
        text={formatLength(place.stationIn)}
        draft={draft}
        onDraft={setDraft}
        read={(text) => readStation(text, 0, wallIn)}
        onTake={(stationIn) => onStation(placeAt(places, stationIn)?.stationIn ?? 0)}
      />
      <span role="status">{words}</span>
    </div>
  );
}

function placeWords(place: SectionPlace): string {
  const at = `at ${formatLength(place.stationIn)}`;
  if (place.kind === 'rafter') return `Rafter ${place.rafter.number} ${at}, no tail`;
  const { mark, rafterNumber, method } = place.extender;
  return method === 'block-hung' ? `${mark} ${at}` : `${mark} at rafter ${rafterNumber}`;
}
