import { useState } from 'react';
import { clockTimeOf } from '../../model/tariff/band-times.ts';
import type { DayKind } from '../../model/tariff/tariff.ts';
import { monthNames, shortMonthNames } from '../../words/numbers.ts';
import type { WindowDraft } from './tariff-draft.ts';

const DAYS: readonly { readonly value: DayKind; readonly short: string; readonly long: string }[] = [
  { value: 'mon', short: 'Mo', long: 'Monday' },
  { value: 'tue', short: 'Tu', long: 'Tuesday' },
  { value: 'wed', short: 'We', long: 'Wednesday' },
  { value: 'thu', short: 'Th', long: 'Thursday' },
  { value: 'fri', short: 'Fr', long: 'Friday' },
  { value: 'sat', short: 'Sa', long: 'Saturday' },
  { value: 'sun', short: 'Su', long: 'Sunday' },
];
const BANK_HOLIDAY = { value: 'bank-holiday', short: 'bank holidays', long: 'bank holidays' } as const;
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
        {time('from', 'from')}
        {time('to', 'to')}
        <button type="button" className="plain" aria-expanded={narrow} onClick={() => setNarrow(!narrow)}>
          {describeReach(window)}
        </button>
        {props.onDrop ? (
          <button type="button" className="plain" onClick={props.onDrop}>
            Take out
          </button>
        ) : null}
      </div>
      {narrow ? (
        <>
          <Toggles
            legend={`Days, ${about}`}
            all={props.hasBankHolidays ? [...DAYS, BANK_HOLIDAY] : DAYS}
            chosen={window.days}
            onChange={(days) => onChange({ ...window, days })}
          />
          <Toggles
            legend={`Months, ${about}`}
            all={months()}
            chosen={window.months}
            onChange={(months) => onChange({ ...window, months })}
          />
        </>
      ) : null}
    </div>
  );
}

const HALF_HOURS = Array.from({ length: 48 }, (_, half) => clockTimeOf(half * 30));

/** Every half-hour, since prices change at none but these; a time that a tariff brought with it stays choosable. */
function clockChoices(now: string, end: 'from' | 'to'): readonly string[] {
  const all = end === 'to' ? [...HALF_HOURS.slice(1), '24:00'] : HALF_HOURS;
  return all.includes(now) ? all : [now, ...all];
}

function describeReach(window: WindowDraft): string {
  const weekdays = window.days.filter((day) => day !== 'bank-holiday').length;
  const holidays = weekdays === window.days.length ? '' : weekdays === 0 ? 'bank holidays' : ' and bank holidays';
  const days = window.days.length === 0 ? 'every day' : `${weekdays === 0 ? '' : `${weekdays} days a week`}${holidays}`;
  const months = window.months.length === 0 ? 'all year' : `${window.months.length} months`;
  return `${days}, ${months}`;
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
