/** What our shape of a tariff does not hold of what a table says, in the words of the table. */
import type { z } from 'zod';
import { type RemarkBook, tellNumber } from '../terms/remark-book.ts';
import { tellExpected, valueAt } from '../terms/schema-issue.ts';

/** How a table calls the fields that it can fill. */
const FIELDS: Readonly<Record<string, string>> = {
  pencePerKWh: 'price',
  standingPencePerDay: 'standing',
  rate: 'vat',
  from: 'valid from',
};

export function refuseIssues(issues: readonly z.core.$ZodIssue[], tariff: unknown, book: RemarkBook): void {
  for (const issue of issues.slice(0, 5)) {
    const value = valueAt(tariff, issue.path);
    const name = issue.path.findLast((key) => typeof key === 'string') ?? '';
    if (issue.code === 'too_big' && Array.isArray(value))
      book.add('tariff-too-long', 'refusal', {
        found: name,
        count: value.length,
        ...tellNumber(Number(issue.maximum)),
      });
    else
      book.add('tariff-wrong', 'refusal', {
        column: FIELDS[name] ?? name,
        found: String(value ?? ''),
        expectedTold: tellExpected(issue),
      });
  }
}
