import { FileDown, Plus, Sheet } from 'lucide-react';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { useCommand } from '../../commands/command-handlers.ts';
import { attempt } from '../../host/attempt.ts';
import { fromBase64 } from '../../host/base64.ts';
import { useAnswer } from '../../host/queries.ts';
import { saveFile, saveTextFile } from '../../host/save-file.ts';
import { Answer } from '../../kit/answer.tsx';
import { Banner } from '../../kit/banner.tsx';
import { Button } from '../../kit/button.tsx';
import { focusSearch } from '../../kit/focus-search.ts';
import { notify } from '../../kit/notices.tsx';
import { Screen } from '../../kit/screen.tsx';
import { PriceFileButton } from './import/price-file-button.tsx';
import { takeFile } from './import/take-file.ts';
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

  const importFile = async (file: File): Promise<void> => {
    const taken = await takeFile(file);
    setFileProblem(taken.kind === 'problem' ? taken.words : null);
    if (taken.kind === 'done') notify(taken.words);
    if (taken.kind === 'columns') goTo('/prices-import');
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
          <PriceFileButton onFile={(file) => void importFile(file)}>Import a file</PriceFileButton>
          <Button icon={<FileDown size={16} aria-hidden="true" />} onPress={() => void exportFile()}>
            Export CSV
          </Button>
          <Button icon={<Sheet size={16} aria-hidden="true" />} onPress={() => void exportWorkbook()}>
            Export workbook
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
                list={items}
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

async function exportFile(): Promise<void> {
  const file = await attempt('prices.exportCsv', {});
  if (file !== undefined) await saveTextFile(file.fileName, file.text, 'text/csv');
}

async function exportWorkbook(): Promise<void> {
  const file = await attempt('prices.exportXlsx', {});
  if (file !== undefined) await saveFile(file.fileName, fromBase64(file.base64), workbookType);
}

const workbookType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
