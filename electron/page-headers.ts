import { createHash } from 'node:crypto';

/**
 * The one style that the component library puts into the page: on touch screens, a press does not zoom. Its text is part
 * of the policy, as a hash; when the library changes it, Chromium reports it and the browser tests fail.
 */
const pressStyle = `@layer {
  [data-react-aria-pressable] {
    touch-action: pan-x pan-y pinch-zoom;
  }
}`;

const pressStyleHash = createHash('sha256').update(pressStyle, 'utf8').digest('base64');

/** What a page of ours may load and do: its own files alone, no scripts from text, nothing from elsewhere. */
export const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  `style-src 'self' 'sha256-${pressStyleHash}'`,
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  // A sheet is shown by the browser's own PDF viewer, from bytes that the page holds.
  'frame-src blob:',
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
  "require-trusted-types-for 'script'",
  "trusted-types 'none'",
].join('; ');

/** Headers of every answer of both shells. */
export const pageHeaders: Readonly<Record<string, string>> = {
  'content-security-policy': contentSecurityPolicy,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-resource-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'cache-control': 'no-store',
};
