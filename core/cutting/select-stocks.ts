import { needOf, type CuttingModel, type Load } from './cutting-model.ts';

/** Index of the cheapest stock that can be bought and has room for a need; -1 for none. */
export function cheapestBought(model: CuttingModel, need: number): number {
  return model.boughtForNeed[need] ?? -1;
}

/**
 * Chooses the boards for contents that are settled, for the least money in all, with no more of a length than there are.
 * Exact: boards are taken cheapest first as long as those taken can each get a content of its own, which, since a longer
 * board holds whatever a shorter one holds, is so when no room is asked to hold more boards than contents fit it (the
 * greedy way for a matroid of matchings). Where nothing is limited, each content gets the cheapest length that holds it.
 * @param model - stocks.
 * @param contents - sizes in each board.
 * @param supply - boards that there are still, by stock; absent: those of the model.
 * @returns loads in the order of the contents; undefined where there are not enough boards.
 */
export function selectStocks(
  model: CuttingModel,
  contents: readonly (readonly number[])[],
  supply?: readonly number[],
): readonly Load[] | undefined {
  const needs = contents.map((sizes) => needOf(model, sizes));
  const chosen = model.limited
    ? matched(model, needs, supply)
    : needs.map((need) => cheapestBought(model, need));
  if (chosen === undefined || chosen.includes(-1)) return undefined;
  return contents.map((sizes, index) => ({
    stock: chosen[index] ?? 0,
    sizes: sizes.toSorted((a, b) => a - b),
  }));
}

function matched(
  model: CuttingModel,
  needs: readonly number[],
  supply: readonly number[] | undefined,
): readonly number[] | undefined {
  const ascending = [...needs.keys()].sort((a, b) => (needs[a] ?? 0) - (needs[b] ?? 0));
  /** How many contents a stock's room holds at most, each alone, less the boards taken that are no longer. */
  const spare = model.stocks.map(({ room }) => needs.filter((need) => need <= room).length);
  const taken = model.stocks.map(() => 0);
  let missing = needs.length;
  const cheapestFirst = [...model.stocks.entries()].sort(
    ([, a], [, b]) => a.cents - b.cents || a.room - b.room,
  );
  for (const [stock, { room, available }] of cheapestFirst) {
    let most = Math.min(missing, supply?.[stock] ?? available);
    for (const [other, choice] of model.stocks.entries())
      if (choice.room >= room) most = Math.min(most, spare[other] ?? 0);
    if (most <= 0) continue;
    taken[stock] = most;
    missing -= most;
    for (const [other, choice] of model.stocks.entries())
      if (choice.room >= room) spare[other] = (spare[other] ?? 0) - most;
  }
  if (missing > 0) return undefined;
  const chosen = needs.map(() => -1);
  let place = 0;
  for (const [stock, count] of taken.entries())
    for (let time = 0; time < count; time += 1) {
      chosen[ascending[place] ?? -1] = stock;
      place += 1;
    }
  return chosen;
}
