import type { Method } from '../../../../core/eave/design-document.ts';
import type { EaveLayout } from '../../../../core/layout/layout-types.ts';
import { choiceWords } from '../../../../core/trace/choice-words.ts';
import { keysInWords } from '../../../commands/command-table.ts';
import { isMac } from '../../../commands/platform.ts';
import type { MenuGroup } from '../../../kit/menu.tsx';
import { isPinned } from '../../editor/tail-edits.ts';
import { useJob } from '../../job-context.ts';
import { hangBehind, pinMove, pinOf, rafterOf, releaseMove, removeMove, standMove } from './tail-moves.ts';
import { useTailMoves } from './use-tail-moves.ts';

/** What can be done with a tail; nothing where it is not there. */
export function useTailChoices(tailId: string | null): readonly MenuGroup[] {
  const { walkBack } = useJob();
  const { tails, go } = useTailMoves();
  const tail = tails?.layout.extenders.find(({ id }) => id === tailId);
  if (tails === null || tail === undefined) return [];
  const { layout, design } = tails;
  const isHeld = isPinned(design, tail);
  const behind = hangBehind(tails, tail);
  const rafter = rafterOf(tails, tail);
  const pin = design.pins.find(({ rafterId }) => rafterId === rafter?.id);
  const sideNow = pin === undefined || pin.side === 'none' ? tail.side : pin.side;
  const stands: readonly MenuGroup[] =
    rafter === undefined
      ? []
      : [
          {
            title: 'Side',
            choices: (['left', 'right'] as const).map((side) => ({
              id: `side-${side}`,
              label: side === 'left' ? 'Left of the rafter' : 'Right of the rafter',
              isDisabled: tail.inPlace,
              ...now(sideNow === side),
              run: () => go(standMove(tails, rafter, pinOf(side, pin?.method))),
            })),
          },
          {
            title: 'Method',
            choices: methodsFor(layout, rafter.id).map((method) => ({
              id: `method-${method}`,
              label: methodLabel(method),
              isDisabled: tail.inPlace,
              ...now(tail.method === method),
              run: () => go(standMove(tails, rafter, { side: sideNow, method })),
            })),
          },
        ];
  return [
    ...stands,
    {
      title: 'The tail',
      choices: [
        isHeld
          ? { id: 'release', label: 'Release it to the program', run: () => go(releaseMove(tails, tail)) }
          : { id: 'pin', label: 'Pin it as it stands', run: () => go(pinMove(tails, tail)) },
        {
          id: 'hang',
          label: 'Hang a tail behind it',
          keys: keysInWords('Insert', isMac),
          isDisabled: behind === null,
          run: () => go(behind),
        },
        {
          id: 'remove',
          label: 'Take it away',
          keys: keysInWords('Delete', isMac),
          isDisabled: tail.inPlace,
          run: () => go(removeMove(tails, tail)),
        },
        { id: 'why', label: 'Where its figures come from', run: () => walkBack(`piece/${tail.mark}`) },
      ],
    },
  ];
}

/** Says behind a choice that it is the one that holds. */
function now(isNow: boolean): { readonly keys?: string } {
  return isNow ? { keys: 'now' } : {};
}

/** The methods that a rafter's tail can have: the gable's own for the rafters at either end. */
export function methodsFor({ rafters }: Pick<EaveLayout, 'rafters'>, rafterId: string): readonly Method[] {
  const isAtEnd = rafters[0]?.id === rafterId || rafters.at(-1)?.id === rafterId;
  const anywhere = ['side', 'filler', 'block-hung', 'full-length'] as const;
  return isAtEnd ? [...anywhere, 'outer-face', 'end-replacement'] : anywhere;
}

/** A method as a choice: `Beside the rafter`. */
export function methodLabel(method: Method): string {
  return choiceWords.method[method].replace(/^./, (first) => first.toUpperCase());
}
