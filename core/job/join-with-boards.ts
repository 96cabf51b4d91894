import { Decimal } from 'decimal.js';
import { type BuyableLength, cheapestBoards, mostPiecesPacked } from '../cutting/cheapest-boards.ts';
import { stockKey } from '../cutting/stock-group.ts';
import type { Stock } from '../eave/stock.ts';
import { boardsOnJoints, breakFascia, jointsOf } from '../layout/fascia-joints.ts';
import { jointChoices } from '../layout/joint-choices.ts';
import type { EaveLayout, FasciaPiece, FasciaRun } from '../layout/layout-types.ts';
import { boardsOnHand } from '../pricing/boards-on-hand.ts';
import { stockLengths } from '../pricing/stock-lengths.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import type { JobInput } from './job-file.ts';
import { sawOf } from './saw-of.ts';

/** Ways to break a run that are tried beside today's. Our own choice. */
const waysTried = 10;

/** A run of edge boards of one stock, and how it is broken. */
type Run = {
  readonly eave: number;
  readonly run: FasciaRun;
  readonly pieces: readonly FasciaPiece[];
};

/** What the pieces of one stock are cut from. */
type Boards = {
  readonly lengths: readonly BuyableLength[];
  readonly kerf: number;
  /** Pieces of the stock that are no choice of ours, such as rake fascia; kerf in them. [1/16 in] */
  readonly fixedSpans: readonly number[];
  readonly centsPerJoint: number;
};

/**
 * Chooses the joints of fascia and sub-fascia together with the boards that they are cut from: joints on tails only, at the
 * least cost of boards and joints over all runs of a stock and what else is cut from it, then fewest joints, then the most
 * even boards. Starts from the fewest and most even boards and changes one run at a time to the best of its likeliest ways,
 * the boards of each reckoned exactly, until no run gets better: so never dearer than before. Left as they are: runs that
 * some board does not reach, stocks without a price, with boards on hand or pinned boards, and more pieces than can be tried.
 * @param eaves - laid out. [in]
 * @param rakes - laid out; their fascia shares boards.
 */
export function joinWithBoards(
  input: JobInput,
  eaves: readonly EaveLayout[],
  rakes: readonly RakeLayout[],
): readonly EaveLayout[] {
  const pinned = new Set(input.design.cutting.pins.flatMap(({ marks }) => marks));
  const stocks = new Map<string, { readonly stock: Stock; readonly runs: Run[] }>();
  for (const [eave, layout] of eaves.entries()) {
    const design = input.design.eaves.find(({ eaveId }) => eaveId === layout.eaveId);
    if (design === undefined) continue;
    const add = (stock: Stock, run: FasciaRun | null, pieces: readonly FasciaPiece[]): void => {
      if (run === null || pieces.length === 0) return;
      const key = stockKey(stock);
      const known = stocks.get(key) ?? { stock, runs: [] };
      known.runs.push({ eave, run, pieces });
      stocks.set(key, known);
    };
    add(design.fascia.stock, layout.fasciaRun, layout.fascia);
    add(design.fascia.subFascia.stock, layout.subFasciaRun, layout.subFascia);
  }
  const joined = [...eaves];
  // Fascia comes before the sub-fascia behind it, whose joints keep clear of the ones chosen.
  for (const { stock, runs } of stocks.values()) {
    if (runs.some(({ pieces }) => pieces.some(({ mark }) => pinned.has(mark)))) continue;
    const boards = boardsOf(input, stock, rakes);
    const clear = runs.map((one) => (one.run.kind === 'U' ? clearOf(one, joined[one.eave]) : one));
    const chosen = boards === null ? clear : better(clear, boards, joined);
    for (const { eave, run, pieces } of chosen) {
      const layout = joined[eave];
      if (layout !== undefined)
        joined[eave] = run.kind === 'F' ? { ...layout, fascia: pieces } : { ...layout, subFascia: pieces };
    }
  }
  return joined;
}

/** A sub-fascia with its joints clear of those of the fascia as it is broken now. */
function clearOf(one: Run, layout: EaveLayout | undefined): Run {
  return layout === undefined
    ? one
    : { ...one, pieces: breakFascia(one.run, jointsOf(layout.fascia)).pieces };
}

function boardsOf(input: JobInput, stock: Stock, rakes: readonly RakeLayout[]): Boards | null {
  if (boardsOnHand(input.design.cutting, stock).length > 0) return null;
  const { lengths } = stockLengths(input, stock);
  if (lengths.length === 0) return null;
  const saw = sawOf(input.settings.cutting, stock);
  const kerf = saw.kerfSixteenths;
  const key = stockKey(stock);
  return {
    lengths: lengths.map(({ lengthSixteenths, priceCents }) => ({
      roomSixteenths: lengthSixteenths - 2 * saw.endTrimSixteenths + kerf,
      priceCents,
    })),
    kerf,
    fixedSpans: rakes.flatMap(({ fascia, fasciaStock }) =>
      fasciaStock !== null && stockKey(fasciaStock) === key
        ? fascia.map(({ lengthSixteenths }) => lengthSixteenths + kerf)
        : [],
    ),
    centsPerJoint: new Decimal(input.settings.layout.fasciaJointUsd).times(100).toNumber(),
  };
}

/** One run at a time is broken the way that costs least, until none gets better. */
function better(runs: readonly Run[], boards: Boards, eaves: readonly EaveLayout[]): readonly Run[] {
  const spansOf = (pieces: readonly FasciaPiece[]): readonly number[] =>
    pieces.map(({ lengthSixteenths }) => lengthSixteenths + boards.kerf);
  const scoreOf = (chosen: readonly Run[]): Score | null => {
    const spans = [...boards.fixedSpans, ...chosen.flatMap(({ pieces }) => spansOf(pieces))];
    if (spans.length > mostPiecesPacked) return null;
    const cents = cheapestBoards(spans, boards.lengths);
    const joints = chosen.reduce((sum, { pieces }) => sum + pieces.length - 1, 0);
    return cents === null
      ? null
      : {
          cents: cents + joints * boards.centsPerJoint,
          joints,
          squares: spans.reduce((sum, span) => sum + span ** 2, 0),
        };
  };
  let chosen = runs;
  let score = scoreOf(chosen);
  for (let better = score !== null; better && score !== null; ) {
    better = false;
    for (const [index, one] of chosen.entries()) {
      const avoidIn = jointsOf(otherBoardsOf(chosen, one, eaves));
      for (const jointsIn of waysOf(one.run, boards, avoidIn)) {
        const tried = chosen.map((run, at) =>
          at === index ? { ...run, pieces: boardsOnJoints(run.run, jointsIn) } : run,
        );
        const found = scoreOf(tried);
        if (found === null || !isLess(found, score)) continue;
        chosen = tried;
        score = found;
        better = true;
      }
    }
  }
  return chosen;
}

type Score = { readonly cents: number; readonly joints: number; readonly squares: number };

function isLess(one: Score, other: Score): boolean {
  if (one.cents !== other.cents) return one.cents < other.cents;
  if (one.joints !== other.joints) return one.joints < other.joints;
  return one.squares < other.squares;
}

/** The boards that lie before or behind a run, as they are broken so far; a sub-fascia of another stock follows later. */
function otherBoardsOf(
  runs: readonly Run[],
  { eave, run }: Run,
  eaves: readonly EaveLayout[],
): readonly FasciaPiece[] {
  const other = runs.find((one) => one.eave === eave && one.run.kind !== run.kind);
  if (other !== undefined) return other.pieces;
  return run.kind === 'U' ? (eaves[eave]?.fascia ?? []) : [];
}

/** The likeliest ways to break a run: as if each piece had a board to itself, and as if boards were sold by the inch. */
function waysOf(run: FasciaRun, boards: Boards, avoidIn: readonly number[]): readonly (readonly number[])[] {
  const perSixteenth = Math.min(
    ...boards.lengths.map(({ roomSixteenths, priceCents }) => priceCents / roomSixteenths),
  );
  const alone = (length: number): number =>
    Math.min(
      ...boards.lengths
        .filter(({ roomSixteenths }) => length + boards.kerf <= roomSixteenths)
        .map(({ priceCents }) => priceCents),
    );
  const shared = (length: number): number => (length + boards.kerf) * perSixteenth;
  return [alone, shared].flatMap((worth) =>
    jointChoices(run, worth, boards.centsPerJoint, waysTried, avoidIn),
  );
}
