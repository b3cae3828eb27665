/** `npm run prove`: the statistical proofs at full size. Built like the rest, then run in the project's own Node. */
import { buildIfNeeded } from './build.ts';

await buildIfNeeded();
await import(new URL('./out/node/prove.js', import.meta.url).href);
