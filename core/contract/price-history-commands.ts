/** What prices did over time. */
export const priceHistoryCommands = {} as const;
