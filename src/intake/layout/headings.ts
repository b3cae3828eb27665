/** What the words above a column say about it. Words only propose; the cells below confirm. */
import type { Carrier, SeriesRole } from '../../model/shapes/evidence.ts';
import { FUEL_IDS, FUELS, SALE_UNIT_IDS, SALE_UNITS } from '../../model/shapes/heating.ts';
import { startOfSpan } from '../dates/read-clock.ts';
import type { EnergyUnit } from '../terms/choices.ts';
import { type BillPart, billPartOf, isOfEnergy } from './bill-headings.ts';
import {
  AMOUNT,
  CLOCK_TIME,
  COLD_MADE,
  COUNTER,
  DEGREE_DAYS,
  DRAWN,
  ELECTRIC,
  GAS_FACTOR,
  HEAT,
  HIGHEST,
  HOUR_NUMBER,
  IDENTIFIER,
  MADE,
  MADE_HERE,
  MARKS,
  MONEY,
  NOT_ACTIVE,
  OTHER_FUEL,
  OTHER_WEATHER,
  OUTDOOR,
  OWN_USE,
  PERIOD_END,
  PERIOD_START,
  POWER,
  RATE_REGISTER,
  SENT_OUT,
  SINCE_LAST,
  STAMP,
  SUN_HEAT,
  THERM_FACTOR,
  TO_COMPARE,
  WATER,
  withoutBrackets,
} from './vocabulary.ts';

export type HeadingRole =
  | 'stamp'
  | 'from'
  | 'to'
  | 'time'
  | 'value'
  | 'reading'
  | 'cost'
  | 'rate'
  | 'calorific'
  | 'quality'
  | 'index'
  /** What stands beside the energy in a log and is none: flow temperature, factor, frequency, state. */
  | 'beside'
  | 'maximum'
  | 'minimum'
  /** What only a bill has: days, VAT, discounts, credits. */
  | 'bill'
  | 'unknown';

export interface HeadingMeaning {
  readonly role: HeadingRole;
  readonly unit?: EnergyUnit;
  readonly carrier?: Carrier;
  readonly seriesRole?: SeriesRole;
  /** Costs in pence rather than pounds. */
  readonly inPence?: boolean;
  readonly utc?: boolean;
  /** What the column says of a bill, where its rows are bills. */
  readonly bill?: BillPart;
}

/** All that most words of a file need is small letters; "totalkwh" is two. */
const ONE_PLAIN_WORD = /^[A-Z]?[a-z]+(?<!wh)$/;

/** "startTime_kWh" → "start time kwh", "Wärme" → "warme": small letters without accents. */
export function plainWords(heading: string): string {
  if (ONE_PLAIN_WORD.test(heading)) return withoutDigraphs(heading.toLowerCase());
  return withoutDigraphs(
    heading
      .normalize('NFD')
      .replaceAll(/\p{Mark}/gu, '')
      .replaceAll('℃', '°C')
      // "WHE" and "WHOLE HOUSE" are words.
      .replace(
        /([MkKG]|(?<![A-Za-z])m|)(?!WH[A-Z](?<![MKG]WH.))[Ww][Hh](?:s|[Rr]s?)?(?![a-z])/g,
        (_, prefix: string) => ` ${prefix.toLowerCase()}wh `,
      )
      .replaceAll(/(?<![A-Za-z])([kK]?)W(?![A-Za-z])/g, (_, prefix: string) => ` ${prefix.toLowerCase()}w `)
      .replace(/([a-z])([A-Z])/g, '$1 $2')
      .replaceAll(/[_\s]+/g, ' ')
      .trim()
      .toLowerCase()
      .replaceAll('ø', 'o')
      .replaceAll('ł', 'l')
      .replaceAll('æ', 'ae')
      .replaceAll('ß', 'ss'),
  );
}

/** "Waerme", "Zaehler", "Rueckspeisung" and "maaler", as machines without these letters write them. */
const DIGRAPHS =
  /(?<=w)ae(?=rm)|(?<=z)ae(?=hl)|(?<=k)ae(?=lte)|(?<![a-z])ue(?=ber)|(?<=r)ue(?=ck)|(?<=gef)ue(?=hl)|(?<=f)ue(?=llst)|(?<=k)ue(?=hl)|(?<=t)ae(?=gl)|(?<=j)ae(?=hr)|(?<=h)oe(?=chst)|(?<=st)ue(?=nd)|(?<=sch)ae(?=tz)|(?<=verg)ue(?=t)|(?<=fl)ue(?=ss)|(?<=geb)ue(?=hr)|(?<=st)ue(?=ck)|(?<=m)aa(?=ler)/g;
const withoutDigraphs = (words: string): string =>
  /[aou]e|aa/.test(words) ? words.replaceAll(DIGRAPHS, (digraph) => digraph[0]!) : words;

/** "kW-h", "MW·h", "kW hours" are kWh and MWh. */
const HOURS_APART = /(?<![a-z])([kmg]?)w ?[-·⋅.* ]? ?h(?:(?:ou)?rs?)?(?![a-z])/g;
/** What there is no unit for, counted in thousands of the one before. */
const GIGA = /(?<![a-z])gwh(?![a-z])|gigawatt/;
const MEGAWATT = /(?<![a-z])(mw|megawatts?)(?![a-z])(?! ?.?h(?![a-z])| ?(hour|stund|heure|hora|uur|ore))/;

/** "deg C", "Grad C", "degrees F". */
const DEGREES_OF = /(?<![a-z])(?:deg(?:ree|re)?s?|grad(?:i|os?|en|er)?|aste(?:tta)?|stupn[iu])\.? ?([cf])(?![a-z])/;

export function unitOfWords(said: string): EnergyUnit | undefined {
  const words = said.replace(HOURS_APART, '$1wh');
  if (/\b(imp(ulse?n?|ulsions?)?|pulses?) ?\/ ?k ?wh/.test(words)) return 'pulse';
  if (/\bk ?wh ?(\/ ?h|per hour|pro stunde|par heure)(?![a-z])/.test(words)) return 'kW';
  if (/\b[mg]wh\b|(mega|giga)watt.?(h\b|hour|stund|heure|hora|uur|ore)/.test(words)) return 'MWh';
  if (/\bkwh\b|kilowatt.?(h\b|hour|stund|heure|hora|uur|ore)|\bkw h\b/.test(words)) return 'kWh';
  if (/\bwh\b|(?<!kilo)watt.?(hours?|stund|heure)/.test(words)) return 'Wh';
  if (/\bk ?j\b|kilojoule/.test(words)) return 'kJ';
  if (/\bgj\b|gigajoule/.test(words)) return 'GJ';
  if (/\bg ?cal\b|gigacalor/.test(words)) return 'Gcal';
  if (/\bmj\b(?! ?\/)|megajoule/.test(words)) return 'MJ';
  if (/\bkw\b|kilowatts?\b|\bk ?watts?\b|\bk w\b/.test(words)) return 'kW';
  if (/(?<![a-z])(w|watts?)(?![a-z]| ?\/ ?m)/.test(words)) return 'W';
  if (/\bbtus?( ?\/ ?h| per hour|h\b)|\bbtuh\b/.test(words)) return 'BTU/h';
  // A dekatherm is a million BTU.
  if (/\bmm ?btus?\b|\bdth\b|\bde[ck]atherms?\b|million btus?/.test(words)) return 'MMBTU';
  if (/\b(k ?)?btus?\b/.test(words)) return 'BTU';
  // A volume times its degrees is neither.
  if (/m[³3] ?[*x×·] ?°?[ck]\b/.test(words)) return undefined;
  if (
    /m³|\b[ns]?m3\b|\bs?mc\b|\bm\^3|cubic met|kubikmeter|metres? cubes?|metros? cubicos?|metri cubi|kubieke/.test(words)
  )
    return 'm³';
  if (
    /\b[hc]cf\b|\b100'?s? ?(of )?(cu|ft|cf)|hundred(s of)? cu|(ft³|ft3|cf|cu\.? ?ft|cubic feet)[)\]]? ?[x×*] ?100\b|\b100 ?[x×*] ?(ft|cf|cu)/.test(
      words,
    )
  )
    return 'hundred ft³';
  if (/ft³|\bft3\b|\bcu\.? ?ft\b|\bm?cf\b|cubic f/.test(words)) return 'ft³';
  if (/\b(imp(erial)?|uk)\.? ?gal(lons?)?\b|\bgal(lons?)? ?\(?(imp|uk)/.test(words)) return 'imperial gallon';
  if (/\b(us )?gal(lons?)?\b/.test(words)) return 'US gallon';
  if (/\btherms?\b/.test(words)) return 'therm';
  if (/\b(pulses?|impulse?n?|impulsions?|impulsos?|impulsi|pulsen)\b/.test(words)) return 'pulse';
  const sold = SALE_UNIT_IDS.find((unit) => SALE_UNITS[unit].said.test(words));
  if (sold) return sold;
  if (/[([ ]k(elvin)?[)\]]|kelvin/.test(words)) return 'K';
  const ofDegrees = DEGREES_OF.exec(words)?.[1];
  if (ofDegrees !== undefined) return ofDegrees === 'c' ? '°C' : '°F';
  if (
    /°c|celsius|centigrade|\btemp\w* c\b|^t ?(mean|avg|max|min) c$|^(high|low|avg|average|mean|max|min)\w*( temp\w*)? ?[([]c[)\]]$|bulb ?[([]c[)\]]|\b(temp\w*|t ?(air|mean|avg|max|min)?) ?[([]c[)\]]|º ?c(?![a-z])/.test(
      words,
    )
  )
    return '°C';
  if (
    /°f|fahrenheit|\b(temp\w*|oat|[el]wt) f\b|^t ?(mean|avg|max|min) f$|^(high|low|avg|average|mean|max|min)\w*( temp\w*)? ?[([]f[)\]]$|bulb ?[([]f[)\]]|\b(temp\w*|t ?(air|mean|avg|max|min)?) ?[([]f[)\]]|º ?f(?![a-z])|\btmpf\b/.test(
      words,
    )
  )
    return '°F';
  // "MW" is a mean beside degrees.
  return MEGAWATT.test(words) ? 'kW' : undefined;
}

/** A unit by itself, behind a number or in a column of units; above a column "t" is a time or a temperature. */
export const unitOfSign = (sign: string): EnergyUnit | undefined =>
  unitOfWords(plainWords(sign)) ?? (/^to?\.?$/i.test(sign.trim()) ? 'tonne' : undefined);

/** By how much a unit is counted: in tens, thousands or tenths. */
const COUNT = String.raw`10+|1[,' ] ?000|0[.,]0*1|1\/10+`;
const COUNTED_UNIT = new RegExp(
  String.raw`(?:^|[[(]) *(${COUNT}) ?(?:[mk]?wh|[mg]j|m3|m³|gcal|ft3|ft³) *(?:$|[\])])|[x×*] ?(${COUNT})(?![\d.,])|(?<![\d.,/])(${COUNT}) ?[x×*](?!\w)|(1\/10+) (?:of )?(?:a )?[mk]?wh`,
);
const THOUSANDS = '(thousands?|tausend|tsd\\.?|milliers|miles|migliaia)';
const IN_THOUSANDS = new RegExp(
  String.raw`(^|[[(' ’])000s? ?[mk]?wh|\b${THOUSANDS} (of |de |di )?k?wh|[mk]?wh ?[[(,]? ?(in )?${THOUSANDS}|\bmcf\b|\bk ?btus?\b|\b(10 ?³|10\^3|e3) ?(m[3³]|[mk]?wh)`,
);

/** How often a number counts what is written: 10 in "kWh x10", 1,000 in thousand cubic feet; 1 where nothing says so. */
export function timesOfWords(words: string): number {
  const unit = unitOfWords(words);
  // Degrees are never counted in tens: "°C x10" are tenths.
  if (unit === 'hundred ft³' || unit === '°C' || unit === '°F' || unit === 'K') return 1;
  if (IN_THOUSANDS.test(words) || GIGA.test(words) || (unit === 'kW' && MEGAWATT.test(words))) return 1000;
  const count = COUNTED_UNIT.exec(words)?.slice(1).find(Boolean) ?? '1';
  if (count.startsWith('1/')) return 1 / Number(count.slice(2));
  return Number(/^1[,' ]/.test(count) ? 1000 : count.replace(',', '.'));
}

/** A number by which a unit is multiplied or divided, in words of which it is not sure. */
export const isOddlyCounted = (words: string): boolean =>
  timesOfWords(words) === 1 &&
  unitOfWords(words) !== 'hundred ft³' &&
  /(?:wh|[mg]j|m3|m³|ft3|ft³|\bc?cf)[)\]]? ?(?:[x×*] ?(?!1(?![\d.,]))\d|[/÷] ?\d+ *(?:$|[\])]))/.test(words);

export interface Energy {
  readonly carrier: Carrier;
  readonly seriesRole?: SeriesRole;
}

/** By its volume; by its energy it is heat, or what heats it. */
function isOfWater(words: string): boolean {
  if (WATER_MACHINE.test(words)) return false;
  if (!HOT_WATER.test(words)) return WATER.test(words);
  return (
    !(ELECTRIC.test(words) || /energ|\b([mk]?wh|[mg]j)\b/.test(words)) && /m³|\bm3\b|\bl\b|lit(re|er|ro)/.test(words)
  );
}

/** What heats or moves water uses energy. */
const WATER_MACHINE = /heat(er|ing)|pump|boiler|erhitzer|bereit(er|ung)|calentador|chauffe|scaldab|varmer|beredare/;
const HOT_WATER = /warmwasser|hot water|eau chaude|agua caliente|acqua calda|warm water|brugsvand/;

/** "Without solar" makes nothing. */
const NOT_THERE =
  /(?<![a-z])(no|non|not|without|excl\w*|w\/o|ohne|sans|sin|senza|sem|zonder|uden|utan|uten|bez|ilman) ?(pv|solar\w*|photovolt\w*|fotovolt\w*|solcell\w*|zonne\w*|panels?|generation|export|feed.?in)(?![a-z])/g;

/** What is made for it, or given to it, is heat. */
export const OF_HEATING =
  /\bheating\b(?! oil)|\bdhw\b|\bhot water\b|heizung|heizbetrieb|heizen\b|warmwasser|chauffage|eau chaude|\becs\b|calefaccion|agua caliente|\bacs\b|riscaldamento|acqua calda|verwarming|tapwater|rumsvarme|rumopvarmning|brugsvand|varmvatten|uppvarmning|oppvarming|tappevann|ogrzewan|\bcwu\b|vytapeni|lammitys|kayttovesi|aquecimento/;
export const GIVEN =
  /restitu|entregad|fornecid|erogat|\bcedut|afgegeven|geleverd|avgiv|avgitt|afgivet|geliefert|abgegeben|delivered|oddan|dodan|luovutet/;

/** The machine, whose name has the word for heat in it. */
export const HEAT_PUMP =
  /heat ?pump|varmepump|pompa ciepla|tepelne cerpadlo|warmepumpe|pompe a chaleur|bomba de calor|pompa di calore|warmtepomp|varmepumpe/;

export function carrierOfWords(words: string): Energy | undefined {
  const ofPump = HEAT_PUMP.test(words);
  if (HEAT.test(ofPump ? words.replace(HEAT_PUMP, ' ') : words) || unitOfWords(words) === 'BTU/h')
    return { carrier: 'heat', seriesRole: 'heat-output' };
  if (OUTDOOR.test(words)) return { carrier: 'outdoor-temperature', seriesRole: 'weather' };
  if (ofPump || /(?<!air )compressor|kompressor|verdichter|(?<![a-z])wp(?![a-z])/.test(words))
    return { carrier: 'electricity', seriesRole: 'heat-pump' };
  if (isOfWater(words)) return { carrier: 'water' };
  // Italy sells its gas by the standard cubic metre.
  if (/\bsmc\b/.test(words)) return { carrier: 'gas' };
  const fuel = FUEL_IDS.findLast((one) => FUELS[one].said.test(words));
  if (fuel) return { carrier: fuel };
  return electricityOfWords(words);
}

/** Which way it goes; what is drawn goes before what is made, since "from the grid" may stand beside "solar". */
function electricityOfWords(said: string): Energy | undefined {
  const words = said.replace(NOT_THERE, ' ');
  if (GIVEN.test(words) && OF_HEATING.test(words) && !ELECTRIC.test(words))
    return { carrier: 'heat', seriesRole: 'heat-output' };
  if (SENT_OUT.test(words)) return { carrier: 'electricity', seriesRole: 'export' };
  if (DRAWN.test(words)) return { carrier: 'electricity' };
  if (MADE.test(words) && OF_HEATING.test(words)) return { carrier: 'heat', seriesRole: 'heat-output' };
  if (MADE_HERE.test(words) || MADE.test(words)) return { carrier: 'electricity', seriesRole: 'generation' };
  return ELECTRIC.test(words) ? { carrier: 'electricity' } : undefined;
}

/** Temperatures that are neither weather nor the machine's own, or only what is asked of it. */
const NOT_OF_MACHINE =
  /\b(tank|cylinder|dhw|hot water|room|indoor|inside|set ?point|target|refrigerant|raum|innen|soll\w*|speicher)\b/;

/** What a machine's log says of its water and its source; in a log these columns are kept beside the energy. */
function machineTemperature(
  words: string,
): { unit: '°C' | '°F'; carrier: Carrier; seriesRole: SeriesRole } | undefined {
  const unit = unitOfWords(words) === '°F' ? ('°F' as const) : ('°C' as const);
  const of = (carrier: Carrier) => ({ unit, carrier, seriesRole: 'machine' as const });
  if (NOT_OF_MACHINE.test(words) || !isOfDegrees(words)) return undefined;
  if (/\b(source|brine|ground|borehole|sole)\b/.test(words)) return of('source-temperature');
  if (/\b(return|entering|ewt|retour|retorno|ritorno|retur|rl)\b|rucklauf|returlob|returtemp/.test(words))
    return of('return-temperature');
  return /\b(flow|supply|leaving|lwt|depart|impulsion|mandata|aanvoer|frem|vl)\b|vorlauf|fremlob|framledn/.test(words)
    ? of('flow-temperature')
    : undefined;
}

const isOfDegrees = (words: string): boolean => {
  const unit = unitOfWords(words);
  return (
    unit === '°C' ||
    unit === '°F' ||
    /\b(flow|return|out(side|door)|ambient|room|in(side|door)|target|source|tank|dhw) ?t$/.test(words) ||
    /temp(?![a-z])|temperat|teplot|\blwt\b|\bewt\b|[[(]c[\])]/.test(words)
  );
};

/** Temperatures that are no weather. */
const INDOORS =
  /\b(flow|return|supply|leaving|entering|lwt|ewt|source|brine|ground|borehole|tank|cylinder|dhw|hot water|water|room|indoor|inside|set ?point|target|refrigerant|raum|innen|soll\w*|speicher|sole|interieure?|interior|interna|binnen|indendors|inomhus|inne|depart|retour|retorno|ritorno|mandata|aanvoer|impulsion|retur|frem)\b|vorlauf|rucklauf|warmwasser|fremlob|returlob|returtemp|innentemp|raumtemp|binnentemp|rumtemp|rumstemp|framledning|wewnetrzn|vnitrni|\b[vr]l\b|wasser|vatten|(?<![a-z])(agua|acqua|eau|vand|vann|woda|wody|voda|vody)/;
const BESIDE =
  /(?<!\bw) ?(\/|per) ?(m²|m2|sqm|qm|sq\.? ?(m|f)\w*|square)(?![a-z\d])|[([] ?(cm|inch(es)?|ppm|dbm?|k?g ?co2\w*) ?[)\]]|\/ ?k ?wp?\b|\bs?cop\b|\bspf\b|\b(l|m³|m3|litres?) ?\/ ?(min|h|s|hr|sec)\b|\bhz\b|\bcm\b|\bbar\b|\brpm\b|m[³3] ?[*x×·] ?°?[ck]\b|%/;

/** By how much the water cools in a home. */
const COOLED =
  /afkoling|avkylning|avkjoling|jaahtyma|abkuhlung|spreizung|vychlazeni|schlodzenie|uitkoeling|(?<![a-z])(delta|d) ?t(?![a-z])|temp\w* ?diff/;

/** Of energy or a volume. */
const isOfAmounts = (unit: EnergyUnit | undefined): boolean =>
  unit !== undefined && unit !== '°C' && unit !== '°F' && unit !== 'K';

/** As other languages than English call the ends of a day's temperature. */
const HIGHEST_OF_DAY =
  /maximal|maxim[aou]|massima|hochst(temp|wert)|hoogste|hojeste|maksim|(?<![a-z])max(temp|imumtemp)/;
const LOWEST = /minimal|minim[aou]|tiefst(temp|wert)|laagste|laveste|(?<![a-z])min(temp|imumtemp)/;

function roleOf(heading: string, unit: EnergyUnit | undefined): HeadingRole {
  const words = heading;
  const bare = withoutBrackets(heading);
  if (words === '' || /^(index|idx|#|no\.?|nr\.?|row|id|line|zeile|fila|riga|rij|ligne)$/.test(words)) return 'index';
  if (unit === undefined && IDENTIFIER.test(bare)) return 'index';
  if (GAS_FACTOR.test(words) || THERM_FACTOR.test(words) || /(kwh|mj) ?\/ ?(n?m3|n?m³|smc|sm3)/.test(words))
    return 'calorific';
  if (
    /calorific|\bcv\b|brennwert|heizwert|\bpcs\b(?<!\bk?wh .*)|pouvoir calorifique|poder calorifico|potere calorifico|spalne teplo|vyhrevnost|cieplo spalania|wartosc opalowa|branvarde|braendvaerdi|lampoarvo|verbrandingswaarde|zustandszahl/.test(
      words,
    )
  )
    return 'calorific';
  if (isOfDegrees(words) && (INDOORS.test(words) || COOLED.test(words))) return 'beside';
  if (
    BESIDE.test(words) ||
    OTHER_WEATHER.test(words) ||
    DEGREE_DAYS.test(words) ||
    NOT_ACTIVE.test(words) ||
    OWN_USE.test(words) ||
    COLD_MADE.test(words) ||
    (SUN_HEAT.test(words) && !isOfDegrees(words)) ||
    TO_COMPARE.test(words) ||
    isOtherFuel(words)
  )
    return 'beside';
  // "Therm factor" counts no therms.
  if (/(factors?|fak?tor|facteur|coeff?icient)$/.test(bare)) return 'beside';
  if ((unit === 'W' || unit === 'kW') && HIGHEST.test(words)) return 'beside';
  if (
    unit !== 'pulse' &&
    /p ?\/ ?kwh|pence per|per [km]wh|\/ ?[km]wh|unit (price|rate|cost)|(price|rate|cost|preis|prix|prezzo|precio) ?(\/|\b(per|pro|je|par|por|a|al)) ?(unit|each|einheit|stuck|unite|unita|unidad)|ppl\b|per lit|per (us )?gal|\/ ?gal\b|standing/.test(
      words,
    )
  )
    return 'rate';
  // "Rate 1 (kWh)" is a register; "Rate" alone is a price.
  if (unit === undefined && /\brate\b(?! ?\d)|\btariff?\b(?! ?\d)/.test(words)) return 'rate';
  if (
    MONEY.test(words) &&
    /(\/|\b(per|pro|par|je|por)) ?(100 ?)?(l|lit\w+|kg|t|to|tonn\w*|srm|[ns]?m[3³]|smc|gj|sack|sac|bag)\b/.test(words)
  )
    return 'rate';
  if (unit === undefined && MONEY.test(words)) return 'cost';
  if (/^(this|current) (year|period)$/.test(words)) return 'value';
  if (unit === undefined && MARKS.test(words)) return 'quality';
  const saysMaximum = /\b(max|maximum|highest)\b|^t ?max\b|^txk?$|temp max|^maxtp?$/.test(bare);
  // "Every 10 min" is of time.
  const saysMinimum = /(?<![\d/] ?)\b(min|minimum|lowest)\b|^t ?min\b|^tnk?$|temp min|^mintp?$/.test(bare);
  const [isMaximum, isMinimum] = [saysMaximum && !saysMinimum, saysMinimum && !saysMaximum];
  if (isOfDegrees(words) && LOWEST.test(bare) !== HIGHEST_OF_DAY.test(bare))
    return LOWEST.test(bare) ? 'minimum' : 'maximum';
  // The largest of a day's readings of energy is none of its temperatures, and no amount.
  if ((isMaximum || isMinimum) && !isOfDegrees(words) && (isOfAmounts(unit) || AMOUNT.test(words) || POWER.test(words)))
    return 'beside';
  if (isMaximum) return 'maximum';
  if (isMinimum) return 'minimum';
  if (isOfDegrees(words) && /^(high|low)s?( temp\w*)?$|\b(high|low)s?$/.test(bare))
    return /high/.test(bare) ? 'maximum' : 'minimum';
  if (unit === undefined && PERIOD_END.test(bare)) return 'to';
  if (unit === undefined && PERIOD_START.test(bare)) return 'from';
  if (unit === undefined && (CLOCK_TIME.test(bare) || HOUR_NUMBER.test(bare)) && !/dat(e|um|o)|fecha/.test(bare))
    return 'time';
  // "Bezug Tag" is the register of the day.
  if (unit === undefined && STAMP.test(bare) && !(RATE_REGISTER.test(bare) && AMOUNT.test(bare))) return 'stamp';
  if (SINCE_LAST.test(words) || (AMOUNT.test(words) && !COUNTER.test(words))) return 'value';
  if (COUNTER.test(words)) return 'reading';
  if (unit !== undefined || /value|temperat|\btemp\b|^day$|^night$/.test(words)) return 'value';
  return carrierOfWords(words) !== undefined || POWER.test(words) || RATE_REGISTER.test(words) ? 'value' : 'unknown';
}

/** Coal and logs; no pellets of wood, nor gas or electricity of a place that is called Wood Lane. */
export const isOtherFuel = (words: string): boolean =>
  OTHER_FUEL.test(words) &&
  !ELECTRIC.test(words) &&
  !/\bgas\b/.test(words) &&
  !FUEL_IDS.some((fuel) => fuel !== 'gas' && FUELS[fuel].said.test(words));

/** Wood and the like beside a fuel that is burnt here. */
const OF_WOOD =
  /(?<![a-z])(logs|hardwood|softwood|kindling|briquettes?|smokeless|anthracite|holz|scheite|bois|legna|lena|hout|trae|ved|drewno|drevo|polttopuut?)(?![a-z])/;

/** The same among rows or columns of fuels, where "logs" are no name. */
export const isStoveFuel = (words: string): boolean =>
  isOtherFuel(words) || (OF_WOOD.test(words) && carrierOfWords(words) === undefined);

/** Readings and what only a bill has go before the other words; prices and money keep the role they have. */
function roleBy(bill: BillPart | undefined): HeadingRole | undefined {
  if (bill === 'opening' || bill === 'closing') return 'reading';
  return bill === undefined || isOfEnergy(bill) ? undefined : 'bill';
}

export function meaningOf(heading: string): HeadingMeaning {
  const words = plainWords(heading);
  const unit = unitOfWords(words);
  const bill = billPartOf(words);
  const role = roleBy(bill) ?? roleOf(words, unit);
  if (role === 'beside') return { role, ...machineTemperature(words) };
  const carrier = carrierOfWords(words);
  return {
    role,
    ...(unit === undefined ? {} : { unit }),
    ...(carrier === undefined ? {} : carrier),
    ...(role === 'cost' && /pence|\bcents?\b|\((p|ct)\)|\b(p|ct)$/.test(words) ? { inPence: true } : {}),
    ...(bill === undefined ? {} : { bill }),
    ...(/\b(utc|gmt)\b|\bzulu\b/.test(words) && !(offsetOfWords(words) ?? 0) ? { utc: true } : {}),
  };
}

/** Minutes east of UTC by words such as "GMT-05:00" or "UTC+1"; undefined where none say so. */
export function offsetOfWords(words: string): number | undefined {
  const [, sign, hours, minutes] = /\b(?:utc|gmt) ?([-+−]) ?(\d\d?):?([0-5]\d)?(?!\d)/i.exec(words) ?? [];
  if (hours === undefined || Number(hours) > 14) return undefined;
  const east = Number(hours) * 60 + Number(minutes ?? 0);
  return sign === '+' ? east : -east;
}

/** Minutes after midnight that a wide file's heading names: "00:30", "0030", "HH01" and "P1" as ordinals. */
export function slotOfHeading(heading: string): { clock: number } | { ordinal: number } | undefined {
  const words = heading.trim().toLowerCase();
  const start = startOfSpan(words.replace(/\s*k?wh$/, ''));
  if (start >= 0) return { clock: start };
  const clock = /^(?:kwh[_ ]*|t|h)?(\d{1,2})[:h](\d{2})(?::00)?(?:\s*(?:k?wh|uhr|h))?$/.exec(words);
  if (clock) {
    const minutes = Number(clock[1]) * 60 + Number(clock[2]);
    return minutes <= 1440 && Number(clock[2]) < 60 ? { clock: minutes } : undefined;
  }
  const half = /^(\d{1,2}):(\d{2})(?::00)? ?([ap])\.?m\.?$/.exec(words);
  if (half) return { clock: ((Number(half[1]) % 12) + (half[3] === 'p' ? 12 : 0)) * 60 + Number(half[2]) };
  const four = /^(?:([01]\d|2[0-3])(00|15|30|45)|2400)$/.exec(words);
  if (four) return { clock: Number(four[1] ?? 24) * 60 + Number(four[2] ?? 0) };
  const ordinal =
    /^(?:hh|he|h|p|q|(?:trading )?period|slot|[st]p|k?wh|int|interval|hour|stunde|heure|hora|ora|uur|time|v|e|ea|val(?:ue)?|mw|reading|kwartier|viertelstunde|quarter|godz\.?|hod\.?|kl\.?)?[ _-]*(\d{1,3})\.?(?:[ _-]*(?:kwh|hodina|stunde|std\.?|hour|heure|hora|ora|uur|time|timme|godzina|tunti|h))?$/.exec(
      words,
    );
  if (!ordinal) return undefined;
  return { ordinal: Number(ordinal[1]) };
}
