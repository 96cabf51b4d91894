import { copyFileSync, cpSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { isAbsolute, join, resolve } from 'node:path';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { migrations } from '../../migrations/migrations.ts';
import { attachmentsFolder } from './attachments.ts';
import { moveIntoPlace } from './backup.ts';
import {
  backupFolder,
  type BackupFile,
  type BackupKind,
  fileNames,
  freeName,
  listBackups,
} from './backup-files.ts';
import { daysToKeep } from './backup-rotation.ts';
import { storeProblem } from './classify.ts';
import { newestVersion } from './migrator.ts';
import { pointTo } from './moved-folder.ts';
import { openShop, shopFileName, type Store } from './open-shop.ts';
import { peekShopFile } from './peek.ts';

/** Thrown where the shop file is not open: the answer to every command until it is mended. */
export class ShopClosed extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super('the shop file is not open');
    this.problem = problem;
  }
}

/** What stands in the way of an open shop file that a backup can mend. */
const mendable: ReadonlySet<Problem['code']> = new Set(['shop-file-damaged', 'shop-file-not-ours']);

const programEnds: Problem = { code: 'not-here', what: 'That' };

/** Holds the shop file of a folder through damage, restoring and moving, so that the program behind it can go on. */
export type ShopKeeper = {
  /** The shop file as it is now; throws `ShopClosed` while there is none. */
  readonly store: Pick<Store, 'read' | 'write' | 'tables'>;
  readonly folder: () => string;
  /** What is wrong with the shop file; undefined while it is open. */
  readonly problem: () => Problem | undefined;
  /** What kept the last daily backup from being made; undefined where it was. */
  readonly backupProblem: () => Problem | undefined;
  readonly backups: () => readonly BackupFile[];
  /** Makes a checked copy of the open shop file. */
  readonly backUp: (
    kind: Exclude<BackupKind, 'before-update'>,
    day: string,
  ) => Promise<Result<string, Problem>>;
  /** Makes the day's backup where it is not there yet, and takes out what the rotation does not keep. */
  readonly backUpDaily: (day: string) => Promise<void>;
  /** Puts a backup in the shop file's place; answers the name under which what stood there is kept. */
  readonly restore: (fileName: string, day: string) => Promise<Result<string, Problem>>;
  /** Moves the shop file into another folder; the old one stays behind under another name. */
  readonly moveTo: (folder: string) => Promise<Result<string, Problem>>;
  readonly close: () => void;
};

/**
 * Opens the shop file of a folder and keeps it.
 * @param startFolder - where it lives.
 * @returns the keeper, also of a file that is damaged or not ours, where a backup may mend it; or the problem.
 */
export function keepShop(startFolder: string): Result<ShopKeeper, Problem> {
  let folder = startFolder;
  const first = openShop(folder);
  if (!first.ok && (!mendable.has(first.problem.code) || listBackups(folder).length === 0)) return first;
  let shop: Result<Store, Problem> = first;
  let backupProblem: Problem | undefined;
  let ended = false;
  // Copying, restoring and moving wait for each other: each needs the file to itself.
  let last: Promise<unknown> = Promise.resolve();

  const now = (): Store => {
    if (shop.ok) return shop.value;
    throw new ShopClosed(shop.problem);
  };

  function inTurn<T>(work: () => Promise<Result<T, Problem>>): Promise<Result<T, Problem>> {
    const turn = last.then(async () => {
      if (ended) return fail(programEnds);
      try {
        return await work();
      } catch (error) {
        // A copy that was under way when the program ended is thrown away; the next start makes it.
        if (ended) return fail(programEnds);
        const problem = error instanceof ShopClosed ? error.problem : storeProblem(error);
        if (problem === undefined) throw error;
        return fail(problem);
      }
    });
    last = turn.catch(() => undefined);
    return turn;
  }

  async function backUp(kind: BackupKind, day: string): Promise<string> {
    const folderOfCopies = backupFolder(folder);
    const stem = `${kind}-${day}`;
    const fileName = kind === 'daily' ? `${stem}.eavewright` : freeName(fileNames(folderOfCopies), stem);
    await now().backUp(join(folderOfCopies, fileName));
    return fileName;
  }

  function reopen(): void {
    shop = openShop(folder);
  }

  return ok({
    store: {
      read: (work) => now().read(work),
      write: (work) => now().write(work),
      tables: () => now().tables(),
    },
    folder: () => folder,
    problem: () => (shop.ok ? undefined : shop.problem),
    backupProblem: () => backupProblem,
    backups: () => listBackups(folder),
    backUp: (kind, day) => inTurn(async () => ok(await backUp(kind, day))),
    async backUpDaily(day) {
      const made = await inTurn(async () => {
        if (!shop.ok || listBackups(folder).some((one) => one.kind === 'daily' && one.day === day))
          return ok(undefined);
        await backUp('daily', day);
        dropOldDailies(folder);
        return ok(undefined);
      });
      backupProblem = made.ok ? undefined : made.problem;
    },
    restore: (fileName, day) =>
      inTurn(async () => {
        // Only a name from the list is taken, so that no path can be smuggled in.
        if (!listBackups(folder).some((one) => one.fileName === fileName))
          return fail({ code: 'not-found', what: 'backup' });
        const copy = join(backupFolder(folder), fileName);
        const version = peekShopFile(copy, newestVersion(migrations));
        if (!version.ok) return fail(version.problem);
        // From here to the reopening nothing waits, so that no save can come between and be lost.
        const keptAs = shop.ok ? keepClosed(shop.value, folder, day) : setAside(folder, day);
        copyWhole(copy, join(folder, shopFileName));
        reopen();
        return shop.ok ? ok(keptAs) : fail(shop.problem);
      }),
    moveTo: (wanted) =>
      inTurn(async () => {
        const target = resolve(wanted);
        const refused = cannotMoveTo(wanted, target, folder);
        if (refused !== undefined) return fail(refused);
        mkdirSync(target, { recursive: true });
        now().close();
        try {
          copyWhole(join(folder, shopFileName), join(target, shopFileName));
          copyAttachments(folder, target);
          pointTo(startFolder, target);
        } catch (error) {
          reopen();
          throw error;
        }
        const left = folder;
        folder = target;
        reopen();
        if (shop.ok) {
          const name = freeName(fileNames(left), 'shop-before-moving');
          renameSync(join(left, shopFileName), join(left, name));
        }
        return shop.ok ? ok(folder) : fail(shop.problem);
      }),
    close() {
      ended = true;
      if (shop.ok) shop.value.close();
    },
  });
}

/** Photos and PDFs come along; those in the old folder stay where they are. */
function copyAttachments(from: string, to: string): void {
  const kept = join(from, attachmentsFolder);
  if (existsSync(kept)) cpSync(kept, join(to, attachmentsFolder), { recursive: true });
}

function cannotMoveTo(wanted: string, target: string, folder: string): Problem | undefined {
  if (!isAbsolute(wanted) || wanted.includes('\0')) {
    const detail = 'give the whole path of a folder, from the root of the disk';
    return { code: 'entry-invalid', what: 'The folder', detail, field: 'folder' };
  }
  if (target === resolve(folder))
    return {
      code: 'entry-invalid',
      what: 'The folder',
      detail: 'the shop file is there already',
      field: 'folder',
    };
  if (existsSync(join(target, shopFileName))) {
    const detail = 'another shop file is there already; choose an empty one';
    return { code: 'entry-invalid', what: 'The folder', detail, field: 'folder' };
  }
  return undefined;
}

/** Copies a file at rest to a name, which shows the whole copy or what stood there before. */
function copyWhole(copy: string, path: string): void {
  const unfinished = `${path}.unfinished`;
  rmSync(unfinished, { force: true });
  copyFileSync(copy, unfinished);
  // A log of the file that stood here must not be read into the one that takes its place.
  for (const ending of ['-wal', '-shm', '-journal']) rmSync(`${path}${ending}`, { force: true });
  moveIntoPlace(unfinished, path);
}

/** Closes the shop file and keeps it among the backups; answers its name there. */
function keepClosed(open: Store, folder: string, day: string): string {
  open.close();
  const folderOfCopies = backupFolder(folder);
  mkdirSync(folderOfCopies, { recursive: true });
  const name = freeName(fileNames(folderOfCopies), `before-restore-${day}`);
  copyWhole(join(folder, shopFileName), join(folderOfCopies, name));
  return join('backups', name);
}

/** Renames a damaged shop file, and what stands beside it, so that someone who knows SQLite can still look at it. */
function setAside(folder: string, day: string): string {
  const name = freeName(fileNames(folder), `shop-damaged-${day}`);
  for (const ending of ['', '-wal', '-journal']) {
    const path = join(folder, `${shopFileName}${ending}`);
    if (existsSync(path)) renameSync(path, join(folder, `${name}${ending}`));
  }
  rmSync(join(folder, `${shopFileName}-shm`), { force: true });
  return name;
}

function dropOldDailies(folder: string): void {
  const dailies = listBackups(folder).flatMap(({ kind, day, fileName }) =>
    kind === 'daily' && day !== null ? [{ day, fileName }] : [],
  );
  const kept = daysToKeep(dailies.map(({ day }) => day));
  for (const { day, fileName } of dailies)
    if (!kept.has(day)) rmSync(join(backupFolder(folder), fileName), { force: true });
}
