import { Plus, X } from 'lucide-react';
import type { UnitPrice } from '../../../core/offer/offer-document.ts';
import { readyHiddenWork } from '../../../core/offer/ready-lists.ts';
import { Button } from '../../kit/button.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { Menu } from '../../kit/menu.tsx';
import { Panel } from '../../kit/panel.tsx';
import { type Documents, withDraft } from '../editor/documents.ts';
import { appendTo, removeFrom } from '../editor/list-edits.ts';
import { nextId } from '../editor/next-id.ts';
import { useJob } from '../job-context.ts';
import { JobEntry } from '../parts/entry.tsx';
import { JobWords } from '../parts/words.tsx';

const list = 'design.offer.unitPrices';

/** Prices that are agreed before anything is opened, for rot and what else nobody can see yet. */
export function HiddenWork() {
  const { editor, documents, goTo } = useJob();
  const { unitPrices } = documents.design.offer;
  const add = (what: string, unit: string): void => {
    editor.change('adding a price for hidden work', (now) => addPrice(now, what, unit));
    goTo(`${list}.${unitPrices.length}.priceUsd`);
  };
  return (
    <Panel
      title="Prices for hidden work"
      actions={
        <>
          <Menu
            label="Pick hidden work from a list"
            groups={[
              {
                choices: readyHiddenWork
                  .filter(({ what }) => !unitPrices.some((one) => one.what === what))
                  .map(({ what, unit }) => ({ id: what, label: what, run: () => add(what, unit) })),
              },
            ]}
          >
            Pick from a list
          </Menu>
          <Button icon={<Plus size={14} aria-hidden="true" />} onPress={() => add('Hidden work', 'each')}>
            Add a price
          </Button>
        </>
      }
    >
      {unitPrices.length === 0 ? (
        <p className="muted">
          None yet. A price for one rotted tail or a foot of plank, agreed before the eave is open, is what a
          change order uses later.
        </p>
      ) : null}
      {unitPrices.map((price, at) => (
        <fieldset key={price.id} className="sub-list-row hidden-row">
          <legend className="visually-hidden">Hidden work {at + 1}</legend>
          <JobWords path={`${list}.${at}.what`} label="Work" maxLength={200} />
          <JobWords path={`${list}.${at}.unit`} label="Unit" maxLength={20} />
          <JobEntry path={`${list}.${at}.priceUsd`} label="Client pays" before="$" care={care(price)} />
          <JobEntry path={`${list}.${at}.costUsd`} label="Costs you" before="$" />
          <JobEntry path={`${list}.${at}.hours`} label="Hours" after="h" />
          <IconButton
            label={`Remove ${price.what}`}
            icon={<X size={14} aria-hidden="true" />}
            onPress={() => editor.change(`removing ${price.what}`, (now) => removeFrom(now, list, at))}
          />
        </fieldset>
      ))}
    </Panel>
  );
}

function care({ priceUsd, costUsd }: UnitPrice): string | undefined {
  if (Number(priceUsd) === 0) return 'Enter what one is to be paid with.';
  return Number(priceUsd) < Number(costUsd) ? 'Less than it costs you.' : undefined;
}

function addPrice(documents: Documents, what: string, unit: string): Documents {
  const { unitPrices } = documents.design.offer;
  const price: UnitPrice = {
    id: nextId(
      'u',
      unitPrices.map(({ id }) => id),
    ),
    what,
    unit,
    priceUsd: '0',
    costUsd: '0',
    hours: '0',
  };
  return withDraft(appendTo(documents, list, price), `${list}.${unitPrices.length}.priceUsd`, '');
}
