import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [react()],
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/unit/**/*.test.{ts,tsx}', 'tests/outside/**/*.test.ts'],
    environment: 'node',
    pool: 'forks',
    testTimeout: 20_000,
    // The leave-behind carries its style inside itself; without this its style would be empty in tests.
    css: { include: [/\.css\?raw$/] },
  },
});
