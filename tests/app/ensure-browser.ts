import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';

/**
 * Finds a Chromium-family browser for the browser tests, or installs one: Debian's package where apt-get is there,
 * else the build that playwright-core knows how to fetch.
 * @returns the path of its executable.
 * @throws when none can be found or installed, with a sentence that says what to do.
 */
export function ensureBrowser(): string {
  const found = findBrowser();
  if (found !== undefined) return found;
  if (process.platform === 'linux') {
    for (const prefix of process.getuid?.() === 0 ? [[]] : [['sudo', '-n']]) {
      run([...prefix, 'apt-get', 'update', '-qq']);
      run([...prefix, 'apt-get', 'install', '-y', '-qq', 'chromium']);
    }
  }
  const installed = findBrowser();
  if (installed !== undefined) return installed;
  run([process.execPath, join('node_modules', 'playwright-core', 'cli.js'), 'install', 'chromium']);
  const fetched = findBrowser();
  if (fetched !== undefined) return fetched;
  throw new Error('No Chromium, Chrome or Edge was found. Install one, or set CHROMIUM to its executable.');
}

/** Looks where Chromium, Chrome and Edge usually stand on Linux, macOS and Windows; CHROMIUM in the environment wins. */
export function findBrowser(): string | undefined {
  const named = process.env['CHROMIUM'];
  return [...(named === undefined ? [] : [named]), ...usualPlaces(), ...fetchedPlaces()].find((path) =>
    existsSync(path),
  );
}

function usualPlaces(): string[] {
  switch (process.platform) {
    case 'darwin':
      return ['Chromium', 'Google Chrome', 'Microsoft Edge'].map(
        (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
      );
    case 'win32':
      return ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((variable) => {
        const base = process.env[variable];
        return base === undefined
          ? []
          : [
              join(base, 'Google/Chrome/Application/chrome.exe'),
              join(base, 'Microsoft/Edge/Application/msedge.exe'),
            ];
      });
    default:
      return [
        '/usr/bin/chromium',
        '/usr/bin/chromium-browser',
        '/usr/bin/google-chrome',
        '/usr/bin/google-chrome-stable',
        '/usr/bin/microsoft-edge',
        '/snap/bin/chromium',
      ];
  }
}

function fetchedPlaces(): string[] {
  const base = process.env['PLAYWRIGHT_BROWSERS_PATH'] ?? join(homedir(), cacheFolder(), 'ms-playwright');
  if (!existsSync(base)) return [];
  return readdirSync(base)
    .filter((name) => /^chromium-\d+$/.test(name))
    .flatMap((name) => [
      join(base, name, 'chrome-linux64', 'chrome'),
      join(base, name, 'chrome-linux', 'chrome'),
      join(base, name, 'chrome-mac', 'Chromium.app', 'Contents', 'MacOS', 'Chromium'),
      join(base, name, 'chrome-win', 'chrome.exe'),
    ]);
}

function cacheFolder(): string {
  if (process.platform === 'darwin') return 'Library/Caches';
  return process.platform === 'win32' ? 'AppData/Local' : '.cache';
}

function run(command: readonly string[]): boolean {
  const [program = '', ...args] = command;
  return spawnSync(program, args, { stdio: 'inherit', timeout: 600_000 }).status === 0;
}
