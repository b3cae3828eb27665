import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const root = fileURLToPath(new URL('..', import.meta.url));
const entries = {
  main: 'src/host/main.ts',
  'desk-worker': 'src/host/desk-worker.ts',
  reckon: 'src/host/reckon.ts',
  electron: 'electron/main.ts',
  bench: 'tests/bench/bench.ts',
  prove: 'tests/bench/prove.ts',
};

/** Everything that runs in Node: the loopback host, the desk's worker, the command line, Electron's main process. */
export default defineConfig({
  root,
  plugins: [react()],
  build: {
    ssr: true,
    outDir: fileURLToPath(new URL('./out/node', import.meta.url)),
    emptyOutDir: true,
    target: 'node24',
    minify: false,
    sourcemap: true,
    rolldownOptions: {
      input: Object.fromEntries(
        Object.entries(entries).filter(([, file]) => existsSync(new URL(file, `file://${root}`))),
      ),
      external: [
        'electron',
        'better-sqlite3',
        '@sparticuz/chromium',
        'papaparse',
        'csv-parse',
        'csv-parse/sync',
        /^node:/,
      ],
      output: { entryFileNames: '[name].js', chunkFileNames: 'part-[name]-[hash].js' },
    },
  },
  ssr: { noExternal: true, external: ['electron', 'better-sqlite3', '@sparticuz/chromium', 'papaparse', 'csv-parse'] },
});
