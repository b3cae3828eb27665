import { useId, useState } from 'react';
import type { PanelsOnSlope, Roof } from '../../model/shapes/choices.ts';
import { isCivilDate } from '../../model/shapes/dates.ts';
import { FACINGS, SHADINGS, type Shading } from '../../model/shapes/reference.ts';
import { exportPrice } from '../../model/sun/export-price.ts';
import { referenceOf } from '../../reference/index.ts';
import { penceSign } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { facingName } from '../../words/tariff-choice.ts';
import { useHousehold } from '../household-context.tsx';
import { ChoiceField } from '../shared/choice-field.tsx';
import { DateEntry } from '../shared/date-entry.tsx';
import { Field, fieldIds } from '../shared/field.tsx';
import { GivenField } from '../shared/given-field.tsx';
import { NumberField } from '../shared/number-field.tsx';
import { formatPlain } from '../shared/number-text.ts';
import { putEquipment, withField } from './equipment.ts';

const SHADING_NAMES: { readonly [shading in Shading]: string } = {
  little: phrase('little, under 20 % of the sky'),
  some: phrase('some, 20 to 60 %'),
  much: phrase('much, 60 to 80 %'),
  heavy: phrase('heavy, over 80 %'),
};
const MOST_SLOPES = 6;

type SlopeDraft = Omit<PanelsOnSlope, 'kWp'> & { readonly kWp: number | undefined };
const NEW_SLOPE: SlopeDraft = { kWp: undefined, facing: 'S', pitchDegrees: 30, shading: 'little' };

/** Panels slope by slope, and what is paid for what they send out. */
export function RoofFields() {
  const { household, change } = useHousehold();
  const { roof } = household;
  const [slopes, setSlopes] = useState<readonly SlopeDraft[]>(() => roof?.panels ?? [NEW_SLOPE]);
  const set = (next: readonly SlopeDraft[]) => {
    setSlopes(next);
    const panels = next.flatMap(({ kWp, ...slope }) => (kWp === undefined ? [] : [{ ...slope, kWp }]));
    change(putEquipment({ roof: panels.length > 0 ? { ...roof, panels } : undefined }));
  };
  const isFull = slopes.every(({ kWp }) => kWp !== undefined);
  return (
    <>
      {slopes.map((slope, at) => (
        <SlopeFields
          // The slopes have no names; one is only ever added at the end.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          key={at}
          slope={slope}
          number={at + 1}
          of={slopes.length}
          onChange={(part) => set(slopes.map((one, i) => (i === at ? { ...one, ...part } : one)))}
        />
      ))}
      {isFull && slopes.length < MOST_SLOPES ? (
        <p>
          <button type="button" className="plain" onClick={() => setSlopes([...slopes, { ...NEW_SLOPE, facing: 'N' }])}>
            {say('Panels on another slope')}
          </button>
        </p>
      ) : null}
      {roof ? <ExportFields roof={roof} /> : null}
    </>
  );
}

function SlopeFields(props: {
  readonly slope: SlopeDraft;
  readonly number: number;
  readonly of: number;
  readonly onChange: (part: Partial<SlopeDraft>) => void;
}) {
  const { slope, number, onChange } = props;
  const named = (label: string) => (props.of > 1 ? say('{label}, slope {number}', { label, number }) : label);
  return (
    <div className="fields">
      <NumberField
        label={named(say('Solar panels'))}
        value={slope.kWp}
        limits={{ min: 0.1, max: 100, unit: 'kWp' }}
        note={say('Peak power of the panels on one slope, as the offer says.')}
        onChange={(kWp) => onChange({ kWp })}
      />
      {slope.kWp === undefined ? null : (
        <>
          <ChoiceField
            label={named(say('They face'))}
            value={slope.facing}
            choices={FACINGS.map((value) => ({ value, label: facingName(value) }))}
            onChange={(facing) => facing && onChange({ facing })}
          />
          <NumberField
            label={named(say('Slope'))}
            value={slope.pitchDegrees}
            limits={{ min: 0, max: 90, unit: '°' }}
            note={say('0° lies flat, 90° hangs on a wall.')}
            onChange={(pitchDegrees) => pitchDegrees !== undefined && onChange({ pitchDegrees })}
          />
          <ChoiceField
            label={named(say('Shade'))}
            value={slope.shading}
            choices={SHADINGS.map((value) => ({ value, label: say(SHADING_NAMES[value]) }))}
            onChange={(shading) => shading && onChange({ shading })}
          />
        </>
      )}
    </div>
  );
}

function ExportFields({ roof }: { readonly roof: Roof }) {
  const { household, today, change } = useHousehold();
  const id = useId();
  const { sun } = referenceOf(household);
  const { exportPencePerKWh, ...untyped } = roof;
  const counted = exportPrice(untyped, sun, today);
  const set = (field: Parameters<typeof withField<Roof>>[1]) =>
    change(putEquipment({ roof: withField<Roof>(roof, field) }));
  return (
    <div className="fields">
      <GivenField
        label={say('Paid for electricity sent out')}
        given={exportPencePerKWh}
        limits={{ min: 0, max: 100, unit: `${penceSign()}/kWh` }}
        today={today}
        {...(counted
          ? { fallback: { text: formatPlain(Number(counted.value.toFixed(2))), source: sayTold(counted.origin) } }
          : { help: say('No rule is known for these panels. Until it is typed, nothing is counted.') })}
        onChange={(value) => set({ exportPencePerKWh: value })}
      />
      {'value' in sun.exportPay ? null : (
        <Field
          ids={fieldIds(id)}
          label={say('First day of the panels')}
          note={say('What the law pays hangs on that day. Empty: today.')}
        >
          <DateEntry
            id={id}
            value={roof.exportedOn ?? ''}
            onChange={(text) => {
              if (text === '') set({ exportedOn: undefined });
              else if (isCivilDate(text)) set({ exportedOn: text });
            }}
          />
        </Field>
      )}
    </div>
  );
}
