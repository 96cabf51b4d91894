import { Plus, X } from 'lucide-react';
import { problemSentence } from '../../../core/problems/sentence.ts';
import type { Alternate } from '../../../core/offer/offer-document.ts';
import { formatUsd } from '../../../core/units/money.ts';
import { Button } from '../../kit/button.tsx';
import { figuresMissing } from '../../kit/figures-missing.ts';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { type Documents, withValueAt } from '../editor/documents.ts';
import { appendTo, removeFrom } from '../editor/list-edits.ts';
import { nextId } from '../editor/next-id.ts';
import { useJob } from '../job-context.ts';
import { JobOption } from '../parts/option.tsx';
import { JobWords } from '../parts/words.tsx';
import { AddChange, ChangeRow } from './change-row.tsx';
import { type ComputedWay, useWays } from './use-ways.ts';

const list = 'design.offer.alternates';

/** Other ways to build the same eaves: each a set of changes to the design, priced from the same survey. */
export function WaysPanel() {
  const { editor, documents } = useJob();
  const { offer } = documents.design;
  const ways = useWays();
  return (
    <Panel
      title="Choices for the client"
      actions={
        offer.alternates.length >= 6 ? null : (
          <Button
            icon={<Plus size={14} aria-hidden="true" />}
            onPress={() => editor.change('adding a choice', addAlternate)}
          >
            Add a choice
          </Button>
        )
      }
    >
      {offer.alternates.length === 0 ? (
        <p className="muted">
          None besides the design. A choice changes it (soffit, fascia, gable, overhang, extra costs) and is
          priced from the same readings; the one that the client takes becomes the contract.
        </p>
      ) : (
        <>
          <WaysTable ways={ways} />
          <div className="fields ways-names">
            <JobWords path="design.offer.baseName" label="The design as drawn is called" maxLength={60} />
            <JobOption
              path="design.offer.offeredId"
              label="Offered first"
              options={[
                { label: offer.baseName, value: '' },
                ...offer.alternates.map(({ id, name }) => ({ label: name, value: id })),
              ]}
            />
          </div>
        </>
      )}
      {offer.alternates.map((alternate, at) => (
        <fieldset key={alternate.id} className="sub-list way">
          <legend className="visually-hidden">Choice {at + 1}</legend>
          <div className="sub-list-row exclusion-row">
            <JobWords path={`${list}.${at}.name`} label="Name of the choice" maxLength={60} />
            <IconButton
              label={`Remove the choice ${alternate.name}`}
              icon={<X size={14} aria-hidden="true" />}
              onPress={() =>
                editor.change(`removing the choice ${alternate.name}`, (now) => withoutAlternate(now, at))
              }
            />
          </div>
          {alternate.changes.map((change, index) => (
            <ChangeRow
              // Changes have no id of their own; what they change, and their place, is their name.
              key={`${change.what} ${index}`}
              path={`${list}.${at}.changes.${index}`}
              change={change}
              onRemove={() =>
                editor.change('removing a change', (now) => removeFrom(now, `${list}.${at}.changes`, index))
              }
            />
          ))}
          <AddChange at={at} alternate={alternate} />
        </fieldset>
      ))}
    </Panel>
  );
}

function WaysTable({ ways }: { readonly ways: readonly ComputedWay[] }) {
  return (
    <table className="table ways-table">
      <caption className="visually-hidden">Choices beside each other</caption>
      <thead>
        <tr>
          <th scope="col">Choice</th>
          <th scope="col">What is different</th>
          <th scope="col" className="align-right">
            Boards
          </th>
          <th scope="col" className="align-right">
            Hours
          </th>
          <th scope="col" className="align-right">
            Total
          </th>
        </tr>
      </thead>
      <tbody>
        {ways.map((way, at) => (
          <tr key={way.id}>
            <th scope="row">
              {way.name} {at === 0 ? <span className="tag">offered first</span> : null}
            </th>
            <td>{differenceWords(way, at)}</td>
            <Figures way={way} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function differenceWords({ differences }: ComputedWay, at: number): string {
  if (at === 0) return 'What the scope says';
  return differences.length === 0 ? 'Nothing yet: add a change below' : differences.join(' ');
}

function Figures({ way: { outcome } }: { readonly way: ComputedWay }) {
  if (outcome === null)
    return (
      <td colSpan={3} className="muted align-right">
        computing
      </td>
    );
  if (!outcome.ok) return <td colSpan={3}>{problemSentence(outcome.problem)}</td>;
  const { cutPlans, takeoff, estimate } = outcome.value;
  return (
    <>
      <td className="align-right">{cutPlans.reduce((sum, { boards }) => sum + boards.length, 0)}</td>
      <td className="align-right">{takeoff.labourHours}</td>
      <td className="align-right">
        {formatUsd(estimate.totalUsd)}
        {estimate.lacks.length > 0 ? (
          <span className="tag tag-care">{figuresMissing(estimate.lacks.length)}</span>
        ) : null}
      </td>
    </>
  );
}

const names = ['Better', 'Best', 'Plain', 'Fourth choice', 'Fifth choice', 'Sixth choice'];

function addAlternate(documents: Documents): Documents {
  const { alternates } = documents.design.offer;
  const used = new Set(alternates.map(({ name }) => name));
  const alternate: Alternate = {
    id: nextId(
      'a',
      alternates.map(({ id }) => id),
    ),
    name: names.find((name) => !used.has(name)) ?? 'Another choice',
    changes: [],
  };
  return appendTo(documents, list, alternate);
}

/** One that was offered first gives its place back to the design as drawn. */
function withoutAlternate(documents: Documents, at: number): Documents {
  const gone = documents.design.offer.alternates[at]?.id;
  const rest = removeFrom(documents, list, at);
  return gone === documents.design.offer.offeredId ? withValueAt(rest, 'design.offer.offeredId', '') : rest;
}
