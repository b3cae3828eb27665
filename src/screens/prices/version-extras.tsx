import { countryOf } from '../../model/shapes/country.ts';
import type { BankHolidayDivision } from '../../model/shapes/dates.ts';
import { counted, longDate, moneySign, penceSign } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { ChoiceField, sayChoices } from '../shared/choice-field.tsx';
import { NumberField } from '../shared/number-field.tsx';
import type { VersionDraft } from './tariff-draft.ts';

const DIVISIONS: readonly { readonly value: BankHolidayDivision; readonly label: string }[] = [
  { value: 'england-and-wales', label: phrase('England and Wales') },
  { value: 'scotland', label: phrase('Scotland') },
  { value: 'northern-ireland', label: phrase('Northern Ireland') },
];

/** What few tariffs have: bank holidays, export, a charge on power, prices by the dated half-hour. */
export function VersionExtras(props: {
  readonly version: VersionDraft;
  readonly onChange: (version: VersionDraft) => void;
}) {
  const { version, onChange } = props;
  const { series } = version;
  const country = countryOf(useHousehold().household);
  const set = (part: Partial<VersionDraft>) => onChange({ ...version, ...part });
  const used = [
    version.bankHolidays,
    version.staysOnWinterTime,
    version.exportPencePerKWh,
    version.reducedPoundsPerYear,
    version.ownMeterLessPence,
    version.pattern === 'own-meter' || undefined,
    version.demandPencePerKW,
    series,
  ];
  return (
    <details className="extras" open={used.some((value) => value !== undefined) || undefined}>
      <summary>{say('Bank holidays, the meter’s clock, export, a charge on power')}</summary>
      <div className="fields fields-tight">
        {country === 'GB' ? (
          <ChoiceField
            label={say('Bank holidays priced apart')}
            value={version.bankHolidays}
            emptyLabel={say('no, like any weekday')}
            choices={sayChoices(DIVISIONS)}
            onChange={(bankHolidays) => set({ bankHolidays })}
            note={say('Then tick “bank holidays” among the days of a price.')}
          />
        ) : null}
        <ChoiceField
          label={say('In summer its meter')}
          value={version.staysOnWinterTime ? 'winter' : undefined}
          emptyLabel={say('is put forward an hour')}
          choices={sayChoices([{ value: 'winter', label: phrase('stays on winter time') }])}
          onChange={(clock) => set({ staysOnWinterTime: clock === 'winter' || undefined })}
          note={say('Many older two-rate meters stay. Look at the meter or ask the supplier.')}
        />
        <NumberField
          label={say('Paid for export')}
          value={version.exportPencePerKWh}
          limits={{ min: -200, max: 500, unit: `${penceSign()}/kWh` }}
          onChange={(exportPencePerKWh) => set({ exportPencePerKWh })}
          note={say('Counted on this tariff where the home has panels, in place of what is typed there.')}
        />
        {country === 'DE' ? (
          <>
            <NumberField
              label={say('Taken off each kWh of the heat pump')}
              value={version.ownMeterLessPence}
              limits={{ min: 0, max: 200, unit: `${penceSign()}/kWh` }}
              onChange={(ownMeterLessPence) => set({ ownMeterLessPence })}
              note={say('By § 14a EnWG, module 2, on a meter of its own: 60 % of the network price.')}
            />
            <NumberField
              label={say('That meter costs by the year')}
              value={version.ownMeterPoundsPerYear}
              limits={{ min: 0, max: 1000, unit: moneySign() }}
              onChange={(ownMeterPoundsPerYear) => set({ ownMeterPoundsPerYear })}
              note={say('No sun and no battery reach what is behind it. Module 1 cannot be had beside it.')}
            />
            <NumberField
              label={say('Taken off by the year')}
              value={version.reducedPoundsPerYear}
              limits={{ min: 0, max: 1000, unit: moneySign() }}
              onChange={(reducedPoundsPerYear) => set({ reducedPoundsPerYear })}
              note={say(
                'By § 14a EnWG, module 1, for a heat pump that the grid may slow down. The grid’s price sheet says it.',
              )}
            />
          </>
        ) : null}
        <NumberField
          label={say('Charge on power')}
          value={version.demandPencePerKW}
          limits={{ min: 0, max: 10_000, unit: say('{sign} a kW', { sign: penceSign() }) }}
          onChange={(demandPencePerKW) => set({ demandPencePerKW })}
          note={say('For each kW and month.')}
        />
        {version.demandPencePerKW === undefined ? null : (
          <NumberField
            label={say('Agreed power')}
            value={version.agreedKW}
            limits={{ min: 0.1, max: 1000, unit: 'kW' }}
            onChange={(agreedKW) => set({ agreedKW })}
            note={say('Left empty, the largest half-hour of the month counts.')}
          />
        )}
      </div>
      {series ? (
        <p>
          {say('A price for each half-hour of {days}, {from} to {to}. On other days the prices above are used.', {
            days: counted(series.days.length, 'day'),
            from: longDate(series.days[0]!.date),
            to: longDate(series.days.at(-1)!.date),
          })}{' '}
          <button type="button" className="plain" onClick={() => set({ series: undefined })}>
            {say('Remove the half-hours')}
          </button>
        </p>
      ) : null}
      {series ? (
        <div className="fields fields-tight">
          <NumberField
            label={say('A half-hour costs at most')}
            value={series.mostPencePerKWh}
            limits={{ min: 0, max: 1000, unit: `${penceSign()}/kWh` }}
            onChange={(most) => {
              const { mostPencePerKWh: _, ...uncapped } = series;
              set({ series: most === undefined ? uncapped : { ...uncapped, mostPencePerKWh: most } });
            }}
            note={say('Some tariffs have a highest price. Empty: none.')}
          />
        </div>
      ) : null}
    </details>
  );
}
