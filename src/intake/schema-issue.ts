/** What a schema complains of, in the words that a refusal needs. */
import type { z } from 'zod';

type Issue = z.core.$ZodIssue;

/** What a schema expected, after "must be". */
export function expectedWords(issue: Issue, unit?: string): string {
  const of = unit ? ` ${unit}` : '';
  switch (issue.code) {
    case 'too_small':
      if (issue.origin === 'string') return 'filled in';
      if (issue.origin === 'array') return `a list of at least ${issue.minimum}`;
      return issue.inclusive ? `at least ${issue.minimum}${of}` : `more than ${issue.minimum}${of}`;
    case 'too_big':
      if (issue.origin === 'string') return `at most ${issue.maximum} characters long`;
      if (issue.origin === 'array') return `a list of at most ${issue.maximum}`;
      return issue.inclusive ? `at most ${issue.maximum}${of}` : `less than ${issue.maximum}${of}`;
    case 'invalid_type':
      return (
        { number: 'a number', int: 'a whole number', string: 'text', object: 'a group of fields', array: 'a list' }[
          issue.expected as string
        ] ?? `of the kind ${issue.expected}`
      );
    case 'invalid_value':
      return issue.values.length === 1
        ? `“${String(issue.values[0])}”`
        : `one of ${issue.values.map((v) => `“${String(v)}”`).join(', ')}`;
    case 'invalid_format':
      return issue.format === 'regex' && issue.message ? issue.message : `written as ${issue.format}`;
    case 'not_multiple_of':
      return 'a whole number';
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
