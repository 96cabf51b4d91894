/** Change orders, invoices and payments. */
export const billingTables = `
`;
