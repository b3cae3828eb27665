import { useEffect, useState } from 'react';
import type { Output, Settings } from '../desk/contract.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import { say } from '../words/say.ts';
import { callAtOnce } from './desk.ts';
import type { HouseholdDesk } from './household-desk.tsx';
import type { Stage } from './routes.ts';
import { later } from './shared/later.ts';
import { describeFailure } from './state/describe-failure.ts';
import { fetchAhead, type HouseholdBeingEdited, takeUpHousehold } from './state/open-household.ts';
import { Stopped } from './stopped.tsx';

/** The desk itself, with the model and what it is told of the world: not needed to choose a household. */
export const DESK = later(async () => {
  const [{ HouseholdDesk }, { layOver }] = await Promise.all([
    import('./household-desk.tsx'),
    import('../reference/index.ts'),
  ]);
  return { Desk: HouseholdDesk, layOver };
});

let valuesAhead: Promise<Output<'values.read'>> | null = null;

/** A household was chosen: what its screen wants is asked for before that stands. */
export function chooseHousehold(id: string): void {
  fetchAhead(id, callAtOnce);
  valuesAhead = callAtOnce('values.read', {});
  // The screen hears of it.
  valuesAhead.catch(() => undefined);
}

interface Laid {
  readonly edited: HouseholdBeingEdited;
  readonly Desk: typeof HouseholdDesk;
}

/** Fetches a household and lays it on the desk. */
export function HouseholdScreen(props: {
  readonly id: string;
  readonly stage: Stage;
  readonly today: CivilDate;
  readonly settings: Settings;
}) {
  const [laid, setLaid] = useState<Laid | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  useEffect(() => {
    let gone = false;
    const values = valuesAhead ?? callAtOnce('values.read', {});
    valuesAhead = null;
    Promise.all([takeUpHousehold(props.id, callAtOnce), DESK.fetch(), values]).then(
      ([edited, { Desk, layOver }, { laidOver }]) => {
        if (gone) return edited.leave();
        layOver(laidOver);
        setLaid({ edited, Desk });
      },
      (reason) => gone || setFailure(describeFailure(reason)),
    );
    return () => {
      gone = true;
    };
  }, [props.id]);

  if (failure !== null) {
    return (
      <Stopped sentence={say('This household cannot be opened.')} detail={failure}>
        <a className="btn" href="#/">
          {say('All households')}
        </a>
      </Stopped>
    );
  }
  if (laid === null) return <p className="opening quiet">{say('Opening the household …')}</p>;
  return <laid.Desk edited={laid.edited} stage={props.stage} today={props.today} settings={props.settings} />;
}
