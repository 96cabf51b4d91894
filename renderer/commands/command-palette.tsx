import { useState } from 'react';
import { Autocomplete, Input, Menu, MenuItem, SearchField, useFilter } from 'react-aria-components';
import { Dialog } from '../kit/dialog.tsx';
import { ScrollBox } from '../kit/scroll-box.tsx';
import { useCommand, useLiveCommands } from './command-handlers.ts';
import { keysInWords } from './command-table.ts';
import { isMac } from './platform.ts';

/** Every command that can be given now, found by typing a part of its name. */
export function CommandPalette() {
  const [isOpen, setOpen] = useState(false);
  const commands = useLiveCommands();
  const { contains } = useFilter({ sensitivity: 'base' });
  useCommand('view.palette', () => setOpen(true));
  return (
    <Dialog title="All commands" isOpen={isOpen} onClose={() => setOpen(false)}>
      <Autocomplete filter={contains}>
        <SearchField className="field search" aria-label="Type a part of its name" autoFocus>
          <div className="field-box">
            <Input className="field-input" placeholder="Type a part of its name" />
          </div>
        </SearchField>
        <ScrollBox label="Commands" className="palette">
          <Menu
            className="list-box"
            aria-label="Commands"
            renderEmptyState={() => <p className="palette-none">No command of that name.</p>}
          >
            {commands
              .filter((command) => command.id !== 'view.palette')
              .map((command) => (
                <MenuItem
                  key={command.id}
                  id={command.id}
                  className="list-box-item"
                  textValue={`${command.group}: ${command.label}`}
                  onAction={() => {
                    setOpen(false);
                    command.run();
                  }}
                >
                  <span>
                    <span className="palette-group">{command.group}</span> {command.label}
                  </span>
                  {command.keys === undefined ? null : (
                    <kbd className="keys">{keysInWords(command.keys, isMac)}</kbd>
                  )}
                </MenuItem>
              ))}
          </Menu>
        </ScrollBox>
      </Autocomplete>
    </Dialog>
  );
}
