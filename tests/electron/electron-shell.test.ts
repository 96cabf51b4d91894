import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { openShop } from '../../electron/store/open-shop.ts';
import { temporaryFolder } from '../store/temporary-folder.ts';
import { describeContract } from './contract-suite.ts';
import { pageBridge, startUnderDouble, type ElectronDouble } from './electron-double.ts';

function close(double: ElectronDouble): void {
  double.app.quit();
  vi.unstubAllEnvs();
}

describeContract(
  'Electron',
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'eavewright-'));
    const double = await startUnderDouble(folder);
    return {
      ...pageBridge(double),
      close: () => {
        close(double);
        rmSync(folder, { recursive: true, force: true });
        return Promise.resolve();
      },
    };
  },
  { shell: 'electron', savesFiles: true },
);

describe('the Electron shell', () => {
  const running: ElectronDouble[] = [];
  async function start(folder: string, prepare?: (double: ElectronDouble) => void): Promise<ElectronDouble> {
    const double = await startUnderDouble(folder, prepare);
    running.push(double);
    return double;
  }
  afterEach(() => {
    for (const double of running.splice(0)) close(double);
  });

  test('gives the page two functions and nothing else of Electron', async () => {
    const { record } = await start(temporaryFolder());
    expect([...record.exposed.keys()]).toEqual(['eavewright']);
    expect(Object.keys(record.exposed.get('eavewright') as object).sort()).toEqual(['invoke', 'subscribe']);
    expect([...record.handlers.keys()]).toEqual(['eavewright']);
  });

  test('opens its window with the page locked in', async () => {
    const { record } = await start(temporaryFolder());
    expect(record.sandboxed).toBe(true);
    const [window] = record.windows;
    expect(window?.options['webPreferences']).toEqual({
      preload: expect.stringMatching(/preload\.cjs$/) as unknown,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webviewTag: false,
      plugins: true,
      spellcheck: false,
    });
    expect(window?.calls).toEqual(['load app://eavewright/']);
    window?.emit('ready-to-show');
    expect(window?.calls).toContain('show');
    expect(record.schemes).toEqual([
      { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } },
    ]);
  });

  test.each([
    ['another frame of the page', { senderFrame: { url: 'app://eavewright/' } }],
    ['a frame that is gone', { senderFrame: null }],
    ['no frame', {}],
    ['nothing', undefined],
  ])('a message from %s is not answered', async (_who, event) => {
    const { record } = await start(temporaryFolder());
    expect(await record.handlers.get('eavewright')?.(event, 'app.info', {})).toEqual({
      ok: false,
      problem: { code: 'not-here', what: 'That' },
    });
  });

  test('a message from our frame once it shows another page is not answered', async () => {
    const double = await start(temporaryFolder());
    const frame = double.record.windows[0]?.webContents.mainFrame;
    if (frame === undefined) throw new Error('no window');
    frame.url = 'https://example.invalid/?app://eavewright/';
    expect(await pageBridge(double).invoke('app.info', {})).toMatchObject({ ok: false });
  });

  test.each(['will-navigate', 'will-redirect', 'will-frame-navigate'])(
    '%s to another address is stopped, and to our own is not',
    async (name) => {
      const { record } = await start(temporaryFolder());
      const stopped = (url: string): boolean => {
        const preventDefault = vi.fn<() => void>();
        record.windows[0]?.webContents.emit(name, { url, preventDefault });
        return preventDefault.mock.calls.length > 0;
      };
      expect(stopped('app://eavewright/#/jobs/1')).toBe(false);
      for (const url of [
        'https://example.invalid/',
        'http://example.invalid/?next=app://eavewright/',
        'app://eavewright.example.invalid/',
        'app://other/',
        'file:///etc/passwd',
        'javascript:alert(1)',
        'not an address',
      ]) {
        expect([url, stopped(url)]).toEqual([url, true]);
      }
    },
  );

  test('a frame may show a sheet that the page made, and nothing else', async () => {
    const { record } = await start(temporaryFolder());
    const stopped = (url: string, isMainFrame: boolean): boolean => {
      const preventDefault = vi.fn<() => void>();
      record.windows[0]?.webContents.emit('will-frame-navigate', { url, isMainFrame, preventDefault });
      return preventDefault.mock.calls.length > 0;
    };
    expect(stopped('blob:app://eavewright/5f2a', false)).toBe(false);
    expect(stopped('blob:app://eavewright/5f2a', true)).toBe(true);
    for (const url of [
      'blob:https://example.invalid/5f2a',
      'blob:null/1',
      'data:text/html,x',
      'chrome-extension://other/',
    ]) {
      expect([url, stopped(url, false)]).toEqual([url, true]);
    }
  });

  test('no second window and no embedded view can be opened', async () => {
    const { record } = await start(temporaryFolder());
    const contents = record.windows[0]?.webContents;
    expect(contents?.openHandler?.({ url: 'app://eavewright/' })).toEqual({ action: 'deny' });
    const preventDefault = vi.fn<() => void>();
    contents?.emit('will-attach-webview', { preventDefault });
    expect(preventDefault).toHaveBeenCalledOnce();
  });

  test('the page may put text on the clipboard and is denied all else', async () => {
    const { session } = (await start(temporaryFolder())).record;
    const requested = (permission: string): boolean => {
      let answer = true;
      session.request({}, permission, (allowed) => {
        answer = allowed;
      });
      return answer;
    };
    expect(requested('clipboard-sanitized-write')).toBe(true);
    expect(session.check({}, 'clipboard-sanitized-write')).toBe(true);
    for (const permission of [
      'media',
      'geolocation',
      'notifications',
      'openExternal',
      'clipboard-read',
      'hid',
    ]) {
      expect([permission, requested(permission), session.check({}, permission)]).toEqual([
        permission,
        false,
        false,
      ]);
    }
    expect(session.device()).toBe(false);
  });

  test('nothing is fetched from outside of the program', async () => {
    const { session } = (await start(temporaryFolder())).record;
    const cancelled = (url: string): boolean => {
      let cancel = false;
      session.before({ url }, (verdict) => {
        cancel = verdict.cancel;
      });
      return cancel;
    };
    expect(['app://eavewright/assets/a.js', 'blob:app://eavewright/1', 'data:,x'].map(cancelled)).toEqual([
      false,
      false,
      false,
    ]);
    expect(
      [
        'https://example.invalid/',
        'http://127.0.0.1/',
        'ws://127.0.0.1/',
        'file:///x',
        'app://other/',
        '',
      ].map(cancelled),
    ).toEqual([true, true, true, true, true, true]);
  });

  test('its own scheme serves the fixed map of built files with the policy, and nothing beside it', async () => {
    const { record } = await start(temporaryFolder());
    const get = async (url: string, method = 'GET') => {
      const response = await record.protocols.get('app')?.(new Request(url, { method }));
      return [response?.status, response?.headers.get('content-security-policy')?.slice(0, 18)];
    };
    const policy = "default-src 'none'";
    expect(await get('app://eavewright/')).toEqual([200, policy]);
    expect(await get('app://eavewright/assets/a.js')).toEqual([200, policy]);
    expect(await get('app://eavewright/../package.json')).toEqual([404, policy]);
    expect(await get('app://eavewright/%2e%2e/package.json')).toEqual([404, policy]);
    expect(await get('app://other/')).toEqual([403, policy]);
    expect(await get('app://eavewright/', 'POST')).toEqual([405, policy]);
  });

  test('the shop file is closed whole when the program quits', async () => {
    const folder = temporaryFolder();
    const double = await start(folder);
    await pageBridge(double).invoke('jobs.create', { name: 'Kept' });
    double.app.emit('window-all-closed');
    expect(double.record.quits).toBe(1);
    expect(readdirSync(folder).filter((name) => /wal|shm|journal/.test(name))).toEqual([]);
  });

  test('where another program holds the shop file, it says so and ends', async () => {
    const folder = temporaryFolder();
    const shop = openShop(folder);
    const { record } = await start(folder);
    expect(record.errorBoxes).toEqual([
      ['Eavewright', expect.stringContaining('open in another Eavewright')],
    ]);
    expect(record.exits).toEqual([3]);
    expect(record.windows).toEqual([]);
    expect(shop.ok && shop.value.close()).toBe(undefined);
  });

  test('a second start of the program ends, and the first comes to the front', async () => {
    const second = await start(temporaryFolder(), ({ record }) => {
      record.lockGranted = false;
    });
    expect([second.record.quits, second.record.windows.length]).toEqual([1, 0]);
    const first = await start(temporaryFolder());
    first.app.emit('second-instance');
    expect(first.record.windows[0]?.calls.slice(-2)).toEqual(['restore', 'focus']);
  });

  test('the window comes back where it was, unless no screen shows that place any more', async () => {
    const folder = temporaryFolder();
    const before = await start(folder);
    expect(before.record.windows[0]?.options).toMatchObject({ width: 1280, height: 800 });
    before.record.windows[0]?.emit('close');
    close(before);
    const after = await start(folder);
    expect(after.record.windows[0]?.options).toMatchObject({ x: 10, y: 20, width: 1000, height: 700 });
    close(after);
    const elsewhere = await start(folder, ({ record }) => {
      record.displays = [{ workArea: { x: 3000, y: 0, width: 1920, height: 1040 } }];
    });
    expect(elsewhere.record.windows[0]?.options).not.toHaveProperty('x');
  });

  test('a file is saved where the person says, whole, under a name without folders', async () => {
    const folder = temporaryFolder();
    const path = join(folder, 'out.csv');
    const double = await start(folder, ({ record }) => {
      record.saveAnswer = { canceled: false, filePath: path };
    });
    const base64 = Buffer.from('2x6, 12 ft').toString('base64');
    expect(await pageBridge(double).invoke('files.save', { fileName: '../../a/b.csv', base64 })).toEqual({
      ok: true,
      value: { saved: true },
    });
    expect(double.record.saveQuestions[0]?.defaultPath).toBe('-..-a-b.csv');
    expect(readFileSync(path, 'utf8')).toBe('2x6, 12 ft');
    expect(readdirSync(folder).filter((name) => name.includes('unfinished'))).toEqual([]);
  });

  test('a file that cannot be written is told, and what stood there stands', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'file'), 'before');
    const double = await start(folder, ({ record }) => {
      record.saveAnswer = { canceled: false, filePath: join(folder, 'file', 'below.csv') };
    });
    expect(await pageBridge(double).invoke('files.save', { fileName: 'below.csv', base64: '' })).toEqual({
      ok: false,
      problem: { code: 'file-not-written', fileName: 'below.csv' },
    });
    expect(readFileSync(join(folder, 'file'), 'utf8')).toBe('before');
  });

  test('the page hears events without Electron’s own event object', async () => {
    const double = await start(temporaryFolder());
    const heard: unknown[][] = [];
    const stop = pageBridge(double).subscribe((...args: unknown[]) => heard.push(args));
    await pageBridge(double).invoke('jobs.create', { name: 'Heard' });
    stop();
    await pageBridge(double).invoke('jobs.create', { name: 'Not heard' });
    expect(heard).toEqual([[{ kind: 'changed', what: 'jobs' }]]);
  });
});
