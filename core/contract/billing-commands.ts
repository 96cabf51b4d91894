/** Change orders, invoices, payments. */
export const billingCommands = {} as const;
