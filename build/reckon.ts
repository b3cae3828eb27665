/** `npm run reckon`: builds when needed, then hands over to the built command line. */
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const { buildIfNeeded } = await import('./build.ts');
await buildIfNeeded();
await import(pathToFileURL(join(root, 'build/out/node/reckon.js')).href);
