/** Boards and offcuts that the shop has. */
export const stockTables = `
`;
