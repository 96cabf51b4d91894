import { EventEmitter } from 'node:events';
import { vi } from 'vitest';

/**
 * A double of the `electron` module: records what the real main.ts and preload.ts ask of it, and carries messages between
 * them as Electron does, every value through structuredClone, so that what cannot be cloned fails here as it would there.
 */
export function createElectronDouble() {
  const record = {
    handlers: new Map<string, (event: unknown, ...args: unknown[]) => unknown>(),
    exposed: new Map<string, unknown>(),
    windows: [] as BrowserWindow[],
    schemes: [] as unknown[],
    protocols: new Map<string, (request: Request) => Response | Promise<Response>>(),
    menu: undefined as unknown,
    errorBoxes: [] as string[][],
    exits: [] as number[],
    quits: 0,
    sandboxed: false,
    paths: new Map<string, string>(),
    lockGranted: true,
    saveAnswer: { canceled: true, filePath: '' },
    saveQuestions: [] as { defaultPath?: string }[],
    displays: [{ workArea: { x: 0, y: 0, width: 1920, height: 1040 } }],
    session: {
      request: undefined as unknown as (
        contents: unknown,
        permission: string,
        answer: (allowed: boolean) => void,
      ) => void,
      check: undefined as unknown as (contents: unknown, permission: string) => boolean,
      device: undefined as unknown as () => boolean,
      before: undefined as unknown as (
        details: { url: string },
        answer: (verdict: { cancel: boolean }) => void,
      ) => void,
    },
    channelListeners: new EventEmitter(),
  };

  class WebContents extends EventEmitter {
    mainFrame = { url: '' };
    openHandler: ((details: { url: string }) => unknown) | undefined;
    send(channel: string, ...args: unknown[]): void {
      record.channelListeners.emit(channel, {}, ...args.map((arg) => structuredClone(arg)));
    }
    setWindowOpenHandler(handler: (details: { url: string }) => unknown): void {
      this.openHandler = handler;
    }
  }

  class BrowserWindow extends EventEmitter {
    readonly options: Record<string, unknown>;
    readonly webContents = new WebContents();
    readonly calls: string[] = [];
    constructor(options: Record<string, unknown>) {
      super();
      this.options = options;
      record.windows.push(this);
      app.emit('web-contents-created', {}, this.webContents);
    }
    loadURL(url: string): Promise<void> {
      this.webContents.mainFrame.url = url;
      this.calls.push(`load ${url}`);
      return Promise.resolve();
    }
    show(): void {
      this.calls.push('show');
    }
    focus(): void {
      this.calls.push('focus');
    }
    restore(): void {
      this.calls.push('restore');
    }
    maximize(): void {
      this.calls.push('maximize');
    }
    isMinimized(): boolean {
      return true;
    }
    isMaximized(): boolean {
      return false;
    }
    getNormalBounds() {
      return { x: 10, y: 20, width: 1000, height: 700 };
    }
  }

  const app = Object.assign(new EventEmitter(), {
    enableSandbox: () => {
      record.sandboxed = true;
    },
    setPath: (name: string, path: string) => void record.paths.set(name, path),
    requestSingleInstanceLock: () => record.lockGranted,
    whenReady: () => Promise.resolve(),
    quit: () => {
      record.quits += 1;
      app.emit('will-quit', {});
    },
    exit: (code: number) => void record.exits.push(code),
  });

  const module = {
    app,
    BrowserWindow,
    dialog: {
      showErrorBox: (...texts: string[]) => void record.errorBoxes.push(texts),
      showSaveDialog: (_window: unknown, question: { defaultPath?: string }) => {
        record.saveQuestions.push(question);
        return Promise.resolve(record.saveAnswer);
      },
    },
    ipcMain: {
      handle(channel: string, handler: (event: unknown, ...args: unknown[]) => unknown) {
        if (record.handlers.has(channel)) throw new Error(`second handler for ${channel}`);
        record.handlers.set(channel, handler);
      },
    },
    ipcRenderer: {
      async invoke(channel: string, ...args: unknown[]) {
        const handler = record.handlers.get(channel);
        if (handler === undefined) throw new Error(`no handler for ${channel}`);
        const event = { senderFrame: record.windows[0]?.webContents.mainFrame };
        return structuredClone(await handler(event, ...args.map((arg) => structuredClone(arg))));
      },
      on: (channel: string, listener: (...args: unknown[]) => void) =>
        record.channelListeners.on(channel, listener),
      off: (channel: string, listener: (...args: unknown[]) => void) =>
        record.channelListeners.off(channel, listener),
    },
    contextBridge: {
      exposeInMainWorld: (name: string, value: unknown) => void record.exposed.set(name, value),
    },
    Menu: {
      buildFromTemplate: (template: unknown) => template,
      setApplicationMenu: (menu: unknown) => {
        record.menu = menu;
      },
    },
    protocol: {
      registerSchemesAsPrivileged: (schemes: unknown[]) => void record.schemes.push(...schemes),
      handle: (scheme: string, handler: (request: Request) => Response | Promise<Response>) =>
        void record.protocols.set(scheme, handler),
    },
    screen: { getAllDisplays: () => record.displays },
    session: {
      defaultSession: {
        setPermissionRequestHandler: (handler: typeof record.session.request) => {
          record.session.request = handler;
        },
        setPermissionCheckHandler: (handler: typeof record.session.check) => {
          record.session.check = handler;
        },
        setDevicePermissionHandler: (handler: typeof record.session.device) => {
          record.session.device = handler;
        },
        webRequest: {
          onBeforeRequest: (handler: typeof record.session.before) => {
            record.session.before = handler;
          },
        },
      },
    },
  };
  return { module, record, app };
}

export type ElectronDouble = ReturnType<typeof createElectronDouble>;

/**
 * Runs the real main.ts and preload.ts against a new double.
 * @param data - the data folder.
 * @param prepare - sets the double up before the program starts.
 */
export async function startUnderDouble(
  data: string,
  prepare: (double: ElectronDouble) => void = () => undefined,
): Promise<ElectronDouble> {
  vi.resetModules();
  vi.stubEnv('EAVEWRIGHT_DATA', data);
  const double = createElectronDouble();
  prepare(double);
  vi.doMock('electron', () => double.module);
  vi.doMock('../../electron/built-files.ts', () => ({
    readBuiltFiles: () =>
      new Map([
        ['/', { type: 'text/html; charset=utf-8', bytes: Buffer.from('<!doctype html>') }],
        ['/assets/a.js', { type: 'text/javascript; charset=utf-8', bytes: Buffer.from('1') }],
      ]),
  }));
  const before = signals.map((signal) => process.listeners(signal));
  await import('../../electron/main.ts');
  await import('../../electron/preload.ts');
  // `ready` runs in the turn after `whenReady`.
  await new Promise((resolve) => setImmediate(resolve));
  // Electron's main process is one a program; here many follow each other in one process.
  for (const [index, signal] of signals.entries()) {
    for (const listener of process.listeners(signal)) {
      if (!before[index]?.includes(listener)) process.off(signal, listener);
    }
  }
  return double;
}

const signals = ['SIGINT', 'SIGTERM'] as const;

/** What the page finds on its window. */
export type PageBridge = {
  readonly invoke: (command: string, input: unknown) => Promise<unknown>;
  readonly subscribe: (callback: (event: unknown) => void) => () => void;
};

/** The bridge as preload.ts exposed it. */
export function pageBridge(double: ElectronDouble): PageBridge {
  return double.record.exposed.get('eavewright') as PageBridge;
}
