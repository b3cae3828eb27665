import { language } from '../words/say.ts';
import { type Shown, sayTold } from '../words/say-told.ts';

/**
 * Text that was kept in English, in the language spoken; what has no other wording is marked as English, for whoever has
 * it read aloud. `as` shapes what is said, such as into a sentence.
 */
export function Reworded({
  text,
  as = (said) => said,
}: {
  readonly text: Shown;
  readonly as?: (said: string) => string;
}) {
  const said = sayTold(text);
  return said === text && language() !== 'en-GB' ? <span lang="en">{as(text)}</span> : as(said);
}
