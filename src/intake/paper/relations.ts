/**
 * Numbers that prove each other: amount of use × price = charge, later reading − earlier = units, volume to energy.
 * A relation is scored in bits: how closely its result is met, less the combinations that were tried in that place;
 * scrambled bills show how few come about by chance. One role a number, one product an amount.
 */
import type { Figure, RowFacts } from './figures.ts';
import {
  CALORIFIC,
  CORRECTION,
  ELECTRICITY,
  ENERGY,
  GAS,
  HUNDRED_CUBIC_FEET,
  READING,
  STANDING,
} from './vocabulary.ts';

export interface Proof {
  /** Its members, the result last. */
  readonly figures: readonly Figure[];
  /** As printed: "416 kWh × 30.40 p = £126.46". */
  readonly sum: string;
  readonly bits: number;
}

export interface Product extends Proof {
  readonly quantity: Figure;
  readonly price: Figure;
  readonly amount: Figure;
  /** Hundredths of money for one unit, day or month. */
  readonly pence: number;
  /** Its price is for a larger unit, its quantity in kWh. */
  readonly isByKWh: boolean;
  /** Holds only within the last printed place of the quantity or the price. */
  readonly loose: boolean;
}

export interface Difference extends Proof {
  readonly earlier: Figure;
  readonly later: Figure;
  readonly used: Figure;
}

/** Volume × factor × calorific value (÷ 3.6 where that is in MJ) = energy. */
export interface GasSum extends Proof {
  readonly volume: Figure;
  readonly factor?: Figure;
  readonly calorific: Figure;
  readonly energy: Figure;
  /** Hundreds of cubic feet rather than cubic metres. */
  readonly imperial: boolean;
}

/** At 6 to 7 bits at most 2 of 100 scrambled bills proved anything, and nothing was lost on real ones. */
export const LEAST_BITS = 7;
const IN_ROW = 4;
const FAR = 1;
/** Lines above and below in which the parts of one sum stand, where they stand under each other. */
const BLOCK = 5;
const EXACT = 0.5 + 1e-6;

export const penceOf = ({ value }: Figure): number => Math.round(value * 100);
/** A reckoned sum of money [hundredths] written as a printed one is: its signs of decimals, of thousands and of money. */
export function printedAs(pence: number, { text }: Figure): string {
  const isComma = /,\d\d(?!\d)/.test(text);
  const [whole = '', part = ''] = (Math.abs(pence) / 100).toFixed(2).split('.');
  const isApart = !/\d{4}/.test(text);
  const grouped = isApart ? whole.replace(/\B(?=(?:\d{3})+$)/g, isComma ? '.' : ',') : whole;
  const before = /^[-−–]?\s?([£€$])/.exec(text)?.[1] ?? '';
  const behind = /\s?(?:[£€$]|EUR)$/.exec(text)?.[0] ?? '';
  return `${pence < 0 ? '−' : ''}${before}${grouped}${isComma ? ',' : '.'}${part}${behind}`;
}
/** As printed, without a sign before it. */
export const unsigned = ({ text }: Figure): string => text.replace(/^[-−–]\s?/, '');
export const isMoney = ({ kind, decimals }: Figure): boolean =>
  kind === 'money' || (kind === 'plain' && decimals === 2);
const log2 = (value: number): number => Math.log2(Math.max(1, value));

const isQuantity = ({ kind }: Figure) => kind === 'energy' || kind === 'days' || kind === 'months' || kind === 'volume';

/** What one unit may cost in hundredths: as said, else both ways. */
function penceWays({ value, hundredths, kind }: Figure): number[] {
  if (hundredths) return [value * hundredths];
  if (kind === 'money') return [value * 100];
  return [value, value * 100];
}

export function findProducts(rows: readonly RowFacts[]): Product[] {
  const found: Product[] = [];
  rows.forEach(({ figures }, at) => {
    let block: readonly Figure[] | undefined;
    for (const amount of figures) {
      if (!isMoney(amount) || amount.value === 0) continue;
      const others = figures.filter((one) => one !== amount && one.kind !== 'percent');
      const here = [...productsOf(amount, others, others, IN_ROW), ...byPower(amount, others)];
      if (here.length > 0) found.push(...here);
      else {
        block ??= near(rows, at);
        found.push(
          ...productsOf(
            amount,
            block.filter(isQuantity),
            block.filter(({ kind, per }) => kind === 'price' || per !== undefined),
            0,
          ),
        );
      }
    }
  });
  return settle(found, ({ amount, price }) => [[amount], [price]]);
}

/**
 * Two of a charge's three numbers in one row and the third elsewhere: its use among those that are proved, and the days;
 * its price in a list of prices, of which one may serve several charges.
 */
export function findFarProducts(
  rows: readonly RowFacts[],
  found: readonly Product[],
  uses: readonly Figure[],
): Product[] {
  const taken = new Set(found.flatMap(({ price, amount }) => [price, amount]));
  const freeIn = ({ figures }: RowFacts) => figures.filter((one) => !taken.has(one));
  const isPrice = ({ kind }: Figure) => kind === 'price';
  const listed = rows.flatMap(({ figures }) => (figures.some(isMoney) ? [] : figures.filter(isPrice)));
  const isFitting = (quantity: Figure, price: Figure) => {
    const byDay = price.per === 'day' || price.per === 'year';
    return quantity.kind === 'days' ? byDay || !price.per : !byDay;
  };
  /** All three apart, such as charges on one page, readings and prices on others; words tell the kind of charge. */
  const apart = ({ figures, words }: RowFacts, amount: Figure): Product[] => {
    const isOfDays = STANDING.test(words);
    // "Electricity £278.18" is for energy too.
    const isOfEnergy = ENERGY.test(words) || ELECTRICITY.test(words) || GAS.test(words);
    if (figures.length > 1 || !(isOfDays || isOfEnergy)) return [];
    const ofKind = listed.filter(({ per }) => per === (isOfDays ? 'day' : 'unit'));
    const counts = uses.filter(({ kind }) => (kind === 'days') === isOfDays);
    return productsOf(amount, counts, ofKind, -FAR);
  };
  const more = rows.flatMap((row) => {
    const free = freeIn(row);
    const prices = free.filter(isPrice);
    const quantities = free.filter(({ kind }) => kind === 'energy' || kind === 'days');
    return free
      .filter((one) => isMoney(one) && !isPrice(one) && one.value > 0)
      .flatMap((amount) => [
        ...apart(row, amount),
        ...prices.flatMap((price) =>
          productsOf(
            amount,
            uses.filter((one) => isFitting(one, price)),
            [price],
            FAR,
          ),
        ),
        ...(prices.length > 0
          ? []
          : quantities.flatMap((quantity) =>
              productsOf(
                amount,
                [quantity],
                listed.filter((one) => isFitting(quantity, one)),
                FAR,
              ),
            )),
      ]);
  });
  return settle(more, ({ amount, price }) => [[amount], ...(listed.includes(price) ? [] : [[price] as const])]);
}

function near(
  rows: readonly RowFacts[],
  at: number,
  figuresOf: readonly (readonly Figure[])[] = rows.map(({ figures }) => figures),
): Figure[] {
  const isOfPage = (_: unknown, i: number) => rows[Math.max(0, at - BLOCK) + i]!.row.page === rows[at]!.row.page;
  return figuresOf
    .slice(Math.max(0, at - BLOCK), at + BLOCK + 1)
    .filter(isOfPage)
    .flat();
}

function productsOf(
  amount: Figure,
  quantities: readonly Figure[],
  prices: readonly Figure[],
  place: number,
): Product[] {
  const target = penceOf(amount);
  const found: Product[] = [];
  let tried = 0;
  for (const quantity of quantities) {
    // One month at a price for a month is said twice, and is a charge all the same.
    const isMonth = quantity.kind === 'months' && quantity.value === 1 && place === IN_ROW;
    if (
      (quantity.value <= 1 && !isMonth) ||
      quantity.kind === 'price' ||
      quantity.kind === 'heat' ||
      quantity.kind === 'other' ||
      quantity.kind === 'reading'
    )
      continue;
    if (quantity.kind === 'money' && quantity.decimals > 0) continue;
    for (const price of prices) {
      if (price === quantity || price === amount || isNoPrice(price)) continue;
      if (price.kind === 'heat' || (isMonth && price.per !== 'month' && !isForOne(quantity, price))) continue;
      for (const pence of penceWays(price)) {
        tried++;
        const product =
          makeProduct(quantity, price, amount, pence, target) ?? byKWh(quantity, price, amount, pence, target);
        // Of two equal numbers the nearer one is meant.
        const away = (Math.abs(amount.box.x - quantity.box.x) + Math.abs(amount.box.x - price.box.x)) / 100_000;
        if (product) found.push({ ...product, bits: product.bits + place - away });
      }
    }
  }
  return found.map((one) => ({ ...one, bits: one.bits - log2(tried) }));
}

/** "1 year, £48.00, £48.00" says one sum twice. */
const isNoPrice = (one: Figure): boolean =>
  one.value === 0 || isQuantity(one) || one.kind === 'reading' || (one.kind === 'plain' && one.text === '1');

/** "Standing charge, 1 month, £4.17, £4.17". */
const isForOne = ({ before }: Figure, { kind }: Figure): boolean => kind === 'money' && STANDING.test(before);

/** Power that is kept ready × days × price for a kW a day: a standing charge. */
function byPower(amount: Figure, others: readonly Figure[]): Product[] {
  const [power, ...more] = others.filter(({ kind }) => kind === 'other');
  if (!power) return [];
  const [days, ...otherDays] = others.filter(({ kind }) => kind === 'days');
  if (!days || more.length + otherDays.length > 0 || !/kW|kVA/i.test(power.text)) return [];
  return others.flatMap((price): Product[] => {
    if (price === power || price === days || (price.decimals < 3 && price.hundredths !== 1)) return [];
    const pence = price.value * (price.hundredths ?? 100) * power.value;
    if (Math.abs(days.value * pence - penceOf(amount)) > EXACT) return [];
    const figures = [days, power, price, amount];
    const sum = `${power.text} × ${days.text} × ${price.text} = ${amount.text}`;
    const bits = log2(penceOf(amount)) + IN_ROW + 1;
    return [{ quantity: days, price, amount, pence, isByKWh: false, figures, sum, loose: false, bits }];
  });
}

/** kWh at a price for one MWh. */
function byKWh(quantity: Figure, price: Figure, amount: Figure, pence: number, target: number): Product | undefined {
  if (price.kWh === undefined || quantity.kind !== 'energy' || quantity.kWh !== undefined) return undefined;
  const product = makeProduct(quantity, price, amount, pence / price.kWh, target);
  const sum = `${quantity.text} × ${price.text} ÷ ${price.kWh} = ${amount.text}`;
  return product && { ...product, sum, isByKWh: true, bits: product.bits - 1 };
}

function makeProduct(
  quantity: Figure,
  price: Figure,
  amount: Figure,
  pence: number,
  target: number,
): Product | undefined {
  if (price.per === 'year' && quantity.kind !== 'days') return undefined;
  for (const year of price.per === 'year' ? YEARS : ONE) {
    const off = Math.abs((quantity.value * pence) / year - target);
    // "£0.2456" is a price, for sums of money have two places.
    const isPrice = price.kind === 'price' || (price.kind === 'money' && price.decimals > 2);
    const isTyped = quantity.kind === 'energy' && isPrice && amount.kind !== 'plain';
    if (off > EXACT && !isTyped) continue;
    const unit = price.hundredths ?? (pence > price.value ? 100 : 1);
    const ofQuantity = quantity.decimals === 0 ? pence * 0.5 : 0;
    const ofPrice = price.decimals <= 3 ? 0.5 * 10 ** -price.decimals * unit * quantity.value : 0;
    const slack = EXACT + Math.max(ofQuantity, ofPrice);
    if (off > EXACT && off > slack) continue;
    const words = (isQuantity(quantity) ? 1 : 0) + (price.kind === 'price' ? 1 : 0) + (amount.kind === 'money' ? 1 : 0);
    const sum = `${quantity.text} × ${price.text}${year === 1 ? '' : ` ÷ ${year}`} = ${amount.text}`;
    const parts = { quantity, price, amount, isByKWh: false, figures: [quantity, price, amount], sum };
    if (off <= EXACT) return { ...parts, pence: pence / year, loose: false, bits: log2(target) + words };
    // Where only the printed places of the price explain it, and they are a small part of it, the charge tells the price better.
    const isRounded = off > EXACT + ofQuantity && ofPrice <= MOST_ROUNDED * target;
    return {
      ...parts,
      pence: isRounded ? target / quantity.value : pence,
      loose: true,
      bits: log2(target / (2 * slack)) + words - 2,
    };
  }
  return undefined;
}
const [ONE, YEARS] = [[1], [365, 366]];
/** Share of a charge that the rounding of its price may explain without a question; a misread digit mostly makes more. A judgement. */
const MOST_ROUNDED = 0.005;

export function findDifferences(rows: readonly RowFacts[]): Difference[] {
  const found: Difference[] = [];
  const said = rows.map(({ figures }) =>
    figures.filter((one) => isReading(one) && (saysReading(one, rows) || isDated(one, rows))),
  );
  rows.forEach(({ figures, words }, at) => {
    let about: readonly Figure[] | undefined;
    for (const used of figures) {
      if (used.value <= 0 || !['energy', 'volume', 'plain'].includes(used.kind) || used.decimals > 3) continue;
      const inRow = figures.filter((one) => one !== used && isReading(one));
      if (inRow.length > 1) {
        const hasWords = READING.test(`${words} ${inRow.map(({ heading }) => heading).join(' ')}`);
        // Net, tax and gross beside each other are no readings.
        if (used.kind === 'plain' && used.decimals === 2 && !hasWords) continue;
        found.push(...differencesOf(used, inRow, IN_ROW + (hasWords ? 2 : 0)));
      }
      if (used.kind === 'plain') continue;
      about ??= near(rows, at, said);
      const others = about.filter((one) => one !== used);
      found.push(...differencesOf(used, others, 2));
    }
  });
  // A reading between two others ends one stretch and begins the next.
  return settle(found, ({ earlier, later, used }) => [[earlier, 'earlier'], [later, 'later'], [used]]);
}

const isReading = ({ kind, decimals }: Figure) =>
  ['reading', 'plain', 'energy', 'volume'].includes(kind) && decimals <= 3;
const saysReading = (one: Figure, rows: readonly RowFacts[]) =>
  one.kind === 'reading' || READING.test(`${one.before} ${one.heading} ${rows[one.row]!.words}`);

/** "4 June 2025   19585 A": a count beside one date and no other number. */
const isDated = ({ kind, decimals, row }: Figure, rows: readonly RowFacts[]) =>
  kind === 'plain' && decimals === 0 && rows[row]!.figures.length === 1 && rows[row]!.dates.length === 1;

function differencesOf(used: Figure, readings: readonly Figure[], place: number): Difference[] {
  const found: Difference[] = [];
  const tried = readings.length * (readings.length - 1);
  for (const later of readings) {
    for (const earlier of readings) {
      if (later === earlier || later.value <= earlier.value) continue;
      const step = 10 ** -Math.max(later.decimals, earlier.decimals);
      const off = Math.abs(later.value - earlier.value - used.value);
      if (off > (used.decimals < Math.max(later.decimals, earlier.decimals) ? 0.5 * 10 ** -used.decimals : 0) + 1e-9)
        continue;
      // Of two that add up to the third, what was used is the one that says so, or the lesser.
      if (earlier.kind !== 'reading' && earlier.value < used.value && used.kind === 'plain') continue;
      if (earlier.value < used.value && (earlier.kind === 'energy' || earlier.kind === 'volume')) continue;
      found.push({
        earlier,
        later,
        used,
        figures: [later, earlier, used],
        sum: `${later.text} − ${earlier.text} = ${used.text}`,
        bits: log2(used.value / Math.max(step, 10 ** -used.decimals)) - log2(tried) + place,
      });
    }
  }
  return found;
}

const METRES_PER_HUNDRED_FEET = 2.83;

/** Gas Regulations: units × correction × calorific value ÷ 3.6; in German bills m³ × Zustandszahl × Brennwert in kWh. */
export function findGasSums(rows: readonly RowFacts[], differences: readonly Difference[]): GasSum[] {
  const all = rows.flatMap(({ figures }) => figures);
  const about = (one: Figure) => `${one.before} ${one.heading} ${rows[one.row]!.words}`;
  // Between a volume and a calorific value it needs no word.
  const isBetween = ({ row }: Figure) =>
    ['volume', 'heat'].every((kind) => rows[row]!.figures.some((one) => one.kind === kind));
  // "× 1.02264 × 39.3 ÷ 3.6 = 4,298 kWh" says by itself what its numbers are.
  const isInFormula = ({ row }: Figure) =>
    /[÷/:] ?3[.,]6(?!\d)/.test(rows[row]!.text) && rows[row]!.figures.some(({ kind }) => kind === 'energy');
  const used = new Set(differences.map((one) => one.used));
  const volumes = all.filter((one) => one.kind === 'volume' || used.has(one));
  const factors = all.filter(
    (one) =>
      one.value > 0.85 &&
      one.value < 1.1 &&
      one.decimals >= 3 &&
      (CORRECTION.test(about(one)) || isBetween(one) || isInFormula(one)),
  );
  const calorifics = all.filter(
    (one) =>
      one.decimals >= 1 &&
      (one.value >= 8 && one.value <= 13
        ? // "Conversion factor 11.3712", from m³ to kWh in one.
          one.kind === 'heat' || CALORIFIC.test(about(one)) || CORRECTION.test(about(one))
        : one.value >= 34 &&
          one.value <= 45 &&
          (one.kind === 'heat' || CALORIFIC.test(about(one)) || isInFormula(one))),
  );
  const energies = all.filter(({ kind }) => kind === 'energy');
  const tried = volumes.length * Math.max(1, factors.length) * calorifics.length * energies.length;
  if (tried === 0) return [];
  const namesFeet = rows.some(({ text }) => HUNDRED_CUBIC_FEET.test(text));
  const found: GasSum[] = [];
  for (const volume of volumes) {
    for (const factor of [...factors, undefined]) {
      for (const calorific of calorifics) {
        const isFeet = HUNDRED_CUBIC_FEET.test(about(volume)) || /ft³|hcf/i.test(volume.text);
        // A meter named imperial elsewhere on the page: the sum decides.
        const isOpen = namesFeet && !/m³|m3/.test(volume.text);
        const ways = isFeet ? [METRES_PER_HUNDRED_FEET] : isOpen ? [1, METRES_PER_HUNDRED_FEET] : [1];
        for (const toMetres of ways) {
          const perUnit =
            toMetres * (factor?.value ?? 1) * (calorific.value > 20 ? calorific.value / 3.6 : calorific.value);
          for (const energy of energies) {
            const slack = 0.5 * 10 ** -energy.decimals + (volume.decimals > 0 ? 0 : 0.02);
            if (Math.abs(volume.value * perUnit - energy.value) > slack + 1e-6) continue;
            const parts = [
              volume.text,
              ...(toMetres === 1 ? [] : [String(toMetres)]),
              ...(factor ? [factor.text] : []),
              calorific.text,
            ];
            found.push({
              volume,
              ...(factor ? { factor } : {}),
              calorific,
              energy,
              imperial: toMetres !== 1,
              figures: [volume, ...(factor ? [factor] : []), calorific, energy],
              sum: `${parts.join(' × ')}${calorific.value > 20 ? ' ÷ 3.6' : ''} = ${energy.text}`,
              bits: log2(energy.value / (2 * slack)) - log2(tried) + 2,
            });
          }
        }
      }
    }
  }
  return settle(found, ({ energy }) => [[energy]]);
}

/** From the surest down, each number in one role of its kind. */
function settle<P extends Proof>(
  found: readonly P[],
  rolesOf: (one: P) => readonly (readonly [Figure, ('earlier' | 'later')?])[],
): P[] {
  const taken = new Map<Figure, 'earlier' | 'later' | undefined>();
  const kept: P[] = [];
  for (const one of found.filter(({ bits }) => bits >= LEAST_BITS).toSorted((a, b) => b.bits - a.bits)) {
    const roles = rolesOf(one);
    const isTaken = roles.some(
      ([figure, role]) => taken.has(figure) && (!role || !taken.get(figure) || taken.get(figure) === role),
    );
    if (isTaken) continue;
    for (const [figure, role] of roles) taken.set(figure, role);
    kept.push(one);
  }
  return kept;
}
