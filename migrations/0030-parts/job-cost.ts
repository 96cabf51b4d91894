/** Time, receipts, orders and progress of a job. */
export const jobCostTables = `
`;
