/** The scheme of the program's own page under Electron. */
export const scheme = 'app';

/** The page's host name; together with the scheme it is the page's origin. */
export const pageHost = 'eavewright';

export const pageAddress = `${scheme}://${pageHost}/`;

/** True for an address of our own page, by its parsed parts and never by a piece of its text. */
export function isOurAddress(value: unknown): boolean {
  const url = parseUrl(value);
  return url !== undefined && url.protocol === `${scheme}:` && url.host === pageHost;
}

/** Chromium's own PDF viewer, which is part of the program and not of the network. */
const pdfViewer = 'chrome-extension://mhjfbmdgcfjbbpaeojofohoefgiehjai/';

/** True for what a frame inside our page may show: a sheet that the page made itself, in Chromium's PDF viewer. */
export function isOurFrameAddress(value: unknown): boolean {
  const url = parseUrl(value);
  if (url?.protocol === 'blob:') return isOurAddress(url.pathname);
  return typeof value === 'string' && value.startsWith(pdfViewer);
}

/**
 * True where a message comes from the top frame of our own window, showing our own page.
 * @param event - Electron's event of the message.
 * @param mainFrame - the top frame of our window; undefined when there is none.
 */
export function isOurSender(event: unknown, mainFrame: unknown): boolean {
  if (typeof event !== 'object' || event === null || !('senderFrame' in event)) return false;
  const frame = event.senderFrame;
  if (typeof frame !== 'object' || frame === null || frame !== mainFrame) return false;
  return 'url' in frame && isOurAddress(frame.url);
}

/** What the page may ask of the system: to put plain text on the clipboard when a person presses copy. */
export function isAllowedPermission(permission: unknown): boolean {
  return permission === 'clipboard-sanitized-write';
}

/** True for what the page may load: its own files, and what it made itself. Nothing ever comes from the network. */
export function isAllowedRequest(value: unknown): boolean {
  const url = parseUrl(value);
  if (url === undefined) return false;
  return url.protocol === 'data:' || isOurAddress(value) || isOurFrameAddress(value);
}

function parseUrl(value: unknown): URL | undefined {
  return typeof value === 'string' && URL.canParse(value) ? new URL(value) : undefined;
}
