import { kerfAlong, slantOf } from './board-use.ts';
import type { BoundCertificate, CutItem, CuttingProblem, StockLength } from './cut-plan-types.ts';
import { settlePins } from './settle-pins.ts';

/** Parts that a cent is divided into. */
const partsOfCent = 2n ** 20n;

/** A worth for every kind of piece, with the most of it that each length can hold. */
type Weighing = { readonly needed: bigint; readonly perBoard: readonly bigint[] };

/** Pieces that are alike. */
type Kind = { readonly item: CutItem; readonly slant: number; readonly count: number };

/**
 * Reckons the bound of a certificate again, sharing nothing with the solver but what a cut takes along the board: prices
 * every length by a plain knapsack, and then goes through the numbers of boards that the worths leave possible. All in
 * whole numbers.
 * @param problem - what was asked. [1/16 in, cents]
 * @param certificate - worths as a plan carries them.
 * @param ceilingCents - what a plan is known to count for; nothing above it is looked at. [cents]
 * @returns what no plan can count for less than: its cost, and what each board counts for besides. Throws where the
 * certificate is not one of this problem: a kind of piece is missing, or a board holds pieces worth more than its price.
 */
export function checkCertificate(
  problem: CuttingProblem,
  certificate: BoundCertificate,
  ceilingCents = Number.POSITIVE_INFINITY,
): number {
  const { items, lengths, met } = settlePins(problem);
  const eachBoard = problem.preferences?.centsPerBoard ?? 0;
  const prices = lengths.map(({ priceCents }) => priceCents + eachBoard);
  const pinned = met.reduce((sum, { length }) => sum + length.priceCents + eachBoard, 0);
  const kinds = kindsOf(problem, items);
  const worths = worthsOfKinds(certificate, kinds);
  const main = weigh(problem, kinds, lengths, worths[0] ?? []);
  let parts = main.needed;
  for (const [index, length] of lengths.entries()) {
    const over = (main.perBoard[index] ?? 0n) - BigInt(prices[index] ?? 0) * partsOfCent;
    if (over <= 0n) continue;
    const tax = certificate.supplies.find(
      ({ itemId, lengthSixteenths, priceCents }) =>
        itemId === length.itemId &&
        lengthSixteenths === length.lengthSixteenths &&
        priceCents === length.priceCents,
    );
    if (length.available === undefined || tax === undefined || BigInt(tax.parts) < over)
      throw new Error(`certificate: a board of ${length.itemId} holds pieces worth more than its price`);
    parts -= BigInt(tax.parts) * BigInt(length.available);
  }
  const linear = parts <= 0n ? 0 : Number((parts + partsOfCent - 1n) / partsOfCent);
  const others = worths.slice(1).map((worth) => weigh(problem, kinds, lengths, worth));
  const ceiling = ceilingCents - pinned;
  return pinned + Math.max(linear, cheapestNumbers(lengths, prices, [main, ...others], linear, ceiling));
}

function kindsOf(problem: CuttingProblem, items: readonly CutItem[]): readonly Kind[] {
  const kinds = new Map<string, Kind>();
  for (const item of items) {
    const slant = slantOf(problem, item);
    const key = `${item.lengthSixteenths}/${slant}`;
    kinds.set(key, { item, slant, count: (kinds.get(key)?.count ?? 0) + 1 });
  }
  return [...kinds.values()];
}

/** The worths of a certificate, and of each of its cuts, beside the kinds of pieces. */
function worthsOfKinds(
  { worths, cuts }: BoundCertificate,
  kinds: readonly Kind[],
): readonly (readonly number[])[] {
  const places = kinds.map(({ item, slant }) => {
    const place = worths.findIndex(
      (worth) =>
        worth.lengthSixteenths === item.lengthSixteenths &&
        (worth.slantSixteenths === slant || worth.slantSixteenths === (item.slantSixteenths ?? 0)),
    );
    if (place === -1) throw new Error(`certificate: no worth for ${item.mark}`);
    return place;
  });
  return [worths.map(({ parts }) => parts), ...cuts].map((all) =>
    places.map((place) => {
      const worth = all[place];
      if (worth === undefined || !Number.isSafeInteger(worth) || worth < 0)
        throw new Error('certificate: a worth that is no whole number from 0 up');
      return worth;
    }),
  );
}

/** The most worth that each length can hold, over every least and most slanted piece that a board may have. */
function weigh(
  problem: CuttingProblem,
  kinds: readonly Kind[],
  lengths: readonly StockLength[],
  worth: readonly number[],
): Weighing {
  const slants = [...new Set(kinds.map(({ slant }) => slant))].sort((a, b) => a - b);
  const usable = lengths.map(({ lengthSixteenths }) => lengthSixteenths - 2 * problem.endTrimSixteenths);
  const perBoard = lengths.map(() => 0);
  for (const [index, least] of slants.entries())
    for (const most of slants.slice(index)) {
      const within = [...kinds.entries()].filter(([, { slant }]) => slant >= least && slant <= most);
      const extra = kerfAlong(problem, least) - most;
      const longest = Math.max(0, ...usable) + extra;
      if (longest < 0) continue;
      const best = new Float64Array(longest + 1);
      for (const [kind, { item, slant, count }] of within) {
        const span = item.lengthSixteenths - slant + kerfAlong(problem, slant);
        for (let piece = 0; piece < Math.min(count, Math.floor(longest / span)); piece += 1)
          for (let room = longest; room >= span; room -= 1)
            best[room] = Math.max(best[room] ?? 0, (best[room - span] ?? 0) + (worth[kind] ?? 0));
      }
      for (const [board, length] of usable.entries())
        perBoard[board] = Math.max(perBoard[board] ?? 0, best[length + extra] ?? 0);
    }
  if (perBoard.some((value) => !Number.isSafeInteger(value)))
    throw new Error('certificate: worths too large to be added exactly');
  return {
    needed: kinds.reduce((sum, { count }, kind) => sum + BigInt(count) * BigInt(worth[kind] ?? 0), 0n),
    perBoard: perBoard.map(BigInt),
  };
}

/** The least that numbers of boards count for which come to every worth; the ceiling where none below it do. [cents] */
function cheapestNumbers(
  lengths: readonly StockLength[],
  prices: readonly number[],
  weighings: readonly Weighing[],
  from: number,
  ceiling: number,
): number {
  const order = [...lengths.keys()].sort((a, b) => (prices[b] ?? 0) - (prices[a] ?? 0));
  let best = Number.POSITIVE_INFINITY;
  /** Whether money can still bring what is missing, spent on whatever brings most for a cent. */
  const canReach = (missing: bigint, { perBoard }: Weighing, place: number, money: number): boolean => {
    if (missing <= 0n) return true;
    return order.slice(place).some((index) => {
      const price = BigInt(prices[index] ?? 0);
      const each = perBoard[index] ?? 0n;
      return price === 0n ? each > 0n : missing * price <= BigInt(money) * each;
    });
  };
  const walk = (place: number, spent: number, missing: readonly bigint[], most: number): void => {
    const index = order[place];
    if (index === undefined) {
      if (missing.every((amount) => amount <= 0n)) best = Math.min(best, spent);
      return;
    }
    const price = prices[index] ?? 0;
    const available = lengths[index]?.available ?? Number.POSITIVE_INFINITY;
    for (let count = 0; count <= available; count += 1) {
      const cost = spent + count * price;
      const limit = Math.min(most, best - 1);
      if (cost > limit) break;
      const still = missing.map(
        (amount, weighing) => amount - BigInt(count) * (weighings[weighing]?.perBoard[index] ?? 0n),
      );
      const possible = weighings.every((weighing, which) =>
        canReach(still[which] ?? 0n, weighing, place + 1, limit - cost),
      );
      if (possible) walk(place + 1, cost, still, most);
      // Enough for every worth: more of it brings nothing.
      if (still.every((amount) => amount <= 0n)) break;
    }
  };
  for (let spare = 64; best === Number.POSITIVE_INFINITY; spare *= 4) {
    const most = Math.min(from + spare, ceiling - 1);
    walk(
      0,
      0,
      weighings.map(({ needed }) => needed),
      most,
    );
    if (most >= ceiling - 1 || (spare > 1e9 && best === Number.POSITIVE_INFINITY)) break;
  }
  return Math.min(best, ceiling);
}
