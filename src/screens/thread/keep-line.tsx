import { say } from '../../words/say.ts';
import { describeFailure } from '../state/describe-failure.ts';
import type { KeepStatus } from '../state/keeper.ts';
import type { HouseholdBeingEdited } from '../state/open-household.ts';

/** Whether everything is kept, and what was last said; a refused save offers its way out here. */
export function KeepLine(props: {
  readonly status: KeepStatus;
  readonly edited: HouseholdBeingEdited;
  readonly said: string;
}) {
  const { status } = props;
  const { keepMine, takeTheirs, tryAgain } = props.edited;
  if (status.kind === 'conflict') {
    return (
      <div className="keep-line keep-trouble" role="alert">
        <p>{say('This household was changed in another window since you opened it.')}</p>
        <div className="actions">
          <button type="button" onClick={takeTheirs}>
            {say('Use the other version')}
          </button>
          <button type="button" onClick={keepMine}>
            {say('Use mine')}
          </button>
        </div>
      </div>
    );
  }
  if (status.kind === 'failed') {
    return (
      <div className="keep-line keep-trouble" role="alert">
        <p>{say('Not saved. {reason}', { reason: describeFailure(status.reason) })}</p>
        <button type="button" onClick={tryAgain}>
          {say('Try again')}
        </button>
      </div>
    );
  }
  const words = status.kind === 'kept' ? say('Saved') : say('Saving …');
  return (
    <div className="keep-line">
      <p className="quiet">{words}</p>
      <p role="status">{props.said}</p>
    </div>
  );
}
