import type { Phase } from '../eave/phases.ts';
import type { TracePart } from '../trace/trace.ts';

/** Nails of one kind for one use on one eave or rake, net of loss. */
export type NailUse = {
  readonly nail: string;
  readonly use:
    | 'extender'
    | 'plate'
    | 'header'
    | 'filler'
    | 'ridge'
    | 'block'
    | 'sub-fascia'
    | 'fascia'
    | 'sheathing'
    | 'soffit'
    | 'ledger'
    | 'soffit-nailer'
    | 'lookout'
    | 'ladder'
    | 'barge'
    | 'rake-fascia'
    | 'rake-sheathing'
    | 'rake-soffit';
  readonly phase: Phase;
  readonly eaveId: string;
  /** Present for a rake on that eave. */
  readonly rakeId?: string;
  readonly count: number;
  readonly parts: readonly TracePart[];
};
