import type { KnobName } from './knobs.ts';
import type { WhatIfState } from './use-what-if.ts';
import { WhatIfSlider } from './what-if-slider.tsx';
import './what-if.css';
import { say } from '../../words/say.ts';

/** The sliders in a row. `only` narrows them to those that help where they stand. */
export function WhatIfRow(props: { readonly state: WhatIfState; readonly only?: readonly KnobName[] }) {
  const { knobs, whatIf, turn, reset, changed } = props.state;
  const shown = props.only ? knobs.filter((knob) => props.only?.includes(knob.name)) : knobs;
  return (
    <fieldset className="what-if">
      <legend className="unseen">{say('What if')}</legend>
      {shown.map((knob) => (
        <WhatIfSlider key={knob.name} knob={knob} whatIf={whatIf} onTurn={turn} />
      ))}
      {/* Not disabled: the focus would fall out of the page with the press that takes everything back. */}
      <button type="button" className="plain what-if-reset" aria-disabled={!changed} onClick={reset}>
        {say('Reset')}
        <span className="unseen">{say(': every slider back to today')}</span>
      </button>
    </fieldset>
  );
}
