import { useLocation } from 'wouter';
import { useAnswer } from '../../../host/queries.ts';
import { Answer } from '../../../kit/answer.tsx';
import { Screen } from '../../../kit/screen.tsx';
import { PriceParts } from '../price-parts.tsx';
import { ChangesPanel } from './changes-panel.tsx';
import { IndexPanel } from './index-panel.tsx';
import { ItemOverTime } from './item-over-time.tsx';
import { SpreadPanel } from './spread-panel.tsx';

/** What prices did: of one item as a chart, of all since a day, between suppliers, and beside an index. */
export function HistoryScreen({ itemId }: { readonly itemId: string | undefined }) {
  const [, goTo] = useLocation();
  const list = useAnswer('prices.list', { on: 'today' });
  const info = useAnswer('app.info', {});
  const today = info.data?.today;
  return (
    <Screen title="Prices over time" sections={<PriceParts />}>
      <div className="stack">
        <Answer query={list}>
          {(items) =>
            today === undefined ? null : (
              <ItemOverTime
                items={items}
                today={today}
                itemId={itemId}
                onChoose={(id) => goTo(`/prices-over-time/${encodeURIComponent(id)}`)}
              />
            )
          }
        </Answer>
        {today === undefined ? null : (
          <>
            <ChangesPanel today={today} />
            <SpreadPanel today={today} />
          </>
        )}
        <IndexPanel />
      </div>
    </Screen>
  );
}
