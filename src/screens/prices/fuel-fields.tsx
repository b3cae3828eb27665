import { useState } from 'react';
import { priceOf } from '../../model/shapes/appraisal.ts';
import {
  DELIVERED_FUELS,
  type DeliveredFuel,
  FUEL_IDS,
  priceKey,
  SALE_UNITS,
  serviceKey,
  unitsOf,
} from '../../model/shapes/heating.ts';
import type { Value } from '../../model/shapes/reference.ts';
import { reference, referenceOf } from '../../reference/index.ts';
import { capitalised, grouped, moneySign, penceSign } from '../../words/numbers.ts';
import { datesInShort } from '../../words/prices.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { carrierInFull, serviceName } from '../../words/systems.ts';
import { useHousehold } from '../household-context.tsx';
import { PickField } from '../shared/choice-field.tsx';
import type { Fallback } from '../shared/given.ts';
import { GivenField } from '../shared/given-field.tsx';
import { formatPlain } from '../shared/number-text.ts';
import { patchSection } from '../shared/patch.ts';

const SERVICES = [
  { field: 'serviceHeatPumpGBP', of: 'heat-pump' },
  ...FUEL_IDS.map((fuel) => ({ field: serviceKey(fuel), of: fuel })),
] as const;
const serviceFallback = (value: Value): Fallback => ({
  text: formatPlain(value.value),
  source: `${sayTold(value.source)} (${value.provenance})`,
});

/** The price of a fuel bought by amount: pence for its base unit, pounds for what holds several. */
function DeliveredField({ fuel }: { readonly fuel: DeliveredFuel }) {
  const { household, appraisal, today, change } = useHousehold();
  const name = capitalised(say(carrierInFull(fuel)));
  const units = unitsOf(fuel);
  const [unit, setUnit] = useState(units[0]!);
  const { count } = SALE_UNITS[unit];
  const scale = count === 1 ? 1 : count / 100;
  const price = priceOf(appraisal.prices, fuel);
  const perUnit = price ? price.pencePerKWh * reference.kWhPerUnit[fuel].value : Number.NaN;
  const sign = count === 1 ? penceSign() : moneySign();
  const limits = { min: 10 * scale, max: 500 * scale, unit: `${sign}/${sayTold(unit)}` };
  const key = priceKey(fuel);
  return (
    <>
      <GivenField
        // Another unit is another number: the text typed for the first one would stand for the second.
        key={unit}
        label={name}
        given={household.prices[key]}
        limits={limits}
        scale={scale}
        today={today}
        {...(price
          ? {
              fallback: {
                text: grouped(perUnit * scale, 1),
                source: `${sayTold(price.basis.origin).replace(/^assumed, /, '')} (${datesInShort(price.basis)})`,
              },
            }
          : {})}
        onChange={(given) => change(patchSection('prices', { [key]: given }))}
      />
      {units.length > 1 ? (
        <PickField
          label={say('{fuel}, priced by', { fuel: name })}
          value={unit}
          choices={units.map((value) => ({ value, label: sayTold(value) }))}
          onChange={setUnit}
        />
      ) : null}
    </>
  );
}

/** Fuel bought by amount, and service. */
export function FuelFields() {
  const { household, today, change } = useHousehold();
  const { prices } = household;
  return (
    <>
      <section>
        <h3>{say('Fuel that is delivered')}</h3>
        <div className="fields">
          {DELIVERED_FUELS.map((fuel) => (
            <DeliveredField key={fuel} fuel={fuel} />
          ))}
        </div>
      </section>
      <section>
        <h3>{say('Service')}</h3>
        <div className="fields">
          {SERVICES.map(({ field, of }) => (
            <GivenField
              key={field}
              label={serviceName(of)}
              given={prices[field]}
              limits={{ min: 0, max: 5000, unit: say('{sign} a year', { sign: moneySign() }) }}
              today={today}
              fallback={serviceFallback(referenceOf(household).service[of])}
              onChange={(value) => change(patchSection('prices', { [field]: value }))}
            />
          ))}
        </div>
      </section>
    </>
  );
}
