import { useState } from 'react';
import { Form } from 'react-aria-components';
import type { StockPiece } from '../../../core/stock/stock-piece.ts';
import { LengthField } from '../../fields/length-field.tsx';
import { MoneyField } from '../../fields/money-field.tsx';
import { NumberField } from '../../fields/number-field.tsx';
import { attempt } from '../../host/attempt.ts';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { notify } from '../../kit/notices.tsx';
import { TextField } from '../../kit/text-field.tsx';

/** Asks what a board is: a new one, or one on the rack that was noted wrong. */
export function PieceDialog(props: { readonly piece: StockPiece | null; readonly onClose: () => void }) {
  const { piece, onClose } = props;
  const [section, setSection] = useState(piece?.section ?? '2x6');
  const [grade, setGrade] = useState(piece?.grade ?? '');
  const [lengthIn, setLengthIn] = useState<number | null>(piece?.lengthIn ?? null);
  const [valueUsd, setValueUsd] = useState<string | null>(piece?.valueUsd ?? '0');
  const [count, setCount] = useState<number | null>(1);
  const [note, setNote] = useState(piece?.note ?? '');
  const [tried, setTried] = useState(false);
  const save = async (): Promise<void> => {
    setTried(true);
    if (section.trim() === '' || lengthIn === null || valueUsd === null || count === null) return;
    const said = { section: section.trim(), grade, lengthIn, valueUsd, note };
    const done =
      piece === null
        ? await attempt('stock.add', { ...said, count })
        : await attempt('stock.change', { id: piece.id, piece: said });
    if (done === undefined) return;
    onClose();
    notify(
      piece === null
        ? `${count} ${count === 1 ? 'board is' : 'boards are'} on the rack.`
        : `Board ${piece.sequence} is changed.`,
    );
  };
  return (
    <Dialog
      title={piece === null ? 'Add boards' : `Board ${piece.sequence}`}
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button tone="main" onPress={() => void save()}>
            {piece === null ? 'Add to the rack' : 'Change the board'}
          </Button>
          <Button onPress={onClose}>Leave it</Button>
        </>
      }
    >
      <Form
        className="fields"
        validationBehavior="aria"
        onSubmit={(event) => {
          event.preventDefault();
          void save();
        }}
      >
        <TextField
          label="Section"
          value={section}
          onChange={setSection}
          maxLength={12}
          problem={tried && section.trim() === '' ? 'Give the section, like 2x6.' : null}
          autoFocus
        />
        <TextField
          label="Grade"
          value={grade}
          onChange={setGrade}
          maxLength={60}
          hint="Blank: serves any grade."
        />
        <LengthField
          label="Length"
          value={lengthIn}
          range={{ least: 1, most: 720 }}
          blankMeans=""
          problem={
            tried && lengthIn === null ? { code: 'length-unreadable', typed: '', reason: 'empty' } : null
          }
          onEntry={(entry) => setLengthIn(entry.value)}
        />
        <MoneyField
          label="Worth, each"
          value={valueUsd}
          range={{ least: 0, most: 10_000 }}
          onEntry={(entry) => setValueUsd(entry.value)}
        />
        {piece === null ? (
          <NumberField
            label="How many"
            value={count}
            range={{ least: 1, most: 200 }}
            whole
            onEntry={(entry) => setCount(entry.value)}
          />
        ) : null}
        <TextField label="Note" value={note} onChange={setNote} maxLength={300} />
      </Form>
    </Dialog>
  );
}
