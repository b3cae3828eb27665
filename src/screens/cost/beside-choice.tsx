import { choosable } from '../../model/comparison/why-left-out.ts';
import { say } from '../../words/say.ts';
import { leftOutSentence, systemName } from '../../words/systems.ts';
import { useHousehold } from '../household-context.tsx';
import { TickField } from '../shared/choice-field.tsx';

/** What was left out of the comparison and why, and the installer's own word on it. */
export function BesideChoice() {
  const { household, appraisal, change } = useHousehold();
  return (
    <details className="beside-choice screen-only">
      <summary className="quiet small">{leftOutSentence(appraisal) || say('Every kind of heating is shown.')}</summary>
      <fieldset className="fields">
        <legend>{say('Compared with the heat pump')}</legend>
        {choosable(household).map((system) => (
          <TickField
            key={system}
            label={systemName(system, system)}
            checked={!appraisal.leftOut?.some((one) => one.system === system)}
            onChange={(stands) => change((before) => ({ ...before, beside: { ...before.beside, [system]: stands } }))}
          />
        ))}
        {household.beside === undefined ? null : (
          <button type="button" onClick={() => change(({ beside: _, ...before }) => before)}>
            {say('As the home suggests')}
          </button>
        )}
      </fieldset>
    </details>
  );
}
