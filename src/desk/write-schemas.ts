/** Writes the published JSON Schemas anew: `node src/desk/write-schemas.ts`. */
import { writeFileSync } from 'node:fs';
import { PUBLISHED, schemaPath, schemaText } from './json-schemas.ts';

for (const [name, schema] of Object.entries(PUBLISHED)) {
  writeFileSync(new URL(schemaPath(name), import.meta.url), schemaText(name, schema));
}
