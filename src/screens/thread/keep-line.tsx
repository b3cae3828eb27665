import { describeFailure } from '../state/describe-failure.ts';
import type { OpenState } from '../state/use-open-household.ts';

/** Whether everything is kept, and what was last said; a refused save offers its way out here. */
export function KeepLine(props: { readonly state: OpenState; readonly said: string }) {
  const { status, keepMine, takeTheirs, tryAgain } = props.state;
  if (status.kind === 'conflict') {
    return (
      <div className="keep-line keep-trouble" role="alert">
        <p>This household was changed in another window since you opened it.</p>
        <div className="actions">
          <button type="button" onClick={takeTheirs}>
            Take theirs
          </button>
          <button type="button" onClick={keepMine}>
            Keep mine
          </button>
        </div>
      </div>
    );
  }
  if (status.kind === 'failed') {
    return (
      <div className="keep-line keep-trouble" role="alert">
        <p>Not kept. {describeFailure(status.reason)}</p>
        <button type="button" onClick={tryAgain}>
          Try again
        </button>
      </div>
    );
  }
  const words = status.kind === 'kept' ? 'all kept' : 'keeping …';
  return (
    <div className="keep-line">
      <p role="status">{props.said}</p>
      <p className="quiet">{words}</p>
    </div>
  );
}
