import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { partOf } from './part-of.ts';
import { pureShapes } from './pure-shapes.ts';

/** The window: screens and charts, as static files that both hosts serve. */
export default defineConfig({
  root: fileURLToPath(new URL('../src/screens', import.meta.url)),
  base: './',
  plugins: [react(), pureShapes()],
  build: {
    outDir: fileURLToPath(new URL('./out/web', import.meta.url)),
    emptyOutDir: true,
    target: 'es2024',
    // The content security policy lets no inline data but pictures through, so fonts stay files.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 1500,
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: 'react', test: /node_modules[\\/](react|react-dom|scheduler)[\\/]/, priority: 3 },
            // One file for the list and one for the desk: a browser asks a host for six at a time, and a start needs both.
            partOf('list', 'screens/main.tsx', 2),
            partOf('first', 'screens/first.ts', 4),
            partOf('desk', 'screens/household-desk.tsx', 1),
          ],
        },
      },
    },
  },
});
