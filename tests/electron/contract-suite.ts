import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contract } from '../../core/contract/contract.ts';
import { makeAsker, type Expected, type OpenTransport } from './contract-asker.ts';
import { checkBilling } from './contract-billing.ts';
import { checkCosts } from './contract-costs.ts';
import { checkCutting } from './contract-cutting.ts';
import { checkJobs } from './contract-jobs.ts';
import { checkLearning } from './contract-learning.ts';
import { checkPriceList } from './contract-price-list.ts';
import { checkPricesAndPaper } from './contract-prices-and-paper.ts';
import { checkQuotes } from './contract-quotes.ts';
import { checkStockAndHistory } from './contract-stock-and-history.ts';
import { checkShop } from './contract-shop.ts';
import { checkShopFile } from './contract-shop-file.ts';

/**
 * The same checks for every transport: each command of the contract, when it goes well and when it does not. A command
 * that no check asks for fails the suite. The checks follow each other on one shop file, as a day's work does.
 */
export function describeContract(name: string, open: () => Promise<OpenTransport>, expected: Expected): void {
  describe(`the contract over ${name}`, () => {
    let transport: OpenTransport;
    beforeAll(async () => {
      transport = await open();
    });
    afterAll(() => transport.close());

    const asker = makeAsker(() => transport, expected);
    checkShop(asker);
    checkJobs(asker);
    checkPricesAndPaper(asker);
    checkPriceList(asker);
    checkCutting(asker);
    checkQuotes(asker);
    checkCosts(asker);
    checkBilling(asker);
    checkLearning(asker);
    checkStockAndHistory(asker);
    checkShopFile(asker);

    test('every command of the contract was asked for', () => {
      expect([...asker.asked].sort()).toEqual(Object.keys(contract).sort());
    });
  });
}
