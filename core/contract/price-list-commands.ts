/** Editing the price list fast, and its ways in and out. */
export const priceListCommands = {} as const;
