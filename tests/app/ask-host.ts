import type { Page } from 'playwright-core';
import type { CommandInput, CommandName, CommandOutput } from '../../core/contract/contract.ts';
import type { Reply } from '../../core/contract/reply.ts';

/** Asks the host behind a page, for what a test needs and does not look at: the page's own key, no screen. */
export async function askHost<N extends CommandName>(
  page: Page,
  command: N,
  input: CommandInput<N>,
): Promise<CommandOutput<N>> {
  const reply = (await page.evaluate(
    async ([name, body]) => {
      const key = window.sessionStorage.getItem('eavewright-key') ?? '';
      const response = await fetch(`/api/${name}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', authorization: `Bearer ${key}` },
        body,
      });
      return (await response.json()) as unknown;
    },
    [command, JSON.stringify(input)] as const,
  )) as Reply<CommandOutput<N>>;
  if (!reply.ok) throw new Error(`${command}: ${JSON.stringify(reply.problem)}`);
  return reply.value;
}
