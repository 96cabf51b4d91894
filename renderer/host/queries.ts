import { keepPreviousData, QueryClient, useQuery, type UseQueryResult } from '@tanstack/react-query';
import type { CommandInput, CommandName, CommandOutput } from '../../core/contract/contract.ts';
import type { ChangeEvent, Reply } from '../../core/contract/reply.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { invoke, subscribe } from '../bridge.ts';
import { HostLost } from './transport.ts';
import { currentConnection, onConnection } from './connection.ts';

/** Carries a problem through TanStack Query, whose failures are thrown. */
export class ProblemError extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.code);
    this.problem = problem;
  }
}

/** Answers are kept until a command makes them old; the host is on this machine, so nothing is fetched by the clock. */
export const queryClient = new QueryClient({
  defaultOptions: {
    queries: {
      retry: false,
      staleTime: Number.POSITIVE_INFINITY,
      refetchOnWindowFocus: false,
      refetchOnReconnect: false,
      networkMode: 'always',
    },
  },
});

/** Which answers become old when a topic changes. */
const commandsByTopic: Readonly<Record<ChangeEvent['what'], readonly CommandName[]>> = {
  jobs: [
    'jobs.list',
    'jobs.get',
    'customers.list',
    'estimates.list',
    'quotes.list',
    'money.shop',
    'stock.list',
  ],
  prices: [
    'prices.layouts',
    'prices.list',
    'prices.ofItem',
    'prices.histories',
    'prices.changesSince',
    'prices.spread',
    'prices.indexes',
  ],
  settings: ['settings.get', 'settings.logo', 'learning.get'],
  stock: ['stock.list'],
  money: ['costs.get', 'billing.get', 'billing.preview', 'money.shop', 'money.closeOut', 'learning.get'],
};

/**
 * Reads from the host and keeps the answer.
 * @param command - a reading command.
 * @param input - its input.
 * @param isWanted - false while the answer is not shown: then nothing is asked.
 * @param keepsLast - true where the answer to the last input stands until the one to a new input has come.
 */
export function useAnswer<N extends CommandName>(
  command: N,
  input: CommandInput<N>,
  isWanted = true,
  keepsLast = false,
): UseQueryResult<CommandOutput<N>> {
  return useQuery<CommandOutput<N>>({
    enabled: isWanted,
    ...(keepsLast ? { placeholderData: keepPreviousData } : {}),
    queryKey: [command, input],
    queryFn: async () => {
      const reply = await invoke(command, input);
      if (!reply.ok) throw new ProblemError(reply.problem);
      return reply.value;
    },
  });
}

/**
 * Runs a writing command and lets go of the answers that it made old.
 * @param command - a writing command.
 * @param input - its input.
 * @returns the host's reply; rejects with HostLost where no answer came.
 */
export async function tell<N extends CommandName>(
  command: N,
  input: CommandInput<N>,
): Promise<Reply<CommandOutput<N>>> {
  const reply = await invoke(command, input);
  for (const topic of topicsOf(command)) await forget(topic);
  return reply;
}

/** The problem in a failed answer; undefined while there is none or where the host was not reached. */
export function problemOf(error: Error | null): Problem | undefined {
  if (error === null || error instanceof HostLost) return undefined;
  return error instanceof ProblemError ? error.problem : { code: 'internal' };
}

/** Keeps answers fresh: after what other windows change, and after the host comes back. */
export function keepAnswersFresh(): () => void {
  const stopEvents = subscribe((event) => {
    if (event.kind === 'changed') void forget(event.what);
  });
  const stopConnection = onConnection(() => {
    if (currentConnection() === 'here') {
      void queryClient.refetchQueries({ predicate: (query) => query.state.status === 'error' });
    }
  });
  return () => {
    stopEvents();
    stopConnection();
  };
}

/** What a writing command makes old. A job that comes in may bring prices and settings with it. */
function topicsOf(command: CommandName): readonly ChangeEvent['what'][] {
  if (command === 'jobs.openSample' || command === 'jobs.openFinishedSample' || command === 'jobs.import')
    return ['jobs', 'prices', 'settings', 'stock', 'money'];
  const topic = command.split('.')[0];
  if (topic === 'quotes') return ['jobs', 'settings', 'money'];
  if (topic === 'stock') return ['stock', 'jobs'];
  if (topic === 'costs' || topic === 'billing' || topic === 'learning' || topic === 'money')
    return ['money', 'jobs', 'prices', 'settings'];
  return topic === 'prices' || topic === 'settings' ? [topic] : ['jobs'];
}

async function forget(topic: ChangeEvent['what']): Promise<void> {
  const old = new Set<unknown>(commandsByTopic[topic]);
  await queryClient.invalidateQueries({ predicate: (query) => old.has(query.queryKey[0]) });
}
