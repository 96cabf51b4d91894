import type { Reply } from '../../core/contract/reply.ts';
import { openHost } from '../../electron/open-host.ts';
import { programRoot } from '../../electron/program-root.ts';
import { hundredItems } from './hundred-prices.ts';

// Run as a child: imports a hundred prices at once, over and over, each time all of one amount, and saves an estimate
// after each; says each number when it is acknowledged, and the problem when one is answered. The parent stops it.
const [folder = '', first = '1', jobId = ''] = process.argv.slice(2);
const host = openHost(folder, programRoot(), { shell: 'loopback', saveFile: null });
if (!host.ok) throw new Error(host.problem.code);
const { dispatch } = host.value;

for (let number = Number(first); ; number += 1) {
  const imported = await dispatch('prices.importCsv', { text: hundredItems(number) });
  if (!imported.ok) {
    process.stdout.write(`refused ${imported.problem.code}\n`);
    break;
  }
  process.stdout.write(`imported ${number}\n`);
  if (jobId === '') continue;
  const saved = (await dispatch('estimates.save', { jobId })) as Reply<{ number: number }>;
  if (!saved.ok) {
    process.stdout.write(`refused ${saved.problem.code}\n`);
    break;
  }
  process.stdout.write(`saved ${saved.value.number}\n`);
}
host.value.close();
