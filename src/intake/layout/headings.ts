/** What the words above a column say about it. Words only propose; the cells below confirm. */
import type { Carrier, SeriesRole } from '../../model/shapes/evidence.ts';
import { FUEL_IDS, FUELS, SALE_UNIT_IDS, SALE_UNITS } from '../../model/shapes/heating.ts';
import type { EnergyUnit } from '../terms/choices.ts';
import { type BillPart, billPartOf, isOfEnergy } from './bill-headings.ts';

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

/** "startTime_kWh" → "start time kwh". */
export function plainWords(heading: string): string {
  return heading
    .replace(/([MkK]?)[Ww][Hh](?![a-z])/g, (_, prefix: string) => ` ${prefix.toLowerCase()}wh `)
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replaceAll(/[_\s]+/g, ' ')
    .trim()
    .toLowerCase();
}

export function unitOfWords(words: string): EnergyUnit | undefined {
  if (/\bmwh\b|megawatt/.test(words)) return 'MWh';
  if (/\bkwh\b|kilowatt|\bkw h\b/.test(words)) return 'kWh';
  if (/\bwh\b|watt.?hours?/.test(words)) return 'Wh';
  if (/\bgj\b|gigajoule/.test(words)) return 'GJ';
  if (/m³|\bm3\b|\bm\^3|cubic met/.test(words)) return 'm³';
  if (/ft³|\bft3\b|\bccf\b|\bhcf\b|cubic f|100 ?cu/.test(words)) return 'hundred ft³';
  if (/\btherms?\b/.test(words)) return 'therm';
  const sold = SALE_UNIT_IDS.find((unit) => SALE_UNITS[unit].said.test(words));
  if (sold) return sold;
  if (/°c|\bdeg\.? ?c\b|celsius|\btemp c\b|º ?c/.test(words)) return '°C';
  return undefined;
}

export function carrierOfWords(words: string): { carrier: Carrier; seriesRole?: SeriesRole } | undefined {
  if (
    /heat (output|out|produced|delivered|meter|generated|energy|supplied)|thermal|\bheat(?= ?(\(|[mk]?wh\b|gj\b|$))/.test(
      words,
    )
  )
    return { carrier: 'heat', seriesRole: 'heat-output' };
  if (/°c|temp|celsius|outdoor|outside air|weather|dry bulb/.test(words))
    return { carrier: 'outdoor-temperature', seriesRole: 'weather' };
  if (/heat ?pump/.test(words)) return { carrier: 'electricity', seriesRole: 'heat-pump' };
  const fuel = FUEL_IDS.findLast((one) => FUELS[one].said.test(words));
  if (fuel) return { carrier: fuel };
  if (/\bexport(ed)?\b|feed.?in|\bpv\b/.test(words)) return { carrier: 'electricity', seriesRole: 'export' };
  if (/electric|\belec\b|\bimport(ed)?\b|strom\b|\bpower\b/.test(words)) return { carrier: 'electricity' };
  return undefined;
}

/** Temperatures that are neither weather nor the machine's own, or only what is asked of it. */
const NOT_OF_MACHINE = /\b(tank|cylinder|dhw|hot water|room|indoor|inside|set ?point|target|refrigerant)\b/;

/** What a machine's log says of its water and its source; in a log these columns are kept beside the energy. */
function machineTemperature(words: string): { unit: EnergyUnit; carrier: Carrier; seriesRole: SeriesRole } | undefined {
  const of = (carrier: Carrier) => ({ unit: '°C' as const, carrier, seriesRole: 'machine' as const });
  if (NOT_OF_MACHINE.test(words) || !isOfDegrees(words)) return undefined;
  if (/\b(source|brine|ground|borehole)\b/.test(words)) return of('source-temperature');
  if (/\b(return|entering|ewt)\b/.test(words)) return of('return-temperature');
  return /\b(flow|supply|leaving|lwt)\b/.test(words) ? of('flow-temperature') : undefined;
}

const isOfDegrees = (words: string): boolean => unitOfWords(words) === '°C' || /\btemp|\blwt\b|\bewt\b/.test(words);

/** Temperatures that are no weather. */
const INDOORS =
  /\b(flow|return|supply|leaving|entering|lwt|ewt|source|brine|ground|borehole|tank|cylinder|dhw|hot water|water|room|indoor|inside|set ?point|target|refrigerant)\b/;
const BESIDE = /\bs?cop\b|\bspf\b|\b(l|m³|m3|litres?) ?\/ ?(min|h|s|hr|sec)\b|\bhz\b|\bbar\b|\brpm\b|%/;

function roleOf(words: string, unit: EnergyUnit | undefined): HeadingRole {
  if (words === '' || /^(index|idx|#|no\.?|nr\.?|row|id|line)$/.test(words)) return 'index';
  if (/calorific|\bcv\b/.test(words)) return 'calorific';
  if (isOfDegrees(words) && INDOORS.test(words)) return 'beside';
  if (BESIDE.test(words)) return 'beside';
  if (/p ?\/ ?kwh|pence per|per kwh|\/ ?kwh|unit (price|rate)|ppl\b|per lit|standing/.test(words)) return 'rate';
  // "Rate 1 (kWh)" is a register; "Rate" alone is a price.
  if (unit === undefined && /\brate\b|tariff/.test(words)) return 'rate';
  if (
    unit === undefined &&
    /cost|charge|price|£|\bgbp\b|€|\beur\b|\bpence\b|\bpounds?\b|net amount|gross amount/.test(words)
  )
    return 'cost';
  if (
    unit === undefined &&
    /quality|status|estimat|flag|(read(ing)?|type of) ?type|^type$|actual|^e ?\/ ?a$|^a ?\/ ?e$/.test(words)
  )
    return 'quality';
  if (/\b(max|maximum|highest)\b|^tmax$|temp max/.test(words)) return 'maximum';
  if (/\b(min|minimum|lowest)\b|^tmin$|temp min/.test(words)) return 'minimum';
  if (/^(to|end|until|till|bis)\b|\bend(ed|ing|s)?\b|date to\b|\bto date\b|finish/.test(words) && unit === undefined)
    return 'to';
  if (/^(from|start|begin|von)|\bstart(ed|ing|s)?\b|date from|from date/.test(words) && unit === undefined)
    return 'from';
  if (unit === undefined && /^(time|clock|hour|uhrzeit|zeit|local time|time of day)\b/.test(words)) return 'time';
  if (
    unit === undefined &&
    /date|time|\bday\b|datum|zeit|month|quarter|period|interval|stamp|^dt$|^ds$|delivered on|\bwhen\b|monat|fecha|giorno/.test(
      words,
    )
  )
    return 'stamp';
  if (/usage|consum|used|energy|volume|verbrauch|quantity|amount|delivered|import|export|units/.test(words))
    return 'value';
  if (/\b(reading|register|cumulative|meter read|index|z(ä|ae)hlerstand|counter)\b|^reads?$/.test(words))
    return 'reading';
  if (unit !== undefined || /value|\btemp\b|temperature|^day$|^night$/.test(words)) return 'value';
  return 'unknown';
}

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
    ...(role === 'cost' && /pence|\(p\)|\bp$/.test(words) ? { inPence: true } : {}),
    ...(bill === undefined ? {} : { bill }),
    ...(/\butc\b|\bgmt\b|\bzulu\b/.test(words) ? { utc: true } : {}),
  };
}

/** Minutes after midnight that a wide file's heading names: "00:30", "0030", "HH01" and "P1" as ordinals. */
export function slotOfHeading(heading: string): { clock: number } | { ordinal: number } | undefined {
  const words = heading.trim().toLowerCase();
  const clock =
    /^(?:kwh[_ ]*|t|h)?(\d{1,2}):(\d{2})(?::00)?(?:\s*(?:-|–|to)\s*\d{1,2}:\d{2}(?::00)?)?(?:\s*kwh)?$/.exec(words);
  if (clock) {
    const minutes = Number(clock[1]) * 60 + Number(clock[2]);
    return minutes <= 1440 && Number(clock[2]) < 60 ? { clock: minutes } : undefined;
  }
  const ordinal = /^(?:hh|h|p|period|slot|sp|kwh|int|interval|hour|v)?[ _-]*(\d{1,3})(?:[ _-]*kwh)?$/.exec(words);
  if (!ordinal) return undefined;
  const digits = ordinal[1]!;
  if (words.length === 4 && digits.length === 4) return undefined;
  return { ordinal: Number(digits) };
}
