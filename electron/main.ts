import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { app, BrowserWindow, dialog, ipcMain, Menu, protocol, screen, session } from 'electron';
import { problemSentence } from '../core/problems/sentence.ts';
import { fail } from '../core/result.ts';
import { answerFromFiles } from './app-scheme.ts';
import { readBuiltFiles } from './built-files.ts';
import { commandChannel, eventChannel } from './channels.ts';
import { dataFolder } from './data-folder.ts';
import { lockPages, lockSession } from './lock-down.ts';
import { menuTemplate } from './menu.ts';
import { openHost, type OpenHost } from './open-host.ts';
import { programRoot } from './program-root.ts';
import { saveThroughDialog } from './save-dialog.ts';
import { isOurSender, pageAddress, scheme } from './security.ts';
import { refusedExitCode } from './start/electron-program.ts';
import { askToShow, onAskedToShow } from './show-request.ts';
import { firstSize, placeOf, readWindowState, writeWindowState } from './window-state.ts';

const root = programRoot();
const data = dataFolder(undefined, process.env, process.platform);

let window: BrowserWindow | undefined;
let host: OpenHost | undefined;

protocol.registerSchemesAsPrivileged([
  { scheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
]);
app.enableSandbox();
// Electron's own files stand beside the shop file, so that two data folders never share a lock.
app.setPath('userData', join(data, 'window'));
lockPages(app);

if (app.requestSingleInstanceLock()) {
  app.on('second-instance', showWindow);
  app.on('window-all-closed', () => app.quit());
  app.on('will-quit', () => host?.close());
  process.once('SIGTERM', () => app.quit());
  process.once('SIGINT', () => app.quit());
  void app.whenReady().then(ready);
} else {
  app.quit();
}

function ready(): void {
  const opened = openHost(data, root, {
    shell: 'electron',
    saveFile: (fileName, bytes) =>
      window === undefined
        ? Promise.resolve(fail({ code: 'not-here', what: 'Saving' }))
        : saveThroughDialog(dialog, window, fileName, bytes),
  });
  if (!opened.ok) {
    if (opened.problem.code === 'shop-file-in-use') askToShow(data);
    dialog.showErrorBox('Eavewright', problemSentence(opened.problem));
    app.exit(refusedExitCode);
    return;
  }
  host = opened.value;
  const files = readBuiltFiles(join(root, 'dist', 'renderer'));
  protocol.handle(scheme, (request) => answerFromFiles(files, request));
  lockSession(session.defaultSession);
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform)));

  const { dispatch } = host;
  ipcMain.handle(commandChannel, (event, command: unknown, input: unknown) =>
    isOurSender(event, window?.webContents.mainFrame)
      ? dispatch(command, input)
      : fail({ code: 'not-here', what: 'That' }),
  );
  host.subscribe((event) => window?.webContents.send(eventChannel, event));
  openWindow();
  onAskedToShow(data, showWindow);
}

function openWindow(): void {
  const statePath = join(data, 'window.json');
  const areas = screen.getAllDisplays().map((display) => display.workArea);
  const state = readWindowState(statePath, areas);
  const opened = new BrowserWindow({
    ...(state === undefined ? firstSize : placeOf(state)),
    minWidth: 800,
    minHeight: 500,
    title: 'Eavewright',
    show: false,
    webPreferences: {
      preload: join(dirname(fileURLToPath(import.meta.url)), 'preload.cjs'),
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webviewTag: false,
      // Chromium's PDF viewer, which shows the sheets, is a plugin to Electron.
      plugins: true,
      spellcheck: false,
    },
  });
  window = opened;
  if (state?.maximized === true) opened.maximize();
  opened.once('ready-to-show', () => opened.show());
  opened.on('close', () =>
    writeWindowState(statePath, { ...opened.getNormalBounds(), maximized: opened.isMaximized() }),
  );
  opened.on('closed', () => {
    window = undefined;
  });
  void opened.loadURL(pageAddress);
}

function showWindow(): void {
  if (window === undefined) return;
  if (window.isMinimized()) window.restore();
  window.focus();
}
