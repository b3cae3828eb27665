import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { partOf } from './part-of.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const entries = {
  'node/main': 'src/host/main.ts',
  'node/plainwarmth': 'src/host/plainwarmth.ts',
  'node/desk-worker': 'src/host/desk-worker.ts',
  'node/file-reader': 'src/host/file-reader.ts',
  'node/reckon': 'src/host/reckon.ts',
  'node/backup': 'src/host/backup.ts',
  'node/bench': 'tests/bench/bench.ts',
  'electron/main': 'electron/main.ts',
};

/** Everything that runs in Node: the loopback host, the desk's worker, the command line, Electron's main process. */
export default defineConfig({
  root,
  plugins: [react()],
  build: {
    ssr: true,
    outDir: fileURLToPath(new URL('./out', import.meta.url)),
    emptyOutDir: false,
    target: 'node22',
    minify: false,
    sourcemap: true,
    rolldownOptions: {
      input: Object.fromEntries(
        Object.entries(entries).filter(([, file]) => existsSync(new URL(file, `file://${root}`))),
      ),
      external: [
        'electron',
        'better-sqlite3',
        '@playwright/test',
        '@sparticuz/chromium',
        'papaparse',
        'csv-parse',
        'csv-parse/sync',
        /^node:/,
      ],
      output: {
        entryFileNames: '[name].js',
        chunkFileNames: 'node/part-[name].js',
        codeSplitting: {
          groups: [
            // Finding a file takes half a millisecond: what the desk's start waits for lies in two, and not in sixty. All shapes are one.
            partOf('store', 'store/sqlite-store.ts', 2, 'host/run-host.ts'),
            partOf('desk', 'host/serve-store.ts', 1, 'host/run-host.ts', 'host/server.ts'),
            partOf('shapes', 'desk/contract.ts', 0, 'host/run-host.ts', 'host/server.ts', 'host/serve-store.ts'),
          ],
        },
      },
    },
  },
  ssr: {
    noExternal: true,
    external: ['electron', 'better-sqlite3', '@playwright/test', '@sparticuz/chromium', 'papaparse', 'csv-parse'],
  },
});
