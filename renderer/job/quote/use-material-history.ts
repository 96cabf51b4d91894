import { useMemo } from 'react';
import {
  basketSteps,
  materialBasket,
  type MaterialBasket,
} from '../../../core/pricing/history/material-basket.ts';
import type { CostStep } from '../../../core/pricing/history/price-risk.ts';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { useAnswer } from '../../host/queries.ts';
import { useJob } from '../job-context.ts';

/** What the job's materials are, their items with every price, and how their cost went up to the estimate's day. */
export type MaterialHistory = {
  readonly basket: MaterialBasket;
  readonly items: readonly PriceItem[];
  readonly steps: readonly CostStep[];
};

/** The history of the job's materials; null until it has been read, or where there are no figures. */
export function useMaterialHistory(): MaterialHistory | null {
  const { good } = useJob().computation;
  const basket = useMemo(() => (good === null ? null : materialBasket(good.result.estimate)), [good]);
  const itemIds = useMemo(
    () => [...new Set(basket?.lines.map(({ itemId }) => itemId))].toSorted().slice(0, 500),
    [basket],
  );
  const histories = useAnswer('prices.histories', { itemIds }, itemIds.length > 0, true);
  const items = histories.data;
  return useMemo(
    () =>
      basket === null || items === undefined ? null : { basket, items, steps: basketSteps(basket, items) },
    [basket, items],
  );
}
