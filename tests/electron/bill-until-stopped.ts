import type { Reply } from '../../core/contract/reply.ts';
import { openHost } from '../../electron/open-host.ts';
import { programRoot } from '../../electron/program-root.ts';

// Run as a child: issues small deposits and credits each of them, one after the other; says each number when it is
// acknowledged. The parent stops it.
const [folder = '', jobId = ''] = process.argv.slice(2);
const host = openHost(folder, programRoot(), { shell: 'loopback', saveFile: null });
if (!host.ok) throw new Error(host.problem.code);
const { dispatch } = host.value;

const issuedOn = '2026-05-20';
for (;;) {
  const issued = (await dispatch('billing.issue', {
    jobId,
    ask: { kind: 'deposit', depositUsd: '1' },
    issuedOn,
  })) as Reply<{ id: string; number: number }>;
  if (!issued.ok) throw new Error(issued.problem.code);
  process.stdout.write(`numbered ${issued.value.number}\n`);
  const credited = (await dispatch('billing.credit', {
    invoiceId: issued.value.id,
    amountUsd: '1',
    reason: 'Trial',
    issuedOn,
  })) as Reply<{ number: number }>;
  if (!credited.ok) throw new Error(credited.problem.code);
  process.stdout.write(`numbered ${credited.value.number}\n`);
}
