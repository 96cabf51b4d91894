import { ArrowDown, ArrowUp, Plus, Trash2 } from 'lucide-react';
import { type Phase, phases } from '../../../core/eave/phases.ts';
import type { ShopSettings } from '../../../core/pricing/shop-settings.ts';
import { Button } from '../../kit/button.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { changeSettings } from './settings-store.ts';

type OwnPhases = ShopSettings['jobCost']['phases'];

/** Stands for the phase `Other` in a choice of the shop's phases. */
const nowhere = '(other)';

/**
 * The phases that the shop keeps its costs by, and where each phase of an estimate goes. Entries keep the name that they
 * were made under.
 */
export function OwnPhases({ settings }: { readonly settings: ShopSettings }) {
  const own = settings.jobCost.phases;
  if (own.length === 0)
    return (
      <Panel title="Phases that costs are kept by">
        <p className="panel-note">
          The same as in the estimate: {phases.join(', ')}. Make them your own to rename them, to put some
          together, or to add what you keep apart.
        </p>
        <Button onPress={() => setOwn(() => phases.map((name) => ({ name, takes: [name] })))}>
          Make them my own
        </Button>
      </Panel>
    );
  return (
    <Panel title="Phases that costs are kept by">
      <p className="panel-note">
        Hours and receipts that are entered already keep the name of their phase. What no phase takes goes to
        Other.
      </p>
      <ul className="setting-rows">
        {own.map((phase, index) => (
          // A phase is known by its place while its name is typed.
          // oxlint-disable-next-line react/no-array-index-key
          <li key={index} className="setting-row">
            <TextField
              label={`Phase ${index + 1}`}
              labelHidden
              value={phase.name}
              onChange={(name) => {
                if (name.trim() !== '')
                  setOwn((list) => list.map((one, at) => (at === index ? { ...one, name } : one)));
              }}
              maxLength={60}
            />
            <IconButton
              label={`${phase.name}: further up`}
              icon={<ArrowUp size={16} aria-hidden="true" />}
              isDisabled={index === 0}
              onPress={() => setOwn((list) => swapped(list, index - 1))}
            />
            <IconButton
              label={`${phase.name}: further down`}
              icon={<ArrowDown size={16} aria-hidden="true" />}
              isDisabled={index === own.length - 1}
              onPress={() => setOwn((list) => swapped(list, index))}
            />
            <IconButton
              label={`Take ${phase.name} out`}
              icon={<Trash2 size={16} aria-hidden="true" />}
              onPress={() => setOwn((list) => list.filter((_, at) => at !== index))}
            />
          </li>
        ))}
      </ul>
      <Button
        icon={<Plus size={14} aria-hidden="true" />}
        onPress={() => setOwn((list) => [...list, { name: `Phase ${list.length + 1}`, takes: [] }])}
      >
        Another phase
      </Button>
      <h3 className="entries-title">Where the estimate’s phases go</h3>
      <div className="fields">
        {phases.map((phase) => (
          <SelectField
            key={phase}
            label={phase}
            value={own.find(({ takes }) => takes.includes(phase))?.name ?? nowhere}
            choices={[...own.map(({ name }) => ({ id: name, label: name })), { id: nowhere, label: 'Other' }]}
            onChange={(name) => setOwn((list) => taking(list, phase, name))}
          />
        ))}
      </div>
    </Panel>
  );
}

function swapped(list: OwnPhases, index: number): OwnPhases {
  const [a, b] = [list[index], list[index + 1]];
  if (a === undefined || b === undefined) return list;
  return list.map((one, at) => (at === index ? b : at === index + 1 ? a : one));
}

function taking(list: OwnPhases, phase: Phase, name: string): OwnPhases {
  return list.map((one) => {
    const takes = one.takes.filter((taken) => taken !== phase);
    return { ...one, takes: one.name === name ? [...takes, phase] : takes };
  });
}

function setOwn(change: (phases: OwnPhases) => OwnPhases): void {
  changeSettings((settings) => ({
    ...settings,
    jobCost: { ...settings.jobCost, phases: change(settings.jobCost.phases) },
  }));
}
