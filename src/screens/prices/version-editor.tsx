import { useId } from 'react';
import type { Tariff } from '../../model/tariff/tariff.ts';
import { ChoiceField, PickField } from '../shared/choice-field.tsx';
import { DateEntry } from '../shared/date-entry.tsx';
import { NumberField } from '../shared/number-field.tsx';
import { BandEditor } from './band-editor.tsx';
import {
  type BandDraft,
  bandsOf,
  DOMESTIC_VAT,
  NIGHT,
  patternOf,
  type TariffPattern,
  type VersionDraft,
} from './tariff-draft.ts';

const PATTERNS: readonly { readonly value: TariffPattern; readonly label: string }[] = [
  { value: 'flat', label: 'one price' },
  { value: 'two-rate', label: 'day and night' },
  { value: 'bands', label: 'more prices' },
];
const VAT = [
  { value: 'in', label: 'with VAT in them' },
  { value: 'out', label: 'without VAT (5 % is added)' },
] as const;

/** The prices that hold from one day on. */
export function VersionEditor(props: {
  readonly version: VersionDraft;
  readonly fuel: Tariff['fuel'];
  readonly canDrop: boolean;
  readonly onChange: (version: VersionDraft) => void;
  readonly onDrop: () => void;
}) {
  const { version, onChange } = props;
  const dateId = useId();
  const pattern = patternOf(version);
  const setBand = (index: number, band: BandDraft) =>
    onChange({ ...version, bands: version.bands.map((before, at) => (at === index ? band : before)) });
  return (
    <fieldset className="version">
      <legend className="unseen">Prices from {version.from || 'a day not said yet'}</legend>
      <div className="fields fields-tight fields-wide">
        <div className="field">
          <label className="field-label" htmlFor={dateId}>
            Prices from
          </label>
          <div className="field-entry">
            <DateEntry id={dateId} value={version.from} onChange={(from) => onChange({ ...version, from })} />
          </div>
        </div>
        <NumberField
          label="Standing charge"
          value={version.standingPencePerDay}
          limits={{ min: 0, max: 1000, unit: 'p a day' }}
          onChange={(standingPencePerDay) => onChange({ ...version, standingPencePerDay })}
        />
        <ChoiceField
          label="Prices are"
          value={version.vatIncluded ? 'in' : 'out'}
          choices={VAT}
          onChange={(vat) => onChange({ ...version, vatIncluded: vat !== 'out', vatRate: DOMESTIC_VAT })}
        />
        {props.fuel === 'electricity' ? (
          <PickField
            label="By the clock"
            value={pattern}
            choices={PATTERNS}
            onChange={(next) => onChange({ ...version, bands: bandsOf(next, version.bands) })}
          />
        ) : null}
      </div>
      {version.bands.map((band, index) => (
        <BandEditor
          // biome-ignore lint/suspicious/noArrayIndexKey: two bands may bear the same name while they are typed.
          key={index}
          band={band}
          isOnly={version.bands.length === 1}
          onChange={(next) => setBand(index, next)}
          onDrop={() => onChange({ ...version, bands: version.bands.filter((_, at) => at !== index) })}
        />
      ))}
      <div className="actions">
        {pattern === 'bands' ? (
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
            Add a price
          </button>
        ) : null}
        {props.canDrop ? (
          <button type="button" className="plain" onClick={props.onDrop}>
            Take these prices out
          </button>
        ) : null}
      </div>
    </fieldset>
  );
}
