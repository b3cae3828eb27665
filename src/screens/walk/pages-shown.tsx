import type { Household } from '../../model/shapes/household.ts';
import { phrase, say } from '../../words/say.ts';
import { TickField } from '../shared/choice-field.tsx';
import type { PageName } from './page.ts';
import { mayBeLeftOut } from './pages.ts';

const PAGE_TITLES: Readonly<Record<PageName, string>> = {
  home: phrase('The home and its bills now'),
  cost: phrase('What it would cost, and how sure that is'),
  source: phrase('Where the heat comes from'),
  change: phrase('What changes it, and what you can choose'),
  living: phrase('Living with it'),
  next: phrase('What happens next'),
};

/** Which pages this household is shown, and in which order: a folded list for the installer. */
export function PagesShown(props: {
  /** All that there are, in the household's order. */
  readonly names: readonly PageName[];
  readonly leaveOut: readonly string[];
  readonly onChange: (walk: NonNullable<Household['walk']>) => void;
}) {
  const { names, leaveOut, onChange } = props;
  const shown = names.filter((name) => !mayBeLeftOut(name) || !leaveOut.includes(name)).length;
  const turn = (name: PageName, show: boolean) => {
    const others = leaveOut.filter((one) => one !== name);
    onChange({ leaveOut: show ? others : [...others, name], order: [...names] });
  };
  const earlier = (index: number) => {
    const order = names.toSpliced(index - 1, 2, names[index]!, names[index - 1]!);
    onChange({ leaveOut: [...leaveOut], order });
  };
  return (
    <details className="walk-leave-out">
      <summary>{say('Pages shown: {shown} of {all}', { shown, all: names.length })}</summary>
      <ol className="walk-pages-list">
        {names.map((name, index) => (
          <li key={name}>
            {mayBeLeftOut(name) ? (
              <TickField
                label={say(PAGE_TITLES[name])}
                checked={!leaveOut.includes(name)}
                onChange={(show) => turn(name, show)}
              />
            ) : (
              <span>{say(PAGE_TITLES[name])}</span>
            )}
            {index > 0 ? (
              <button type="button" className="plain" onClick={() => earlier(index)}>
                {say('Earlier')}
                <span className="unseen">: {say(PAGE_TITLES[name])}</span>
              </button>
            ) : null}
          </li>
        ))}
      </ol>
    </details>
  );
}
