import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { sideBySide } from './measure.ts';

const start = fileURLToPath(new URL('../../electron/start.ts', import.meta.url));

/**
 * From starting the host with an empty folder to the job list on screen, in a browser that is already open; beside it,
 * in the same run, a server of Node that answers one line of text, started and shown in the same browser.
 * @param browserPath - the browser's executable.
 * @returns medians of both and their ratio. [ms]
 */
export async function timeStart(browserPath: string): Promise<Readonly<Record<string, number>>> {
  const browser = await chromium.launch({
    executablePath: browserPath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
    ],
  });
  const page = async (address: string, text: string): Promise<void> => {
    const opened = await browser.newPage();
    await opened.goto(address);
    await opened.getByText(text).first().waitFor();
    await opened.close();
  };
  const bare = `require('node:http').createServer((_, reply) => reply.end('here')).listen(0, '127.0.0.1', function () { console.log('http://127.0.0.1:' + this.address().port + '/'); })`;
  try {
    const medians = await sideBySide(
      {
        program: () =>
          withFolder((folder) =>
            withServer([start, '--shell', 'loopback', '--no-open', '--data', folder], (address) =>
              page(address, 'Open the sample job'),
            ),
          ),
        bare: () => withServer(['-e', bare], (address) => page(address, 'here')),
      },
      5,
    );
    const programMs = medians['program'] ?? Number.NaN;
    const bareMs = medians['bare'] ?? Number.NaN;
    return {
      programMs: Math.round(programMs),
      bareServerMs: Math.round(bareMs),
      ratio: Number((programMs / bareMs).toFixed(2)),
    };
  } finally {
    await browser.close();
  }
}

async function withFolder(work: (folder: string) => Promise<void>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'eavewright-bench-'));
  try {
    await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function withServer(args: readonly string[], work: (address: string) => Promise<void>): Promise<void> {
  const server = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = new Promise<void>((resolve) => server.once('exit', () => resolve()));
  try {
    const address = await new Promise<string>((resolve, reject) => {
      let said = '';
      server.stdout.on('data', (chunk: Buffer) => {
        said += chunk.toString();
        const found = /http:\/\/127\.0\.0\.1:\d+\/\S*/.exec(said)?.[0];
        if (found !== undefined) resolve(found);
      });
      server.once('exit', () => reject(new Error(`The server ended before it gave an address: ${said}`)));
    });
    await work(address);
  } finally {
    server.kill('SIGTERM');
    await ended;
  }
}
