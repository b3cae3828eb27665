/** The JSON Schemas published beside the code, made from the schemas that the program itself reads by. */
import { z } from 'zod';
import { HouseholdFile } from './household-file.ts';
import { HouseholdInput } from './household-input.ts';

export const PUBLISHED: Readonly<Record<string, z.ZodType>> = {
  'household-file': HouseholdFile,
  'household-input': HouseholdInput,
};

export function schemaText(name: string, schema: z.ZodType): string {
  const { $schema, ...body } = z.toJSONSchema(schema, { io: 'input', reused: 'ref' });
  return `${JSON.stringify({ $schema, title: `plainwarmth.${name}, version 1`, ...body }, null, 2)}\n`;
}
