import { Plus, X } from 'lucide-react';
import { useState } from 'react';
import type { BoardOnHand } from '../../../core/eave/job-cutting.ts';
import { pieceOfBoard } from '../../../core/stock/stock-piece.ts';
import { boardEntryLabels } from '../../../core/trace/entry-labels.ts';
import { Button } from '../../kit/button.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { type Documents, withDraft } from '../editor/documents.ts';
import { appendTo, removeFrom } from '../editor/list-edits.ts';
import { nextId } from '../editor/next-id.ts';
import { useJob } from '../job-context.ts';
import { JobSwitch } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { JobWords } from '../parts/words.tsx';
import { ChoiceCost } from './choice-cost.tsx';
import { StockBoard } from './stock-board.tsx';
import { TakeBoardsDialog } from './take-boards-dialog.tsx';

const list = 'design.cutting.onHand';

// Named so, lest the linter take a label that begins with `use` for a hook.
const { useOnHand: onHandLabel } = boardEntryLabels;

/** Boards and offcuts that he has and would cut up on this job, each at what it is worth to him. */
export function OnHand() {
  const { editor, documents, goTo, computation } = useJob();
  const { onHand } = documents.design.cutting;
  const [isTaking, setTaking] = useState(false);
  return (
    <Panel
      title={`On hand: ${onHand.reduce((sum, { count }) => sum + count, 0)}`}
      actions={
        <>
          <Button onPress={() => setTaking(true)}>From the shop’s boards…</Button>
          <Button
            icon={<Plus size={14} aria-hidden="true" />}
            onPress={() => {
              const stock = computation.good?.result.cutPlans[0]?.stock;
              editor.change('adding a board on hand', (now) => addBoard(now, stock?.section ?? '2x6', ''));
              goTo(`${list}.${onHand.length}.lengthIn`);
            }}
          >
            Add boards on hand
          </Button>
        </>
      }
    >
      {onHand.length === 0 ? (
        <p className="muted">
          Boards and offcuts left from other jobs. One that would be thrown away is worth $0.
        </p>
      ) : (
        <div className="wish-row">
          <JobSwitch path="design.cutting.useOnHand" label={onHandLabel} />
          <ChoiceCost id="on-hand" than="buying all of it" />
        </div>
      )}
      {onHand.map((board, at) =>
        pieceOfBoard(board.id) !== undefined ? (
          <StockBoard
            key={board.id}
            board={board}
            path={`${list}.${at}.lengthIn`}
            onRemove={() => editor.change('putting a board back', (now) => removeFrom(now, list, at))}
          />
        ) : (
          <fieldset key={board.id} className="sub-list-row on-hand-row">
            <legend className="visually-hidden">Board on hand {at + 1}</legend>
            <JobWords path={`${list}.${at}.section`} label={boardEntryLabels.section} maxLength={12} />
            <JobWords path={`${list}.${at}.grade`} label={boardEntryLabels.grade} maxLength={60} />
            <JobEntry path={`${list}.${at}.lengthIn`} label={boardEntryLabels.lengthIn} />
            <JobEntry path={`${list}.${at}.count`} label={boardEntryLabels.count} />
            <JobEntry path={`${list}.${at}.valueUsd`} label={boardEntryLabels.valueUsd} before="$" />
            <IconButton
              label={`Remove board on hand ${at + 1}`}
              icon={<X size={14} aria-hidden="true" />}
              onPress={() => editor.change('removing a board on hand', (now) => removeFrom(now, list, at))}
            />
          </fieldset>
        ),
      )}
      {isTaking ? (
        <TakeBoardsDialog
          taken={new Set(onHand.map(({ id }) => id))}
          onTake={(boards) =>
            editor.change('taking boards of the shop', (now) =>
              boards.reduce((documents, board) => appendTo(documents, list, board), now),
            )
          }
          onClose={() => setTaking(false)}
        />
      ) : null}
    </Panel>
  );
}

function addBoard(documents: Documents, section: string, grade: string): Documents {
  const { onHand } = documents.design.cutting;
  const board: BoardOnHand = {
    id: nextId(
      'h',
      onHand.map(({ id }) => id),
    ),
    section,
    grade,
    lengthIn: 12,
    count: 1,
    valueUsd: '0',
  };
  return withDraft(appendTo(documents, list, board), `${list}.${onHand.length}.lengthIn`, '');
}
