/** Turns everything that can go wrong behind a request into the one form in which the screens hear of it. */
import type { z } from 'zod';
import { closest, tellExpected, valueAt } from '../intake/terms/schema-issue.ts';
import { StoreFault } from '../store/store-fault.ts';
import { say } from '../words/say.ts';
import { sayTold } from '../words/say-told.ts';
import { DeskError, type DeskRefusal } from './desk-error.ts';
import { fieldOfPath, fieldWords } from './field-names.ts';
import { NEAREST } from './loose-section.ts';
import { explainStoreFault } from './store-refusal.ts';
import { explainSystemFault } from './system-fault.ts';

type Issue = z.core.$ZodIssue;

function foundWords(value: unknown): string {
  if (value === undefined) return say('missing');
  if (typeof value === 'number') return String(value);
  if (typeof value === 'string') return value === '' ? say('empty') : say('“{text}”', { text: value.slice(0, 60) });
  if (Array.isArray(value)) return value.length === 0 ? say('an empty list') : say('a list');
  return value === null ? 'null' : typeof value === 'object' ? say('a group of fields') : String(value);
}

/** One complaint of a schema as a sentence with its field. */
export function explainIssue(given: Issue, input: unknown): DeskRefusal {
  const issue = closest(given);
  const field = fieldOfPath(issue.path);
  const words = fieldWords(field);
  if (issue.code === 'unrecognized_keys') {
    const key = issue.keys[0]!;
    const nearest = issue.message.startsWith(NEAREST) ? issue.message.slice(NEAREST.length) : '';
    return {
      code: 'unknown-field',
      message:
        nearest === ''
          ? say('“{key}” is not a field that is known here.', { key })
          : say('“{key}” is not a field that is known here. Is “{nearest}” meant?', { key, nearest }),
      where: field === '' ? key : `${field}.${key}`,
      remedy: say('Correct the spelling or take the field out.'),
    };
  }
  const value = valueAt(input, issue.path);
  const found = foundWords(value);
  const unit = typeof value === 'number' && words.unit ? ` ${sayTold(words.unit)}` : '';
  const sentence = say('{name} is {found}{unit}; it must be {expected}.', {
    name: words.name,
    found,
    unit,
    expected: sayTold(tellExpected(issue, words.unit)),
    // A degree of an angle stands at its number.
  }).replaceAll(/(?<=\d) °(?=[;.])/g, '°');
  return {
    code: 'bad-value',
    message: words.reason && typeof value === 'number' ? `${sentence} ${words.reason}` : sentence,
    where: field === '' ? say('the request') : field,
    remedy: value === undefined ? say('Fill it in.') : say('Correct it, or leave it empty if it may stay unknown.'),
  };
}

/** All complaints, the first as the refusal itself. */
export function explainIssues(issues: readonly Issue[], input: unknown): DeskRefusal[] {
  return issues.map((issue) => explainIssue(issue, input));
}

/** The refusal to show for anything thrown; what is not a refusal of ours is our own failure and is said so. */
export function toRefusal(error: unknown): DeskRefusal {
  if (error instanceof DeskError) return error.toRefusal();
  if (error instanceof StoreFault) return explainStoreFault(error.data);
  const ofSystem = explainSystemFault(error);
  if (ofSystem) return ofSystem;
  const detail = error instanceof Error ? error.message : String(error);
  return {
    code: 'own-failure',
    message: say('Plainwarmth itself failed: {detail}', { detail }),
    remedy: say('What was saved before is safe. Try again; if it fails again, report it with this sentence.'),
  };
}
