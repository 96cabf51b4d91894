import type { ReactNode } from 'react';
import {
  Button,
  Header,
  Menu as AriaMenu,
  MenuItem,
  MenuSection,
  MenuTrigger,
  Popover,
} from 'react-aria-components';

export type MenuChoice = {
  readonly id: string;
  readonly label: string;
  readonly keys?: string | undefined;
  readonly isDisabled?: boolean | undefined;
  readonly run: () => void;
};

export type MenuGroup = { readonly title?: string | undefined; readonly choices: readonly MenuChoice[] };

/** A button that opens a list of things to do. `children` are the words on it; with `icon` alone, `label` is read aloud. */
export function Menu(props: {
  readonly label: string;
  readonly icon?: ReactNode;
  readonly children?: ReactNode;
  readonly groups: readonly MenuGroup[];
}) {
  return (
    <MenuTrigger>
      <Button
        className={props.children === undefined ? 'icon-button' : 'button button-quiet'}
        {...(props.children === undefined ? { 'aria-label': props.label } : {})}
      >
        {props.icon}
        {props.children === undefined ? null : <span>{props.children}</span>}
      </Button>
      <Popover className="popover" placement="bottom end" offset={2}>
        <MenuList label={props.label} groups={props.groups} />
      </Popover>
    </MenuTrigger>
  );
}

/** The list of things to do by itself, for a popover of its own. */
export function MenuList(props: { readonly label: string; readonly groups: readonly MenuGroup[] }) {
  return (
    <AriaMenu className="list-box" aria-label={props.label}>
      {props.groups.map((group, index) => (
        <MenuSection
          key={group.title ?? String(index)}
          className="menu-section"
          {...(group.title === undefined ? { 'aria-label': props.label } : {})}
        >
          {group.title === undefined ? null : <Header className="menu-title">{group.title}</Header>}
          {group.choices.map((choice) => (
            <MenuItem
              key={choice.id}
              id={choice.id}
              className="list-box-item"
              textValue={choice.label}
              isDisabled={choice.isDisabled ?? false}
              onAction={choice.run}
            >
              <span>{choice.label}</span>
              {choice.keys === undefined ? null : <kbd className="keys">{choice.keys}</kbd>}
            </MenuItem>
          ))}
        </MenuSection>
      ))}
    </AriaMenu>
  );
}
