import { CAR_FROM, CAR_UNTIL } from '../../model/balance/settle-home.ts';
import type { ElectricCar } from '../../model/shapes/choices.ts';
import type { CivilDate } from '../../model/shapes/dates.ts';
import { referenceOf } from '../../reference/index.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { ChoiceField, TickField } from '../shared/choice-field.tsx';
import { GivenField } from '../shared/given-field.tsx';
import { formatPlain } from '../shared/number-text.ts';
import { PER_CENT, putEquipment, usual, withField } from './equipment.ts';
import { HALF_HOURS } from './window-editor.tsx';

const KM_PER_MILE = 1.609344;
const halfHours = (now: string) =>
  [...new Set([now, ...HALF_HOURS])].toSorted().map((value) => ({ value, label: value }));

export function CarFields() {
  const { household, today, change } = useHousehold();
  const { car } = household;
  return (
    <>
      <TickField
        label={say('An electric car is charged at home')}
        checked={car !== undefined}
        onChange={(has) => change(putEquipment({ car: has ? {} : undefined }))}
      />
      {car ? <CarDetails car={car} today={today} /> : null}
    </>
  );
}

function CarDetails({ car, today }: { readonly car: ElectricCar; readonly today: CivilDate }) {
  const { household, change } = useHousehold();
  const reference = referenceOf(household);
  const set = (field: Parameters<typeof withField<ElectricCar>>[1]) =>
    change(putEquipment({ car: withField<ElectricCar>(car, field) }));
  const isMiles = reference.country === 'GB';
  const perKm = isMiles ? 1 / KM_PER_MILE : 1;
  const from = car.from ?? CAR_FROM;
  const until = car.until ?? CAR_UNTIL;
  return (
    <div className="fields">
      <GivenField
        label={say('Driven')}
        given={car.kmPerYear}
        limits={{ min: 0, max: Math.floor(150_000 * perKm), unit: isMiles ? say('miles a year') : say('km a year') }}
        scale={perKm}
        today={today}
        fallback={{
          ...usual(reference.car.kmPerYear),
          text: formatPlain(Math.round(reference.car.kmPerYear.value * perKm)),
        }}
        onChange={(kmPerYear) => set({ kmPerYear })}
      />
      <GivenField
        label={say('It takes')}
        given={car.kWhPer100Km}
        limits={{ min: 5, max: 60, unit: say('kWh per 100 km') }}
        today={today}
        fallback={usual(reference.car.kWhPer100Km)}
        help={say('Measured at the plug. The car’s own display leaves out what charging loses.')}
        onChange={(kWhPer100Km) => set({ kWhPer100Km })}
      />
      <GivenField
        label={say('Charged at home')}
        given={car.homeShare}
        limits={{ min: 0, max: 100, unit: '%' }}
        scale={PER_CENT}
        today={today}
        fallback={{ text: '100', source: say('all of it') }}
        onChange={(homeShare) => set({ homeShare })}
      />
      <GivenField
        label={say('Power of the charger')}
        given={car.chargerKW}
        limits={{ min: 1, max: 22, unit: 'kW' }}
        today={today}
        fallback={usual(reference.car.chargerKW)}
        onChange={(chargerKW) => set({ chargerKW })}
      />
      <ChoiceField
        label={say('Plugged in from')}
        value={from}
        choices={halfHours(from)}
        onChange={(from) => set({ from })}
      />
      <ChoiceField
        label={say('Plugged in until')}
        value={until}
        choices={halfHours(until)}
        onChange={(until) => set({ until })}
      />
    </div>
  );
}
