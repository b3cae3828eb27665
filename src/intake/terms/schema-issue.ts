/** What a schema complains of, in the words that a refusal needs. */

import type { z } from 'zod';
import { tell, type Wording } from '../../model/shapes/told.ts';

type Issue = z.core.$ZodIssue;

/** What a schema expected, after "must be". */
export function tellExpected(issue: Issue, unit?: string): Wording {
  switch (issue.code) {
    case 'too_small': {
      const least = Number(issue.minimum);
      if (issue.origin === 'string') return 'filled in';
      if (issue.origin === 'array') return tell('list-of-at-least', { least });
      if (issue.inclusive) return unit ? tell('at-least-of', { least, unit }) : tell('at-least', { least });
      return unit ? tell('more-than-of', { bound: least, unit }) : tell('more-than', { bound: least });
    }
    case 'too_big': {
      const most = Number(issue.maximum);
      if (issue.origin === 'string') return tell('at-most-characters', { most });
      if (issue.origin === 'array') return tell('list-of-at-most', { most });
      if (issue.inclusive) return unit ? tell('at-most-of', { most, unit }) : tell('at-most', { most });
      return unit ? tell('less-than-of', { bound: most, unit }) : tell('less-than', { bound: most });
    }
    case 'invalid_type':
      return (
        {
          number: tell('a-number'),
          int: tell('a-whole-number'),
          string: 'text',
          object: 'a group of fields',
          array: 'a list',
        }[issue.expected as string] ?? tell('of-the-kind', { kind: issue.expected })
      );
    case 'invalid_value':
      return issue.values.length === 1
        ? `“${String(issue.values[0])}”`
        : tell('one-of-these', { values: issue.values.map((v) => `“${String(v)}”`).join(', ') });
    case 'invalid_format':
      return issue.format === 'regex' && issue.message ? issue.message : tell('written-as', { format: issue.format });
    case 'not_multiple_of':
      return tell('a-whole-number');
    case 'invalid_union':
      return issue.errors
        .map(([first]) => tellExpected(first!, unit))
        .reduceRight((other, one) => tell('either-or', { one, other }));
    default:
      return issue.message;
  }
}

/** The branch of a union that came closest: the one whose complaint lies deepest; the union itself where none got further. */
export function closest(issue: Issue): Issue {
  if (issue.code !== 'invalid_union') return issue;
  const branches = issue.errors.filter((errors) => errors.length > 0);
  const first = branches[0]?.[0];
  if (!first) return issue;
  const deepest = branches
    .map(([complaint]) => complaint!)
    .reduce((best, next) => (next.path.length > best.path.length ? next : best), first);
  const kinds = branches.filter(
    ([complaint], place) => branches.findIndex(([one]) => one!.message === complaint!.message) === place,
  );
  if (deepest.path.length === 0 && kinds.length > 1) return { ...issue, errors: kinds } as Issue;
  return closest({ ...deepest, path: [...issue.path, ...deepest.path] } as Issue);
}

/** What stands there in what was given. */
export const valueAt = (given: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, key) => (typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined),
    given,
  );
