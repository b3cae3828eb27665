/** Flow rates as meters show them; kept in litres a minute. */
export const FLOW_UNITS = ['l/min', 'l/s', 'm³/h'] as const;
export type FlowUnit = (typeof FLOW_UNITS)[number];

const L_PER_MIN: { readonly [unit in FlowUnit]: number } = { 'l/min': 1, 'l/s': 60, 'm³/h': 1000 / 60 };
/** More digits than any flow meter has. */
const DIGITS = 8;

const tidy = (value: number) => Number(value.toPrecision(DIGITS));
/** Both ways tidy, so that a unit changed there and back shows the figure that was typed. */
export const toLPerMin = (value: number, unit: FlowUnit): number => tidy(value * L_PER_MIN[unit]);
export const fromLPerMin = (lPerMin: number, unit: FlowUnit): number => tidy(lPerMin / L_PER_MIN[unit]);
