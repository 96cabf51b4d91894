/** What a job really took: time, receipts, orders, progress. */
export const costCommands = {} as const;
