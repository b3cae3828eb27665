/** Bills, readings or deliveries typed at the table. */

import { useState } from 'react';
import { carrierOf, isDelivered, type PricedCarrier } from '../../model/shapes/heating.ts';
import { referenceOf } from '../../reference/index.ts';
import { capitalised, counted, spokenKWh } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { ChoiceField, PickField } from '../shared/choice-field.tsx';
import { NumberField } from '../shared/number-field.tsx';
import { formatPlain } from '../shared/number-text.ts';
import { Refused } from '../shared/refused.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { CARRIER_WORDS } from './series-words.ts';
import { TypedGrid } from './typed-grid.tsx';
import { EMPTY_ROW, readTypedSheet, type TypedKind, type TypedRow } from './typed-rows.ts';
import { TYPED_CARRIERS, unitsFor } from './typed-units.ts';

const FIRST_ROWS = [EMPTY_ROW, EMPTY_ROW, EMPTY_ROW];
const KIND_WORDS: { readonly [kind in TypedKind]: string } = {
  bills: phrase('bills'),
  readings: phrase('meter readings'),
  deliveries: phrase('deliveries'),
};
const COPY = phrase(
  'Copy the {kind, select, bills {bills} readings {meter readings} other {deliveries}} row by row, the oldest first.',
);
const kindsFor = (carrier: PricedCarrier): readonly TypedKind[] =>
  isDelivered(carrier) ? ['deliveries', 'bills'] : ['bills', 'readings'];

type Sheet = ReturnType<typeof useTypedSheet>;

/** What is typed, and what it comes to so far. */
function useTypedSheet() {
  const { household } = useHousehold();
  const presentCarrier = carrierOf(household.present.system);
  const presentFuel = isDelivered(presentCarrier) ? presentCarrier : 'gas';
  const [carrier, setCarrier] = useState<PricedCarrier>(presentFuel);
  const [role, setRole] = useState<'import' | 'heat-pump'>('import');
  const [kind, setKind] = useState<TypedKind>(kindsFor(presentFuel)[0]!);
  const [unitName, setUnitName] = useState('');
  const [calorific, setCalorific] = useState<number | undefined>();
  const [toInclusive, setToInclusive] = useState(true);
  const [rows, setRows] = useState<readonly TypedRow[]>(FIRST_ROWS);
  const units = unitsFor(carrier, referenceOf(household), calorific);
  const unit = units.find((one) => one.name === unitName) ?? units[0]!;
  const result = readTypedSheet({ kind, unit, toInclusive, rows });
  const total = result.periods.reduce((sum, period) => sum + period.kWh, 0);

  const pickCarrier = (next: PricedCarrier) => {
    setCarrier(next);
    setUnitName('');
    if (!kindsFor(next).includes(kind)) setKind(kindsFor(next)[0]!);
    if (next !== 'electricity') setRole('import');
  };
  return {
    ...{ carrier, pickCarrier, role, setRole, kind, setKind, units, unit, setUnitName, calorific, setCalorific },
    ...{ toInclusive, setToInclusive, rows, setRows, result, total },
  };
}

export function TypedEntry(props: {
  readonly onDone: (message: string) => Promise<void>;
  readonly onLeave: () => void;
}) {
  const { household } = useHousehold();
  const sheet = useTypedSheet();
  const { carrier, role, kind, unit, rows, setRows, result, total } = sheet;
  const [shown, setShown] = useState(false);
  const [refusal, setRefusal] = useState<string | null>(null);
  const keep = async () => {
    setShown(true);
    setRefusal(null);
    if (result.faults.length > 0) return;
    if (result.periods.length === 0) {
      return setRefusal(
        kind === 'bills'
          ? say('Type at least one bill.')
          : say('Two rows are needed: what was used lies between two days.'),
      );
    }
    const name = say('{carrier} {kind, select, bills {bills} readings {meter readings} other {deliveries}}, typed', {
      carrier: capitalised(say(CARRIER_WORDS[carrier])),
      kind,
    });
    try {
      await call('evidence.type', { householdId: household.id, name, carrier, role, periods: [...result.periods] });
      await props.onDone(
        say('{rows} saved, {total} together.', {
          rows: counted(result.periods.length, 'row'),
          total: spokenKWh(total),
        }),
      );
    } catch (reason) {
      setRefusal(describeFailure(reason));
    }
  };

  return (
    <>
      <header className="stage-head">
        <p className="quiet">{say('Typed at the table')}</p>
        <h2 className="voice">
          {total > 0
            ? say('So far {total} of {carrier}.', { total: spokenKWh(total), carrier: say(CARRIER_WORDS[carrier]) })
            : say(COPY, { kind })}
        </h2>
      </header>
      <SheetFields sheet={sheet} />
      <TypedGrid kind={kind} unit={unit.name} rows={rows} faults={shown ? result.faults : []} onRows={setRows} />
      {shown && result.faults.length > 0 ? (
        <ul className="refusal" role="alert">
          {result.faults.map((fault) => (
            <li key={fault.sentence}>{fault.sentence}</li>
          ))}
        </ul>
      ) : null}
      <Refused text={refusal} />
      <div className="actions stand-low">
        <button type="button" className="main" onClick={keep}>
          {say('Save')}
        </button>
        <button type="button" onClick={props.onLeave}>
          {say('Cancel')}
        </button>
      </div>
    </>
  );
}

/** What the rows are of: fuel, paper, unit and days. */
function SheetFields({ sheet }: { readonly sheet: Sheet }) {
  const { household } = useHousehold();
  const { carrier, pickCarrier, role, setRole, kind, setKind, units, unit, setUnitName } = sheet;
  const { calorific, setCalorific, toInclusive, setToInclusive } = sheet;
  return (
    <div className="fields fields-tight fields-wide">
      <PickField
        label={say('What')}
        value={carrier}
        choices={TYPED_CARRIERS.map((value) => ({ value, label: say(CARRIER_WORDS[value]) }))}
        onChange={pickCarrier}
      />
      <PickField
        label={say('From')}
        value={kind}
        choices={kindsFor(carrier).map((value) => ({ value, label: say(KIND_WORDS[value]) }))}
        onChange={setKind}
        note={
          kind === 'deliveries'
            ? say('A delivery fills the tank or store again. It is what was burnt since the one before.')
            : kind === 'readings'
              ? say('What was used is the difference between one reading and the next.')
              : undefined
        }
      />
      {units.length > 1 ? (
        <PickField
          label={say('Unit')}
          value={unit.name}
          choices={units.map(({ name }) => ({ value: name, label: sayTold(name) }))}
          onChange={setUnitName}
          note={unit.sum || undefined}
        />
      ) : null}
      {unit.name === 'm³' || unit.name === 'hundred ft³' ? (
        <NumberField
          label={say('Calorific value on the bill')}
          value={calorific}
          placeholder={formatPlain(referenceOf(household).gasVolume.calorificMJPerM3.value)}
          limits={{ min: 30, max: 50, unit: 'MJ/m³', why: say('British gas lies between 37.5 and 43.') }}
          onChange={setCalorific}
        />
      ) : null}
      {carrier === 'electricity' ? (
        <ChoiceField
          label={say('Measured for')}
          value={role}
          choices={[
            { value: 'import', label: say('the whole home') },
            { value: 'heat-pump', label: say('the heat pump alone') },
          ]}
          onChange={(next) => setRole(next ?? 'import')}
        />
      ) : null}
      {kind === 'bills' ? (
        <PickField
          label={say('The last day on the bill')}
          value={toInclusive ? 'in' : 'out'}
          choices={[
            { value: 'in', label: say('belongs to it') },
            { value: 'out', label: say('begins the next') },
          ]}
          onChange={(last) => setToInclusive(last === 'in')}
        />
      ) : null}
    </div>
  );
}
