/** Flow rates as meters show them; kept in litres a minute. */
export const FLOW_UNITS = ['l/min', 'l/s', 'm³/h'] as const;
export type FlowUnit = (typeof FLOW_UNITS)[number];

const L_PER_MIN: { readonly [unit in FlowUnit]: number } = { 'l/min': 1, 'l/s': 60, 'm³/h': 1000 / 60 };
/** Kept with more digits than are shown, so that a unit changed there and back shows the figure that was typed. */
const KEPT_DIGITS = 14;
const SHOWN_DIGITS = 8;

export const toLPerMin = (value: number, unit: FlowUnit): number =>
  Number((value * L_PER_MIN[unit]).toPrecision(KEPT_DIGITS));
export const fromLPerMin = (lPerMin: number, unit: FlowUnit): number =>
  Number((lPerMin / L_PER_MIN[unit]).toPrecision(SHOWN_DIGITS));
