import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

/** The preload as one CommonJS file: a sandboxed preload cannot be an ES module. */
export default defineConfig({
  build: {
    outDir: fileURLToPath(new URL('./out/electron', import.meta.url)),
    emptyOutDir: false,
    target: 'es2022',
    minify: false,
    lib: {
      entry: fileURLToPath(new URL('../electron/preload.ts', import.meta.url)),
      formats: ['cjs'],
      fileName: () => 'preload.cjs',
    },
    rolldownOptions: { external: ['electron'] },
  },
});
