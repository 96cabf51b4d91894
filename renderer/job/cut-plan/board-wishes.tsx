import { itemsOfStock } from '../../../core/pricing/stock-lengths.ts';
import { boardEntryLabels } from '../../../core/trace/entry-labels.ts';
import { Panel } from '../../kit/panel.tsx';
import { Switch } from '../../kit/switch.tsx';
import { withValueAt } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';
import { JobEntry } from '../parts/entry.tsx';
import { ChoiceCost } from './choice-cost.tsx';

const path = 'design.cutting';

/** What the person wants of this job's boards besides the least money: lengths to go without, fewer boards, no pins. */
export function BoardWishes() {
  const { editor, documents } = useJob();
  const { cutting } = documents.design;
  const lengths = useLengthsFt();
  return (
    <Panel title="What this job wants of its boards" actions={<ChoiceCost id="all" than="the cheapest" />}>
      <fieldset className="plain-group">
        <legend className="field-label">{boardEntryLabels.forbiddenLengthsFt}</legend>
        <div className="board-lengths">
          {lengths.map((feet) => {
            const isForbidden = cutting.forbiddenLengthsFt.includes(feet);
            return (
              <div key={feet} className="length-switch">
                <Switch
                  isSelected={!isForbidden}
                  onChange={(isBought) =>
                    editor.change(isBought ? `buying ${feet} ft` : `going without ${feet} ft`, (now) =>
                      withValueAt(
                        now,
                        `${path}.forbiddenLengthsFt`,
                        isBought
                          ? now.design.cutting.forbiddenLengthsFt.filter((other) => other !== feet)
                          : [...now.design.cutting.forbiddenLengthsFt, feet].toSorted((a, b) => a - b),
                      ),
                    )
                  }
                >
                  {`${feet} ft`}
                </Switch>
                {isForbidden ? <ChoiceCost id={`length/${feet}`} than={`buying ${feet} ft`} /> : null}
              </div>
            );
          })}
        </div>
      </fieldset>
      <div className="wish-row">
        <JobEntry
          path={`${path}.usdPerBoard`}
          label={boardEntryLabels.usdPerBoard}
          before="$"
          hint="To carry and handle. The plan takes dearer boards where that saves more than this for each."
        />
        <ChoiceCost id="fewer-boards" than="the cheapest boards" />
      </div>
      {cutting.pins.length === 0 ? null : (
        <p className="muted">
          {cutting.pins.length === 1 ? '1 board is' : `${cutting.pins.length} boards are`} pinned, below.
        </p>
      )}
    </Panel>
  );
}

/** The lengths that lumber of this job is sold in and the shop buys, and those that the job goes without. [ft] */
function useLengthsFt(): readonly number[] {
  const { computation, documents } = useJob();
  const good = computation.good;
  if (good === null) return documents.design.cutting.forbiddenLengthsFt;
  const { priceList, settings } = good.input;
  const stocks = [...good.result.cutPlans, ...good.result.unplanned].map(({ stock }) => stock);
  const sold = stocks.flatMap((stock) =>
    itemsOfStock(priceList, stock).flatMap(({ lengthFt }) => lengthFt ?? []),
  );
  const excluded = new Set(settings.cutting.excludedLengthsFt);
  return [...new Set([...sold, ...documents.design.cutting.forbiddenLengthsFt])]
    .filter((feet) => !excluded.has(feet))
    .sort((a, b) => a - b);
}
