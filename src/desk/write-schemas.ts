/** Writes the published JSON Schemas anew: `node src/desk/write-schemas.ts`. */
import { writeFileSync } from 'node:fs';
import { PUBLISHED, schemaText } from './json-schemas.ts';

for (const [name, schema] of Object.entries(PUBLISHED)) {
  writeFileSync(new URL(`./${name}.schema.json`, import.meta.url), schemaText(name, schema));
}
