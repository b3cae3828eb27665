import { Fragment } from 'react';
import type { Told } from '../model/shapes/told.ts';
import { language } from '../words/say.ts';
import { cutAtTitles, type Shown, sayTold, sayToldParts } from '../words/say-told.ts';

/**
 * Text that was kept in English, in the language spoken; what has no other wording is marked as English, for whoever has
 * it read aloud, also where it is the title of a source inside a sentence. `as` shapes what is said, such as into a sentence.
 */
export function Reworded({ text, as }: { readonly text: Shown; readonly as?: (said: string) => string }) {
  const shaped = as ?? ((said: string) => said);
  if (language() === 'en-GB') return shaped(sayTold(text));
  if (as === undefined && typeof text !== 'string' && !('said' in text)) return <InParts told={text} />;
  const said = sayTold(text);
  return said === text ? <span lang="en">{shaped(said)}</span> : <MarkTitles said={shaped(said)} />;
}

/** A German text in which the titles of British publications are marked as English. */
export function MarkTitles({ said }: { readonly said: string }) {
  if (language() === 'en-GB') return said;
  return cutAtTitles(said).map((part, index) =>
    index % 2 === 0 ? (
      part
    ) : (
      // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one sentence neither move nor change their number.
      <span key={index} lang="en">
        {part}
      </span>
    ),
  );
}

function InParts({ told }: { readonly told: Told }) {
  const parts = sayToldParts(told, (english) => <span lang="en">{english}</span>);
  return parts.map((part, index) => {
    const shown = typeof part === 'string' ? <MarkTitles said={part} /> : part;
    // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one sentence neither move nor change their number.
    return <Fragment key={index}>{shown}</Fragment>;
  });
}
