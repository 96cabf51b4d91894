import { contextBridge, ipcRenderer } from 'electron';
import type { HostEvent } from '../core/contract/reply.ts';
import { commandChannel, eventChannel } from './channels.ts';

/** All that the page gets of Electron: ask, and listen. Electron's own event objects stay on this side. */
contextBridge.exposeInMainWorld('eavewright', {
  invoke: (command: string, input: unknown): Promise<unknown> =>
    ipcRenderer.invoke(commandChannel, command, input),
  subscribe(callback: (event: HostEvent) => void): () => void {
    const listener = (_event: unknown, hostEvent: HostEvent): void => callback(hostEvent);
    ipcRenderer.on(eventChannel, listener);
    return () => void ipcRenderer.off(eventChannel, listener);
  },
});
