/** Hot water of a full tank, and how long it takes to heat: the sums behind the sentence. */
import type { WaterAtHome } from '../../model/at-home.ts';
import { inWords } from '../say-told.ts';
import type { ShownInput, ShownWorking } from '../working.ts';

/** Litres at 40 °C [rounded down to ten], and minutes from 10 °C to the store temperature where the machine's output is known. */
export function tankWorking({ tankLitres, storeC, isOwn, mixedLitres, kW, reheatMinutes }: WaterAtHome): ShownWorking {
  const grade = isOwn ? 'measured' : 'assumed';
  const origin = inWords(isOwn ? 'the tank of this home' : 'a usual tank, our own assumption');
  const tank: ShownInput = { name: inWords('Tank'), value: tankLitres, unit: inWords('litres'), grade, origin };
  const store: ShownInput = { name: inWords('Store temperature'), value: storeC, unit: '°C', grade, origin };
  return {
    title: inWords('Showers from one tank'),
    formula: inWords('tank × (store temperature − 10 °C) / (40 °C − 10 °C), rounded down to ten litres'),
    inputs: [tank, store],
    result: { value: Math.floor(mixedLitres / 10) * 10, unit: inWords('litres') },
    ...(kW === null || reheatMinutes === null
      ? {}
      : {
          steps: [
            {
              title: inWords('Time to heat it from cold'),
              formula: inWords('tank × (store temperature − 10 °C) × 4.18 kJ / output, to five minutes'),
              inputs: [
                {
                  name: inWords('Output of the heat pump'),
                  value: kW,
                  unit: 'kW',
                  grade: 'assumed' as const,
                  origin: inWords('as typed, else as large as the heat loss'),
                },
              ],
              result: { value: Math.max(5, Math.round(reheatMinutes / 5) * 5), unit: inWords('minutes') },
            },
          ],
        }),
  };
}
