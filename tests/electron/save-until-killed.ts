import type { CommandOutput } from '../../core/contract/contract.ts';
import type { Reply } from '../../core/contract/reply.ts';
import { openHost } from '../../electron/open-host.ts';
import { programRoot } from '../../electron/program-root.ts';

// Run as a child: saves one job over and over, each save in four places at once, and says each number when it is
// acknowledged. The parent kills it.
const host = openHost(process.argv[2] ?? '', programRoot(), { shell: 'loopback', saveFile: null });
if (!host.ok) throw new Error(host.problem.code);
const { dispatch } = host.value;

const [listed] = (
  (await dispatch('jobs.list', { search: '', archived: false })) as { value: CommandOutput<'jobs.list'> }
).value;
const id =
  listed?.id ?? ((await dispatch('jobs.create', { name: '0' })) as { value: { id: string } }).value.id;
let { revision } = ((await dispatch('jobs.get', { id })) as { value: CommandOutput<'jobs.get'> }).value;

for (;;) {
  const number = String(revision + 1);
  const reply = (await dispatch('jobs.save', {
    id,
    baseRevision: revision,
    info: { name: number, notes: 'filler '.repeat(200) },
    survey: { version: 1, notes: number, eaves: [] },
    design: { version: 1, scopeNote: number, eaves: [] },
    drafts: { number },
  })) as Reply<CommandOutput<'jobs.save'>>;
  if (!reply.ok) throw new Error(reply.problem.code);
  ({ revision } = reply.value);
  process.stdout.write(`saved ${revision}\n`);
}
