import { language, reword } from '../words/say.ts';

/** Text that was kept in English, in the language spoken; what has no other wording is marked as English, for whoever has it read aloud. */
export function Reworded({ text }: { readonly text: string }) {
  const said = reword(text);
  return said === text && language() !== 'en-GB' ? <span lang="en">{text}</span> : said;
}
