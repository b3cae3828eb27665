/** What a unit costs: electricity by the clock, fuels, and the yearly visit. */

import { priceOf } from '../../model/shapes/appraisal.ts';
import { carrierOf, type Fuel, isFuel } from '../../model/shapes/heating.ts';
import { electricityPriceWorking, fuelPriceWorking } from '../../words/explained/prices.ts';
import { pence } from '../../words/numbers.ts';
import { ageSentence, datesApart, gradeSentence, pricesSentence } from '../../words/prices.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { QuestionList } from '../shared/question-list.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { BatteryFields } from './battery-fields.tsx';
import { CarFields } from './car-fields.tsx';
import { ComfortFields } from './comfort-fields.tsx';
import { FuelFields } from './fuel-fields.tsx';
import { PurchaseFields } from './purchase-fields.tsx';
import { RoofFields } from './roof-fields.tsx';
import { TariffChoiceFigure } from './tariff-choice-figure.tsx';
import { TariffSection } from './tariff-section.tsx';
import { TariffShelf } from './tariff-shelf.tsx';
import { WeekFigure } from './week-figure.tsx';

/** The fuel that the household burns now, which the electricity price is said beside; gas where it burns none. */
function fuelBeside(system: string): Fuel {
  const carrier = carrierOf(system);
  return isFuel(carrier) ? carrier : 'gas';
}

export function PricesStage() {
  const { household, appraisal } = useHousehold();
  const { prices } = appraisal;
  const fuel = fuelBeside(household.present.system);
  const ages = (['electricity', fuel] as const).map((carrier) => {
    const price = priceOf(prices, carrier);
    return price ? ageSentence(price.basis, carrier) : '';
  });
  const warnings = ages.filter((sentence) => sentence !== '');
  const fuelWorking = fuelPriceWorking(appraisal, fuel);
  return (
    <>
      <StageHead
        sentence={pricesSentence(prices, fuel)}
        figures={[
          { text: pence(prices.electricityPencePerKWh), working: electricityPriceWorking(appraisal) },
          { text: pence(fuelWorking.result.value), working: fuelWorking },
        ]}
        remainder={[datesApart(prices, fuel), gradeSentence(prices.electricity, 'electricity')]
          .filter(Boolean)
          .join(' ')}
      />
      {warnings.map((sentence) => (
        <p key={sentence} className="refusal">
          {sentence}
        </p>
      ))}
      <WeekFigure />
      <QuestionList stage="prices" />
      <TariffSection fuel="electricity" use="electricityTariffId" title={say('Electricity')} />
      <TariffSection fuel="gas" use="gasTariffId" title={say('Gas')} />
      <TariffSection
        fuel="electricity"
        use="storageTariffId"
        title={say('Electricity by day and night, for storage heaters')}
      />
      <TariffShelf />
      <EquipmentSection />
      <TariffChoiceFigure />
      <ComfortFields />
      <FuelFields />
      <PurchaseFields />
    </>
  );
}

/** What the household has or may take beside its heating: panels, a battery, an electric car. */
function EquipmentSection() {
  return (
    <section>
      <h3>{say('Roof, battery and car')}</h3>
      <p className="explain quiet">
        {say(
          'What is typed here is counted in “Which tariff”, for each way of heating alike. Leave empty what there is not.',
        )}
      </p>
      <p className="explain quiet">
        {say('Panels, batteries and chargers are connected by a qualified electrician only.')}
      </p>
      <RoofFields />
      <BatteryFields />
      <CarFields />
    </section>
  );
}
