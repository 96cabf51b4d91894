import { parentPort } from 'node:worker_threads';
import { solveExactly } from '../../core/cutting/exact/solve-exactly.ts';
import { type CuttingReply, type CuttingRequest, sharedSlots } from './cutting-messages.ts';
import { loadLinearPrograms } from './highs-programs.ts';

const port = parentPort;
if (port === null) throw new Error('cutting-worker runs in a worker thread only');

const programs = loadLinearPrograms();

port.on('message', (request: CuttingRequest) => void answer(request));

function say(reply: CuttingReply): void {
  port?.postMessage(reply);
}

async function answer({ id, problem, strategy, limitMs, shared }: CuttingRequest): Promise<void> {
  const slots = new Int32Array(shared);
  const endsAtMs = performance.now() + limitMs;
  try {
    const solved = solveExactly(
      problem,
      await programs,
      {
        stopped: () => Atomics.load(slots, sharedSlots.stop) === 1 || performance.now() >= endsAtMs,
        timeLeftMs: () => Math.max(0, endsAtMs - performance.now()),
        onProgress: (progress) => say({ id, kind: 'progress', progress }),
        elsewhere: () => ({
          costCents: Atomics.load(slots, sharedSlots.costCents),
          boundCents: Atomics.load(slots, sharedSlots.boundCents),
        }),
      },
      strategy,
    );
    say(
      solved.ok ? { id, kind: 'plan', plan: solved.value } : { id, kind: 'problem', problem: solved.problem },
    );
  } catch (error) {
    say({
      id,
      kind: 'broke',
      error: error instanceof Error ? (error.stack ?? error.message) : String(error),
    });
  }
}
