import { Plus, X } from 'lucide-react';
import type { ExtraCost } from '../../../core/eave/design-document.ts';
import { phases } from '../../../core/eave/phases.ts';
import { Button } from '../../kit/button.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { type Documents, withDraft } from '../editor/documents.ts';
import { appendTo, removeFrom } from '../editor/list-edits.ts';
import { nextId } from '../editor/next-id.ts';
import { useJob } from '../job-context.ts';
import { JobChoice, JobSwitch } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { JobWords } from '../parts/words.tsx';

const kinds = [
  { id: 'material', label: 'Material' },
  { id: 'equipment', label: 'Equipment' },
  { id: 'sub', label: 'Subcontractor' },
  { id: 'permit', label: 'Permit' },
  { id: 'disposal', label: 'Disposal' },
  { id: 'allowance', label: 'Allowance' },
] as const;

const phaseChoices = phases.map((phase) => ({ id: phase, label: phase }));
const list = 'design.extraCosts';

/** Costs that no survey gives: staging, disposal, permit, a roofer. */
export function ExtraCosts() {
  const { editor, documents, goTo } = useJob();
  const extras = documents.design.extraCosts;
  return (
    <Panel
      title={`Extra costs: ${extras.length}`}
      actions={
        <Button
          icon={<Plus size={14} aria-hidden="true" />}
          onPress={() => {
            editor.change('adding a cost', addExtraCost);
            goTo(`${list}.${extras.length}.description`);
          }}
        >
          Add a cost
        </Button>
      }
    >
      {extras.length === 0 ? (
        <p className="muted">
          Staging, disposal, permit, gutters off and on, roof tie-in, painting, delivery: what no tape shows.
        </p>
      ) : null}
      {extras.map((extra, at) => (
        <fieldset key={extra.id} className="sub-list-row extra-row">
          <legend className="visually-hidden">Extra cost {at + 1}</legend>
          <JobWords path={`${list}.${at}.description`} label="What" maxLength={200} />
          <JobChoice path={`${list}.${at}.phase`} label="Phase" choices={phaseChoices} />
          <JobChoice path={`${list}.${at}.kind`} label="Kind" choices={kinds} />
          <JobEntry path={`${list}.${at}.quantity`} label="Quantity" care={quantityCare(extra)} />
          <JobWords path={`${list}.${at}.unit`} label="Unit" maxLength={20} />
          <JobEntry
            path={`${list}.${at}.unitCostUsd`}
            label="Cost for one"
            before="$"
            care={documents.drafts[`${list}.${at}.unitCostUsd`] === undefined ? costCare(extra) : undefined}
          />
          <JobSwitch path={`${list}.${at}.taxable`} label="Taxable" />
          <IconButton
            label={`Remove ${extra.description}`}
            icon={<X size={14} aria-hidden="true" />}
            onPress={() => editor.change(`removing ${extra.description}`, (now) => removeFrom(now, list, at))}
          />
        </fieldset>
      ))}
    </Panel>
  );
}

/** A quantity of nothing is no line of the estimate. */
function quantityCare({ quantity, unit }: ExtraCost): string | undefined {
  return Number(quantity) === 0 ? `0 ${unit} costs nothing: enter how many, or remove the line.` : undefined;
}

function costCare({ unitCostUsd }: ExtraCost): string | undefined {
  return Number(unitCostUsd) === 0
    ? 'At $0 this costs nothing: enter what one costs, or remove the line.'
    : undefined;
}

function addExtraCost(documents: Documents): Documents {
  const { extraCosts } = documents.design;
  const extra: ExtraCost = {
    id: nextId(
      'x',
      extraCosts.map((one) => one.id),
    ),
    description: 'New cost',
    phase: 'Protect and stage',
    kind: 'equipment',
    quantity: '1',
    unit: 'each',
    unitCostUsd: '0',
    taxable: false,
  };
  const at = `${list}.${extraCosts.length}`;
  return withDraft(
    withDraft(appendTo(documents, list, extra), `${at}.description`, ''),
    `${at}.unitCostUsd`,
    '',
  );
}
