import { phrase, say } from '../../words/say.ts';
import { TickField } from '../shared/choice-field.tsx';
import type { PageName } from './page.ts';
import { mayBeLeftOut } from './pages.ts';

const PAGE_TITLES: Readonly<Record<PageName, string>> = {
  home: phrase('The home and its bills now'),
  heat: phrase('The heat it needs'),
  source: phrase('Where the heat comes from'),
  cost: phrase('What it costs'),
  sure: phrase('How sure we are'),
  change: phrase('What could change it'),
  years: phrase('What the next years may bring'),
  watch: phrase('What to watch, and when to call'),
  next: phrase('What was agreed, and what comes next'),
};

/** Which pages this household is shown: a folded list for the installer. */
export function LeaveOut(props: {
  /** All that there are, in their order. */
  readonly names: readonly PageName[];
  readonly leaveOut: readonly string[];
  readonly onChange: (leaveOut: string[]) => void;
}) {
  const { names, leaveOut, onChange } = props;
  const offered = names.filter(mayBeLeftOut);
  const shown = names.length - offered.filter((name) => leaveOut.includes(name)).length;
  const turn = (name: PageName, show: boolean) => {
    const others = leaveOut.filter((one) => one !== name);
    onChange(show ? others : [...others, name]);
  };
  return (
    <details className="walk-leave-out">
      <summary>{say('Pages shown: {shown} of {all}', { shown, all: names.length })}</summary>
      <div className="walk-leave-out-list">
        {offered.map((name) => (
          <TickField
            key={name}
            label={say(PAGE_TITLES[name])}
            checked={!leaveOut.includes(name)}
            onChange={(show) => turn(name, show)}
          />
        ))}
      </div>
    </details>
  );
}
