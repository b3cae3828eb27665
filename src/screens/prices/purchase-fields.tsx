import { USUAL_LOAN_YEARS } from '../../model/lifetime/instalments.ts';
import { USUAL } from '../../model/lifetime/lifetime-inputs.ts';
import { tell, type Wording } from '../../model/shapes/told.ts';
import { moneySign } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { useHousehold } from '../household-context.tsx';
import type { Fallback } from '../shared/given.ts';
import { GivenField } from '../shared/given-field.tsx';
import { formatPlain } from '../shared/number-text.ts';
import { patchSection } from '../shared/patch.ts';

const PRICES = [
  { field: 'heatPumpGBP', label: phrase('Heat pump, put in') },
  { field: 'grantGBP', label: phrase('Grant') },
  { field: 'replacementGBP', label: phrase('New boiler instead') },
  {
    field: 'renewalGBP',
    label: phrase('New heat pump, same pipes'),
    help: phrase('Only if you look further ahead than the heat pump lasts.'),
  },
] as const;

const fallback = ({ value, origin }: { value: number; origin: Wording }, scale = 1): Fallback => ({
  text: formatPlain(value * scale),
  source: sayTold(origin),
});
const PER_CENT = 100;
const RATE = { min: -10, max: 20 } as const;

/** Purchase, lives and what prices do: only for the years to come. */
export function PurchaseFields() {
  const { household, today, change } = useHousehold();
  const { purchase, machine } = household;
  const life = machine.source === 'ground' ? USUAL.groundLifeYears : USUAL.airLifeYears;
  const spans = [
    { field: 'years', label: say('Look ahead'), min: 1, max: 40, usual: USUAL.years },
    { field: 'heatPumpLifeYears', label: say('Heat pump lasts'), min: 5, max: 50, usual: life },
    {
      field: 'replacementLifeYears',
      label: say('New boiler lasts'),
      min: 5,
      max: 50,
      usual: USUAL.replacementLifeYears,
    },
    {
      field: 'presentYearsLeft',
      label: say('Present heating still lasts'),
      min: 0,
      max: 40,
      usual: USUAL.presentYearsLeft,
    },
    {
      field: 'loanYears',
      label: say('Instalments over'),
      min: 1,
      max: 40,
      usual: { value: USUAL_LOAN_YEARS, origin: tell('custom') },
    },
  ] as const;
  const rates = [
    { field: 'electricityGrowthPerYear', label: say('Electricity price rises'), ...RATE, usual: USUAL.growthPerYear },
    { field: 'fuelGrowthPerYear', label: say('Fuel price rises'), ...RATE, usual: USUAL.growthPerYear },
    {
      field: 'growthSpreadPerYear',
      label: say('Uncertainty of both'),
      ...RATE,
      min: 0,
      max: 10,
      usual: USUAL.growthSpreadPerYear,
    },
    {
      field: 'loanPerYear',
      label: say('Interest rate'),
      min: 0,
      max: 30,
      usual: { value: 0, origin: tell('no-interest') },
    },
    { field: 'discountPerYear', label: say('Discount'), ...RATE, min: 0, usual: USUAL.discountPerYear },
  ] as const;
  return (
    <>
      <section>
        <h3>{say('Installation price and grant')}</h3>
        <p className="explain quiet">
          {say(
            'Needed only for the years to come. No price is assumed. The page appears once price and grant are typed; type 0 where there is none.',
          )}
        </p>
        <div className="fields">
          {PRICES.map(({ field, label, ...more }) => (
            <GivenField
              key={field}
              label={say(label)}
              given={purchase[field]}
              limits={{ min: 0, max: 500_000, unit: moneySign() }}
              today={today}
              help={'help' in more ? say(more.help) : undefined}
              onChange={(value) => change(patchSection('purchase', { [field]: value }))}
            />
          ))}
        </div>
      </section>
      <section>
        <h3>{say('The years to come')}</h3>
        <p className="explain quiet">
          {say('Growth and discount are on top of general inflation. Nobody knows them.')}
        </p>
        <div className="fields">
          {spans.map(({ field, label, min, max, usual }) => (
            <GivenField
              key={field}
              label={label}
              given={purchase[field]}
              limits={{ min, max, whole: true, unit: say('years') }}
              today={today}
              fallback={fallback(usual)}
              onChange={(value) => change(patchSection('purchase', { [field]: value }))}
            />
          ))}
          {rates.map(({ field, label, min, max, usual }) => (
            <GivenField
              key={field}
              label={label}
              given={purchase[field]}
              limits={{ min, max, unit: say('% a year') }}
              today={today}
              scale={PER_CENT}
              fallback={fallback(usual, PER_CENT)}
              onChange={(value) => change(patchSection('purchase', { [field]: value }))}
            />
          ))}
        </div>
      </section>
    </>
  );
}
