/** The sums behind several tariffs beside each other. */
import type { TariffChoice, TariffCost } from '../../model/shapes/tariff-choice.ts';
import type { Grade } from '../../model/shapes/working.ts';
import { phrase, say } from '../say.ts';
import { inWords, sayTold } from '../say-told.ts';
import { systemName } from '../systems.ts';
import { tariffName } from '../which-tariff.ts';
import type { ShownInput, ShownWorking } from '../working.ts';
import { rangedWorking } from './ranged.ts';

type BestHours = NonNullable<TariffCost['bestHours']>;

const WARMTH_KNOWN: { readonly [known in BestHours['warmth']['known']]: string } = {
  typed: phrase('typed'),
  fitted: phrase('the half-hours of your own heating: what a night without heat takes to make good'),
  built: phrase('how heavily the home is built, by its floor area and heat loss'),
  assumed: phrase('assumed: the low end of what 10,000 thermostats in North America showed'),
};

/** A price of the tariff itself. */
const priceOf =
  (grade: Grade) =>
  (name: string, value: number): ShownInput => ({
    name: inWords(name),
    value,
    unit: 'p/kWh',
    grade,
    origin: inWords('this tariff'),
  });

function inputsOfHours(
  { saving, leastRoomC, mostRoomC, coolsIn3HoursK, day, warmth }: BestHours,
  grade: Grade,
): ShownInput[] {
  const moved = inWords('heat moved half-hour by half-hour within the room temperatures accepted');
  const cooling = inWords('the home as one store of heat, at the mean outdoor temperature of the coldest month');
  const warm = (name: string, value: number): ShownInput => ({
    name: inWords(name),
    value,
    unit: 'h',
    grade,
    origin: inWords(WARMTH_KNOWN[warmth.known]),
  });
  const price = priceOf(grade);
  return [
    { name: inWords('Saved by the best hours'), value: saving.value, unit: 'p', grade, origin: moved },
    { name: inWords('The least of 8 in 10 homes'), value: saving.low, unit: 'p', grade, origin: moved },
    { name: inWords('The most of 8 in 10 homes'), value: saving.high, unit: 'p', grade, origin: moved },
    { name: inWords('Coldest room in the best hours'), value: leastRoomC, unit: '°C', grade, origin: moved },
    { name: inWords('Warmest room in the best hours'), value: mostRoomC, unit: '°C', grade, origin: moved },
    warm(phrase('Time constant of the home'), warmth.timeConstantHours),
    ...(warmth.fitted
      ? [
          warm(phrase('The same, middle of what the half-hours show'), warmth.fitted.hours),
          warm(phrase('The same, shortest of 8 in 10'), warmth.fitted.low),
          warm(phrase('The same, longest of 8 in 10'), warmth.fitted.high),
        ]
      : []),
    { name: inWords('Cooling in three hours without heat'), value: coolsIn3HoursK, unit: 'K', grade, origin: cooling },
    price(phrase('Cheapest half-hour of the cold day'), Math.min(...day.pencePerKWh)),
    price(phrase('Most expensive half-hour of the cold day'), Math.max(...day.pencePerKWh)),
    { name: inWords('Most heat at once on it'), value: Math.max(...day.bestKW), unit: 'kW', grade, origin: moved },
  ];
}

/** What a unit costs at least and at most; nothing where it is the same at all hours. */
function inputsOfPrices({ unitPence }: TariffCost, grade: Grade): ShownInput[] {
  if (!unitPence || unitPence.least === unitPence.most) return [];
  const price = priceOf(grade);
  return [
    price(phrase('Cheapest unit of the year'), unitPence.least),
    price(phrase('Most expensive unit of the year'), unitPence.most),
  ];
}

/** What roof, battery and car do on a tariff: every figure that is said of them. */
function inputsOfEquipment({ own }: TariffCost, { roof }: Pick<TariffChoice, 'roof'>, grade: Grade): ShownInput[] {
  if (!own) return [];
  const balanced = inWords('what is made, needed and stored, half-hour by half-hour');
  const figure =
    (unit: string) =>
    (name: string, value: number, origin: ShownInput['origin'] = balanced): ShownInput => ({
      name: inWords(name),
      value,
      unit,
      grade,
      origin,
    });
  const [kWh, share] = [figure('kWh'), figure('share')];
  const paid = { name: inWords('Paid for a kWh sent out'), unit: 'p/kWh' };
  return [
    ...(roof
      ? [
          kWh(phrase('Made by the panels'), roof.madeKWh, { said: roof.source }),
          share(phrase('Of it from November to February'), roof.coldShare, { said: roof.source }),
          share(phrase('Of it used at home'), (own.ownUseKWh - own.sunLossKWh) / roof.madeKWh),
          share(
            phrase('The same by the monthly rule'),
            roof.standardUseKWh / roof.madeKWh,
            inWords('SAP 10.2 Appendix M1: the share by made over needed, and by the battery'),
          ),
          ...(own.exportPencePerKWh !== undefined
            ? [{ ...paid, value: own.exportPencePerKWh, grade, origin: inWords('this tariff') }]
            : roof.exportPay
              ? [{ ...paid, ...roof.exportPay }]
              : []),
        ]
      : []),
    ...(own.batteryLossKWh > 0
      ? [
          kWh(phrase('Lost in the battery'), own.batteryLossKWh),
          kWh(phrase('Filled into it from the grid'), own.filledKWh),
        ]
      : []),
    ...(own.carKWh > 0 ? [kWh(phrase('Charged into the car'), own.carKWh)] : []),
  ];
}

/** Each tariff's year on the whole home with its range [p], what else was worked out on it, and the home's other electricity [kWh]. */
export function tariffWorkings({ costs, rest, roof, source }: TariffChoice): ShownWorking[] {
  return costs.map((cost): ShownWorking => {
    const working = rangedWorking(cost.whole);
    const grade = cost.whole.grade;
    const also: ShownInput[] = [
      {
        name: inWords('Other electricity, kWh a year'),
        value: rest.kWh,
        unit: 'kWh',
        grade: rest.grade,
        origin: rest.hoursSource ? { said: rest.hoursSource } : rest.origin,
      },
      ...(costs.length < 2
        ? []
        : [
            {
              name: inWords('Share of futures in which it is the cheapest'),
              value: cost.cheapestShare,
              unit: 'share',
              grade,
              origin: inWords('the possible years in which no other of these tariffs costs less'),
            },
          ]),
      ...cost.others.flatMap(({ id, kind, pence }) =>
        pence === null
          ? []
          : [
              {
                name: { said: say('The whole home with: {way}', { way: systemName(id, kind, source) }) },
                value: pence,
                unit: 'p',
                grade,
                origin: inWords('the same sum with this way of heating'),
              },
            ],
      ),
      ...(cost.nightWaterPence === undefined
        ? []
        : [
            {
              name: inWords('Saved by hot water in the cheap hours'),
              value: cost.nightWaterPence,
              unit: 'p',
              grade,
              origin: inWords('the same sum with hot water made in the cheap hours'),
            },
          ]),
      ...inputsOfPrices(cost, grade),
      ...inputsOfEquipment(cost, { roof }, grade),
      ...(cost.bestHours ? inputsOfHours(cost.bestHours, grade) : []),
    ];
    return {
      ...working,
      title: { said: `${sayTold(working.title)}: ${tariffName(cost)}` },
      inputs: [...working.inputs, ...also],
    };
  });
}
