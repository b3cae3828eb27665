/** A figure that opens its working: underlined, a button for keyboard and screen reader. */
import type { Working } from '../model/working.ts';
import { say } from '../words/say.ts';

export function Figured(props: {
  readonly figure: { readonly working: Working };
  /** The figure as it is written here. */
  readonly text: string;
  readonly onOpen: (working: Working) => void;
}) {
  return (
    <button type="button" className="figure-link" onClick={() => props.onOpen(props.figure.working)}>
      {props.text}
      <span className="unseen"> {say('(opens its working)')}</span>
    </button>
  );
}
