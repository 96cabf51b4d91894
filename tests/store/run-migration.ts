import BetterSqlite3 from 'better-sqlite3';
import { migrate } from '../../electron/store/migrator.ts';
import { setPragmas } from '../../electron/store/pragmas.ts';
import { rebuildParents, twoTables } from './rebuild-migrations.ts';

// Run as a child, to be killed in the middle.
const database = new BetterSqlite3(process.argv[2] ?? '');
setPragmas(database);
process.stdout.write('begin\n');
migrate(database, [twoTables, rebuildParents], () => undefined);
