/** What the words above a column say of a bill: its readings, prices, standing charge, VAT, discounts and total. */

export type BillPart =
  | 'opening'
  | 'closing'
  | 'opening-kind'
  | 'closing-kind'
  | 'unit-price'
  | 'unit-charge'
  /** What a fuel cost: its units where a total stands beside it, else the whole bill. */
  | 'fuel-cost'
  | 'standing-price'
  | 'standing-charge'
  /** A standing charge whose words do not say whether it is for a day or the whole. */
  | 'standing'
  | 'days'
  | 'correction'
  | 'vat-rate'
  | 'vat-charge'
  /** VAT as a share or as money: the cells tell. */
  | 'vat'
  | 'discount'
  | 'credit'
  | 'charge'
  | 'net'
  | 'total';

const READ =
  /\b(meter )?(read(ing)?s?|index|register)\b|(zahler|meter|maler|anfangs?|end|alt|neu)?stand(?![a-z])|\b(releve|lectura|lettura)\b|aflaesning/;
const BEGINS =
  /\b(opening|previous|prev|start(ing)?|first|initial|old|last time|from|alt(er)?|anfang|ancien(ne)?|precedente?|anterior|inizial[ei]|vorige|begin|forrige)\b|(anfangs|alt)stand/;
const ENDS =
  /\b(closing|present|current|end(ing)?|latest|final|new|this|to|neu(er)?|ende|nouvel(le)?|nouveau|actuel(le)?|actual|attuale|finale|nieuwe?|eind|ny|slut)\b|(end|neu)stand/;
const KIND = /\b(type|kind|status|quality|basis|estimated|e ?\/ ?a|a ?\/ ?e)\b/;
const TAKEN_OFF = [
  ['discount', /discount|rebate|reduction/],
  ['credit', /\bcredits?\b|refund/],
  ['charge', /\b(other|extra|additional) charges?\b|\badjustments?\b|\bdebt\b|\bfees?\b|\blevy\b|brought forward/],
] as const;

/** @param words the heading in plain words */
export function billPartOf(words: string): BillPart | undefined {
  if (/\b(date|time)\b/.test(words)) return undefined;
  const reading = readingPart(words);
  if (reading) return reading;
  if (/standing|\bdaily (charge|rate)\b|\bcharge per day\b/.test(words)) return standingPart(words);
  const withVat = /\b(incl?(uding|usive|\.)?|with|after|before|excl?(uding|usive|\.)?|ex|without|of)\b[ .]*(of )?vat\b/;
  if (/\bnet\b|sub ?total|(before|excl?(uding|usive|\.)?|ex|without)[ .]*vat/.test(words) && !isPrice(words))
    return 'net';
  if (/\bvat\b/.test(words) && !withVat.test(words)) {
    if (/\d ?%/.test(words)) return 'vat-charge';
    if (/%|rate|per ?cent/.test(words)) return 'vat-rate';
    return /£|\bgbp\b|amount|charge|pounds?|pence|\(p\)/.test(words) ? 'vat-charge' : 'vat';
  }
  if (/^(number of |billing |bill |charged |no\.? of )?days( (billed|charged|in (bill|period)))?$/.test(words))
    return 'days';
  if (/correction|zustandszahl|z.?zahl\b|coefficiente c\b/.test(words)) return 'correction';
  // What corrects kWh is no money.
  const taken = /\b[mk]?wh\b|\bm3\b|m³/.test(words) ? undefined : TAKEN_OFF.find(([, pattern]) => pattern.test(words));
  if (taken) return taken[0];
  if (/\b(total|bill|invoice|amount due|payable|to pay)\b/.test(words) && isMoney(words)) return 'total';
  if (isPrice(words)) return 'unit-price';
  if (!/\b(cost|charges?|amount)\b|£/.test(words) || /\bwh\b|\bkwh\b|\bm3\b|m³/.test(words)) return undefined;
  if (/\b(units?|energy|usage|consumption|day|night|peak|off.?peak)\b/.test(words)) return 'unit-charge';
  if (/\b(electricity|gas|fuel|heating)\b/.test(words)) return 'fuel-cost';
  return undefined;
}

function readingPart(words: string): BillPart | undefined {
  if (!READ.test(words) || /heat|temp/.test(words)) return undefined;
  const part = BEGINS.test(words) ? 'opening' : ENDS.test(words) ? 'closing' : undefined;
  if (part === undefined) return undefined;
  return KIND.test(words) ? `${part}-kind` : part;
}

function standingPart(words: string): BillPart {
  if (/per day|\/ ?day|a day|p ?\/ ?d\b|daily|\brate\b/.test(words)) return 'standing-price';
  if (/days/.test(words)) return 'days';
  if (/\(p\)|\bp$|\bpence\b/.test(words) && !/total/.test(words)) return 'standing-price';
  return /total|£|\bgbp\b|amount|pounds?\b|cost/.test(words) ? 'standing-charge' : 'standing';
}

const isPrice = (words: string): boolean =>
  /p ?\/ ?kwh|£ ?\/ ?kwh|pence per|per kwh|\/ ?kwh|\bunit (price|rate|cost)\b|price per unit|\brate\b( ?\((p|£|pence)\))?$|\b(day|night|peak) (rate|price)\b/.test(
    words,
  ) && !/standing/.test(words);

const isMoney = (words: string): boolean =>
  /£|\bgbp\b|cost|charges?\b|price|due|payable|to pay|\bvat\b|\bpence\b|\bpounds?\b|\bbill (total|amount)\b|\btotal (bill|due)\b|invoice (total|amount)/.test(
    words,
  );

/** Parts that a file of readings may have too; their columns keep the role that their words give them anyway. */
export const isOfEnergy = (part: BillPart): boolean =>
  [
    'unit-price',
    'unit-charge',
    'fuel-cost',
    'total',
    'net',
    'opening-kind',
    'closing-kind',
    'standing-price',
    'standing',
  ].includes(part);

/** The register that a heading names: "Night rate p/kWh" → "night". */
export const registerWord = (words: string): string | undefined =>
  /\b(off.?peak|day|night|peak|evening|low|normal|rate ?[12]|r[12])\b(?! ?charge per)/.exec(
    words.replaceAll(/(per|a|\/|p\/) ?day\b/g, ''),
  )?.[1];
