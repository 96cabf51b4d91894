import { FileDown, FileUp, Plus } from 'lucide-react';
import { useState } from 'react';
import { useLocation } from 'wouter';
import type { CommandOutput } from '../../../core/contract/contract.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { readDay } from '../../../core/units/written-date.ts';
import { useCommand } from '../../commands/command-handlers.ts';
import { attempt } from '../../host/attempt.ts';
import { tell, useAnswer } from '../../host/queries.ts';
import { saveTextFile } from '../../host/save-file.ts';
import { Answer } from '../../kit/answer.tsx';
import { Banner } from '../../kit/banner.tsx';
import { Button } from '../../kit/button.tsx';
import { FileButton } from '../../kit/file-button.tsx';
import { focusSearch } from '../../kit/focus-search.ts';
import { notify } from '../../kit/notices.tsx';
import { Screen } from '../../kit/screen.tsx';
import { ItemPanel } from './item-panel.tsx';
import { NewItemDialog } from './new-item-dialog.tsx';
import { useSettledPriceItems } from './price-item-store.ts';
import { PriceParts } from './price-parts.tsx';
import { PriceListPanel } from './price-list-panel.tsx';

/** What things cost: every item with its newest price, and beside it the chosen item with all of its prices. */
export function PricesScreen({ itemId }: { readonly itemId: string | undefined }) {
  const [, goTo] = useLocation();
  const list = useAnswer('prices.list', { on: 'today' });
  const info = useAnswer('app.info', {});
  const settings = useAnswer('settings.get', {});
  const [isAdding, setAdding] = useState(false);
  const [madeId, setMadeId] = useState<string | null>(null);
  const [fileProblem, setFileProblem] = useState<string | null>(null);
  useCommand('edit.search', focusSearch);
  useSettledPriceItems(list.data, list.isFetching);

  const importFile = async (text: string, fileName: string): Promise<void> => {
    try {
      const reply = await tell('prices.importCsv', { text });
      setFileProblem(reply.ok ? null : `${fileName}: ${problemSentence(reply.problem)}`);
      if (reply.ok) notify(importWords(reply.value));
    } catch {
      setFileProblem('Eavewright does not answer, so nothing was imported. Try again once it does.');
    }
  };

  const today = info.data?.today ?? '';
  const staleDays = settings.data?.settings.money.priceStaleDays ?? 45;
  const chosen = list.data?.find((item) => item.id === itemId);
  return (
    <Screen
      title="Price list"
      sections={<PriceParts />}
      actions={
        <>
          <FileButton
            endings={['.csv', 'text/csv']}
            icon={<FileUp size={16} aria-hidden="true" />}
            onText={(text, name) => void importFile(text, name)}
          >
            Import CSV
          </FileButton>
          <Button icon={<FileDown size={16} aria-hidden="true" />} onPress={() => void exportFile()}>
            Export CSV
          </Button>
          <Button tone="main" icon={<Plus size={16} aria-hidden="true" />} onPress={() => setAdding(true)}>
            New item
          </Button>
        </>
      }
    >
      {fileProblem === null ? null : (
        <Banner
          tone="problem"
          isLive
          actions={<Button onPress={() => setFileProblem(null)}>Put away</Button>}
        >
          {fileProblem}
        </Banner>
      )}
      <Answer query={list}>
        {(items) => (
          <div className={chosen === undefined ? 'prices' : 'prices prices-beside'}>
            <PriceListPanel
              items={items}
              today={today}
              staleDays={staleDays}
              chosenId={itemId}
              onNew={() => setAdding(true)}
            />
            {chosen === undefined || today === '' ? null : (
              <ItemPanel
                key={chosen.id}
                item={chosen}
                today={today}
                staleDays={staleDays}
                takesFocus={chosen.id === madeId}
                onClose={() => goTo('/prices')}
              />
            )}
          </div>
        )}
      </Answer>
      {isAdding ? (
        <NewItemDialog
          taken={new Set(list.data?.map((item) => item.id))}
          onClose={() => setAdding(false)}
          onMade={(id) => {
            setMadeId(id);
            goTo(`/prices/${encodeURIComponent(id)}`);
          }}
        />
      ) : null}
    </Screen>
  );
}

/** What came in, and how days were read where they can be read two ways. */
function importWords(came: CommandOutput<'prices.importCsv'>): string {
  const items = `${came.items} ${came.items === 1 ? 'item' : 'items'}`;
  const prices = `${came.prices} new ${came.prices === 1 ? 'price' : 'prices'}`;
  const days =
    came.monthFirst === null
      ? ''
      : ` Days with strokes were read month first: ${came.monthFirst} as ${readDay(came.monthFirst)}.`;
  return `${items} with ${prices} came in.${days}`;
}

async function exportFile(): Promise<void> {
  const file = await attempt('prices.exportCsv', {});
  if (file !== undefined) await saveTextFile(file.fileName, file.text, 'text/csv');
}
