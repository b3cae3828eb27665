/** Which register of a meter a heading names, so that two files of one register are known for the same. */
import { FUEL_IDS, SALE_UNIT_IDS, SALE_UNITS } from '../../model/shapes/heating.ts';

/** Words that say what is counted or when, but not by which register. */
const GENERAL = new Set([
  ...FUEL_IDS,
  ...SALE_UNIT_IDS.flatMap((unit) => `${unit} ${SALE_UNITS[unit].many}`.split(' ')),
  ...(
    'a actual amount and at by consumed consumption cost daily data date delivered delivery electric electrical ' +
    'electricity end energy export exported export fuel generation half half-hourly halfhourly hh hour hourly ' +
    'import imported in interval kwh kw kvah local mean mains meter mwh of outdoor output per period power ' +
    'profile quantity read reading readings smart start supply temperature the time to usage use used utc value ' +
    'volume wh c m3 m³ ft3 ft³ hcf liter l therm therms °c heat bill bills units unit total temp ' +
    'january february march april may june july august september october november december ' +
    'jan feb mar apr jun jul aug sep sept oct nov dec q1 q2 q3 q4 ' +
    'verbrauch energie bezug kubikmeter consommation énergie energía consumo'
  ).split(' '),
]);

const YEAR = /^(19|20)\d\d$/;

/** "Night reading (kWh)" is "night", "Energy used (kWh)" is "": what tells registers apart and nothing else. */
export function registerName(heading: string): string {
  return heading
    .toLowerCase()
    .split(/[^\p{L}\p{N}°³]+/u)
    .filter((word) => word !== '' && !GENERAL.has(word) && !YEAR.test(word))
    .join(' ');
}
