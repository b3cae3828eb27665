/** What is read at the plant: every reading optional, judged as it is typed. */

import { useState } from 'react';
import { REFRIGERANTS } from '../../model/shapes/refrigerant.ts';
import { PRESSURE_UNITS, type PressureBasis, type SiteReadings } from '../../model/shapes/site-readings.ts';
import { degrees } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { type Choice, ChoiceField, sayChoices } from '../shared/choice-field.tsx';
import { NumberField } from '../shared/number-field.tsx';

/** Flow rates as meters show them; kept in litres a minute. */
export const FLOW_UNITS = ['l/min', 'l/s', 'm³/h'] as const;
export type FlowUnit = (typeof FLOW_UNITS)[number];

const L_PER_MIN: { readonly [unit in FlowUnit]: number } = { 'l/min': 1, 'l/s': 60, 'm³/h': 1000 / 60 };
/** Kept with more digits than are shown, so that a unit changed there and back shows the figure that was typed. */
const KEPT_DIGITS = 14;
const SHOWN_DIGITS = 8;

export const toLPerMin = (value: number, unit: FlowUnit): number =>
  Number((value * L_PER_MIN[unit]).toPrecision(KEPT_DIGITS));
export const fromLPerMin = (lPerMin: number, unit: FlowUnit): number =>
  Number((lPerMin / L_PER_MIN[unit]).toPrecision(SHOWN_DIGITS));

type Glycol = NonNullable<SiteReadings['glycol']>;
type Pressure = NonNullable<SiteReadings['suction']>;
type Celsius =
  | 'brineInC'
  | 'brineOutC'
  | 'coldestBrineC'
  | 'flowC'
  | 'returnC'
  | 'suctionC'
  | 'dischargeC'
  | 'liquidC'
  | 'restC';
type Flow = 'brineFlowLPerMin' | 'waterFlowLPerMin';

const TEMPERATURE = { min: -40, max: 160, unit: '°C' };
const same = <T extends string>(options: readonly T[]): Choice<T>[] =>
  options.map((value) => ({ value, label: value }));
const GLYCOLS: readonly Choice<Glycol['kind']>[] = [
  { value: 'propylene', label: phrase('propylene') },
  { value: 'ethylene', label: phrase('ethylene') },
];
const SHARES: readonly Choice<Glycol['basis']>[] = [
  { value: 'volume', label: phrase('by volume') },
  { value: 'mass', label: phrase('by weight') },
];
const BASES: readonly Choice<PressureBasis>[] = [
  { value: 'gauge', label: phrase('the air (gauge)') },
  { value: 'absolute', label: phrase('nothing (absolute)') },
];

interface Part {
  readonly readings: SiteReadings;
  readonly onChange: (part: Partial<SiteReadings>) => void;
}

function Temperature(props: Part & { readonly field: Celsius; readonly label: string; readonly note?: string }) {
  const { readings, field, label, note, onChange } = props;
  return (
    <NumberField
      label={label}
      value={readings[field]}
      limits={TEMPERATURE}
      note={note}
      onChange={(value) => onChange({ [field]: value })}
    />
  );
}

function FlowRate(props: Part & { readonly field: Flow; readonly label: string; readonly unit: FlowUnit }) {
  const { readings, field, label, unit, onChange } = props;
  const held = readings[field];
  return (
    <NumberField
      label={label}
      value={held === undefined ? undefined : fromLPerMin(held, unit)}
      limits={{ min: fromLPerMin(0.1, unit), max: fromLPerMin(1000, unit), unit }}
      onChange={(value) => onChange({ [field]: value === undefined ? undefined : toLPerMin(value, unit) })}
      key={unit}
    />
  );
}

export function ReadingsForm(props: Part & { readonly coldestBrineOutC: number | null }) {
  const { readings, onChange } = props;
  const [flowUnit, setFlowUnit] = useState<FlowUnit>('l/min');
  const part = { readings, onChange };
  return (
    <>
      <section>
        <h3>{say('From the ground')}</h3>
        <div className="fields fields-tight site-fields">
          <Temperature {...part} field="brineInC" label={say('Brine in')} />
          <Temperature {...part} field="brineOutC" label={say('Brine out')} />
          <FlowRate {...part} field="brineFlowLPerMin" label={say('Flow rate of the brine')} unit={flowUnit} />
          <GlycolFields {...part} />
          <Temperature
            {...part}
            field="coldestBrineC"
            label={say('Coldest brine of the season')}
            note={
              props.coldestBrineOutC === null
                ? say('Without it, today’s brine temperature is used.')
                : say('Without it, {brine} is used, worked out from the ground.', {
                    brine: degrees(props.coldestBrineOutC),
                  })
            }
          />
        </div>
      </section>
      <section>
        <h3>{say('To the house')}</h3>
        <div className="fields fields-tight site-fields">
          <Temperature {...part} field="flowC" label={say('Flow')} />
          <Temperature {...part} field="returnC" label={say('Return')} />
          <FlowRate {...part} field="waterFlowLPerMin" label={say('Flow rate of the water')} unit={flowUnit} />
          <NumberField
            label={say('Input power')}
            value={readings.inputKW}
            limits={{ min: 0.01, max: 200, unit: 'kW' }}
            note={say('Electricity into the machine just now.')}
            onChange={(inputKW) => onChange({ inputKW })}
          />
          <ChoiceField
            label={say('Flow meters show')}
            value={flowUnit}
            choices={same(FLOW_UNITS)}
            onChange={(unit) => setFlowUnit(unit ?? 'l/min')}
          />
        </div>
      </section>
      <section>
        <h3>{say('Refrigerant, where it can be read')}</h3>
        <div className="fields fields-tight site-fields">
          <RefrigerantFields {...part} />
        </div>
      </section>
    </>
  );
}

/** Kind and basis stand ready before a share is typed: the kind that protects less, the basis that suppliers quote. */
function GlycolFields({ readings, onChange }: Part) {
  const [first, setFirst] = useState<Pick<Glycol, 'kind' | 'basis'>>({ kind: 'propylene', basis: 'volume' });
  const { glycol } = readings;
  const { kind, basis } = glycol ?? first;
  const set = (change: Partial<Pick<Glycol, 'kind' | 'basis'>>) => {
    setFirst({ kind, basis, ...change });
    if (glycol) onChange({ glycol: { ...glycol, ...change } });
  };
  return (
    <>
      <NumberField
        label={say('Share of glycol')}
        value={glycol?.percent}
        limits={{ min: 0, max: 60, unit: '%' }}
        onChange={(percent) => onChange({ glycol: percent === undefined ? undefined : { kind, basis, percent } })}
      />
      <ChoiceField
        label={say('Kind of glycol')}
        value={kind}
        choices={sayChoices(GLYCOLS)}
        onChange={(next) => set({ kind: next ?? kind })}
      />
      <ChoiceField
        label={say('Its share is')}
        value={basis}
        choices={sayChoices(SHARES)}
        onChange={(next) => set({ basis: next ?? basis })}
      />
    </>
  );
}

function RefrigerantFields({ readings, onChange }: Part) {
  const { suction, discharge, restPressure } = readings;
  const [first, setFirst] = useState<Pick<Pressure, 'unit' | 'basis'>>({ unit: 'bar', basis: 'gauge' });
  const { unit, basis } = suction ?? discharge ?? restPressure ?? first;
  const set = (change: Partial<Pick<Pressure, 'unit' | 'basis'>>) => {
    setFirst({ unit, basis, ...change });
    onChange({
      ...(suction ? { suction: { ...suction, ...change } } : {}),
      ...(discharge ? { discharge: { ...discharge, ...change } } : {}),
      ...(restPressure ? { restPressure: { ...restPressure, ...change } } : {}),
    });
  };
  const pressure = (field: 'suction' | 'discharge' | 'restPressure', label: string, note?: string) => (
    <NumberField
      label={label}
      note={note}
      value={readings[field]?.value}
      limits={{ min: -1, max: 6000, unit }}
      onChange={(value) => onChange({ [field]: value === undefined ? undefined : { value, unit, basis } })}
    />
  );
  return (
    <>
      <ChoiceField
        label={say('Refrigerant')}
        value={readings.refrigerant}
        emptyLabel={say('not read yet')}
        choices={same(REFRIGERANTS)}
        note={say('From the plate.')}
        onChange={(refrigerant) => onChange({ refrigerant })}
      />
      {pressure('suction', say('Suction pressure'))}
      {pressure('discharge', say('Discharge pressure'))}
      <ChoiceField
        label={say('Pressures in')}
        value={unit}
        choices={same(PRESSURE_UNITS)}
        onChange={(next) => set({ unit: next ?? 'bar' })}
      />
      <ChoiceField
        label={say('Counted from')}
        value={basis}
        choices={sayChoices(BASES)}
        onChange={(next) => set({ basis: next ?? basis })}
      />
      <Temperature {...{ readings, onChange }} field="suctionC" label={say('Suction pipe')} />
      <Temperature {...{ readings, onChange }} field="dischargeC" label={say('Hot gas pipe')} />
      <Temperature {...{ readings, onChange }} field="liquidC" label={say('Liquid pipe')} />
      <NumberField
        label={say('Compressor current')}
        value={readings.currentA}
        limits={{ min: 0.1, max: 400, unit: 'A' }}
        onChange={(currentA) => onChange({ currentA })}
      />
      <NumberField
        label={say('Usual current')}
        value={readings.usualCurrentA}
        limits={{ min: 0.1, max: 400, unit: 'A' }}
        note={say('Read earlier or from the data sheet, at like temperatures.')}
        onChange={(usualCurrentA) => onChange({ usualCurrentA })}
      />
      <NumberField
        label={say('Expansion valve open')}
        value={readings.valveOpenPercent}
        limits={{ min: 0, max: 100, unit: '%' }}
        note={say('Where the controls show it.')}
        onChange={(valveOpenPercent) => onChange({ valveOpenPercent })}
      />
      {pressure('restPressure', say('Pressure at rest'), say('Machine stopped until both pressures are even.'))}
      <Temperature
        {...{ readings, onChange }}
        field="restC"
        label={say('Temperature at rest')}
        note={say('Of the pipes, once they no longer change.')}
      />
    </>
  );
}
