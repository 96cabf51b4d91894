import type { ReactNode } from 'react';
import {
  Button as AriaButton,
  Tooltip,
  TooltipTrigger,
  type ButtonProps as AriaButtonProps,
} from 'react-aria-components';

/** A button with a sign alone; `label` is read aloud and shown on hover and focus. */
export function IconButton({
  label,
  icon,
  ...rest
}: Omit<AriaButtonProps, 'className' | 'children' | 'aria-label'> & {
  readonly label: string;
  readonly icon: ReactNode;
}) {
  return (
    <TooltipTrigger delay={500}>
      <AriaButton {...rest} aria-label={label} className="icon-button">
        {icon}
      </AriaButton>
      <Tooltip className="tooltip" offset={4}>
        {label}
      </Tooltip>
    </TooltipTrigger>
  );
}
