/** Bills, readings or deliveries typed at the table. */
import { useState } from 'react';
import { reference } from '../../reference/index.ts';
import { capitalised, counted, spokenKWh } from '../../words/numbers.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { ChoiceField, PickField } from '../shared/choice-field.tsx';
import { NumberField } from '../shared/number-field.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { CARRIER_WORDS } from './series-words.ts';
import { TypedGrid } from './typed-grid.tsx';
import { EMPTY_ROW, readTypedSheet, type TypedKind, type TypedRow } from './typed-rows.ts';
import { TYPED_CARRIERS, type TypedCarrier, unitsFor } from './typed-units.ts';

const FIRST_ROWS = [EMPTY_ROW, EMPTY_ROW, EMPTY_ROW];
const KIND_WORDS: { readonly [kind in TypedKind]: string } = {
  bills: 'bills',
  readings: 'meter readings',
  deliveries: 'deliveries',
};
const kindsFor = (carrier: TypedCarrier): readonly TypedKind[] =>
  carrier === 'oil' || carrier === 'lpg' ? ['deliveries', 'bills'] : ['bills', 'readings'];

export function TypedEntry(props: {
  readonly onDone: (message: string) => Promise<void>;
  readonly onLeave: () => void;
}) {
  const { household } = useHousehold();
  const presentFuel =
    household.present.system === 'oil' || household.present.system === 'lpg' ? household.present.system : 'gas';
  const [carrier, setCarrier] = useState<TypedCarrier>(presentFuel);
  const [role, setRole] = useState<'import' | 'heat-pump'>('import');
  const [kind, setKind] = useState<TypedKind>(kindsFor(presentFuel)[0]!);
  const [unitName, setUnitName] = useState('');
  const [calorific, setCalorific] = useState<number | undefined>();
  const [toInclusive, setToInclusive] = useState(true);
  const [rows, setRows] = useState<readonly TypedRow[]>(FIRST_ROWS);
  const [shown, setShown] = useState(false);
  const [refusal, setRefusal] = useState<string | null>(null);
  const units = unitsFor(carrier, reference, calorific);
  const unit = units.find((one) => one.name === unitName) ?? units[0]!;
  const result = readTypedSheet({ kind, unit, toInclusive, rows });
  const total = result.periods.reduce((sum, period) => sum + period.kWh, 0);

  const pickCarrier = (next: TypedCarrier) => {
    setCarrier(next);
    setUnitName('');
    if (!kindsFor(next).includes(kind)) setKind(kindsFor(next)[0]!);
    if (next !== 'electricity') setRole('import');
  };
  const keep = async () => {
    setShown(true);
    setRefusal(null);
    if (result.faults.length > 0) return;
    if (result.periods.length === 0) {
      return setRefusal(
        kind === 'bills' ? 'Type at least one bill.' : 'Two rows are needed: what was used lies between two days.',
      );
    }
    const name = `${capitalised(CARRIER_WORDS[carrier])} ${KIND_WORDS[kind]}, typed`;
    try {
      await call('evidence.type', { householdId: household.id, name, carrier, role, periods: [...result.periods] });
      await props.onDone(`${counted(result.periods.length, 'row')} kept, ${spokenKWh(total)} together.`);
    } catch (reason) {
      setRefusal(describeFailure(reason));
    }
  };

  return (
    <>
      <header className="stage-head">
        <p className="quiet">Typed at the table</p>
        <h2 className="voice">
          {total > 0
            ? `So far ${spokenKWh(total)} of ${CARRIER_WORDS[carrier]}.`
            : `Copy the ${KIND_WORDS[kind]} row by row, the oldest first.`}
        </h2>
      </header>
      <div className="fields fields-tight fields-wide">
        <PickField
          label="What"
          value={carrier}
          choices={TYPED_CARRIERS.map((value) => ({ value, label: CARRIER_WORDS[value] }))}
          onChange={pickCarrier}
        />
        <PickField
          label="From"
          value={kind}
          choices={kindsFor(carrier).map((value) => ({ value, label: KIND_WORDS[value] }))}
          onChange={setKind}
          note={
            kind === 'deliveries'
              ? 'A delivery fills the tank again. Its litres are what was burnt since the one before.'
              : kind === 'readings'
                ? 'What was used is the difference between one reading and the next.'
                : undefined
          }
        />
        {units.length > 1 ? (
          <PickField
            label="Unit"
            value={unit.name}
            choices={units.map(({ name }) => ({ value: name, label: name }))}
            onChange={setUnitName}
            note={unit.sum || undefined}
          />
        ) : null}
        {unit.name === 'm³' || unit.name === 'hundred ft³' ? (
          <NumberField
            label="Calorific value on the bill"
            value={calorific}
            placeholder={String(reference.gasVolume.calorificMJPerM3.value)}
            limits={{ min: 30, max: 50, unit: 'MJ/m³', why: 'British gas lies between 37.5 and 43.' }}
            onChange={setCalorific}
          />
        ) : null}
        {carrier === 'electricity' ? (
          <ChoiceField
            label="Measured for"
            value={role}
            choices={[
              { value: 'import', label: 'the whole home' },
              { value: 'heat-pump', label: 'the heat pump alone' },
            ]}
            onChange={(next) => setRole(next ?? 'import')}
          />
        ) : null}
        {kind === 'bills' ? (
          <PickField
            label="The last day on the bill"
            value={toInclusive ? 'in' : 'out'}
            choices={[
              { value: 'in', label: 'belongs to it' },
              { value: 'out', label: 'begins the next' },
            ]}
            onChange={(last) => setToInclusive(last === 'in')}
          />
        ) : null}
      </div>
      <TypedGrid kind={kind} unit={unit.name} rows={rows} faults={shown ? result.faults : []} onRows={setRows} />
      {shown && result.faults.length > 0 ? (
        <ul className="refusal" role="alert">
          {result.faults.map((fault) => (
            <li key={fault.sentence}>{fault.sentence}</li>
          ))}
        </ul>
      ) : null}
      {refusal === null ? null : (
        <p className="refusal" role="alert">
          {refusal}
        </p>
      )}
      <div className="actions stand-low">
        <button type="button" className="main" onClick={keep}>
          Keep this evidence
        </button>
        <button type="button" onClick={props.onLeave}>
          Leave it
        </button>
      </div>
    </>
  );
}
