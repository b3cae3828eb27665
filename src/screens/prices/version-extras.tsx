import type { BankHolidayDivision } from '../../model/calendar/bank-holiday-divisions.ts';
import { counted, longDate } from '../../words/numbers.ts';
import { ChoiceField } from '../shared/choice-field.tsx';
import { NumberField } from '../shared/number-field.tsx';
import type { VersionDraft } from './tariff-draft.ts';

const DIVISIONS: readonly { readonly value: BankHolidayDivision; readonly label: string }[] = [
  { value: 'england-and-wales', label: 'England and Wales' },
  { value: 'scotland', label: 'Scotland' },
  { value: 'northern-ireland', label: 'Northern Ireland' },
];

/** What few tariffs have: bank holidays, export, a charge on power, prices by the dated half-hour. */
export function VersionExtras(props: {
  readonly version: VersionDraft;
  readonly onChange: (version: VersionDraft) => void;
}) {
  const { version, onChange } = props;
  const { series } = version;
  const set = (part: Partial<VersionDraft>) => onChange({ ...version, ...part });
  const used = [version.bankHolidays, version.exportPencePerKWh, version.demandPencePerKW, series];
  return (
    <details className="extras" open={used.some((value) => value !== undefined) || undefined}>
      <summary>Bank holidays, export, a charge on power</summary>
      <div className="fields fields-tight">
        <ChoiceField
          label="Bank holidays priced apart"
          value={version.bankHolidays}
          emptyLabel="no, like any weekday"
          choices={DIVISIONS}
          onChange={(bankHolidays) => set({ bankHolidays })}
          note="Then tick “bank holidays” among the days of a price."
        />
        <NumberField
          label="Paid for export"
          value={version.exportPencePerKWh}
          limits={{ min: -200, max: 500, unit: 'p/kWh' }}
          onChange={(exportPencePerKWh) => set({ exportPencePerKWh })}
        />
        <NumberField
          label="Charge on power"
          value={version.demandPencePerKW}
          limits={{ min: 0, max: 10_000, unit: 'p a kW' }}
          onChange={(demandPencePerKW) => set({ demandPencePerKW })}
          note="For each kW and month."
        />
        {version.demandPencePerKW === undefined ? null : (
          <NumberField
            label="Power agreed"
            value={version.agreedKW}
            limits={{ min: 0.1, max: 1000, unit: 'kW' }}
            onChange={(agreedKW) => set({ agreedKW })}
            note="Left empty, the largest half-hour of the month counts."
          />
        )}
      </div>
      {series ? (
        <p>
          A price for each half-hour of {counted(series.days.length, 'day')}, {longDate(series.days[0]!.date)} to{' '}
          {longDate(series.days.at(-1)!.date)}. Other days take the prices above.{' '}
          <button type="button" className="plain" onClick={() => set({ series: undefined })}>
            Take the half-hours out
          </button>
        </p>
      ) : null}
    </details>
  );
}
