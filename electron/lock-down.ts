import type { App, Session } from 'electron';
import { isAllowedPermission, isAllowedRequest, isOurAddress, isOurFrameAddress } from './security.ts';

/** Holds every page that the program ever shows to its own address: no other pages, no windows, no embedded views. */
export function lockPages(app: App): void {
  app.on('web-contents-created', (_created, contents) => {
    contents.on('will-navigate', stay);
    contents.on('will-redirect', stay);
    contents.on('will-frame-navigate', (event) => {
      if (event.isMainFrame || !isOurFrameAddress(event.url)) stay(event);
    });
    contents.on('will-attach-webview', (event) => event.preventDefault());
    contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  });
}

function stay(event: { preventDefault(): void; readonly url?: string }): void {
  if (!isOurAddress(event.url)) event.preventDefault();
}

/** Denies what pages may ask of the system, and every request that would leave the program. */
export function lockSession(session: Session): void {
  session.setPermissionRequestHandler((_contents, permission, answer) =>
    answer(isAllowedPermission(permission)),
  );
  session.setPermissionCheckHandler((_contents, permission) => isAllowedPermission(permission));
  session.setDevicePermissionHandler(() => false);
  session.webRequest.onBeforeRequest((details, answer) => answer({ cancel: !isAllowedRequest(details.url) }));
}
