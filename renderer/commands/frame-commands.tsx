import { useLocation } from 'wouter';
import { chooseTheme } from '../host/theme.ts';
import { useCommand } from './command-handlers.ts';

/** What the commands do that hold on every screen. */
export function FrameCommands() {
  const [, goTo] = useLocation();
  useCommand('go.jobs', () => goTo('/jobs'));
  useCommand('go.prices', () => goTo('/prices'));
  useCommand('go.money', () => goTo('/money'));
  useCommand('go.settings', () => goTo('/settings'));
  useCommand('view.light', () => chooseTheme('light'));
  useCommand('view.dark', () => chooseTheme('dark'));
  useCommand('view.system', () => chooseTheme('system'));
  return null;
}
