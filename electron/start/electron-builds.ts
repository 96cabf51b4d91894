import { join } from 'node:path';
import type { InlineConfig } from 'vite';

/**
 * How Electron's own files are bundled. Packages stay outside and are found in node_modules.
 * @param root - the program's own folder.
 * @param outDir - where they go.
 */
export function electronBuilds(
  root: string,
  outDir: string = join(root, 'dist', 'electron'),
): readonly InlineConfig[] {
  const main = bundle(
    root,
    outDir,
    ['main.ts', join('paper', 'paper-worker.ts'), join('workers', 'cutting-worker.ts')],
    'es',
    true,
  );
  // A sandboxed preload script cannot be a module.
  const preload = bundle(root, outDir, ['preload.ts'], 'cjs', false);
  return [main, preload];
}

function bundle(
  root: string,
  outDir: string,
  files: readonly string[],
  format: 'es' | 'cjs',
  emptyOutDir: boolean,
): InlineConfig {
  const extension = format === 'es' ? 'js' : 'cjs';
  return {
    configFile: false,
    root,
    logLevel: 'warn',
    build: {
      ssr: true,
      target: 'node24',
      outDir,
      emptyOutDir,
      // The page's build copies the public folder; there is nothing to copy here.
      copyPublicDir: false,
      rolldownOptions: {
        input: files.map((file) => join(root, 'electron', file)),
        external: ['electron'],
        output: {
          format,
          entryFileNames: `[name].${extension}`,
          // All in one folder: a worker is looked for beside the file that starts it.
          chunkFileNames: `[name].${extension}`,
        },
      },
    },
  };
}
