/** `npm run reckon`, `npm run backup`: builds when needed, then hands over to the built command line. */
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const [command] = process.argv.splice(2, 1);
const { buildIfNeeded } = await import('./build.ts');
await buildIfNeeded();
await import(pathToFileURL(join(root, `build/out/node/${command}.js`)).href);
