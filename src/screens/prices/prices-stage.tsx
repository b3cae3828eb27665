/** What a unit costs: electricity by the clock, gas, oil, LPG, and the yearly visit. */

import { electricityPriceWorking, fuelPriceWorking } from '../../model/explained/prices.ts';
import { pence } from '../../words/numbers.ts';
import { ageSentence, britishSentence, gradeSentence, pricesSentence } from '../../words/prices.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { QuestionList } from '../shared/question-list.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { FuelFields } from './fuel-fields.tsx';
import { PurchaseFields } from './purchase-fields.tsx';
import { TariffSection } from './tariff-section.tsx';
import { TariffShelf } from './tariff-shelf.tsx';
import { WeekFigure } from './week-figure.tsx';

type Fuel = 'gas' | 'oil' | 'lpg';
const FUELS: readonly Fuel[] = ['gas', 'oil', 'lpg'];

/** The fuel that the household burns now, which the electricity price is said beside. */
function fuelBeside(system: string): Fuel | null {
  if (system.startsWith('gas')) return 'gas';
  return FUELS.find((fuel) => fuel === system) ?? 'gas';
}

export function PricesStage() {
  const { household, appraisal } = useHousehold();
  const { prices } = appraisal;
  const fuel = fuelBeside(household.present.system);
  const inUse = (['electricity', ...FUELS] as const).filter((carrier) => carrier === 'electricity' || carrier === fuel);
  const warnings = [britishSentence(prices), ...inUse.map((carrier) => ageSentence(prices[carrier], carrier))].filter(
    (sentence) => sentence !== '',
  );
  return (
    <>
      <StageHead
        sentence={pricesSentence(prices, fuel)}
        figures={[
          { text: pence(prices.electricityPencePerKWh), working: electricityPriceWorking(appraisal) },
          ...(fuel === null
            ? []
            : [{ text: pence(prices[`${fuel}PencePerKWh`]), working: fuelPriceWorking(appraisal, fuel) }]),
        ]}
        remainder={gradeSentence(prices.electricity, 'electricity')}
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
      <FuelFields />
      <PurchaseFields />
    </>
  );
}
