import type { Problem } from '../../core/problems/problem.ts';
import type { Result } from '../../core/result.ts';
import type { Store } from '../store/open-shop.ts';

/** What the use cases need from the world around them. */
export type Context = {
  readonly store: Store;
  readonly shell: 'electron' | 'loopback';
  readonly version: string;
  /** The civil date where the machine stands. */
  readonly today: () => string;
  readonly newId: () => string;
  /** The text of the sample job's file. */
  readonly sampleJob: () => Promise<string>;
  /** Asks where to and saves, false where the person thought better of it; null in a shell where the page downloads instead. */
  readonly saveFile: ((fileName: string, bytes: Uint8Array) => Promise<Result<boolean, Problem>>) | null;
};
