import type { Problem } from '../../core/problems/problem.ts';
import type { Result } from '../../core/result.ts';
import type { Store } from '../store/open-shop.ts';
import type { Prover } from '../workers/prover.ts';
import type { ShopKeeper } from '../store/shop-keeper.ts';

/** What the use cases need from the world around them. */
export type Context = {
  readonly store: Pick<Store, 'read' | 'write' | 'tables'>;
  /** The shop file as a file: its folder, its backups. */
  readonly shop: ShopKeeper;
  /** Searches the boards that cost least. */
  readonly prover: Prover;
  /** Longest search for the boards of one stock before a paper or an estimate is made. [ms] */
  readonly searchLimitMs: number;
  readonly shell: 'electron' | 'loopback';
  readonly version: string;
  /** The civil date where the machine stands. */
  readonly today: () => string;
  readonly newId: () => string;
  /** The text of the sample job's file. */
  readonly sampleJob: () => Promise<string>;
  /** The text of what the sample's shop has behind it. */
  readonly sampleHistory: () => Promise<string>;
  /** Asks where to and saves, false where the person thought better of it; null in a shell where the page downloads instead. */
  readonly saveFile: ((fileName: string, bytes: Uint8Array) => Promise<Result<boolean, Problem>>) | null;
};
