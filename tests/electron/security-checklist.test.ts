import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { contentSecurityPolicy } from '../../electron/page-headers.ts';
import { programRoot } from '../../electron/program-root.ts';
import { startUnderDouble, type ElectronDouble } from './electron-double.ts';

// Electron's published checklist, docs/tutorial/security.md of its repository: points 1 to 17 as read there, 18 to 20
// from memory of a later version. What needs more than one line is driven in electron-shell.test.ts and security.test.ts.

const root = programRoot();

/** Text of every source file under a folder of the program. */
function sources(folder: string): readonly { readonly path: string; readonly text: string }[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => ({ path: join(folder, path), text: readFileSync(join(root, folder, path), 'utf8') }));
}

function filesThatSay(pattern: RegExp, ...folders: readonly string[]): readonly string[] {
  return folders.flatMap(sources).flatMap(({ path, text }) => (pattern.test(text) ? [path] : []));
}

describe('Electron’s security checklist', () => {
  let double: ElectronDouble;
  let folder: string;
  let preferences: Record<string, unknown>;
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'eavewright-'));
    double = await startUnderDouble(folder);
    preferences = double.record.windows[0]?.options['webPreferences'] as Record<string, unknown>;
  });
  afterAll(() => {
    double.app.quit();
    vi.unstubAllEnvs();
    rmSync(folder, { recursive: true, force: true });
  });

  test('1, 18: one page is loaded, from our own scheme, which is marked secure; no file: and no http: page', () => {
    expect(
      double.record.windows.flatMap(({ calls }) => calls.filter((call) => call.startsWith('load'))),
    ).toEqual(['load app://eavewright/']);
    expect(double.record.schemes).toMatchObject([{ scheme: 'app', privileges: { secure: true } }]);
    expect(filesThatSay(/loadFile\(|loadURL\(['"`](?:http|file)/, 'electron')).toEqual([]);
  });

  test('2, 3, 4: no Node in the page, its own context, the sandbox on', () => {
    expect(preferences).toMatchObject({
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      contextIsolation: true,
      sandbox: true,
    });
    expect(double.record.sandboxed).toBe(true);
  });

  test('5: what a page asks of the system is denied unless it is on a list of one', () => {
    const asked: boolean[] = [];
    for (const permission of ['media', 'geolocation', 'notifications', 'openExternal', 'hid'])
      double.record.session.request({}, permission, (allowed) => asked.push(allowed));
    expect(new Set(asked)).toEqual(new Set([false]));
    expect(double.record.session.device()).toBe(false);
  });

  test('6, 8, 9, 10: nothing of Chromium’s own protection is turned off, nothing experimental is turned on', () => {
    for (const setting of [
      'webSecurity',
      'allowRunningInsecureContent',
      'experimentalFeatures',
      'enableBlinkFeatures',
    ])
      expect(preferences).not.toHaveProperty(setting);
    expect(filesThatSay(/appendSwitch\(|no-sandbox|disable-web-security/, 'electron')).toEqual([]);
  });

  test('7: the policy allows scripts of our own files alone, none from text', async () => {
    const scripts = contentSecurityPolicy.split('; ').find((part) => part.startsWith('script-src'));
    expect(scripts).toBe("script-src 'self'");
    expect(contentSecurityPolicy).toContain("default-src 'none'");
    expect(contentSecurityPolicy).not.toMatch(/unsafe-(?:inline|eval|hashes)|\*/);
    const answer = await double.record.protocols.get('app')?.(new Request('app://eavewright/'));
    expect(answer?.headers.get('content-security-policy')).toBe(contentSecurityPolicy);
  });

  test('11, 12: there are no embedded views, and none can be made', () => {
    expect(preferences['webviewTag']).toBe(false);
    expect(filesThatSay(/<webview|allowpopups/, 'renderer', 'electron')).toEqual([]);
    let prevented = false;
    double.record.windows[0]?.webContents.emit('will-attach-webview', {
      preventDefault: () => {
        prevented = true;
      },
    });
    expect(prevented).toBe(true);
  });

  test('13, 14: the page stays where it is, and opens no window', () => {
    const contents = double.record.windows[0]?.webContents;
    let prevented = 0;
    for (const name of ['will-navigate', 'will-redirect'])
      contents?.emit(name, { url: 'https://evil.test/', preventDefault: () => (prevented += 1) });
    expect(prevented).toBe(2);
    expect(contents?.openHandler?.({ url: 'https://evil.test/' })).toEqual({ action: 'deny' });
  });

  test('15: nothing is ever opened through the shell', () => {
    expect(filesThatSay(/openExternal|openPath|\bshell\b\s*[},].*from 'electron'/, 'electron')).toEqual([]);
  });

  test('16: Electron is pinned to one exact version', () => {
    const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
      devDependencies: Record<string, string>;
    };
    expect(manifest.devDependencies['electron']).toMatch(/^\d+\.\d+\.\d+$/);
  });

  test('17: a message is answered where it comes from the top frame of our own page, and nowhere else', async () => {
    const handler = double.record.handlers.get('eavewright');
    const window = double.record.windows[0];
    const ours = await handler?.({ senderFrame: window?.webContents.mainFrame }, 'app.info', {});
    expect(ours).toMatchObject({ ok: true });
    for (const senderFrame of [{ url: 'app://eavewright/' }, { url: 'https://evil.test/' }, null])
      expect(await handler?.({ senderFrame }, 'app.info', {})).toMatchObject({ ok: false });
  });

  test('19: the fuses that let a stranger run code in our program are off', () => {
    const configuration = readFileSync(join(root, 'electron-builder.yml'), 'utf8');
    for (const fuse of [
      'runAsNode: false',
      'enableNodeOptionsEnvironmentVariable: false',
      'enableNodeCliInspectArguments: false',
      'enableEmbeddedAsarIntegrityValidation: true',
      'onlyLoadAppFromAsar: true',
      'grantFileProtocolExtraPrivileges: false',
    ])
      expect(configuration).toContain(fuse);
  });

  test('20: the page gets two functions of ours, and none of Electron’s', () => {
    expect([...double.record.exposed.keys()]).toEqual(['eavewright']);
    const api = double.record.exposed.get('eavewright') as Record<string, (...args: unknown[]) => unknown>;
    expect(Object.keys(api).sort()).toEqual(['invoke', 'subscribe']);
    expect(filesThatSay(/from 'electron'/, 'renderer', 'core')).toEqual([]);
  });

  test('data never becomes markup: no screen sets HTML from text', () => {
    expect(
      filesThatSay(
        /dangerouslySetInnerHTML|\.innerHTML|\.outerHTML|insertAdjacentHTML|document\.write/,
        'renderer',
      ),
    ).toEqual([]);
    expect(filesThatSay(/\beval\(|new Function\(/, 'renderer', 'electron', 'core')).toEqual([]);
  });
});
