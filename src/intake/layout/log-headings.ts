/** In a log of a heat pump short words mean more than elsewhere: "in" and "out" are its electricity and its heat. */
import { isFuel, isSaleUnit } from '../../model/shapes/heating.ts';
import { sumOf } from '../../model/units/sums.ts';
import { isPower } from '../terms/units.ts';
import { type ColumnFacts, isNumberColumn } from './column-facts.ts';
import { type Energy, GIVEN, meaningOf, plainWords } from './headings.ts';
import { MADE, MADE_HERE, NOT_ENGLISH, PARTNER_CODES, POWER, VOLUME, withoutBrackets } from './vocabulary.ts';

const ENERGY = new Set(['Wh', 'kWh', 'MWh', 'MJ', 'GJ', 'Gcal']);
const HEAT = /\bheat(ing)?\b(?! ?pump)|thermal|\bout(put)?\b|produced|\byield\b|\bdelivered\b/;
const ELECTRIC = /electric|\belec\b|\bin(put)?\b|consum|absorbed|\bused\b|drawn/;
export const USED =
  /consum|\bused\b|absor|verbrauch|aufnahme|consomm|verbruik|opgenomen|forbru|anvand|tilfort|zuzyci|pobran|spotreb|prikon|kulutus|kulutettu|ottoenergia|zugefuhr/;
/** Electricity that heats by itself, beside or within what the machine draws. */
export const HEATER =
  /(back ?up|booster|auxiliary|aux|resist\w*) heat|immersion|heizstab|zusatzheiz|elektroheiz|appoint|bijverwarm|elpatron|varmepatron|tillsats/;
const OF_PANELS = /\bpv\b|solar|photovolt|fotovolt|panel/;
/** Words that only such a log has. */
const OF_A_LOG = /heat|thermal|\bs?cop\b|\bspf\b|\bflow\b|brine|compressor/;

/** Gives the columns of a log their carrier; other tables come back as they are. @param isOfPump whether the file is called after a heat pump */
export function nameLogColumns(given: readonly ColumnFacts[], isOfPump = false): ColumnFacts[] {
  const columns = namePower(nameConsumed(given));
  const words = columns.map((c) => plainWords(c.heading));
  const hasEnergy = columns.some((c) => ENERGY.has(c.meaning.unit ?? ''));
  // Where a log has power alone, that is what it holds of the energy.
  const isEnergy = (c: ColumnFacts) =>
    isNumberColumn(c) && (hasEnergy ? ENERGY.has(c.meaning.unit ?? '') : isPower(c.meaning.unit));
  const isOther = (c: ColumnFacts, i: number) =>
    isFuel(c.meaning.carrier) ||
    c.meaning.seriesRole === 'export' ||
    (c.meaning.seriesRole === 'generation' && MADE_HERE.test(words[i]!) && !(isOfPump && !OF_PANELS.test(words[i]!)));
  // "Heat used" is heat.
  const isHeatUsed = (c: ColumnFacts, i: number) =>
    c.meaning.carrier === 'heat' && !/electr|\belec\b|input/.test(words[i]!);
  const electric = columns.filter(
    (c, i) => isEnergy(c) && !isOther(c, i) && !isHeatUsed(c, i) && ELECTRIC.test(words[i]!),
  );
  const heat = columns.filter(
    (c, i) =>
      isEnergy(c) &&
      !isOther(c, i) &&
      (HEAT.test(words[i]!) || (isOfPump && MADE_HERE.test(words[i]!))) &&
      !electric.includes(c),
  );
  // What flows through a meter of heat is consumed as heat.
  const isElectric = electric.some((c) => /electr|\belec\b/.test(plainWords(c.heading)));
  if (!isElectric && heat.length === 0 && isHeatMeter(columns))
    return columns.map((c) =>
      isEnergy(c) && c.meaning.carrier === undefined
        ? { ...c, meaning: { ...energyOf(c), carrier: 'heat', seriesRole: 'heat-output' } }
        : nameWater(c),
    );
  if (electric.length === 0 || heat.length === 0 || !(isOfPump || words.some((w) => OF_A_LOG.test(w))))
    return columns.some((c) => c.meaning.carrier === 'heat' && isEnergy(c)) ? columns.map(nameWater) : [...columns];
  return columns.map((c, i): ColumnFacts => {
    if (electric.includes(c)) return { ...c, meaning: { ...energyOf(c), carrier: 'electricity' } };
    if (heat.includes(c)) return { ...c, meaning: { ...energyOf(c), carrier: 'heat', seriesRole: 'heat-output' } };
    // Volume of the heating water, and power, are no energy.
    const isWater = c.meaning.unit === 'm³' && !/gas/.test(words[i]!);
    const isPower = c.meaning.unit === 'W' || c.meaning.unit === 'kW' || isSaleUnit(c.meaning.unit);
    return isNumberColumn(c) && (isWater || (isPower && !HEATER.test(words[i]!)))
      ? { ...c, meaning: { role: 'beside' } }
      : c;
  });
}

/** "HP" among English words is a heat pump; among others it is the register of the dear hours. */
export function namePumps(columns: readonly ColumnFacts[]): readonly ColumnFacts[] {
  const words = columns.map((c) => plainWords(c.heading));
  const isFrench = words.some((one) => NOT_ENGLISH.test(one) || /\bhc\b/.test(one));
  if (!words.some((one) => HP.test(one)) || isFrench || !words.some((one) => IS_ENGLISH.test(one))) return columns;
  return columns.map((c, i) =>
    HP.test(words[i]!) && isNumberColumn(c) ? { ...c, meaning: meaningOf(words[i]!.replace(HP, 'heat pump')) } : c,
  );
}
const HP = /\bhp\b/;
const IS_ENGLISH =
  /\b(house(hold)?|home|heat(ing)?|month|week|day|us(ed|age)|electric(ity)?|out(door|side)|whole|reading|start|time|upstairs)\b/;

/** So many times what they take machines make heat of: less is a boiler's, more no machine's. A judgement. */
const MADE_OF = [1.4, 9] as const;

/** Energy used without a name beside heat that is made, and so much of it as only a heat pump makes. */
function nameConsumed(columns: readonly ColumnFacts[]): readonly ColumnFacts[] {
  const energies = columns.filter((c) => isNumberColumn(c) && ENERGY.has(c.meaning.unit ?? ''));
  const saysMade = ({ heading }: ColumnFacts) => [MADE, GIVEN].some((of) => of.test(plainWords(heading)));
  const made = energies.filter((c) => c.meaning.carrier === 'heat' && saysMade(c));
  const used = energies.filter((c) => c.meaning.carrier === undefined && USED.test(plainWords(c.heading)));
  const times = sumOf(made.map((c) => c.largest)) / sumOf(used.map((c) => c.largest));
  const inOneUnit = new Set([...made, ...used].map((c) => c.meaning.unit)).size === 1;
  if (!inOneUnit || !(times > MADE_OF[0] && times < MADE_OF[1])) return columns;
  return columns.map((c) =>
    used.includes(c) ? { ...c, meaning: { ...energyOf(c), carrier: 'electricity', seriesRole: 'heat-pump' } } : c,
  );
}

/** Power beside the power of heat is what the heat was made with; beside a flow "HP" is the heat pump. */
function namePower(columns: readonly ColumnFacts[]): readonly ColumnFacts[] {
  const hasFlow = columns.some((c) => c.meaning.carrier === 'flow-temperature');
  const isPump = (c: ColumnFacts) =>
    isNumberColumn(c) &&
    c.meaning.carrier === undefined &&
    (isPower(c.meaning.unit) || ENERGY.has(c.meaning.unit ?? '')) &&
    /\bhp\b/.test(plainWords(c.heading));
  if (hasFlow && columns.some(isPump))
    return columns.map((c) =>
      isPump(c) ? { ...c, meaning: { ...c.meaning, carrier: 'electricity', seriesRole: 'heat-pump' } } : c,
    );
  const ofPower = columns.filter((c) => isPower(c.meaning.unit) && isNumberColumn(c));
  const bare = ofPower.filter((c) => c.meaning.carrier === undefined && POWER.test(plainWords(c.heading)));
  if (bare.length !== 1 || !ofPower.some((c) => c.meaning.carrier === 'heat')) return columns;
  return columns.map((c) => (c === bare[0] ? { ...c, meaning: { ...c.meaning, carrier: 'electricity' } } : c));
}

/** What short codes mean beside each other: the way drawn and the way sent out. */
export function energiesByPartner(codes: readonly string[]): ReadonlyMap<string, Energy> {
  const pair = PARTNER_CODES.find((both) => both.every((code) => codes.includes(code)));
  if (!pair) return new Map();
  return new Map<string, Energy>([
    [pair[0], { carrier: 'electricity' }],
    [pair[1], { carrier: 'electricity', seriesRole: 'export' }],
  ]);
}

const codeOf = (heading: string): string =>
  withoutBrackets(plainWords(heading))
    .replace(/\b[mk]?wh?\b/, '')
    .trim()
    .replace(
      /^(?:grid|net|netz|mains|utility) | (?:register|reading|total|(?:to|from) (?:the )?(?:customer|consumer))$/g,
      '',
    )
    .trim();

/** The four quadrants of reactive energy (IEC 62053-23, from memory), as they stand beside the two ways of active energy. */
const QUADRANTS: readonly (readonly string[])[] = ['r', 'q'].map((sign) => [1, 2, 3, 4].map((n) => `${sign}${n}`));

/** Gives columns named by such codes their way, and sets aside what is reactive beside them. */
export function nameByPartner(columns: readonly ColumnFacts[]): ColumnFacts[] {
  const codes = columns.map((c) => codeOf(c.heading));
  const known = energiesByPartner(codes);
  if (known.size === 0) return [...columns];
  const reactive = QUADRANTS.find((all) => all.every((code) => codes.includes(code))) ?? [];
  return columns.map((c, at) => {
    if (reactive.includes(codes[at]!)) return { ...c, meaning: { role: 'beside' } };
    const energy = isNumberColumn(c) ? known.get(codes[at]!) : undefined;
    return energy ? { ...c, meaning: { ...energyOf(c), ...energy } } : c;
  });
}

/** Flow and return beside a volume: a meter of heat, even where no word says so. */
const isHeatMeter = (columns: readonly ColumnFacts[]): boolean =>
  (['flow-temperature', 'return-temperature'].every((carrier) => columns.some((c) => c.meaning.carrier === carrier)) ||
    [/^t ?1\b/, /^t ?2\b/].every((name) => columns.some((c) => name.test(plainWords(c.heading)) && isWarm(c))) ||
    columns.some((c) => /^(dt|δt|delta.?t|temp\w* ?diff)\b/.test(plainWords(c.heading)))) &&
  columns.some((c) => isVolume(c) && !/gas|gaz/i.test(c.heading)) &&
  !columns.some((c) => isFuel(c.meaning.carrier) && (!isVolume(c) || /gas|gaz/i.test(c.heading)));

const isWarm = ({ meaning: { unit } }: ColumnFacts): boolean => unit === '°C' || unit === 'K';

const isVolume = (c: ColumnFacts): boolean =>
  c.meaning.unit === 'm³' || c.meaning.unit === 'litre' || VOLUME.test(plainWords(c.heading));

/** Beside heat a volume is that of its water, unless gas is named. */
function nameWater(c: ColumnFacts): ColumnFacts {
  if (!isVolume(c) || c.meaning.role === 'beside' || !isNumberColumn(c) || /gas|gaz/i.test(c.heading)) return c;
  return { ...c, meaning: { ...energyOf(c), carrier: 'water' } };
}

/** A column of energy with a unit is an amount or a reading, whatever else its words may mean. */
function energyOf(c: ColumnFacts): ColumnFacts['meaning'] {
  const { role, unit } = c.meaning;
  return { role: role === 'reading' ? 'reading' : 'value', ...(unit === undefined ? {} : { unit }) };
}
