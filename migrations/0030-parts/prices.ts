/** Price lists as suppliers lay them out, and index series. */
export const priceTables = `
`;
