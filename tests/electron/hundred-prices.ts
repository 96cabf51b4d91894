/**
 * A price list file of a hundred items that all cost the same.
 * @param dollars - whole dollars. [USD]
 */
export function hundredItems(dollars: number): string {
  const rows = Array.from(
    { length: 100 },
    (_, item) => `lath-${item},other,"Lath ${item}",each,${dollars}.00,2026-04-30`,
  );
  return ['id,category,description,unit,price_usd,observed_on', ...rows].join('\r\n');
}
