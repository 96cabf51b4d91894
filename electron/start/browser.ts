import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

type Env = Readonly<Record<string, string | undefined>>;

/** A browser that can show an address in a window of its own, without tabs. */
export type AppBrowser = { readonly name: string; readonly program: string };

/** True where something can be shown: everywhere but on a Linux without a display. */
export function hasDisplay(env: Env, platform: NodeJS.Platform): boolean {
  if (platform === 'win32' || platform === 'darwin') return true;
  return Boolean(env['DISPLAY']) || Boolean(env['WAYLAND_DISPLAY']);
}

/** Finds Chrome, Chromium or Edge where each platform keeps them. */
export function findAppBrowser(
  env: Env,
  platform: NodeJS.Platform,
  exists: (path: string) => boolean = existsSync,
): AppBrowser | undefined {
  return candidates(env, platform).find(({ program }) => exists(program));
}

function candidates(env: Env, platform: NodeJS.Platform): readonly AppBrowser[] {
  switch (platform) {
    case 'darwin':
      return ['Google Chrome', 'Chromium', 'Microsoft Edge'].map((name) => ({
        name,
        program: `/Applications/${name}.app/Contents/MacOS/${name}`,
      }));
    case 'win32': {
      const homes = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((name) => env[name] ?? []);
      return homes.flatMap((home) => [
        { name: 'Chrome', program: join(home, 'Google', 'Chrome', 'Application', 'chrome.exe') },
        { name: 'Edge', program: join(home, 'Microsoft', 'Edge', 'Application', 'msedge.exe') },
      ]);
    }
    default: {
      const folders = (env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
      return [
        ['Chromium', 'chromium'],
        ['Chromium', 'chromium-browser'],
        ['Chrome', 'google-chrome'],
        ['Chrome', 'google-chrome-stable'],
        ['Edge', 'microsoft-edge'],
      ].flatMap(([name = '', file = '']) => folders.map((folder) => ({ name, program: join(folder, file) })));
    }
  }
}

/**
 * Opens an address: in an app window where such a browser is found, else by the platform's opener.
 * @returns what it was opened in; undefined where nothing could be started.
 */
export async function openInBrowser(
  address: string,
  env: Env,
  platform: NodeJS.Platform,
): Promise<string | undefined> {
  const browser = findAppBrowser(env, platform);
  if (browser !== undefined && (await starts(browser.program, [`--app=${address}`]))) return browser.name;
  const [program, args] = openerOf(platform, address);
  return (await starts(program, args)) ? 'your browser' : undefined;
}

function openerOf(platform: NodeJS.Platform, address: string): readonly [string, readonly string[]] {
  if (platform === 'darwin') return ['open', [address]];
  if (platform === 'win32') return ['rundll32', ['url.dll,FileProtocolHandler', address]];
  return ['xdg-open', [address]];
}

/** Starts a program that lives on without us; false where it cannot be started or ends at once in failure. */
function starts(program: string, args: readonly string[]): Promise<boolean> {
  return new Promise((resolve) => {
    const child = spawn(program, args, { detached: true, stdio: 'ignore' });
    const settle = (started: boolean): void => {
      clearTimeout(grace);
      child.unref();
      resolve(started);
    };
    const grace = setTimeout(() => settle(true), 1500);
    child.once('error', () => settle(false));
    child.once('exit', (code) => settle(code === 0));
  });
}
