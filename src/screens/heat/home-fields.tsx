import { useState } from 'react';
import { Reworded } from '../../charts/reworded.tsx';
import { COUNTRIES, type Country, countryOf } from '../../model/shapes/country.ts';
import { isCutByClock } from '../../model/shapes/evidence.ts';
import { AGE_BANDS, HOME_KINDS, type HomeKind, type Household } from '../../model/shapes/household.ts';
import { referenceOf } from '../../reference/index.ts';
import { moneySign } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { useHousehold } from '../household-context.tsx';
import { ChoiceField, PickField, sayChoices } from '../shared/choice-field.tsx';
import { COUNTRY_CHOICES } from '../shared/country-choices.ts';
import { sentenceOf, typeGiven } from '../shared/given.ts';
import { GivenField } from '../shared/given-field.tsx';
import { patchSection } from '../shared/patch.ts';
import { TextField } from '../shared/text-field.tsx';
import { fallbackFor } from './fallbacks.ts';
import { ZoneField } from './zone-field.tsx';

const KIND_WORDS: { readonly [kind in HomeKind]: string } = {
  detached: phrase('detached house'),
  semi: phrase('semi-detached house'),
  terrace: phrase('terraced house'),
  bungalow: phrase('bungalow'),
  flat: phrase('flat'),
  other: phrase('something else'),
};

/** The home and the people in it. */
export function HomeFields() {
  const { household, series, appraisal, today, change } = useHousehold();
  const { home } = household;
  const country = countryOf(household);
  const [movingTo, setMovingTo] = useState<Country | null>(null);
  const hasPrices = [household.prices, household.purchase, household.tariffs].some(
    (one) => Object.keys(one).length > 0,
  );
  const move = (to: Country) => {
    setMovingTo(null);
    change(moveTo(to, series.some(isCutByClock)));
  };
  return (
    <section>
      <h3>{say('The home')}</h3>
      <div className="fields">
        <TextField
          label={say('Name of the home')}
          value={household.name}
          maxLength={120}
          refusal={household.name.trim() === '' ? say('A home needs a name.') : null}
          onChange={(name) => change((before) => ({ ...before, name }))}
        />
        <TextField
          label={say('Job number')}
          value={household.jobNumber ?? ''}
          maxLength={60}
          note={say('Your own number, if you keep one.')}
          onChange={(jobNumber) => change((before) => withText(before, 'jobNumber', jobNumber))}
        />
        <PickField
          label={say('Country')}
          value={country}
          choices={sayChoices(COUNTRY_CHOICES)}
          note={say('It sets climate, built-in prices, currency and taxes.')}
          onChange={(to) => (hasPrices ? setMovingTo(to) : move(to))}
        />
        {movingTo === null || movingTo === country ? null : (
          <div className="actions" role="alert">
            <span>
              {say('Prices have been typed here in {money}. They will be removed with the change of country.', {
                money: moneySign(),
              })}
            </span>
            <button type="button" onClick={() => move(movingTo)}>
              {say('Change, without those prices')}
            </button>
          </div>
        )}
        <TextField
          label={say('Postcode')}
          value={home.postcode ?? ''}
          maxLength={10}
          note={
            country === 'GB'
              ? say('Weather of: {region}. The first part is enough.', { region: appraisal.climate.regionName })
              : say('Weather of: {region}.', { region: appraisal.climate.regionName })
          }
          onChange={(postcode) => change(patchSection('home', { postcode: postcode === '' ? undefined : postcode }))}
        />
        <ChoiceField
          label={say('Region for the weather')}
          value={home.regionId === undefined ? undefined : String(home.regionId)}
          emptyLabel={country === 'GB' ? say('from the postcode') : say('not said')}
          choices={referenceOf(household).regions.map(({ id, name }) => ({ value: String(id), label: name }))}
          onChange={(id) => change(patchSection('home', { regionId: id === undefined ? undefined : Number(id) }))}
        />
        <ZoneField />
        <ChoiceField
          label={say('Kind of home')}
          value={home.kind}
          emptyLabel={say('not said')}
          choices={HOME_KINDS.map((value) => ({ value, label: say(KIND_WORDS[value]) }))}
          onChange={(kind) => change(patchSection('home', { kind }))}
        />
        <ChoiceField
          label={say('Built')}
          value={home.ageBand?.value}
          emptyLabel={say('not said')}
          choices={AGE_BANDS.map((value) => ({ value, label: sayTold(value) }))}
          note={home.ageBand ? <Reworded text={home.ageBand.origin} as={sentenceOf} /> : undefined}
          onChange={(band) =>
            change(
              patchSection('home', { ageBand: band === undefined ? undefined : typeGiven(band, home.ageBand, today) }),
            )
          }
        />
        <GivenField
          label={say('Floor area')}
          given={home.floorAreaM2}
          limits={{ min: 10, max: 5000, unit: 'm²', why: say('That is smaller than a garage. Please check.') }}
          today={today}
          fallback={fallbackFor('floorAreaM2', household, appraisal)}
          onChange={(floorAreaM2) => change(patchSection('home', { floorAreaM2 }))}
        />
        <GivenField
          label={say('People')}
          given={home.people}
          limits={{ min: 1, max: 30, whole: true, unit: '' }}
          today={today}
          fallback={fallbackFor('people', household, appraisal)}
          onChange={(people) => change(patchSection('home', { people }))}
        />
      </div>
    </section>
  );
}

/**
 * The household in another country: its clock goes along where no readings were cut by the old one; its region does not,
 * and neither does what was typed in the other money.
 */
const moveTo =
  (country: Country, isClockFixed: boolean) =>
  (household: Household): Household => {
    const { regionId: _, ...home } = household.home;
    const zone = isClockFixed ? household.zone : COUNTRIES[country].zone;
    const others = household.otherOffers?.map((offer) => ({ ...offer, purchase: {} }));
    const cleared = { prices: {}, purchase: {}, tariffs: [], ...(others ? { otherOffers: others } : {}) };
    return { ...household, country, zone, home, ...cleared };
  };

type WithText = { jobNumber?: string | undefined; notes?: string | undefined };
function withText<H extends WithText>(household: H, field: keyof WithText, text: string): H {
  const { [field]: _before, ...rest } = household;
  return (text === '' ? rest : { ...rest, [field]: text }) as H;
}
