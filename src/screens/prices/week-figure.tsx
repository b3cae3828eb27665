import { ChartFigure } from '../../charts/figure.tsx';
import { WeekPricesPicture } from '../../charts/week-prices/picture.tsx';
import { weekPricesName, weekPricesSentence } from '../../charts/week-prices/sentence.ts';
import { weekPricesSeries } from '../../charts/week-prices/series.ts';
import { weekPricesTable } from '../../charts/week-prices/table.ts';
import { monthOf } from '../../model/calendar/civil.ts';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type { Household } from '../../model/shapes/household.ts';
import type { Reference } from '../../model/shapes/reference.ts';
import type { PricedTariff } from '../../model/shapes/tariff.ts';
import { quarterOn, tariffFromQuarter } from '../../model/tariff/built-in.ts';
import { versionOn } from '../../model/tariff/slot-price.ts';
import { referenceOf } from '../../reference/index.ts';
import { tariffWorking } from '../../words/explained/prices.ts';
import { nameOfTariff } from '../../words/prices.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';

/** The price of electricity through a week of this month. */
export function WeekFigure() {
  const { household, today } = useHousehold();
  const tariff = electricityInUse(household, referenceOf(household), today);
  const version = versionOn(tariff, today);
  const series = weekPricesSeries(version, monthOf(today));
  const notes = [
    say('{tariff}. VAT is in the price.', { tariff: sayTold(nameOfTariff(tariff.name)) }),
    ...(version.bankHolidays ? [say('Bank holidays are not in this week.')] : []),
    ...(version.bands.some(({ blocks }) => blocks)
      ? [say('The first kWh of each day or month cost another price.')]
      : []),
    ...(version.series ? [say('The average of the same half-hours, weekday by weekday.')] : []),
  ];
  return (
    <ChartFigure
      name={weekPricesName()}
      sentence={weekPricesSentence(series)}
      picture={<WeekPricesPicture series={series} size="desk" />}
      table={weekPricesTable(series)}
      known={<HowWeKnow find={() => [tariffWorking(version, tariff, series.bands)]} about={weekPricesName()} plain />}
      note={notes.join(' ')}
    />
  );
}

/** The electricity tariff that the heat pump is reckoned on: the household's own, else the published quarter. */
function electricityInUse(household: Household, reference: Reference, today: CivilDate): PricedTariff {
  const own = household.tariffs.find((tariff) => tariff.id === household.prices.electricityTariffId);
  return own ?? tariffFromQuarter(quarterOn(reference.quarters, 'electricity', today));
}
