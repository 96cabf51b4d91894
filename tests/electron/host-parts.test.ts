import { mkdirSync, readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import * as fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { readBuiltFiles } from '../../electron/built-files.ts';
import { civilDateOf } from '../../electron/clock.ts';
import { dataFolder } from '../../electron/data-folder.ts';
import { logBug } from '../../electron/log.ts';
import { menuTemplate } from '../../electron/menu.ts';
import { plainFileName } from '../../electron/services/app.ts';
import { readCsv, writeCsv } from '../../electron/services/csv-text.ts';
import { readArguments } from '../../electron/start/arguments.ts';
import { findAppBrowser, hasDisplay } from '../../electron/start/browser.ts';
import { isStale } from '../../electron/start/build.ts';
import { canonicalJson, sha256 } from '../../electron/store/canonical-json.ts';
import { firstSize, readWindowState, writeWindowState } from '../../electron/window-state.ts';
import { temporaryFolder } from '../store/temporary-folder.ts';

test('equal values have one canonical text, whatever the order of their keys', () => {
  expect(canonicalJson({ b: [1, { d: undefined, c: 'x' }], a: null })).toBe('{"a":null,"b":[1,{"c":"x"}]}');
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (value) => {
      const turned = Object.fromEntries(Object.entries(value).reverse());
      expect(canonicalJson(turned)).toBe(canonicalJson(value));
      // JSON has one zero; -0 is no amount of anything.
      expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
    }),
  );
});

test('a record with a figure that is no number is a bug', () => {
  expect(() => canonicalJson({ total: Number.NaN })).toThrow('not finite');
});

// FIPS 180-4 example: SHA-256 of "abc".
test('SHA-256 is the standard one', () => {
  expect(sha256('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
});

test('whatever stands in the cells, CSV comes back as it went out', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 5 }).chain((width) =>
        fc.array(fc.array(fc.string({ minLength: 1 }), { minLength: width, maxLength: width }), {
          minLength: 1,
        }),
      ),
      (rows) => {
        const [header = [], ...rest] = rows;
        expect(readCsv(writeCsv(rows))).toEqual({
          ok: true,
          value: { header: header.map((title) => title.trim()), rows: rest },
        });
      },
    ),
  );
});

test('no text can make the CSV reader throw', () => {
  fc.assert(
    fc.property(fc.string(), (text) => {
      expect(readCsv(text)).toHaveProperty('ok');
    }),
  );
});

test.each([
  ['a\n"b', 2, 'a quotation mark is not closed'],
  ['a,b\n1', 2, 'it has more or fewer cells than the first row'],
  ['a\n"b"c', 2, 'text follows a closing quotation mark'],
  ['', 1, 'the file is empty'],
])('CSV %j is refused at its row', (text, row, detail) => {
  expect(readCsv(text)).toEqual({ ok: false, problem: { code: 'csv-broken', row, detail } });
});

test.each([
  ['Marsh cottage', 'Marsh cottage'],
  ['a/b\\c:d*e?f"g<h>i|j', 'a-b-c-d-e-f-g-h-i-j'],
  ['../../etc/passwd', '-..-etc-passwd'],
  ['line\nbreak\u0000', 'line-break-'],
  ['...', 'eavewright'],
  ['x'.repeat(300), 'x'.repeat(150)],
])('%j becomes the file name %j', (name, plain) => {
  expect(plainFileName(name)).toBe(plain);
});

test('a date is the day where the machine stands', () => {
  expect(civilDateOf(new Date(2026, 1, 3, 23, 59))).toBe('2026-02-03');
  expect(civilDateOf(new Date(2026, 11, 31, 0, 0))).toBe('2026-12-31');
});

test('a folder that is asked for comes before the environment, and that before the platform’s place', () => {
  expect(dataFolder('a', { EAVEWRIGHT_DATA: 'b' }, 'linux')).toBe(resolve('a'));
  expect(dataFolder(undefined, { EAVEWRIGHT_DATA: 'b' }, 'linux')).toBe(resolve('b'));
  expect(dataFolder(undefined, { XDG_DATA_HOME: join('/', 'x') }, 'linux')).toBe(
    join('/', 'x', 'eavewright'),
  );
  expect(dataFolder(undefined, { APPDATA: 'R' }, 'win32')).toBe(join('R', 'Eavewright'));
  expect(dataFolder(undefined, {}, 'darwin')).toContain(join('Library', 'Application Support', 'Eavewright'));
});

test('the command line is read, and what is wrong with it is said', () => {
  expect(readArguments(['--shell', 'loopback', '--no-open', '--data', 'x'])).toEqual({
    data: 'x',
    shell: 'loopback',
    open: false,
    dev: false,
    help: false,
  });
  expect(readArguments(['--shell', 'telnet'])).toBe('--shell is electron or loopback, not "telnet".');
  expect(readArguments(['--colour'])).toContain('--colour');
});

test('a Linux without a display shows nothing; other systems always can', () => {
  expect(hasDisplay({}, 'linux')).toBe(false);
  expect(hasDisplay({ DISPLAY: '' }, 'linux')).toBe(false);
  expect(hasDisplay({ DISPLAY: ':0' }, 'linux')).toBe(true);
  expect(hasDisplay({ WAYLAND_DISPLAY: 'wayland-0' }, 'linux')).toBe(true);
  expect([hasDisplay({}, 'win32'), hasDisplay({}, 'darwin')]).toEqual([true, true]);
});

/** Name of the browser that is found where only paths with a certain text exist. */
function at(platform: NodeJS.Platform, env: Record<string, string>, wanted: string): string | undefined {
  return findAppBrowser(env, platform, (path) => path.includes(wanted))?.name;
}

test('a browser for an app window is found where each system keeps it', () => {
  expect(at('linux', { PATH: '/usr/bin' }, 'chromium')).toBe('Chromium');
  expect(at('linux', { PATH: '/usr/bin' }, 'microsoft-edge')).toBe('Edge');
  expect(at('darwin', {}, 'Google Chrome')).toBe('Google Chrome');
  expect(at('win32', { PROGRAMFILES: 'C:\\P' }, 'msedge')).toBe('Edge');
  expect(at('win32', {}, '')).toBe(undefined);
  expect(at('linux', { PATH: '' }, '')).toBe(undefined);
});

test('a built file is stale when it is missing or a source is newer', () => {
  const folder = temporaryFolder();
  const source = join(folder, 'source', 'deep', 'a.ts');
  const built = join(folder, 'built.js');
  mkdirSync(join(folder, 'source', 'deep'), { recursive: true });
  writeFileSync(source, '');
  expect(isStale(built, [join(folder, 'source')])).toBe(true);
  writeFileSync(built, '');
  utimesSync(built, 1000, 1000);
  utimesSync(source, 900, 900);
  expect(isStale(built, [join(folder, 'source')])).toBe(false);
  utimesSync(source, 1100, 1100);
  expect(isStale(built, [join(folder, 'source')])).toBe(true);
});

test('the map of built files has the page and its parts, and no manifest or stray file', () => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, '.vite'));
  mkdirSync(join(folder, 'assets'));
  for (const name of [
    'index.html',
    '.vite/manifest.json',
    'assets/a.js',
    'assets/f.ttf',
    'assets/notes.exe',
  ]) {
    writeFileSync(join(folder, name), name);
  }
  const files = readBuiltFiles(folder);
  expect([...files.keys()].sort()).toEqual(['/', '/assets/a.js', '/assets/f.ttf', '/index.html']);
  expect(files.get('/assets/f.ttf')?.type).toBe('font/ttf');
});

test('the menu is made of roles alone, and leaves undo to the page', () => {
  const template = menuTemplate('linux');
  expect(template.map(({ label }) => label)).toEqual(['File', 'Edit', 'View', 'Window']);
  expect(JSON.stringify(template)).toContain('{"role":"undo","registerAccelerator":false}');
  expect(JSON.stringify(template)).not.toMatch(/toggleDevTools|reload/i);
  expect(menuTemplate('darwin')[0]).toEqual({ role: 'appMenu' });
});

const screen = { x: 0, y: 0, width: 1920, height: 1040 };
test.each([
  ['on the screen', { x: 100, y: 100 }, true],
  ['half off to the right', { x: 1700, y: 100 }, true],
  ['gone to the right', { x: 1900, y: 100 }, false],
  ['gone to the left', { x: -980, y: 100 }, false],
  ['above the screen', { x: 100, y: -30 }, false],
  ['below the screen', { x: 100, y: 1035 }, false],
])('a window that was %s is put back only where it can be taken hold of', (_where, at, used) => {
  const path = join(temporaryFolder(), 'window.json');
  writeWindowState(path, { ...at, width: 1000, height: 700, maximized: false });
  expect(readWindowState(path, [screen]) !== undefined).toBe(used);
});

test.each(['', 'null', '[]', '{"x":"1"}', '{"x":0,"y":0,"width":1e9,"height":700,"maximized":false}'])(
  'a kept window state of %j is not used',
  (text) => {
    const path = join(temporaryFolder(), 'window.json');
    writeFileSync(path, text);
    expect(readWindowState(path, [screen])).toBe(undefined);
    expect(firstSize.width).toBeLessThan(screen.width);
  },
);

test('a window state that cannot be kept harms nothing', () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'file'), '');
  writeWindowState(join(folder, 'file', 'window.json'), { ...screen, maximized: false });
  expect(readdirSync(folder)).toEqual(['file']);
});

test('the log says where a bug is and never what was being worked on', () => {
  const written: string[] = [];
  const write = vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    written.push(String(text));
    return true;
  });
  logBug('jobs.save', new TypeError('Odalys Quillfeather owes 12.30'));
  logBug('jobs.save', 'Odalys Quillfeather');
  write.mockRestore();
  expect(written.join('')).toContain('bug in jobs.save: TypeError');
  expect(written.join('')).toContain('host-parts.test.ts');
  expect(written.join('')).not.toContain('Quillfeather');
});
