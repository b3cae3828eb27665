/** How the walk-through speaks of factors, shares and causes. */

const WHOLES = ['nothing', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const QUARTERS = ['', 'a quarter', 'a half', 'three quarters'];

/** A number in words to the nearest quarter: 2.44 is "two and a half". Above ten it stays a figure. */
export function spokenQuarters(value: number): string {
  const quarters = Math.round(Math.max(0, value) * 4);
  const whole = Math.floor(quarters / 4);
  const rest = quarters % 4;
  if (whole >= WHOLES.length) return value.toFixed(0);
  if (rest === 0) return WHOLES[whole]!;
  return whole === 0
    ? `${QUARTERS[rest]} of one`.replace('a half of one', 'half of one')
    : `${WHOLES[whole]} and ${QUARTERS[rest]}`;
}

/** A seasonal factor as it is spoken: one decimal. */
export const spokenFactor = (value: number): string => value.toFixed(1);

/** How many of the equally likely futures are cheaper and how many dearer; a future exactly equal is neither. */
export function countFutures(twenty: readonly number[]): { less: number; more: number } {
  return { less: twenty.filter((pence) => pence > 0).length, more: twenty.filter((pence) => pence < 0).length };
}

const DRIVERS: Record<string, string> = {
  'electricity-price': 'the price of electricity',
  'space-factor': 'how well the machine does in your home',
  'water-factor': 'how well the machine makes hot water',
  'space-heat': 'how much heat your rooms need',
  'water-heat': 'how much hot water you use',
  winter: 'the winter',
  'other-fuel-price': 'the price of the other fuel',
  'other-efficiency': 'how well the other system burns its fuel',
  habits: 'how you live from year to year',
};
export const spokenDriver = (input: string): string => DRIVERS[input] ?? input.replaceAll('-', ' ');

export const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
