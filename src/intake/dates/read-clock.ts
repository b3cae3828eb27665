/** Clock times and what follows a date: time, am and pm, offset or the name of a clock. */
import { IMPOSSIBLE, isDigit, READ, type StampReader, type StampStatus, UNREADABLE } from './stamp-reader.ts';

/** am, p.m., "a. m." */
const HALF_OF_DAY = /^[ \u00a0\u202f]?([ap])\.?[ \u00a0\u202f]?m\.?/i;
const CLOCK_IMPOSSIBLE = 10_000;
/** Where the last clock time read ended. */
let clockEnd = 0;

/** Minutes after midnight of 00:30, 0:30, 0030, 00:29:59 (rounded), 12:30 pm, 24:00; -1 where it is none. */
export function readClock(text: string, from: number, to: number): number {
  let at = from;
  let hour = 0;
  while (at < to && isDigit(text.charCodeAt(at))) hour = hour * 10 + text.charCodeAt(at++) - 48;
  const lengthHour = at - from;
  let minute = 0;
  if (lengthHour === 4) {
    minute = hour % 100;
    hour = (hour - minute) / 100;
  } else {
    if (lengthHour === 0 || lengthHour > 2) return -1;
    const sign = text.charCodeAt(at);
    if (sign === 45 && isNextHour(text, at + 1, to, hour)) return hour * 60;
    const low = sign | 32;
    if ((low === 32 || low === 97 || low === 98 || low === 112 || low === 0xa0 || low === 0x202f) && at < to)
      return readHour(text, at, to, hour);
    // "13h", "13h30", "13.30"
    if (sign !== 58 && (at >= to || ((sign | 32) !== 104 && sign !== 46))) return -1;
    if ((sign | 32) === 104 && !isDigit(text.charCodeAt(at + 1))) {
      clockEnd = at + 1;
      return hour > 24 ? CLOCK_IMPOSSIBLE : hour * 60;
    }
    const tens = text.charCodeAt(at + 1) - 48;
    const ones = text.charCodeAt(at + 2) - 48;
    if (at + 3 > to || !(tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9)) return -1;
    minute = tens * 10 + ones;
    at += 3;
    if (at < to && (text.charCodeAt(at) === 58 || (sign === 46 && text.charCodeAt(at) === 46))) {
      const seconds = (text.charCodeAt(at + 1) - 48) * 10 + text.charCodeAt(at + 2) - 48;
      if (at + 3 > to || !(seconds >= 0 && seconds <= 60)) return -1;
      at += 3;
      if (at < to && (text.charCodeAt(at) === 46 || text.charCodeAt(at) === 44)) {
        at++;
        while (at < to && isDigit(text.charCodeAt(at))) at++;
      }
      // The last second of an interval stands for its end.
      if (seconds >= 30) minute += 1;
    }
  }
  const next = at < to ? text.charCodeAt(at) | 32 : 0;
  // A space, or the a or p of am and pm.
  if (next === 32 || next === 97 || next === 112 || next === 0xa0 || next === 0x202f) {
    const half = HALF_OF_DAY.exec(text.slice(at, Math.min(to, at + 7)));
    if (half) {
      if (hour < 1 || hour > 12) return CLOCK_IMPOSSIBLE;
      hour = (hour % 12) + (half[1]!.toLowerCase() === 'p' ? 12 : 0);
      at += half[0].length;
    }
  }
  clockEnd = at;
  if (minute > 60 || hour > 24 || hour * 60 + minute > 1440) return CLOCK_IMPOSSIBLE;
  return hour * 60 + minute;
}

/** The second half of "00-01", an hour by its two ends. */
function isNextHour(text: string, from: number, to: number, hour: number): boolean {
  let at = from;
  let next = 0;
  while (at < to && isDigit(text.charCodeAt(at))) next = next * 10 + text.charCodeAt(at++) - 48;
  clockEnd = at;
  return at === to && at > from && next <= 24 && (hour + 1) % 24 === next % 24;
}

/** "1 pm", "11am" */
function readHour(text: string, at: number, to: number, hour: number): number {
  // "2A:15" and "2B:15" are of the hour that autumn doubles, in the order in which they stand.
  const twice = hour >= 1 && hour <= 3 ? /^[AB]:?([0-5]\d)(?::\d\d)?/.exec(text.slice(at, Math.min(to, at + 7))) : null;
  if (twice) {
    clockEnd = at + twice[0].length;
    return hour * 60 + Number(twice[1]);
  }
  // "14 Uhr"
  const oClock = /^ (?:Uhr|uur)$/i.exec(text.slice(at, to));
  if (oClock) {
    clockEnd = to;
    return hour > 24 ? CLOCK_IMPOSSIBLE : hour * 60;
  }
  const half = HALF_OF_DAY.exec(text.slice(at, Math.min(to, at + 7)));
  if (!half) return -1;
  clockEnd = at + half[0].length;
  return hour < 1 || hour > 12 ? CLOCK_IMPOSSIBLE : ((hour % 12) + (half[1]!.toLowerCase() === 'p' ? 12 : 0)) * 60;
}

const HOUR = String.raw`(\d{1,2})(?:[:.h](\d{2})(?::\d{2})?|(?<=\d{2})(\d{2}))?h? ?(?:([ap])\.?m\.?)?`;
const SPAN = new RegExp(
  `^(?:(?:between|from|vo[mn]|del?|da|dall[ae]|desde|van|fra|från|od|kl\\.?|klo) (?:las? |kl\\.? ?)?)?${HOUR} ?(?:h|uhr)? ?(?:[-–—]|and|to|bis|till?|[aàá]|al|alle|(?:a|hasta) las?|hasta|tot|til|do) ?${HOUR} ?(?:h|uhr|hrs?|uur|hod\\.?)?$`,
);

/** A part of a day that is written by its two ends, "12am-1am", "von 0 bis 1 Uhr", in minutes after midnight. */
export function spanOf(text: string): readonly [from: number, to: number] | undefined {
  const parts = text.length > 30 ? null : SPAN.exec(text.toLowerCase());
  if (!parts) return undefined;
  const [from, to] = [0, 4].map((at) => {
    const [hour, minute, four, half] = parts.slice(at + 1, at + 5);
    const shown = half === undefined ? Number(hour) : (Number(hour) % 12) + (half === 'p' ? 12 : 0);
    return shown * 60 + Number(minute ?? four ?? 0);
  });
  if (from! >= 1440 || to! > 1440 || (parts[4] === undefined) !== (parts[8] === undefined)) return undefined;
  const length = (to! - from! + 1440) % 1440;
  // "00:00 to 00:59" names its last minute.
  const minutes = PART_LENGTHS.find((one) => length === one || length + 1 === one);
  return minutes === undefined ? undefined : [from!, from! + minutes];
}
const PART_LENGTHS = [5, 10, 15, 30, 60];

/** Minutes after midnight at which such a part begins; -1 where it is none. */
export const startOfSpan = (text: string): number => spanOf(text)?.[0] ?? -1;

/**
 * Whether the whole cell is a clock time, or a span of them, of which the first counts.
 * @param isNamedSo whether its heading speaks of time, so that 13.30, 1330 and 13-14 may be no numbers
 */
export function isClock(text: string, isNamedSo = false): boolean {
  const minutes = readClock(text, 0, text.length);
  if (startOfSpan(text) >= 0) return isNamedSo || !/^\d{1,2} ?[-–—] ?\d{1,2}$/.test(text);
  if (minutes < 0 || minutes > 1440) return false;
  if (clockEnd !== text.length) return /^\d{1,2}[:.]\d{2} ?(uhr|h|hrs)$/i.test(text);
  return /[:h]|\d ?[ap]\.?m/i.test(text) || (isNamedSo && /^(\d{1,2}\.\d{2}(\.\d{2})?|\d{4})$/.test(text));
}

/** What follows the date: space, T or comma, a clock time, an offset. */
export function readTail(text: string, start: number, to: number, out: StampReader): StampStatus {
  let at = start;
  let code = text.charCodeAt(at);
  if (out.kind !== 'time') {
    // T, t, comma, underscore, colon or spaces
    if (code === 84 || code === 116 || code === 44 || code === 95 || code === 58) code = text.charCodeAt(++at);
    else if (code !== 32) return UNREADABLE;
    while (code === 32 && at < to) code = text.charCodeAt(++at);
    if (at >= to) return READ;
    // "kl. 14.00"
    if ((code | 32) === 107) at += /^kl\.? ?/i.exec(text.slice(at, to))?.[0].length ?? 0;
    const clock = readClock(text, at, to);
    if (clock < 0) return UNREADABLE;
    if (clock === CLOCK_IMPOSSIBLE) return IMPOSSIBLE;
    out.civilMinute += clock;
    out.kind = 'time';
    at = clockEnd;
  }
  while (at < to && text.charCodeAt(at) === 32) at++;
  return at >= to ? READ : readOffset(text, at, to, out);
}

/** Offsets that files write by name; minutes east of UTC. */
const NAMED_OFFSETS: Record<string, number> = {
  utc: 0,
  gmt: 0,
  wet: 0,
  bst: 60,
  west: 60,
  cet: 60,
  cest: 120,
  met: 60,
  mest: 120,
  mez: 60,
  mesz: 120,
  eet: 120,
  eest: 180,
  est: -300,
  edt: -240,
  cst: -360,
  cdt: -300,
  mst: -420,
  mdt: -360,
  pst: -480,
  pdt: -420,
  awst: 480,
  acst: 570,
  acdt: 630,
  aest: 600,
  aedt: 660,
  nzst: 720,
  nzdt: 780,
};

function readOffset(text: string, from: number, to: number, out: StampReader): StampStatus {
  const code = text.charCodeAt(from);
  if (code === 43 || code === 45) {
    let at = from + 1;
    let digits = 0;
    let value = 0;
    for (; at < to; at++) {
      const digit = text.charCodeAt(at) - 48;
      if (digit === 10) continue;
      if (digit < 0 || digit > 9) break;
      value = value * 10 + digit;
      digits++;
    }
    if (digits !== 2 && digits !== 4) return UNREADABLE;
    const minutes = digits === 2 ? value * 60 : Math.floor(value / 100) * 60 + (value % 100);
    if (minutes > 14 * 60) return IMPOSSIBLE;
    out.offsetMinutes = code === 45 ? -minutes : minutes;
    // A zone's name in brackets may follow.
    return at >= to || text.charCodeAt(at) === 91 || text.charCodeAt(at) === 32 ? READ : UNREADABLE;
  }
  // Z by far the most often; no string is made for it.
  if ((code | 32) === 122 && to - from === 1) {
    out.offsetMinutes = 0;
    return READ;
  }
  const word = text.slice(from, to).toLowerCase();
  if (word === 'uhr' || word === 'h' || word === 'hrs') return READ;
  const named = NAMED_OFFSETS[word];
  if (named === undefined) return UNREADABLE;
  out.offsetMinutes = named;
  return READ;
}
