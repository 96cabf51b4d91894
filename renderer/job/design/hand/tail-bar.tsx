import { Pin, PinOff, Plus, Trash2 } from 'lucide-react';
import { Button } from '../../../kit/button.tsx';
import { IconButton } from '../../../kit/icon-button.tsx';
import { Menu } from '../../../kit/menu.tsx';
import { isPinned } from '../../editor/tail-edits.ts';
import { StationEntry } from './station-entry.tsx';
import { useTailHand } from './tail-hand.ts';
import { hangBehind, pinMove, rafterOf, releaseMove, removeMove } from './tail-moves.ts';
import { tailSentence } from './tail-words.ts';
import { useTailChoices } from './use-tail-choices.ts';
import { useTailMoves } from './use-tail-moves.ts';

/** The tail that is taken up, under the plan: where it stands, and what can be done with it. */
export function TailBar() {
  const { tail, isMoving } = useTailHand();
  const { tails, go } = useTailMoves();
  const choices = useTailChoices(tail?.id ?? null);
  if (tails === null || tails.layout.extenders.length === 0) return null;
  if (tail === undefined)
    return (
      <p className="tail-bar muted">
        Press a tail to take it up, and drag it along the wall; by keyboard, Tab to the tails.
      </p>
    );
  const isHeld = isPinned(tails.design, tail);
  const behind = hangBehind(tails, tail);
  return (
    <div className="tail-bar" role="group" aria-label="The tail taken up">
      <p className="tail-said" role="status" aria-live={isMoving ? 'off' : 'polite'}>
        {tailSentence(tail)}
      </p>
      <StationEntry key={tail.id} tail={tail} />
      {rafterOf(tails, tail) === undefined ? null : (
        <Menu label={`Side and method of ${tail.mark}`} groups={choices}>
          Side and method
        </Menu>
      )}
      {isHeld ? (
        <Button
          tone="quiet"
          icon={<PinOff size={14} aria-hidden="true" />}
          onPress={() => go(releaseMove(tails, tail))}
        >
          Release
        </Button>
      ) : (
        <Button
          tone="quiet"
          icon={<Pin size={14} aria-hidden="true" />}
          onPress={() => go(pinMove(tails, tail))}
        >
          Pin
        </Button>
      )}
      <Button
        tone="quiet"
        icon={<Plus size={14} aria-hidden="true" />}
        isDisabled={behind === null}
        onPress={() => go(behind)}
      >
        Hang one behind it
      </Button>
      <IconButton
        label={`Take ${tail.mark} away`}
        icon={<Trash2 size={15} aria-hidden="true" />}
        isDisabled={tail.inPlace}
        onPress={() => go(removeMove(tails, tail))}
      />
    </div>
  );
}
