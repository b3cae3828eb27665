import { useId } from 'react';
import { COUNTRIES, countryOf } from '../../model/shapes/country.ts';
import type { Tariff } from '../../model/shapes/tariff.ts';
import { moneySign, penceSign, percent } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { ChoiceField, PickField, sayChoices } from '../shared/choice-field.tsx';
import { DateEntry } from '../shared/date-entry.tsx';
import { NumberField } from '../shared/number-field.tsx';
import { BandEditor } from './band-editor.tsx';
import {
  type BandDraft,
  bandsOf,
  NIGHT,
  patternOf,
  STANDING_MONTHS,
  type StandingSpan,
  type TariffPattern,
  type VersionDraft,
} from './tariff-draft.ts';
import { VersionExtras } from './version-extras.tsx';

const PATTERNS: readonly { readonly value: TariffPattern; readonly label: string }[] = [
  { value: 'flat', label: phrase('one price') },
  { value: 'two-rate', label: phrase('day and night') },
  { value: 'car', label: phrase('cheap overnight for a car') },
  { value: 'ten-hours', label: phrase('cheap hours three times a day') },
  { value: 'peak', label: phrase('three prices with a peak') },
  { value: 'months', label: phrase('by month') },
  { value: 'network', label: phrase('network price by hours') },
  { value: 'own-meter', label: phrase('own meter of the heat pump') },
  { value: 'series', label: phrase('each half-hour its own') },
  { value: 'bands', label: phrase('more prices') },
];
/** What § 14a EnWG allows. */
const OF_GERMANY: readonly TariffPattern[] = ['network', 'own-meter'];
const PATTERN_NOTES: { readonly [pattern in TariffPattern]?: readonly string[] } = {
  car: [
    phrase(
      'Cheap nights often come with days that cost more. The comparison counts the whole home, not the car alone.',
    ),
  ],
  months: [phrase('Tick the months of the winter price as your tariff has them.')],
  network: [
    phrase('Hours and months stand in the price sheet of the network operator, module 3 of § 14a EnWG.'),
    phrase('Module 3 goes with module 1, whose sum by the year is typed below.'),
  ],
  'own-meter': [phrase('The price of the home stands here; what the heat pump pays less for each kWh is typed below.')],
  series: [
    phrase('Open the file of half-hours with “Open a tariff file”; it fills this form.'),
    phrase('The price typed here is used on days that the file does not reach.'),
  ],
};
const VAT = [
  { value: 'in', label: phrase('with VAT in them') },
  { value: 'out', label: phrase('without VAT') },
] as const;

const STANDING_SPANS = Object.keys(STANDING_MONTHS) as StandingSpan[];

/** The prices that hold from one day on. */
export function VersionEditor(props: {
  readonly version: VersionDraft;
  readonly fuel: Tariff['fuel'];
  readonly canDrop: boolean;
  readonly onChange: (version: VersionDraft) => void;
  readonly onDrop: () => void;
}) {
  const { household } = useHousehold();
  const { version, onChange } = props;
  const dateId = useId();
  const pattern = patternOf(version);
  const isGerman = countryOf(household) === 'DE';
  const penceADay = say('{sign} a day', { sign: penceSign() });
  const sign = moneySign();
  const spanUnits: { readonly [span in StandingSpan]: string } = {
    month: say('{sign} a month', { sign }),
    quarter: say('{sign} a quarter', { sign }),
    year: say('{sign} a year', { sign }),
  };
  const setBand = (index: number, band: BandDraft) =>
    onChange({ ...version, bands: version.bands.map((before, at) => (at === index ? band : before)) });
  return (
    <fieldset className="version">
      <legend className="unseen">
        {say('Prices from {day}', { day: version.from || say('a day not given yet') })}
      </legend>
      <div className="fields fields-tight fields-wide">
        <div className="field">
          <label className="field-label" htmlFor={dateId}>
            {say('Prices from')}
          </label>
          <div className="field-entry">
            <DateEntry id={dateId} value={version.from} onChange={(from) => onChange({ ...version, from })} />
          </div>
        </div>
        {version.standingBy ? (
          <NumberField
            label={say('Standing charge')}
            value={version.standingPounds}
            limits={{ min: 0, max: 300 * STANDING_MONTHS[version.standingBy], unit: spanUnits[version.standingBy] }}
            onChange={(standingPounds) => onChange({ ...version, standingPounds })}
          />
        ) : (
          <NumberField
            label={say('Standing charge')}
            value={version.standingPencePerDay}
            limits={{ min: 0, max: 1000, unit: penceADay }}
            onChange={(standingPencePerDay) => onChange({ ...version, standingPencePerDay })}
          />
        )}
        <PickField
          label={say('Standing charge in')}
          value={version.standingBy ?? 'day'}
          choices={[
            { value: 'day', label: penceADay },
            ...STANDING_SPANS.map((value) => ({ value, label: spanUnits[value] })),
          ]}
          onChange={(by) => onChange({ ...version, standingBy: STANDING_SPANS.find((span) => span === by) })}
        />
        <ChoiceField
          label={say('Prices are')}
          value={version.vatIncluded ? 'in' : 'out'}
          choices={sayChoices(VAT)}
          onChange={(vat) => onChange({ ...version, vatIncluded: vat !== 'out' })}
        />
        <PickField
          label={say('VAT')}
          value={String(version.vatRate)}
          choices={knownRates(COUNTRIES[countryOf(household)].vatRates, version.vatRate)}
          onChange={(rate) => onChange({ ...version, vatRate: Number(rate) })}
        />
        {props.fuel === 'electricity' ? (
          <PickField
            label={say('By the clock')}
            value={pattern}
            choices={sayChoices(
              PATTERNS.filter(({ value }) => !OF_GERMANY.includes(value) || isGerman || value === pattern),
            )}
            onChange={(next) => onChange({ ...version, pattern: next, bands: bandsOf(next, version.bands) })}
            note={(PATTERN_NOTES[pattern] ?? []).map((note) => say(note)).join(' ')}
          />
        ) : null}
      </div>
      {version.bands.map((band, index) => (
        <BandEditor
          // biome-ignore lint/suspicious/noArrayIndexKey: two bands may bear the same name while they are typed.
          key={index}
          band={band}
          isOnly={version.bands.length === 1}
          hasBankHolidays={version.bankHolidays !== undefined}
          onChange={(next) => setBand(index, next)}
          onDrop={() => onChange({ ...version, bands: version.bands.filter((_, at) => at !== index) })}
        />
      ))}
      {props.fuel === 'electricity' ? <VersionExtras version={version} onChange={onChange} /> : null}
      <div className="actions">
        {version.bands.length > 2 || pattern === 'bands' ? (
          <button
            type="button"
            className="plain"
            disabled={version.bands.length >= 24}
            onClick={() =>
              onChange({
                ...version,
                bands: [...version.bands, { name: '', pencePerKWh: undefined, windows: [NIGHT] }],
              })
            }
          >
            {say('Add a price')}
          </button>
        ) : null}
        {props.canDrop ? (
          <button type="button" className="plain" onClick={props.onDrop}>
            {say('Remove these prices')}
          </button>
        ) : null}
      </div>
    </fieldset>
  );
}

/** The rates of the country; one that a tariff brought with it stays choosable. */
function knownRates(
  ofCountry: readonly number[],
  now: number,
): readonly { readonly value: string; readonly label: string }[] {
  const rates = new Set([...ofCountry, now]);
  return [...rates].map((rate) => ({ value: String(rate), label: rate === 0 ? say('none') : percent(rate) }));
}
