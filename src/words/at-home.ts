/** Everyday figures of one home in words. */
import type { WaterAtHome } from '../model/at-home.ts';
import { degrees, grouped, roundTo } from './numbers.ts';
import { say } from './say.ts';

/** Longer than this is said in hours, to the half hour and never less. */
const LONGEST_IN_MINUTES = 100;

/** "A tank of 180 litres at 50 °C gives up to 240 litres for showers. At 6.1 kW it takes about 80 minutes to heat from cold." */
export function tankSentence({ tankLitres, storeC, isOwn, mixedLitres, kW, reheatMinutes }: WaterAtHome): string {
  const values = {
    litres: grouped(tankLitres),
    store: degrees(storeC),
    // Never more than there is.
    mixed: grouped(Math.floor(mixedLitres / 10) * 10),
  };
  const gives = isOwn
    ? say('A tank of {litres} litres at {store} gives up to {mixed} litres for showers.', values)
    : say('A usual tank of {litres} litres at {store} gives up to {mixed} litres for showers.', values);
  if (reheatMinutes === null || kW === null) return gives;
  const minutes = Math.max(5, roundTo(reheatMinutes, 5));
  const takes =
    minutes <= LONGEST_IN_MINUTES
      ? say('At {kW} kW it takes about {minutes} minutes to heat from cold.', {
          kW: grouped(kW, 1),
          minutes: grouped(minutes),
        })
      : say('At {kW} kW it takes about {hours} hours to heat from cold.', {
          kW: grouped(kW, 1),
          hours: grouped(Math.ceil(minutes / 30) / 2, minutes % 60 > 0 && minutes % 60 <= 30 ? 1 : 0),
        });
  return `${gives} ${takes}`;
}
