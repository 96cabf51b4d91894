import type { CuttingModel } from '../cutting-model.ts';
import { dive } from '../dive.ts';
import { groupSizes, ungroup } from '../group-sizes.ts';
import { improvePairs } from '../improve-pairs.ts';
import { selectStocks } from '../select-stocks.ts';
import type { Incumbent } from './incumbent.ts';

/** Ways of drawing sizes together that are tried. */
const mostTries = 9;

/** No fewer sizes than this: what fits pieces so much too long is no good plan. */
const fewestSizes = 10;

/** Work of one dive, and of changing boards in pairs behind it, in table cells. */
const diveCells = 30_000_000;
const pairCells = 10_000_000;

/**
 * Looks for a cheaper plan by diving with neighbouring sizes drawn together, each taken as long as its longest, in several
 * widths. With fewer sizes the fractions stand on other patterns, from which other whole boards come; the true pieces,
 * being no longer, fit them all the same.
 * @param model - the problem.
 * @param incumbent - the best plan so far; made better.
 */
export function diveGrouped(model: CuttingModel, incumbent: Incumbent): void {
  const most = model.sizes.length - 1;
  const step = Math.max(1, Math.ceil((most - fewestSizes) / mostTries));
  let before = model.sizes.length;
  for (let wanted = most; wanted >= fewestSizes && !incumbent.stopped(); wanted -= step) {
    const grouped = groupSizes(model, wanted);
    if (grouped.members.length === before) continue;
    before = grouped.members.length;
    const budget = (cells: number) => ({ cells, stopped: incumbent.stopped });
    const { loads } = dive(grouped.roundedUp, budget(diveCells));
    if (loads === undefined) continue;
    const ungrouped = selectStocks(model, ungroup(model, grouped, loads));
    if (ungrouped === undefined) continue;
    incumbent.offer(ungrouped, 'dive');
    if (!incumbent.stopped()) incumbent.offer(improvePairs(model, ungrouped, budget(pairCells)), 'dive');
  }
}
