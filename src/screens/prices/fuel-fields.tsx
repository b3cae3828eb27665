import type { Value } from '../../model/reference.ts';
import { reference } from '../../reference/index.ts';
import { pence } from '../../words/numbers.ts';
import { datesInShort } from '../../words/prices.ts';
import { useHousehold } from '../household-context.tsx';
import type { Fallback } from '../shared/given.ts';
import { GivenField } from '../shared/given-field.tsx';
import { patchSection } from '../shared/patch.ts';

const SERVICES = [
  { field: 'serviceHeatPumpGBP', label: 'Heat pump, yearly visit', of: 'heat-pump' },
  { field: 'serviceGasGBP', label: 'Gas boiler, yearly visit', of: 'gas' },
  { field: 'serviceOilGBP', label: 'Oil boiler, yearly visit', of: 'oil' },
  { field: 'serviceLpgGBP', label: 'LPG boiler, yearly visit', of: 'lpg' },
] as const;
const serviceFallback = (value: Value): Fallback => ({
  text: String(value.value),
  source: `${value.source} (${value.provenance})`,
});

/** Litres and service. */
export function FuelFields() {
  const { household, appraisal, today, change } = useHousehold();
  const { prices } = household;
  const litre = (fuel: 'oil' | 'lpg'): Fallback => {
    const basis = appraisal.prices[fuel];
    const perLitre = appraisal.prices[`${fuel}PencePerKWh`] * reference.kWhPerLitre[fuel].value;
    return { text: pence(perLitre).replace(' p', ''), source: `${basis.origin} (${datesInShort(basis)})` };
  };
  return (
    <>
      <section>
        <h3>Oil and LPG</h3>
        <div className="fields">
          <GivenField
            label="Heating oil"
            given={prices.oilPencePerLitre}
            limits={{ min: 10, max: 500, unit: 'p/litre' }}
            today={today}
            fallback={litre('oil')}
            onChange={(oilPencePerLitre) => change(patchSection('prices', { oilPencePerLitre }))}
          />
          <GivenField
            label="LPG"
            given={prices.lpgPencePerLitre}
            limits={{ min: 10, max: 500, unit: 'p/litre' }}
            today={today}
            fallback={litre('lpg')}
            onChange={(lpgPencePerLitre) => change(patchSection('prices', { lpgPencePerLitre }))}
          />
        </div>
      </section>
      <section>
        <h3>Service</h3>
        <div className="fields">
          {SERVICES.map(({ field, label, of }) => (
            <GivenField
              key={field}
              label={label}
              given={prices[field]}
              limits={{ min: 0, max: 5000, unit: '£ a year' }}
              today={today}
              fallback={serviceFallback(reference.service[of])}
              onChange={(value) => change(patchSection('prices', { [field]: value }))}
            />
          ))}
        </div>
      </section>
    </>
  );
}
