import { useState } from 'react';
import { clockTimeOf } from '../../model/calendar/civil.ts';
import type { DayKind } from '../../model/shapes/tariff.ts';
import { monthNames, shortMonthNames, weekdayNames } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { WindowDraft } from './tariff-draft.ts';

const DAYS: readonly DayKind[] = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];
const days = () =>
  DAYS.map((value, at) => ({ value, short: weekdayNames()[at]!.slice(0, 2), long: weekdayNames()[at]! }));
const bankHoliday = () => ({ value: 'bank-holiday' as const, short: say('bank holidays'), long: say('bank holidays') });
const months = () => monthNames().map((long, index) => ({ value: index + 1, short: shortMonthNames()[index]!, long }));

/** From when to when, on which days, in which months. None ticked means all. */
export function WindowEditor(props: {
  readonly window: WindowDraft;
  readonly about: string;
  /** Whether bank holidays are days of their own. */
  readonly hasBankHolidays: boolean;
  readonly onChange: (window: WindowDraft) => void;
  readonly onDrop: (() => void) | undefined;
}) {
  const { window, onChange, about } = props;
  const [narrow, setNarrow] = useState(window.days.length > 0 || window.months.length > 0);
  const time = (name: 'from' | 'to', label: string) => (
    <label className="window-time">
      <span className="quiet">{label}</span>
      <select
        aria-label={`${label}, ${about}`}
        value={window[name]}
        onChange={(event) => onChange({ ...window, [name]: event.target.value })}
      >
        {clockChoices(window[name], name).map((clock) => (
          <option key={clock} value={clock}>
            {clock}
          </option>
        ))}
      </select>
    </label>
  );
  return (
    <div className="window">
      <div className="window-row">
        {time('from', say('from'))}
        {time('to', say('to'))}
        <button type="button" className="plain" aria-expanded={narrow} onClick={() => setNarrow(!narrow)}>
          {describeReach(window)}
        </button>
        {props.onDrop ? (
          <button type="button" className="plain" onClick={props.onDrop}>
            {say('Remove')}
          </button>
        ) : null}
      </div>
      {narrow ? (
        <>
          <Toggles
            legend={say('Days, {about}', { about })}
            all={props.hasBankHolidays ? [...days(), bankHoliday()] : days()}
            chosen={window.days}
            onChange={(days) => onChange({ ...window, days })}
          />
          <Toggles
            legend={say('Months, {about}', { about })}
            all={months()}
            chosen={window.months}
            onChange={(months) => onChange({ ...window, months })}
          />
        </>
      ) : null}
    </div>
  );
}

/** Every half-hour of the clock: "00:00" to "23:30". */
export const HALF_HOURS = Array.from({ length: 48 }, (_, half) => clockTimeOf(half * 30));

/** Every half-hour, since prices change at none but these; a time that a tariff brought with it stays choosable. */
function clockChoices(now: string, end: 'from' | 'to'): readonly string[] {
  const all = end === 'to' ? [...HALF_HOURS.slice(1), '24:00'] : HALF_HOURS;
  return all.includes(now) ? all : [now, ...all];
}

function describeReach(window: WindowDraft): string {
  const weekdays = window.days.filter((day) => day !== 'bank-holiday').length;
  const week = say('{weekdays} days a week', { weekdays });
  const holidays = window.days.length > weekdays;
  const days = !holidays
    ? weekdays === 0
      ? say('every day')
      : week
    : weekdays === 0
      ? say('bank holidays')
      : say('{week} and bank holidays', { week });
  const months = window.months.length;
  return `${days}, ${months === 0 ? say('all year') : say('{months} months', { months })}`;
}

function Toggles<T extends string | number>(props: {
  readonly legend: string;
  readonly all: readonly { readonly value: T; readonly short: string; readonly long: string }[];
  readonly chosen: readonly T[];
  readonly onChange: (chosen: readonly T[]) => void;
}) {
  const { all, chosen, onChange } = props;
  return (
    <fieldset className="toggles">
      <legend className="unseen">{props.legend}</legend>
      {all.map(({ value, short, long }) => (
        <label key={value} className="pick-one">
          <input
            type="checkbox"
            aria-label={long}
            checked={chosen.includes(value)}
            onChange={(event) =>
              onChange(
                event.target.checked
                  ? all.map((one) => one.value).filter((one) => one === value || chosen.includes(one))
                  : chosen.filter((one) => one !== value),
              )
            }
          />
          <span>{short}</span>
        </label>
      ))}
    </fieldset>
  );
}
