import type { Value } from '../../model/shapes/reference.ts';
import { reference } from '../../reference/index.ts';
import { grouped, moneySign, penceSign } from '../../words/numbers.ts';
import { datesInShort } from '../../words/prices.ts';
import { phrase, reword, say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import type { Fallback } from '../shared/given.ts';
import { GivenField } from '../shared/given-field.tsx';
import { formatPlain } from '../shared/number-text.ts';
import { patchSection } from '../shared/patch.ts';

const SERVICES = [
  { field: 'serviceHeatPumpGBP', label: phrase('Heat pump, yearly visit'), of: 'heat-pump' },
  { field: 'serviceGasGBP', label: phrase('Gas boiler, yearly visit'), of: 'gas' },
  { field: 'serviceOilGBP', label: phrase('Oil boiler, yearly visit'), of: 'oil' },
  { field: 'serviceLpgGBP', label: phrase('LPG boiler, yearly visit'), of: 'lpg' },
] as const;
const serviceFallback = (value: Value): Fallback => ({
  text: formatPlain(value.value),
  source: `${reword(value.source)} (${value.provenance})`,
});

/** Litres and service. */
export function FuelFields() {
  const { household, appraisal, today, change } = useHousehold();
  const { prices } = household;
  const litre = (fuel: 'oil' | 'lpg'): Fallback => {
    const basis = appraisal.prices[fuel];
    const perLitre = appraisal.prices[`${fuel}PencePerKWh`] * reference.kWhPerLitre[fuel].value;
    return {
      text: grouped(perLitre, 1),
      source: `${reword(basis.origin.replace(/^assumed, /, ''))} (${datesInShort(basis)})`,
    };
  };
  return (
    <>
      <section>
        <h3>{say('Oil and LPG')}</h3>
        <div className="fields">
          <GivenField
            label={say('Heating oil')}
            given={prices.oilPencePerLitre}
            limits={{ min: 10, max: 500, unit: say('{sign}/litre', { sign: penceSign() }) }}
            today={today}
            fallback={litre('oil')}
            onChange={(oilPencePerLitre) => change(patchSection('prices', { oilPencePerLitre }))}
          />
          <GivenField
            label={say('LPG')}
            given={prices.lpgPencePerLitre}
            limits={{ min: 10, max: 500, unit: say('{sign}/litre', { sign: penceSign() }) }}
            today={today}
            fallback={litre('lpg')}
            onChange={(lpgPencePerLitre) => change(patchSection('prices', { lpgPencePerLitre }))}
          />
        </div>
      </section>
      <section>
        <h3>{say('Service')}</h3>
        <div className="fields">
          {SERVICES.map(({ field, label, of }) => (
            <GivenField
              key={field}
              label={say(label)}
              given={prices[field]}
              limits={{ min: 0, max: 5000, unit: say('{sign} a year', { sign: moneySign() }) }}
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
