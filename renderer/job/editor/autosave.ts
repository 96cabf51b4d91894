import type { CommandInput } from '../../../core/contract/contract.ts';
import type { Reply } from '../../../core/contract/reply.ts';
import type { Problem } from '../../../core/problems/problem.ts';
import type { Documents } from './documents.ts';

/** Where the saving stands, for the line that the person reads. */
export type SaveState =
  | { readonly kind: 'saved' }
  | { readonly kind: 'saving' }
  /** The host does not answer: what was typed is kept here and sent again. */
  | { readonly kind: 'host-lost' }
  /** The host answered that it could not save; tried again by itself. */
  | { readonly kind: 'refused'; readonly problem: Problem }
  /** Another window saved the job; the person chooses which to keep. */
  | { readonly kind: 'changed-elsewhere' };

/** What the saver needs of the world, so that it can be tested without one. */
export type SaverWorld = {
  readonly jobId: string;
  /** Sends a save; a rejection means that the host did not answer. */
  readonly send: (input: CommandInput<'jobs.save'>) => Promise<Reply<{ readonly revision: number }>>;
  /** Reads the job as the host holds it; a rejection means that the host did not answer. */
  readonly fetchAgain: () => Promise<Reply<{ readonly revision: number; readonly documents: Documents }>>;
  readonly later: (act: () => void, afterMs: number) => void;
  readonly told: (state: SaveState) => void;
  /** Another window saved the job while nothing here was unsaved: these documents stand from now on. */
  readonly took: (documents: Documents) => void;
};

/** A saver of one job. */
export type Saver = {
  /** Tells the newest documents; they are sent within a moment, one save at a time. */
  readonly changed: (documents: Documents) => void;
  /** Sends now what is not saved yet, e.g. as the page goes away. */
  readonly flush: () => void;
  /** Saves what is on this screen over what another window saved. */
  readonly keepMine: () => void;
  readonly isSaved: () => boolean;
  /** Some window saved some job: looks at the next pause whether this one is still as it was read. */
  readonly heard: () => void;
  readonly stop: () => void;
};

/** Longest wait from a keystroke to its save. [ms] */
const typingPauseMs = 100;
/** Waits between tries while the host does not answer; the last one repeats. [ms] */
const retryMs = [300, 1000, 3000] as const;
/** Each save is heard of, one's own too: they are looked at once a pause. [ms] */
const hearingPauseMs = 250;

/**
 * Saves a job as it is typed: parts that changed since the last acknowledged save, one save in flight, the newest
 * documents next. A save whose answer was lost may have been written: the job is read again and compared before it
 * is called changed elsewhere.
 */
export function startSaver(world: SaverWorld, acknowledged: Documents, revision: number): Saver {
  let saved = acknowledged;
  let newest = acknowledged;
  let baseRevision = revision;
  let inFlight = false;
  let waiting = false;
  let stopped = false;
  let conflict = false;
  let looking = false;
  let tries = 0;
  let unanswered: readonly Documents[] = [];
  let state: SaveState = { kind: 'saved' };

  const tell = (next: SaveState): void => {
    if (state.kind === next.kind && next.kind !== 'refused') return;
    state = next;
    if (!stopped) world.told(next);
  };

  const soon = (afterMs: number): void => {
    if (waiting || stopped) return;
    waiting = true;
    world.later(() => {
      waiting = false;
      void run();
    }, afterMs);
  };

  const failed = (next: SaveState): void => {
    tell(next);
    soon(retryMs[Math.min(tries, retryMs.length - 1)] ?? 3000);
    tries += 1;
  };

  const acknowledge = (documents: Documents, newRevision: number): void => {
    saved = documents;
    baseRevision = newRevision;
    unanswered = [];
    tries = 0;
    tell(newest === saved ? { kind: 'saved' } : { kind: 'saving' });
  };

  async function run(): Promise<void> {
    if (inFlight || stopped || conflict || newest === saved) return;
    inFlight = true;
    if (state.kind === 'saved') tell({ kind: 'saving' });
    const sending = newest;
    try {
      const reply = await world.send({ id: world.jobId, baseRevision, ...changedParts(saved, sending) });
      if (reply.ok) acknowledge(sending, reply.value.revision);
      else if (reply.problem.code === 'changed-elsewhere') await settle();
      else failed({ kind: 'refused', problem: reply.problem });
    } catch {
      unanswered = [...unanswered, sending];
      failed({ kind: 'host-lost' });
    } finally {
      inFlight = false;
    }
    if (newest !== saved && !waiting) soon(0);
  }

  /** Another revision is in the store: ours whose answer was lost, or another window's. */
  async function settle(): Promise<void> {
    const there = await world.fetchAgain();
    const ours = there.ok && unanswered.find((sent) => sameText(there.value.documents, sent));
    if (!there.ok) {
      failed({ kind: 'refused', problem: there.problem });
    } else if (ours) {
      acknowledge(ours, there.value.revision);
    } else {
      conflict = true;
      tell({ kind: 'changed-elsewhere' });
    }
  }

  async function overwrite(): Promise<void> {
    try {
      const there = await world.fetchAgain();
      if (!there.ok) return;
      baseRevision = there.value.revision;
      saved = there.value.documents;
      conflict = false;
      tell({ kind: 'saving' });
      soon(0);
    } catch {
      tell({ kind: 'host-lost' });
      world.later(() => void overwrite(), 1000);
    }
  }

  const isIdle = (): boolean => newest === saved && !inFlight && !conflict && !stopped;

  /** Takes what another window saved where nothing here waits to be saved; else the next save finds out. */
  async function look(): Promise<void> {
    looking = false;
    if (!isIdle()) return;
    try {
      const there = await world.fetchAgain();
      if (!there.ok || !isIdle() || there.value.revision <= baseRevision) return;
      baseRevision = there.value.revision;
      saved = there.value.documents;
      newest = saved;
      world.took(saved);
    } catch {
      // The frame says that the host is lost; the next save finds out what was saved elsewhere.
    }
  }

  return {
    heard: () => {
      if (looking || stopped) return;
      looking = true;
      world.later(() => void look(), hearingPauseMs);
    },
    changed: (documents) => {
      newest = documents;
      if (newest === saved && !inFlight && !conflict) {
        tell({ kind: 'saved' });
        return;
      }
      if (state.kind === 'saved') tell({ kind: 'saving' });
      soon(typingPauseMs);
    },
    flush: () => void run(),
    keepMine: () => void overwrite(),
    isSaved: () => newest === saved,
    stop: () => {
      stopped = true;
    },
  };
}

type Parts = Omit<CommandInput<'jobs.save'>, 'id' | 'baseRevision'>;

/** The documents that differ from those that the host acknowledged. */
function changedParts(saved: Documents, now: Documents): Parts {
  return {
    ...(saved.estimateOn === now.estimateOn ? {} : { estimateOn: now.estimateOn }),
    ...(saved.info === now.info ? {} : { info: now.info }),
    ...(saved.survey === now.survey ? {} : { survey: now.survey }),
    ...(saved.design === now.design ? {} : { design: now.design }),
    ...(saved.drafts === now.drafts ? {} : { drafts: now.drafts }),
  };
}

/** Equal as JSON, whatever the order of the keys. */
function sameText(one: unknown, two: unknown): boolean {
  return canonical(one) === canonical(two);
}

function canonical(value: unknown): string {
  return JSON.stringify(value, (_key, entry: unknown) =>
    typeof entry === 'object' && entry !== null && !Array.isArray(entry)
      ? Object.fromEntries(Object.entries(entry).sort(([a], [b]) => (a < b ? -1 : 1)))
      : entry,
  );
}
