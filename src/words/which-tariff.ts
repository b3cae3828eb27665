/** "Which one should I take?": the tariff that costs a home least, what it asks, what it risks, and where it does not matter. */
import type { TariffChoice, TariffCost } from '../model/shapes/tariff-choice.ts';
import { listed, pence, poundsRange, spokenPounds } from './numbers.ts';
import { nameOfPrice } from './prices.ts';
import { say } from './say.ts';
import { sayTold } from './say-told.ts';

type Costs = Pick<TariffChoice, 'costs'>;
type CostsInUse = Pick<TariffChoice, 'costs' | 'inUse'>;

/** Two tariffs nearer than this are not told apart, as a share of the cheaper. */
const SAME_SHARE = 0.02;
/** Less than this a year is not worth a sentence, pence. */
export const LEAST_PENCE = 500;
const TWENTY = 20;
/** Where another is the cheapest in so many of 20 futures, the futures cannot tell. Our own choice, no source. */
const UNSURE_OF_TWENTY = 5;
/** A longer name would push a page at the table over its end. */
const LONGEST_IN_TITLE = 36;
const MOST_NAMED = 3;

/** Of 20 futures those in which it is the cheapest: never all, since what moves one tariff alone is in none of them. */
const ofTwenty = ({ cheapestShare }: Pick<TariffCost, 'cheapestShare'>) => {
  const count = Math.min(TWENTY - 1, Math.round(cheapestShare * TWENTY));
  return { count, atLeast: String(count === TWENTY - 1) };
};

/** Under the name of a tariff: how often it is the cheapest; empty where it stands alone. */
export const cheapestInShort = (cost: TariffCost, { costs }: Costs): string =>
  costs.length < 2
    ? ''
    : cost.cheapestShare * TWENTY < 0.5
      ? say('hardly ever the cheapest')
      : say('cheapest in {atLeast, select, true {at least {count}} other {{count}}} of 20', ofTwenty(cost));

/** What the count leaves out, to stand wherever it stands; empty where nothing is counted. */
export const countLeavesOut = ({ costs }: Costs): string =>
  costs.length < 2
    ? ''
    : say('In the count of 20 futures all prices rise and fall together: one supplier alone may raise its own.');

/** The tariff's own name as it was typed, or that of the average that stands beside it. */
export const tariffName = ({ tariffId, basis }: Pick<TariffCost, 'tariffId' | 'basis'>): string =>
  tariffId === null ? say('Published average price') : sayTold(nameOfPrice(basis));

const isSame = (first: TariffCost, other: TariffCost) =>
  other.whole.value - first.whole.value <= SAME_SHARE * Math.abs(first.whole.value);

interface Standing {
  readonly first: TariffCost;
  /** The tariff that the estimate rests on, where it could be priced. */
  readonly used: TariffCost | undefined;
  /** Those that cost about as much as the first, itself included. */
  readonly same: readonly TariffCost[];
  /** One that costs more as things are, and is the cheapest in so many futures that nobody can tell. */
  readonly rival: TariffCost | undefined;
}

function standingOf({ costs, inUse }: CostsInUse): Standing | null {
  const [first] = costs;
  if (!first) return null;
  return {
    first,
    used: costs.find(({ tariffId }) => tariffId === inUse),
    same: costs.filter((cost) => isSame(first, cost)),
    rival: costs.find((cost) => !isSame(first, cost) && cost.cheapestShare * TWENTY >= UNSURE_OF_TWENTY),
  };
}

const quoted = (costs: readonly TariffCost[]) =>
  listed(costs.map((cost) => say('“{text}”', { text: tariffName(cost) })));

/** “Night rate” costs this home least, about £2,100 a year in all; or that it does not matter. */
function bestTariffSentences({ first, same, rival }: Standing, { costs }: Costs): string[] {
  const amount = spokenPounds(first.whole.value);
  const range = say('In 8 of 10 homes like yours it is {range}.', {
    range: poundsRange(first.whole.low, first.whole.high),
  });
  if (costs.length === 1)
    return [
      say('On “{name}” all electricity of the home comes to about {amount} a year.', {
        name: tariffName(first),
        amount,
      }),
      range,
    ];
  if (same.length > 1)
    return [
      say('{names} come out about the same, at about {amount} a year for all electricity.', {
        names: quoted(same.slice(0, MOST_NAMED)),
        amount,
      }),
      range,
      say('The cheapest is only a little below the others, so take the one that asks or risks less.'),
    ];
  const own = costs.filter(({ tariffId }) => tariffId !== null);
  const values = { name: tariffName(first), amount, count: own.length };
  const best = own[0];
  return [
    first.tariffId === null
      ? say(
          '{count, plural, one {This tariff does} other {These tariffs do}} not beat the published average price, which comes to about {amount} a year for all electricity.',
          values,
        )
      : own.length === 1
        ? say('On “{name}” this home pays less than at the published average: about {amount} a year in all.', values)
        : say(
            'Of {count} tariffs, “{name}” costs this home least: about {amount} a year for all its electricity.',
            values,
          ),
    range,
    ...(first.tariffId === null && own.length > 1 && best
      ? [
          say('Of your own, “{name}” costs least: about {amount}.', {
            name: tariffName(best),
            amount: spokenPounds(best.whole.value),
          }),
        ]
      : []),
    ...(rival
      ? [
          say('That is not sure: in {count} of 20 futures “{name}” is the cheapest.', {
            name: tariffName(rival),
            count: ofTwenty(rival).count,
          }),
        ]
      : []),
  ];
}

/** What leaving the tariff in use would save; that it is as good as the cheapest; empty where nobody knows it. */
function changeTariffSentence({ first, used, same }: Standing): string {
  if (!used) return '';
  if (used === first || same.includes(used))
    return used.tariffId === null || same.length + Number(used === first) < 2
      ? ''
      : say('The estimate rests on “{used}”, so there is no need to change.', { used: tariffName(used) });
  return say('That is about {amount} a year less than on “{used}”, which the estimate rests on now.', {
    amount: spokenPounds(used.whole.value - first.whole.value),
    used: tariffName(used),
  });
}

/** Why a tariff may come out cheapest by a slip of the pen; empty where nothing is odd. */
export function oddPriceSentence(cost: TariffCost): string {
  const name = tariffName(cost);
  if (cost.unitPence && cost.unitPence.mean <= 0)
    return say(
      'On “{name}” a kWh costs nothing or less on average, so what uses more does not look more expensive. Check its prices, and choose no machine by it.',
      { name },
    );
  return cost.own?.exportAbovePrice
    ? say('On “{name}” more is paid for a kWh sent out than any kWh costs. Check that price.', { name })
    : '';
}

/** What the tariff asks of the household as it is counted. */
function asksSentence({ unitPence, bestHours, own }: TariffCost): string {
  if (!unitPence) return '';
  const even = unitPence.least === unitPence.most;
  const things = [
    ...(bestHours?.counted && bestHours.saving.value >= LEAST_PENCE
      ? [say('a control for the heat pump’s hours')]
      : []),
    ...(even ? [] : chargedThings(own)),
  ];
  if (things.length > 0) return say('It needs {things}.', { things: listed(things) });
  return even
    ? say('It asks nothing of you: every hour costs the same.')
    : say('It asks nothing new of you: your use is counted at its present hours.');
}

function chargedThings(own: TariffCost['own']): string[] {
  const [car, battery] = [(own?.carKWh ?? 0) > 0, (own?.filledKWh ?? 0) > 0];
  if (car && battery) return [say('car and battery charging in the cheap hours')];
  if (car) return [say('car charging in the cheap hours')];
  return battery ? [say('battery charging in the cheap hours')] : [];
}

/** What could make it cost more than counted. */
function risksSentence({ unitPence, followsMarket }: TariffCost): string {
  if (followsMarket) return say('Its risk: it follows the market, and an expensive winter costs more.');
  return unitPence && unitPence.most > unitPence.least
    ? say('Its risk: a kWh costs up to {price}.', { price: pence(unitPence.most) })
    : '';
}

/** What the cheapest of the household's own tariffs asks and risks; nothing where several cost the same. */
export function asksAndRisks({ costs }: Costs): string[] {
  const first = costs[0];
  if (!first || first.tariffId === null || (costs[1] && isSame(first, costs[1]))) return [];
  return [asksSentence(first), risksSentence(first)].filter((sentence) => sentence !== '');
}

/** The answer in few sentences: the tariff with its money and range, what a change would save, and what is odd about it. */
export function tariffHeadline(choice: CostsInUse): string {
  const standing = standingOf(choice);
  if (!standing) return '';
  return [
    ...bestTariffSentences(standing, choice),
    changeTariffSentence(standing),
    choice.costs.length > 1 ? oddPriceSentence(standing.first) : '',
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** At the table: which tariff, and what it is worth, from the one in use to the cheapest. */
export function chooseSentence(choice: CostsInUse): string {
  const standing = standingOf(choice);
  if (!standing) return '';
  const { first, used, same, rival } = standing;
  if (choice.costs.length === 1) return bestTariffSentences(standing, choice)[0]!;
  if (used && used !== first && same.includes(used))
    return say('Your tariff hardly matters: the cheapest is only a little below the present one.');
  if ((!used || used === first) && first.tariffId === null)
    return say('None of your tariffs costs less than the published average price.');
  // The present one could not be priced.
  if (!used) return say('The tariff on top costs you least of these.');
  if (used === first)
    return same.length > 1
      ? say('Keep the present tariff: none costs less, though others cost about the same.')
      : say('Keep the present tariff: of these it is the cheapest.');
  const name = tariffName(first);
  const values = { name, amount: spokenPounds(used.whole.value - first.whole.value) };
  if (rival) return say('The tariff on top costs about {amount} a year less than now, but that is not sure.', values);
  return name.length > LONGEST_IN_TITLE
    ? say('The tariff on top costs you least: about {amount} a year less than now.', values)
    : say('“{name}” costs you least: about {amount} a year less than now.', values);
}

/** How often the cheapest stays the cheapest, and what could make another cheaper. */
export function cheapestSentences({ costs }: Costs): string[] {
  const [first, ...others] = costs;
  if (!first || others.length === 0) return [];
  const atNight = ({ whole, nightWaterPence = 0 }: TariffCost) => whole.value - Math.max(0, nightWaterPence);
  const better = others.toSorted((a, b) => atNight(a) - atNight(b))[0]!;
  return [
    say('“{name}” is the cheapest in {atLeast, select, true {at least {count}} other {{count}}} of 20 futures.', {
      name: tariffName(first),
      ...ofTwenty(first),
    }),
    countLeavesOut({ costs }),
    ...(atNight(better) < atNight(first)
      ? [
          say('With hot water made in its cheap hours, “{name}” would come to about {amount}, and be the cheapest.', {
            name: tariffName(better),
            amount: spokenPounds(atNight(better)),
          }),
        ]
      : []),
  ];
}
