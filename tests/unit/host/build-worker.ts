/** The desk's thread built as the hosts get it, into a folder of its own, so that a test can start the real one. */
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { build } from 'vite';

const root = fileURLToPath(new URL('../../..', import.meta.url));

export interface BuiltWorker {
  readonly workerFile: string;
  readonly remove: () => void;
}

export async function buildWorker(): Promise<BuiltWorker> {
  // Inside the checkout, so that the database's driver is found from there.
  const cache = join(root, 'node_modules/.cache');
  mkdirSync(cache, { recursive: true });
  const folder = mkdtempSync(join(cache, 'desk-worker-'));
  await build({
    configFile: false,
    root,
    plugins: [react()],
    logLevel: 'error',
    build: {
      ssr: true,
      outDir: folder,
      target: 'node24',
      minify: false,
      rolldownOptions: {
        input: {
          'desk-worker': join(root, 'src/host/desk-worker.ts'),
          'file-reader': join(root, 'src/host/file-reader.ts'),
        },
        external: ['better-sqlite3', '@sparticuz/chromium', /^node:/],
        output: { entryFileNames: '[name].js' },
      },
    },
    ssr: { noExternal: true, external: ['better-sqlite3', '@sparticuz/chromium'] },
  });
  return { workerFile: join(folder, 'desk-worker.js'), remove: () => rmSync(folder, { recursive: true }) };
}
