import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

/** Bundles Electron's main and preload scripts, and the paper worker, into plain JavaScript files. */
export default defineConfig({
  build: {
    ssr: true,
    target: 'node24',
    outDir: fileURLToPath(new URL('dist/electron', import.meta.url)),
    emptyOutDir: true,
    rollupOptions: {
      input: {
        main: fileURLToPath(new URL('electron/main.ts', import.meta.url)),
        preload: fileURLToPath(new URL('electron/preload.ts', import.meta.url)),
      },
      external: ['electron', 'better-sqlite3', 'pdfmake'],
      output: { entryFileNames: '[name].js', format: 'es' },
    },
  },
});
