import { expect, test } from 'vitest';
import { isAllowedPermission, isAllowedRequest, isOurAddress, isOurSender } from '../../electron/security.ts';

test.each([
  'app://eavewright/',
  'app://eavewright/#/jobs',
  'app://eavewright/assets/a.js',
  'APP://eavewright/',
])('%s is our address', (address) => {
  expect(isOurAddress(address)).toBe(true);
});

test.each([
  undefined,
  null,
  7,
  {},
  '',
  'app:',
  'app://',
  'app://eavewright.evil.test/',
  'app://evil.test/app://eavewright/',
  'app://eavewright@evil.test/',
  'app://eavewright:81/',
  'https://eavewright/',
  'https://evil.test/?app://eavewright/',
  'file:///app://eavewright/',
  'javascript:app://eavewright/',
  'data:text/html,app://eavewright/',
])('%j is not our address', (address) => {
  expect(isOurAddress(address)).toBe(false);
});

test('a sender is ours only as the top frame of our window on our page', () => {
  const frame = { url: 'app://eavewright/' };
  expect(isOurSender({ senderFrame: frame }, frame)).toBe(true);
  for (const event of [null, undefined, 'x', {}, { senderFrame: null }, { senderFrame: { ...frame } }]) {
    expect(isOurSender(event, frame)).toBe(false);
  }
  expect(isOurSender({ senderFrame: undefined }, undefined)).toBe(false);
  expect(isOurSender({ senderFrame: null }, null)).toBe(false);
  const elsewhere = { url: 'https://evil.test/' };
  expect(isOurSender({ senderFrame: elsewhere }, elsewhere)).toBe(false);
});

test.each([
  undefined,
  null,
  'media',
  'clipboard-read',
  'CLIPBOARD-SANITIZED-WRITE',
  ['clipboard-sanitized-write'],
])('permission %j is denied', (permission) => {
  expect(isAllowedPermission(permission)).toBe(false);
});

test.each([
  'http://127.0.0.1/',
  'https://x.test/',
  'ws://x.test/',
  'file:///a',
  'ftp://x.test/',
  'app://x/',
  'blob:https://x.test/1',
  'chrome-extension://x/',
  7,
  '',
])('a request for %j is stopped', (address) => {
  expect(isAllowedRequest(address)).toBe(false);
});
