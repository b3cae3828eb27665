/** The codes of a union in the model, read from its source, since types are gone when tests run. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export function codesOf(file: string, start: string): string[] {
  const source = readFileSync(join(import.meta.dirname, '../../../src/model', file), 'utf8');
  const code = source.replace(/\/\*\*.*?\*\//gs, '');
  const at = code.indexOf(start);
  if (at < 0) throw new Error(`${file} has no “${start}”`);
  return [...code.slice(at, code.indexOf(';', at)).matchAll(/'([a-z0-9-]+)'/g)].map(([, found]) => found!);
}

export const BILL_FAULT_CODES = codesOf('bill-gap/bill-faults.ts', 'readonly code:');
export const BILL_CAUSE_CODES = codesOf('bill/suspicions.ts', 'type SuspicionCode');
export const QUESTION_CODES = [
  ...codesOf('demand/heat-questions.ts', 'type DemandQuestionCode'),
  ...codesOf('heat-pump/machine-questions.ts', 'type MachineQuestionCode'),
  ...codesOf('heat-pump/full/full-questions.ts', 'type FullQuestionCode'),
  ...codesOf('comparison/price-questions.ts', 'type PriceQuestionCode'),
  ...codesOf('comparison/price-questions.ts', 'type CostQuestionCode'),
];
