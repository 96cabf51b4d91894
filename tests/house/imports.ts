import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What each part of the house may import: its own files, the parts named, and the packages named. */
const allowed: Readonly<Record<string, { parts: readonly string[]; packages: readonly RegExp[] | 'any' }>> = {
  core: { parts: ['core'], packages: [/^zod$/, /^decimal\.js$/] },
  migrations: { parts: ['migrations'], packages: [/^better-sqlite3$/] },
  electron: {
    parts: ['electron', 'core', 'migrations', 'vite.config.ts'],
    packages: [
      /^node:/,
      /^electron$/,
      /^better-sqlite3$/,
      /^kysely$/,
      /^zod$/,
      /^decimal\.js$/,
      /^pdfmake/,
      /^csv-parse/,
      /^write-excel-file/,
      /^highs$/,
      /^fflate$/,
      /^vite$/,
    ],
  },
  renderer: {
    parts: ['renderer', 'core'],
    packages: [
      /^react/,
      /^react-dom/,
      /^@tanstack\//,
      /^wouter/,
      /^lucide-react/,
      /^tinykeys$/,
      /^zod$/,
      /^decimal\.js$/,
      /^@expo-google-fonts\//,
    ],
  },
  tests: {
    parts: ['tests', 'core', 'electron', 'renderer', 'migrations', 'fixtures', 'vite.config.ts'],
    packages: 'any',
  },
};

/** Longest that a source file may grow before it has to be split by meaning. [lines] */
const longestFile = 400;

const sqlWords = /\b(?:SELECT|INSERT INTO|UPDATE|DELETE FROM|CREATE TABLE|ALTER TABLE|PRAGMA)\s+[a-z_*"]/;

/** Files and breaches of the house rules, found by reading every source file. */
export type HouseReport = {
  readonly files: number;
  readonly imports: number;
  readonly breaches: readonly string[];
};

/** Reads every source file and holds its imports, length and SQL against the rules of the house. */
export function inspectHouse(): HouseReport {
  const breaches: string[] = [];
  let files = 0;
  let imports = 0;
  for (const part of Object.keys(allowed)) {
    for (const file of sourceFiles(join(root, part))) {
      files += 1;
      const name = relative(root, file).split(sep).join('/');
      const text = readFileSync(file, 'utf8');
      const lines = text.split('\n').length;
      if (lines > longestFile) breaches.push(`${name}: ${lines} lines, more than ${longestFile}`);
      if (
        part !== 'tests' &&
        part !== 'migrations' &&
        !name.startsWith('electron/store/') &&
        sqlWords.test(text)
      ) {
        breaches.push(`${name}: SQL outside electron/store and migrations`);
      }
      if (part !== 'tests' && /^export default /m.test(text)) breaches.push(`${name}: default export`);
      for (const specifier of importsOf(text)) {
        imports += 1;
        const breach = checkImport(part, file, specifier);
        if (breach !== undefined) breaches.push(`${name}: ${breach}`);
      }
    }
  }
  return { files, imports, breaches };
}

function checkImport(part: string, file: string, specifier: string): string | undefined {
  const rule = allowed[part];
  if (rule === undefined) return `no rule for ${part}`;
  if (!specifier.startsWith('.')) {
    return rule.packages === 'any' || rule.packages.some((pattern) => pattern.test(specifier))
      ? undefined
      : `may not import the package ${specifier}`;
  }
  const target = resolve(dirname(file), specifier.replace(/\?.*$/, ''));
  const place = relative(root, target).split(sep).join('/');
  if (!exists(target)) return `imports ${specifier}, which does not exist`;
  const targetPart = place.split('/')[0] ?? '';
  return rule.parts.includes(targetPart) || rule.parts.includes(place)
    ? undefined
    : `may not import ${place}`;
}

function importsOf(text: string): string[] {
  const found: string[] = [];
  const pattern =
    /(?:^|[\n;])\s*(?:import|export)\s[^'"`;]*?from\s*['"]([^'"]+)['"]|(?:^|\n)\s*import\s*['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]\s*\)/g;
  for (const match of text.matchAll(pattern)) {
    const specifier = match[1] ?? match[2] ?? match[3];
    if (specifier !== undefined) found.push(specifier);
  }
  return found;
}

function sourceFiles(folder: string): string[] {
  if (!exists(folder)) return [];
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

function exists(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false }) !== undefined;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const report = inspectHouse();
  for (const breach of report.breaches) console.error(breach);
  console.log(`house: ${report.files} files, ${report.imports} imports, ${report.breaches.length} breaches`);
  process.exitCode = report.breaches.length === 0 ? 0 : 1;
}
