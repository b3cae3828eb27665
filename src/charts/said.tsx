/** A text whose gaps hold more than text, in the order of the language: `<Said text="Press {key}." with={{ key }} />`. */
import { Fragment, type ReactElement } from 'react';
import { sayParts, type Value } from '../words/say.ts';

export function Said(props: { readonly text: string; readonly with: Readonly<Record<string, Value | ReactElement>> }) {
  const parts = sayParts<ReactElement>(props.text, props.with);
  // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one sentence neither move nor change their number.
  return parts.map((part, index) => <Fragment key={index}>{part}</Fragment>);
}
