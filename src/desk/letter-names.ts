/** Whom the letter greets and whom to ring: without all three it is not written. */
import type { LetterNames } from '../model/shapes/household.ts';
import { phrase, say } from '../words/say.ts';
import type { DeskRefusal } from './desk-error.ts';
import { ManyRefusals } from './parse-household.ts';

const MISSING: readonly (readonly [keyof LetterNames, string])[] = [
  ['to', phrase('The letter needs a name to greet, such as Mrs Miller.')],
  ['ringName', phrase('The letter needs the name of somebody whom the household may ring.')],
  ['ringTelephone', phrase('The letter needs a telephone number on which to ring.')],
];

/** The names, trimmed; refused with every key that is missing. `where` begins the place, such as a file's name. */
export function letterNames(
  { letter }: { readonly letter?: LetterNames | undefined },
  where = '',
): Required<LetterNames> {
  const trimmed = Object.fromEntries(MISSING.map(([key]) => [key, letter?.[key]?.trim() ?? '']));
  const [first, ...others] = MISSING.filter(([key]) => trimmed[key] === '').map(
    ([key, message]): DeskRefusal => ({
      code: 'letter-name-missing',
      message: say(message),
      where: `${where}letter.${key}`,
      remedy: say('Type it beside the letter’s button, or write “{key}” under “letter” in the household file.', {
        key,
      }),
    }),
  );
  if (first) throw new ManyRefusals([first, ...others]);
  return trimmed as Required<LetterNames>;
}
