/** What a schema complains of, in the words that a refusal needs. */

import type { z } from 'zod';
import { tell, type Wording } from '../model/shapes/told.ts';

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
    default:
      return issue.message;
  }
}

/** The branch of a union that came closest: the one whose complaint lies deepest. */
export function closest(issue: Issue): Issue {
  if (issue.code !== 'invalid_union' || issue.errors.length === 0) return issue;
  const branches = issue.errors.map((errors) => errors[0]).filter((first) => first !== undefined);
  const deepest = branches.reduce((best, next) => (next.path.length > best.path.length ? next : best), branches[0]!);
  return closest({ ...deepest, path: [...issue.path, ...deepest.path] } as Issue);
}
