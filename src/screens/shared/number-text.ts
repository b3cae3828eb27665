/** Numbers as people type them, and the limits that a field holds them to. */
import { language, say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';

const hasDecimalComma = (): boolean => language() === 'de-DE';

export type NumberReading =
  | { readonly kind: 'empty' }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'not a number'; readonly text: string };

/** Reads "4,500", "4 500", "7.25" and "£7.25", or "4.500" and "7,25" in German; the other way about is not guessed at. */
export function readNumber(text: string): NumberReading {
  const trimmed = text
    .trim()
    .replace(/^[£€$]\s*|\s*€$/g, '')
    .replace(/−/g, '-');
  if (trimmed === '') return { kind: 'empty' };
  const written = hasDecimalComma() ? trimmed.replace(/[.,]/g, (sign) => (sign === ',' ? '.' : ',')) : trimmed;
  const grouped = /^-?\d{1,3}([, ]\d{3})+(\.\d+)?$/.test(written);
  const plain = grouped ? written.replace(/[, ]/g, '') : written;
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(plain)) return { kind: 'not a number', text: trimmed };
  return { kind: 'number', value: Number(plain) };
}

export interface NumberLimits {
  readonly min: number;
  readonly max: number;
  readonly whole?: boolean;
  readonly unit: string;
  /** Why a value outside makes no sense, as a sentence; shown with the refusal. */
  readonly why?: string;
}

/** Why a typed number is refused, or null when it is within the limits. */
export function refuseNumber(reading: NumberReading, limits: NumberLimits): string | null {
  const { min, max } = limits;
  const unit = limits.unit === '' ? '' : ` ${sayTold(limits.unit)}`;
  const expected = `${say('{low} to {high}', { low: sayNumber(min), high: sayNumber(max) })}${unit}`;
  if (reading.kind === 'empty') return null;
  if (reading.kind === 'not a number') {
    return say('“{text}” is not a number. A number from {expected} is expected.', { text: reading.text, expected });
  }
  if (limits.whole === true && !Number.isInteger(reading.value)) {
    return say('{value} is not a whole number. A whole number from {expected} is expected.', {
      value: sayNumber(reading.value),
      expected,
    });
  }
  if (reading.value < min || reading.value > max) {
    const why = limits.why === undefined ? '' : ` ${limits.why}`;
    return say('{value}{unit} is outside {expected}.{why}', { value: sayNumber(reading.value), unit, expected, why });
  }
  return null;
}

/** A number for a field: no grouping, no trailing zeros, no more decimals than a person would type. */
export function formatPlain(value: number): string {
  const text = String(Number(value.toFixed(6)));
  return hasDecimalComma() ? text.replace('.', ',') : text;
}

/** The same inside a sentence, with a true minus sign. */
export const sayNumber = (value: number): string => formatPlain(value).replace('-', '−');
