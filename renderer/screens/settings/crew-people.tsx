import { Plus, Trash2 } from 'lucide-react';
import type { ShopSettings } from '../../../core/pricing/shop-settings.ts';
import { MoneyField } from '../../fields/money-field.tsx';
import { useKeptDrafts } from '../../host/kept-drafts.ts';
import { Button } from '../../kit/button.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { changeSettings } from './settings-store.ts';

type People = ShopSettings['jobCost']['people'];

/** Who works here, and what each is paid where it is not the shop's wage. The day sheet offers these names. */
export function CrewPeople({ settings }: { readonly settings: ShopSettings }) {
  const { people } = settings.jobCost;
  const drafts = useKeptDrafts('settings');
  return (
    <Panel title="Who works here">
      <p className="panel-note">
        Hours on a job are costed at the wage of the one who worked them, burden and all, as it is on the day
        they are entered; a later wage changes nothing that was entered. A blank wage is the shop’s.
      </p>
      <ul className="setting-rows">
        {people.map((person, index) => {
          const entry = `jobCost.people.${index}.wageUsdPerHour`;
          return (
            // A person is known by the place in the list while the name is typed.
            // oxlint-disable-next-line react/no-array-index-key
            <li key={index} className="setting-row">
              <TextField
                label={`Name ${index + 1}`}
                labelHidden
                value={person.name}
                onChange={(name) => {
                  if (name.trim() !== '') setPeople((list) => put(list, index, { ...person, name }));
                }}
                maxLength={60}
              />
              <MoneyField
                label={`Wage of ${person.name}`}
                labelHidden
                value={person.wageUsdPerHour}
                draft={drafts.get(entry)}
                range={{ least: 0, most: 1000 }}
                blankMeans={settings.labour.wageUsdPerHour}
                after="an hour"
                onEntry={({ value, text, problem }) => {
                  drafts.set(entry, problem === null ? null : text);
                  if (problem === null)
                    setPeople((list) => put(list, index, { ...person, wageUsdPerHour: value }));
                }}
              />
              <IconButton
                label={`Take ${person.name} off the list`}
                icon={<Trash2 size={16} aria-hidden="true" />}
                onPress={() => setPeople((list) => list.filter((_, at) => at !== index))}
              />
            </li>
          );
        })}
      </ul>
      <Button
        icon={<Plus size={14} aria-hidden="true" />}
        onPress={() => setPeople((list) => [...list, { name: newName(list), wageUsdPerHour: null }])}
      >
        Another person
      </Button>
    </Panel>
  );
}

function put(list: People, index: number, person: People[number]): People {
  return list.map((one, at) => (at === index ? person : one));
}

function newName(list: People): string {
  let number = list.length + 1;
  while (list.some(({ name }) => name === `Person ${number}`)) number += 1;
  return `Person ${number}`;
}

function setPeople(change: (people: People) => People): void {
  changeSettings((settings) => ({
    ...settings,
    jobCost: { ...settings.jobCost, people: change(settings.jobCost.people) },
  }));
}
