/** A supplier's name; items of the price list may have none. */
export function supplierName(name: string): string {
  return name.trim() === '' ? 'items without a supplier' : name;
}

/** Where a way buys, e.g. `Fernhollow Lumber`, `Split between Fernhollow Lumber and Hollin Yard`. */
export function wayWords(suppliers: readonly string[]): string {
  const names = suppliers.map(supplierName);
  if (names.length < 2) return names[0] ?? '';
  return `Split between ${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;
}
