/** The JSON Schemas published beside the code, made from the schemas that the program itself reads by. */
import { z } from 'zod';
import { Tariff } from '../model/shapes/tariff.ts';
import { Reckoning } from './audit.ts';
import { HouseholdFile } from './household-file.ts';
import { HouseholdInput } from './household-input.ts';

export const PUBLISHED: Readonly<Record<string, z.ZodType>> = {
  'household-file': HouseholdFile,
  'household-input': HouseholdInput,
  reckoning: Reckoning,
  tariff: Tariff,
};

/** Of those that have been changed since their first. */
const VERSIONS: Readonly<Record<string, number>> = { 'household-file': 2, reckoning: 2 };

/** Where each is published, from this folder: beside the schema that it is made from. */
export const schemaPath = (name: string): string =>
  name === 'tariff' ? '../model/tariff/tariff.schema.json' : `./${name}.schema.json`;

export function schemaText(name: string, schema: z.ZodType): string {
  const { $schema, ...body } = z.toJSONSchema(schema, { io: 'input', reused: 'ref' });
  return `${JSON.stringify({ $schema, title: `plainwarmth.${name}, version ${VERSIONS[name] ?? 1}`, ...body }, null, 2)}\n`;
}
