import type { ReactNode } from 'react';
import { Switch as AriaSwitch } from 'react-aria-components';

/** Yes or no, with effect at once. */
export function Switch(props: {
  readonly children: ReactNode;
  readonly isSelected: boolean;
  readonly onChange: (isSelected: boolean) => void;
  readonly isDisabled?: boolean | undefined;
}) {
  return (
    <AriaSwitch
      className="switch"
      isSelected={props.isSelected}
      onChange={props.onChange}
      isDisabled={props.isDisabled ?? false}
    >
      <span className="switch-track" aria-hidden="true">
        <span className="switch-knob" />
      </span>
      <span>{props.children}</span>
    </AriaSwitch>
  );
}
