import { useEffect, useState } from 'react';
import type { Settings } from '../desk/contract.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import { say } from '../words/say.ts';
import { callAtOnce } from './desk.ts';
import { HouseholdDesk } from './household-desk.tsx';
import type { Stage } from './routes.ts';
import { describeFailure } from './state/describe-failure.ts';
import { type HouseholdBeingEdited, takeUpHousehold } from './state/open-household.ts';
import { Stopped } from './stopped.tsx';

/** Fetches a household and lays it on the desk. */
export function HouseholdScreen(props: {
  readonly id: string;
  readonly stage: Stage;
  readonly today: CivilDate;
  readonly settings: Settings;
}) {
  const [open, setOpen] = useState<HouseholdBeingEdited | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  useEffect(() => {
    let gone = false;
    takeUpHousehold(props.id, callAtOnce).then(
      (household) => (gone ? household.leave() : setOpen(household)),
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
  if (open === null) return <p className="opening quiet">{say('Opening the household …')}</p>;
  return <HouseholdDesk edited={open} stage={props.stage} today={props.today} settings={props.settings} />;
}
