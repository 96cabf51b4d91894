import { X } from 'lucide-react';
import type { Alternate, AlternateChange } from '../../../core/offer/offer-document.ts';
import { IconButton } from '../../kit/icon-button.tsx';
import { Menu } from '../../kit/menu.tsx';
import { StockChoice } from '../design/stock-choice.tsx';
import { ItemChoice } from '../design/item-choice.tsx';
import type { Documents } from '../editor/documents.ts';
import { appendTo } from '../editor/list-edits.ts';
import { useJob } from '../job-context.ts';
import { JobChoice, JobSwitch } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { JobOption } from '../parts/option.tsx';

const what: Readonly<Record<AlternateChange['what'], string>> = {
  soffit: 'Soffit',
  vents: 'Vents',
  fascia: 'Fascia',
  'sub-fascia': 'Sub-fascia',
  rakes: 'Gable',
  sheathing: 'Sheathing',
  overhang: 'Overhang',
  'extra-cost': 'Extra cost',
};

const soffits = [
  { id: 'open', label: 'open tails' },
  { id: 'level', label: 'level' },
  { id: 'sloped', label: 'along the slope' },
] as const;
const decks = [
  { id: 'panels', label: 'panels' },
  { id: 'planks', label: 'planks' },
  { id: 'none', label: 'none' },
] as const;

/** One thing that a choice does otherwise. */
export function ChangeRow(props: {
  readonly path: string;
  readonly change: AlternateChange;
  readonly onRemove: () => void;
}) {
  const { path, change } = props;
  return (
    <div className="sub-list-row change-row">
      <span className="change-what">{what[change.what]}</span>
      <div className="fields">
        <ChangeEntries path={path} change={change} />
      </div>
      <IconButton
        label={`Remove the change: ${what[change.what]}`}
        icon={<X size={14} aria-hidden="true" />}
        onPress={props.onRemove}
      />
    </div>
  );
}

function ChangeEntries({ path, change }: { readonly path: string; readonly change: AlternateChange }) {
  const { documents } = useJob();
  switch (change.what) {
    case 'soffit':
      return (
        <>
          <JobChoice path={`${path}.kind`} label="Soffit" choices={soffits} />
          {change.kind === 'open' ? null : (
            <ItemChoice path={`${path}.itemId`} label="Of" category="sheet" noneMeans="as in the design" />
          )}
        </>
      );
    case 'vents':
      return <ItemChoice path={`${path}.itemId`} label="Vents" category="other" noneMeans="no vents" />;
    case 'fascia':
      return <StockChoice path={`${path}.stock`} label="Fascia of" />;
    case 'sub-fascia':
      return (
        <>
          <JobSwitch path={`${path}.wanted`} label="A board behind the fascia" />
          {change.wanted ? <StockChoice path={`${path}.stock`} label="Of" /> : null}
        </>
      );
    case 'rakes':
      return <JobSwitch path={`${path}.built`} label="The gable gets its overhang" />;
    case 'sheathing':
      return (
        <>
          <JobChoice path={`${path}.kind`} label="Sheathing" choices={decks} />
          {change.kind === 'none' ? null : (
            <ItemChoice
              path={`${path}.itemId`}
              label="Of"
              category={change.kind === 'planks' ? 'plank' : 'sheet'}
              noneMeans="as in the design"
            />
          )}
        </>
      );
    case 'overhang':
      return <JobEntry path={`${path}.overhangIn`} label="Overhang of every eave" />;
    case 'extra-cost':
      return (
        <>
          <JobOption
            path={`${path}.extraId`}
            label="Extra cost"
            options={documents.design.extraCosts.map(({ id, description }) => ({
              label: description,
              value: id,
            }))}
          />
          <JobSwitch path={`${path}.included`} label="In this choice" />
        </>
      );
    default:
      return change satisfies never;
  }
}

/** Adds a change to a choice, beginning with the opposite of what the design has. */
export function AddChange({ at, alternate }: { readonly at: number; readonly alternate: Alternate }) {
  const { editor, documents } = useJob();
  const used = new Set<string>(alternate.changes.map((change) => change.what));
  const choices = firstChanges(documents).filter(
    (change) => change.what === 'extra-cost' || !used.has(change.what),
  );
  return (
    <Menu
      label={`Add a change to ${alternate.name}`}
      groups={[
        {
          choices: choices.map((change) => ({
            id: change.what,
            label: what[change.what],
            run: () =>
              editor.change(`changing the ${what[change.what].toLowerCase()} of ${alternate.name}`, (now) =>
                appendTo(now, `design.offer.alternates.${at}.changes`, change),
              ),
          })),
        },
      ]}
    >
      Add a change to {alternate.name}
    </Menu>
  );
}

function firstChanges({ design }: Documents): readonly AlternateChange[] {
  const [eave] = design.eaves;
  const [extra] = design.extraCosts;
  return [
    ...(eave === undefined
      ? []
      : ([
          { what: 'soffit', kind: eave.soffit.kind === 'open' ? 'level' : 'open', itemId: '' },
          { what: 'vents', itemId: '' },
          { what: 'fascia', stock: eave.fascia.stock },
          {
            what: 'sub-fascia',
            wanted: !eave.fascia.subFascia.wanted,
            stock: eave.fascia.subFascia.stock,
          },
          { what: 'sheathing', kind: eave.sheathing.kind === 'planks' ? 'panels' : 'planks', itemId: '' },
          { what: 'overhang', overhangIn: eave.overhangIn },
        ] satisfies readonly AlternateChange[])),
    ...(design.rakes.length === 0
      ? []
      : ([
          { what: 'rakes', built: design.rakes.every(({ kind }) => kind === 'none') },
        ] satisfies readonly AlternateChange[])),
    ...(extra === undefined
      ? []
      : ([
          { what: 'extra-cost', extraId: extra.id, included: extra.optional === true },
        ] satisfies readonly AlternateChange[])),
  ];
}
