import { Menu as MenuSign } from 'lucide-react';
import type { ReactNode } from 'react';
import { Link, useLocation } from 'wouter';
import { runCommand, useLiveCommands } from '../commands/command-handlers.ts';
import { keysInWords, type CommandDefinition } from '../commands/command-table.ts';
import { isMac } from '../commands/platform.ts';
import { Button } from './button.tsx';
import { HostBanner } from './host-banner.tsx';
import { Menu, type MenuGroup } from './menu.tsx';

const places = [
  { href: '/jobs', label: 'Jobs' },
  { href: '/prices', label: 'Price list' },
  { href: '/money', label: 'Money' },
  { href: '/settings', label: 'Settings' },
] as const;

/** What stands around every screen: the name, the places to go, the menu, and word of a lost host. */
export function Frame({ children }: { readonly children: ReactNode }) {
  const [location] = useLocation();
  return (
    <div className="frame">
      <a
        className="skip-link"
        href="#main"
        onClick={(event) => {
          event.preventDefault();
          document.getElementById('main')?.focus();
        }}
      >
        Skip to the screen
      </a>
      <header className="frame-bar">
        <span className="frame-name">
          <EaveSign />
          Eavewright
        </span>
        <nav className="frame-links" aria-label="Places">
          {places.map((place) => (
            <Link
              key={place.href}
              href={place.href}
              className="frame-link"
              {...(location.startsWith(place.href) ? { 'aria-current': 'page' as const } : {})}
            >
              {place.label}
            </Link>
          ))}
        </nav>
        <div className="frame-tools">
          <Button tone="quiet" onPress={() => runCommand('view.palette')}>
            Commands <kbd className="keys">{keysInWords('$mod+KeyK', isMac)}</kbd>
          </Button>
          <FrameMenu />
        </div>
      </header>
      <HostBanner />
      <main id="main" className="frame-main" tabIndex={-1}>
        {children}
      </main>
    </div>
  );
}

function FrameMenu() {
  const commands = useLiveCommands();
  const order: readonly CommandDefinition['group'][] = ['Go to', 'Job', 'Edit', 'Tail', 'View'];
  const groups: readonly MenuGroup[] = order
    .map((title) => ({
      title,
      choices: commands
        .filter((command) => command.group === title)
        .map((command) => ({
          id: command.id,
          label: command.label,
          keys: command.keys === undefined ? undefined : keysInWords(command.keys, isMac),
          run: command.run,
        })),
    }))
    .filter((group) => group.choices.length > 0);
  return (
    <Menu label="Menu" icon={<MenuSign size={16} aria-hidden="true" />} groups={groups}>
      Menu
    </Menu>
  );
}

/** A roof edge over a wall, as on the program's icon. */
function EaveSign() {
  return (
    <svg width="20" height="20" viewBox="0 0 32 32" aria-hidden="true">
      <path d="M1 23 22 5h9L7 26Z" fill="currentColor" />
      <path d="M17 16.500V30h6V11.400Z" fill="#8fc1ee" />
    </svg>
  );
}
