/** Which tariff suits this home: what is said of several tariffs beside each other. */
import type { Household } from '../model/shapes/household.ts';
import type { Facing } from '../model/shapes/reference.ts';
import type { OtherWay, TariffChoice, TariffCost } from '../model/shapes/tariff-choice.ts';
import { exactPounds, grouped, pence, percent, poundsRange, rangeSaid, spokenKWh, spokenPounds } from './numbers.ts';
import { phrase, say } from './say.ts';
import { sayTold } from './say-told.ts';
import { systemInSentence, systemName } from './systems.ts';
import {
  asksAndRisks,
  cheapestInShort,
  cheapestSentences,
  countLeavesOut,
  LEAST_PENCE,
  oddPriceSentence,
  tariffName,
} from './which-tariff.ts';

const LEAST_LEFT_KWH = 1;
/** A home that uses less of its sun than this has more panels than one would believe. */
const LEAST_USED_SHARE = 0.1;

/** At the table, under the bars: what the cheapest asks and risks, or what is odd about it; the best hours; the present heating on its own best. */
export const chooseSay = (choice: TariffChoice): string => {
  const [first] = choice.costs;
  const odd = first && choice.costs.length > 1 ? oddPriceSentence(first) : '';
  return [
    ...(odd === '' ? asksAndRisks(choice) : [odd]),
    first?.bestHours ? hoursAtTable(first.bestHours) : '',
    ...bestOfEachSentences(choice).slice(0, 1),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
};

/** What the best hours earn beside the usual ones, on the cheapest tariff. */
function hoursAtTable({ saving, counted }: NonNullable<TariffCost['bestHours']>): string {
  if (saving.value < LEAST_PENCE) return say('Other hours of the heat pump would save next to nothing.');
  const amount = spokenPounds(saving.value);
  return counted
    ? say('The best hours are counted: the usual ones would cost about {amount} more.', { amount })
    : say('The usual hours of the heat pump are counted: the best ones would cost about {amount} less.', { amount });
}

/** What “all electricity” is, and how its other use is known. */
function restOfHomeSentence({ rest }: Pick<TariffChoice, 'rest'>): string {
  const values = { kWh: spokenKWh(rest.kWh) };
  if (rest.hours === 'own')
    return say('With the heat pump it counts {kWh} of other electricity, at the hours that your meter shows.', values);
  return rest.grade === 'assumed'
    ? say('With the heat pump it counts {kWh} of other electricity, as usual for such a home. That is assumed.', values)
    : say('With the heat pump it counts {kWh} of other electricity. Its hours are those of a usual home.', values);
}

/** A way of heating on the tariff that suits it best. */
interface OnItsBest {
  readonly id: OtherWay['id'];
  readonly kind: string;
  readonly tariff: TariffCost;
  readonly pence: number;
}

/** Every way of heating on the tariff that suits it best, the cheapest first: a good tariff is no merit of the heat pump. */
function onTheirBest({ costs }: Pick<TariffChoice, 'costs'>): readonly OnItsBest[] {
  const all = costs.flatMap((tariff): OnItsBest[] => [
    { id: 'heat-pump', kind: 'heat-pump', tariff, pence: tariff.whole.value },
    ...tariff.others.flatMap(({ id, kind, pence }) => (pence === null ? [] : [{ id, kind, tariff, pence }])),
  ]);
  const sorted = all.toSorted((a, b) => a.pence - b.pence);
  return sorted.filter(({ id }, place) => sorted.findIndex((one) => one.id === id) === place);
}

/** The heat pump, the present heating and the cheapest of the others, each on its own best tariff. */
function bestOfEachSentences(choice: Pick<TariffChoice, 'costs' | 'source'>): string[] {
  const ways = onTheirBest(choice);
  const pump = ways.find(({ id }) => id === 'heat-pump');
  const present = ways.find(({ id }) => id === 'present');
  const other = ways.find(({ id }) => id !== 'heat-pump' && id !== 'present');
  if (!pump || !(present ?? other)) return [];
  const values = { pump: spokenPounds(pump.pence) };
  return [
    present
      ? say(
          choice.costs[0]?.own
            ? 'With the same roof, battery and car, each on its best tariff: about {pump} with the heat pump, about {present} as now.'
            : 'With the tariff that suits each best, fuel counted in: about {pump} with the heat pump, about {present} as now.',
          { ...values, present: spokenPounds(present.pence) },
        )
      : say('With the tariff that suits each best, fuel counted in: about {pump} with the heat pump.', values),
    ...(other
      ? [
          say('Of the other ways to heat, the cheapest would be {way}, at about {amount}.', {
            way: systemInSentence(other.id, other.kind),
            amount: spokenPounds(other.pence),
          }),
        ]
      : []),
  ];
}

/** Every way of heating on its own best tariff, as a table. */
export const waysTable = (choice: Pick<TariffChoice, 'costs' | 'source'>) => ({
  caption: choice.costs[0]?.own
    ? say('Each way of heating on the tariff that suits it best, with the same roof, battery and car.')
    : say('Each way of heating on the tariff that suits it best.'),
  columns: [
    { name: say('Way of heating') },
    { name: say('on the tariff') },
    { name: say('all energy, a year'), number: true },
  ],
  rows: onTheirBest(choice).map(({ id, kind, tariff, pence }) => ({
    cells: [systemName(id, kind, choice.source), tariffName(tariff), exactPounds(pence)],
    ours: id === 'heat-pump',
  })),
});

/** What each tariff asks of the household, and what it risks. */
function askedSentences({ costs }: Pick<TariffChoice, 'costs'>): string[] {
  return costs.flatMap((cost) => {
    const values = { name: tariffName(cost), amount: spokenPounds(Math.abs(cost.nightWaterPence ?? 0)) };
    const night = cost.nightWaterPence ?? 0;
    return [
      night >= LEAST_PENCE
        ? say(
            'On “{name}”, hot water made in the cheap hours saves about {amount}. The tank must hold a day’s need.',
            values,
          )
        : night <= -LEAST_PENCE
          ? say('On “{name}”, hot water made in the cheap hours costs about {amount} more.', values)
          : '',
      cost.followsMarket
        ? say(
            '“{name}” follows the market. Its prices are known a day before, and an expensive winter costs more.',
            values,
          )
        : '',
    ].filter((sentence) => sentence !== '');
  });
}

const WHY: { readonly [why in TariffChoice['leftOut'][number]['why']]: string } = {
  faulty: phrase('“{name}” is left out: it does not give every hour one price. Its faults are named above.'),
  'part-year': phrase('“{name}” is left out: its prices do not reach every day of a year.'),
  'power-moved': phrase(
    '“{name}” is left out: it charges for the highest half-hour, which a battery or a car would move.',
  ),
  'power-unknown': phrase(
    '“{name}” is left out: it charges for the highest half-hour. Only half-hourly readings of the home show that.',
  ),
};
/** What is paid for electricity sent out: as tariffs pay that have a price of their own, and on the others. */
function exportSentences(costs: readonly TariffCost[], { exportPay }: NonNullable<TariffChoice['roof']>): string[] {
  const paying = costs.filter(({ own }) => own?.exportPencePerKWh !== undefined);
  return [
    ...paying.map((cost) =>
      say('On “{name}” a kWh sent out is counted at {price}, as that tariff pays.', {
        name: tariffName(cost),
        price: pence(cost.own!.exportPencePerKWh!),
      }),
    ),
    ...(paying.length === costs.length
      ? []
      : [
          exportPay
            ? say(
                '{others, select, yes {On the other tariffs a} other {A}} kWh sent out is counted at {price}: {source}.',
                {
                  others: paying.length > 0 ? 'yes' : 'no',
                  price: pence(exportPay.value),
                  source: sayTold(exportPay.origin),
                },
              )
            : say('Nobody has said what is paid for electricity sent out. It is counted as nothing: type it.'),
        ]),
  ];
}

/** What roof, battery and car do on the cheapest tariff, and what the figures rest on. */
function equipmentSentences({ costs, roof }: Pick<TariffChoice, 'costs' | 'roof'>): string[] {
  const first = costs[0];
  const own = first?.own;
  if (!first || !own) return [];
  const name = tariffName(first);
  const use = {
    name,
    used: percent((own.ownUseKWh - own.sunLossKWh) / (roof?.madeKWh ?? 1)),
    rule: percent((roof?.standardUseKWh ?? 0) / (roof?.madeKWh ?? 1)),
  };
  return [
    ...(roof
      ? [
          say(
            'The panels make about {kWh} in a usual year, {share} of it from November to February: little of it heats.',
            {
              kWh: spokenKWh(roof.madeKWh),
              share: percent(roof.coldShare),
            },
          ),
          own.filledKWh > 0
            ? say(
                'On “{name}” the home uses about {used} of it itself. The standard’s monthly rule says {rule}, but it knows no battery filled from the grid.',
                use,
              )
            : say('On “{name}” the home uses about {used} of it itself; the standard’s monthly rule says {rule}.', use),
          ...(own.ownUseKWh < LEAST_USED_SHARE * roof.madeKWh
            ? [
                say(
                  'That is less than a tenth of what the panels make. Check their kWp: a home has seldom more than 20.',
                ),
              ]
            : []),
          ...(own.batteryLossKWh > 0 ? [say('What the battery loses of it is left out.')] : []),
          ...exportSentences(costs, roof),
          say('Months of sun are the standard’s; which days of them are sunny is made up, always the same.'),
        ]
      : []),
    ...(own.batteryLossKWh > 0
      ? [
          say(
            'The battery loses about {lost} a year; {filled} go into it from the grid. It is set again each month and does not know the weather.',
            {
              lost: spokenKWh(own.batteryLossKWh),
              filled: spokenKWh(own.filledKWh),
            },
          ),
        ]
      : []),
    ...(own.carKWh > 0
      ? [say('The car takes {kWh} a year at home, in the cheapest hours of its stand.', { kWh: spokenKWh(own.carKWh) })]
      : []),
    ...((own.carOutsideKWh ?? 0) > LEAST_LEFT_KWH
      ? [
          say(
            'Of that, {kWh} do not fit into its hours at home and are counted in the hours after. Check the hours and the charger.',
            { kWh: spokenKWh(own.carOutsideKWh!) },
          ),
        ]
      : []),
    ...(own.carLeftKWh > LEAST_LEFT_KWH
      ? [
          say('It would need {kWh} more than its charger can give. That is not counted.', {
            kWh: spokenKWh(own.carLeftKWh),
          }),
        ]
      : []),
    say('In the range, what roof, battery and car move is that of a usual year; only its price varies.'),
    sameForAllSentence(),
  ];
}

const sameForAllSentence = (): string =>
  say(
    'Each way of heating is counted with the same roof, battery and car: what they save is no merit of the heat pump.',
  );

const leftOutTariffSentences = ({ leftOut }: Pick<TariffChoice, 'leftOut'>): string[] =>
  leftOut.map(({ name, why }) => say(WHY[why], { name }));

/** What the best hours of each tariff save, what that asks, and how it is known. */
function bestHoursSentences({ costs, roof }: Pick<TariffChoice, 'costs' | 'roof'>): string[] {
  const moved = costs.flatMap((cost) => (cost.bestHours ? [{ name: tariffName(cost), ...cost.bestHours }] : []));
  const worth = moved.filter(({ saving }) => saving.value >= LEAST_PENCE);
  if (moved.length === 0) return [say('On one price all day, moving the hours of the heat pump saves nothing.')];
  const [first] = moved;
  return [
    first?.counted
      ? say('The heat pump runs in the best hours of each tariff. That is counted above.')
      : say('The heat pump runs at its usual hours on each.'),
    ...worth.map(({ name, saving, leastRoomC, mostRoomC }) =>
      say(
        'On “{name}”, the best hours save about {amount} a year. In 8 of 10 homes like yours it is {range}. Rooms: {rooms} °C.',
        {
          name,
          amount: spokenPounds(saving.value),
          range: poundsRange(saving.low, saving.high),
          rooms: rangeSaid(grouped(leastRoomC, 1), grouped(mostRoomC, 1)),
        },
      ),
    ),
    ...(worth.length === 0
      ? []
      : [
          say(
            'That needs a control that can choose the hours. Once a week the hot water is still heated through, against germs.',
          ),
        ]),
    ...(worth.length > 0 && costs.some(({ own }) => own && own.batteryLossKWh > 0)
      ? [say('The hours are chosen first and the battery after them. Both together could save a little more.')]
      : []),
    ...(worth.length > 0 && roof ? [say('The hours go by the usual sun of each month: nobody knows it ahead.')] : []),
    ...(worth.length > 0 && first?.warmth.fitted
      ? [
          say(
            'Your own half-hours show how slowly the home cools: a time constant of {hours} hours. It may be {low} to {high}, and the low end is counted.',
            {
              hours: grouped(first.warmth.fitted.hours),
              low: grouped(first.warmth.fitted.low),
              high: grouped(first.warmth.fitted.high),
            },
          ),
        ]
      : []),
    ...(worth.length > 0 && first?.warmth.known === 'assumed'
      ? [
          say('How long the home stays warm is assumed: without heat it cools by {drop} K in three winter hours.', {
            drop: grouped(first.coolsIn3HoursK, 1),
          }),
        ]
      : []),
    ...(worth.length > 0 && first?.warmth.known !== 'typed'
      ? [
          say(
            'How fast the home really cools is not in that range. A home that cools half as fast saves up to twice as much, one twice as fast about half.',
          ),
        ]
      : []),
  ];
}

/** What the figures were worked out with: tariff, hours, roof, battery and car. */
export function choiceCountedWith(
  household: Household,
  { costs, inUse }: TariffChoice,
): readonly { what: string; says: string }[] {
  const { hotWater, comfort, roof, battery } = household;
  const used = costs.find(({ tariffId }) => tariffId === inUse);
  const car = costs[0]?.own?.carKWh ?? 0;
  const row = (what: string, ...says: readonly string[]) => ({ what, says: says.filter(Boolean).join(' ') });
  return [
    row(
      say('Tariff of this estimate'),
      used ? say('“{name}”.', { name: tariffName(used) }) : say('The published average price.'),
    ),
    row(
      say('Hours of the heat pump'),
      comfort?.hours === 'best'
        ? say('On this page the best hours of each tariff. The estimate itself runs at the usual hours.')
        : say('The usual hours on each tariff.'),
      hotWater.hours === 'night' ? say('Hot water is made in the cheap hours of the night.') : '',
    ),
    ...(roof
      ? [
          row(
            say('Solar panels'),
            ...roof.panels.map(({ kWp, facing, pitchDegrees }) =>
              say('{kWp} kWp facing {facing}, at a slope of {degrees}°.', {
                kWp: grouped(kWp, 1),
                facing: facingName(facing),
                degrees: grouped(pitchDegrees),
              }),
            ),
          ),
        ]
      : []),
    ...(battery
      ? [
          row(
            say('Battery'),
            say('{kWh} kWh usable.', { kWh: grouped(battery.usableKWh, 1) }),
            battery.fromNight ? say('It is also filled from the grid in cheap hours.') : '',
          ),
        ]
      : []),
    ...(household.car ? [row(say('Electric car'), say('{kWh} a year charged at home.', { kWh: spokenKWh(car) }))] : []),
  ];
}

const FACING_NAMES: { readonly [facing in Facing]: string } = {
  N: phrase('north'),
  NE: phrase('north-east'),
  E: phrase('east'),
  SE: phrase('south-east'),
  S: phrase('south'),
  SW: phrase('south-west'),
  W: phrase('west'),
  NW: phrase('north-west'),
};
/** "south-east". */
export const facingName = (facing: Facing): string => say(FACING_NAMES[facing]);

/** What is said below them. */
export const tariffNotes = (choice: TariffChoice): string[] =>
  [
    restOfHomeSentence(choice),
    ...cheapestSentences(choice),
    ...bestOfEachSentences(choice),
    ...equipmentSentences(choice),
    ...choice.costs.map(oddPriceSentence),
    ...askedSentences(choice),
    ...bestHoursSentences(choice),
    ...leftOutTariffSentences(choice),
  ].filter((sentence) => sentence !== '');

/** What is said under the picture, on screen and on the household's paper, the weightiest first; all of it folds out or stands in the working. Best hours move hot water too. */
export const tariffNotesInShort = (choice: TariffChoice): string[] =>
  [
    [...asksAndRisks(choice), countLeavesOut(choice), ...bestOfEachSentences(choice).slice(0, 1)],
    bestHoursSentences(choice).slice(0, 2),
    choice.roof ? equipmentSentences(choice).slice(0, 1) : [],
  ]
    .map((sentences) => sentences.filter((sentence) => sentence !== '').join(' '))
    .filter((sentences) => sentences !== '');

/** Heads of the table of tariffs, in the order of `tariffCells`. */
export const tariffHeads = ({ costs }: Pick<TariffChoice, 'costs'>): readonly string[] => [
  say('Tariff'),
  say('all electricity, a year'),
  say('8 in 10 homes like yours'),
  ...(costs.length > 1 ? [say('how often the cheapest')] : []),
  say('heat pump'),
  say('other use'),
  say('standing charge'),
  ...(costs.some(({ own }) => own) ? [say('roof, battery, car')] : []),
];

export const tariffCells = (cost: TariffCost, choice: Pick<TariffChoice, 'costs'>): readonly string[] => [
  tariffName(cost),
  exactPounds(cost.whole.value),
  poundsRange(cost.whole.low, cost.whole.high),
  ...(choice.costs.length > 1 ? [cheapestInShort(cost, choice)] : []),
  exactPounds(cost.heatingPence),
  exactPounds(cost.restPence),
  exactPounds(cost.standingPence),
  ...(cost.own ? [exactPounds(cost.own.unitsPence - cost.own.exportPence)] : []),
];
