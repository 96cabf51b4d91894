import type { ReactNode } from 'react';
import { Button as AriaButton, type ButtonProps as AriaButtonProps } from 'react-aria-components';

export type ButtonTone = 'plain' | 'main' | 'quiet' | 'danger';

/** A button with words on it; `icon` stands before them. */
export function Button({
  tone = 'plain',
  icon,
  children,
  ...rest
}: Omit<AriaButtonProps, 'className' | 'children'> & {
  readonly tone?: ButtonTone;
  readonly icon?: ReactNode;
  readonly children: ReactNode;
}) {
  return (
    <AriaButton {...rest} className={`button button-${tone}`}>
      {icon}
      <span>{children}</span>
    </AriaButton>
  );
}
