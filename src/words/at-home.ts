/** Everyday figures of one home in words. */
import type { WaterAtHome } from '../model/at-home.ts';
import { degrees, grouped, roundTo } from './numbers.ts';
import { say } from './say.ts';

/** "A tank of 180 litres at 50 °C gives up to 240 litres for showers. From cold it takes about 80 minutes to heat." */
export function tankSentence({ tankLitres, storeC, isOwn, mixedLitres, reheatMinutes }: WaterAtHome): string {
  const values = {
    litres: grouped(tankLitres),
    store: degrees(storeC),
    // Never more than there is.
    mixed: grouped(Math.floor(mixedLitres / 10) * 10),
  };
  const gives = isOwn
    ? say('A tank of {litres} litres at {store} gives up to {mixed} litres for showers.', values)
    : say('A usual tank of {litres} litres at {store} gives up to {mixed} litres for showers.', values);
  if (reheatMinutes === null) return gives;
  return `${gives} ${say('From cold it takes about {minutes} minutes to heat.', { minutes: grouped(Math.max(5, roundTo(reheatMinutes, 5))) })}`;
}
