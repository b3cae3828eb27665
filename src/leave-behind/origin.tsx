/** Where a value comes from, as both papers say it: a source by its name, else plainly that it is our own assumption. */
import { Fragment } from 'react';
import { MarkTitles } from '../charts/reworded.tsx';
import { language, say } from '../words/say.ts';
import { type Shown, sayTold, sayToldParts } from '../words/say-told.ts';

/** How tables and older estimates mark what nobody published; said in English and German. */
const UNPUBLISHED =
  /(a judgement, |eine Einschätzung, )?(common practice, no source|(gängige|übliche) Praxis, ohne Quelle|üblich, ohne Quelle)/g;
/** What was quoted without the print at hand: the source is named, and the value is ours. */
const UNCHECKED = /(, |; | \()?\b(quoted )?(from memory|aus dem Gedächtnis)\b/g;

/** A text of a source without the marks that only a table of values needs. */
export function plainOrigin(said: string): string {
  const own = say('our own assumption');
  return said
    .replace(UNPUBLISHED, own)
    .replace(UNCHECKED, (_, lead: string | undefined) =>
      lead ? `${lead === ' (' ? lead : '; '}${say('not checked, so our own assumption')}` : own,
    )
    .replace(/^(memory|recollection): /, `${own}: `);
}

/** What stands first of a source that names several or says how it was read: its title. */
const titleOf = (said: string): string =>
  plainOrigin(said.split(/ \(|; | \/ |, as quoted|, gleich angegeben|, second hand|, aus zweiter Hand/)[0]!).replace(
    /[.,]$/,
    '',
  );

/** The text of a source; a title that stays English is marked so, for whoever has the paper read aloud. */
export function Origin({ text, short = false }: { readonly text: Shown; readonly short?: boolean }) {
  const shape = short ? titleOf : plainOrigin;
  const title = (english: string) => <span lang="en">{shape(english)}</span>;
  if (typeof text !== 'string' && !('said' in text)) {
    const parts = sayToldParts(text, title, shape);
    return parts.map((part, i) => {
      const shown = typeof part === 'string' ? <MarkTitles said={plainOrigin(part)} /> : part;
      // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one sentence neither move nor change their number.
      return <Fragment key={i}>{shown}</Fragment>;
    });
  }
  const said = sayTold(text);
  return said === text && language() !== 'en-GB' ? title(said) : <MarkTitles said={shape(said)} />;
}
