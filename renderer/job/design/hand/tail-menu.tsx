import type { RefObject } from 'react';
import { Popover } from 'react-aria-components';
import { MenuList } from '../../../kit/menu.tsx';
import { useTailChoices } from './use-tail-choices.ts';

/** What can be done with a tail, as a menu at the tail; closed where no tail is named. */
export function TailMenu(props: {
  /** The tail that it opens at. */
  readonly trigger: RefObject<Element | null>;
  readonly tailId: string | null;
  readonly onClose: () => void;
}) {
  const { tailId, onClose } = props;
  const groups = useTailChoices(tailId);
  return (
    <Popover
      className="popover"
      triggerRef={props.trigger}
      isOpen={tailId !== null && groups.length > 0}
      onOpenChange={(isOpen) => {
        if (!isOpen) onClose();
      }}
      placement="right top"
      offset={4}
    >
      <MenuList
        label="What can be done with the tail"
        groups={groups.map((one) => ({
          ...one,
          choices: one.choices.map((choice) => ({
            ...choice,
            run: () => {
              onClose();
              choice.run();
            },
          })),
        }))}
      />
    </Popover>
  );
}
