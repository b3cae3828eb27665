/** What a record is of and what its meter stands for. Apart from the record itself, whose shape takes time to make. */
import { z } from 'zod';
import { FUEL_IDS } from './heating.ts';

export const CARRIERS = [
  'electricity',
  ...FUEL_IDS,
  'heat',
  'water',
  'outdoor-temperature',
  'flow-temperature',
  'return-temperature',
  'source-temperature',
] as const;
export const Carrier = z.enum(CARRIERS);
export type Carrier = z.infer<typeof Carrier>;
/** Degrees rather than energy: their total is a mean. */
export const isTemperature = (carrier: Carrier): boolean => carrier.endsWith('-temperature');
/** Energy in kWh; water is kept by its volume in m³ and goes into no sum. */
export const isEnergy = (carrier: Carrier): boolean => !isTemperature(carrier) && carrier !== 'water';
/** Whether a record is of what the home uses, rather than of weather, water, what it sends out or makes itself. */
export const isUse = ({ carrier, role }: { readonly carrier: Carrier; readonly role: SeriesRole }): boolean =>
  isEnergy(carrier) && role !== 'export' && role !== 'generation';
/** Whether it may be asked what a record is beside others of its kind. */
export const standsBeside = (one: { readonly carrier: Carrier; readonly role: SeriesRole }): boolean =>
  isUse(one) || one.carrier === 'outdoor-temperature';
/**
 * What the meter stands for. `heat-pump` is a sub-meter on the machine, `export` and `generation` are never
 * summed with `import`, `machine` are the machine's own temperatures.
 */
export const SeriesRole = z.enum(['import', 'export', 'generation', 'heat-pump', 'heat-output', 'weather', 'machine']);
export type SeriesRole = z.infer<typeof SeriesRole>;
