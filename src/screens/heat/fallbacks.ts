/** What the model takes where a field is left empty, and where that comes from. Asked of the model's own assumptions, so that both agree. */

import { cylinderLossKWhPerDay } from '../../model/demand/cylinder-loss.ts';
import { peopleOfFloorArea } from '../../model/demand/occupancy.ts';
import { designFlow } from '../../model/heat-pump/flow.ts';
import type { Appraisal } from '../../model/shapes/appraisal.ts';
import type { Household } from '../../model/shapes/household.ts';
import { BASE_C, CYLINDER_LITRES, FLOOR_AREA_M2, HOT_C, PEOPLE, ROOM_C } from '../../model/shapes/usual-home.ts';
import { reference } from '../../reference/index.ts';
import { grouped } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { Fallback } from '../shared/given.ts';
import { formatPlain } from '../shared/number-text.ts';

export type FallbackField =
  | 'floorAreaM2'
  | 'people'
  | 'designOutdoorC'
  | 'roomC'
  | 'baseC'
  | 'efficiency'
  | 'litresPerDay'
  | 'hotC'
  | 'cylinderLitres'
  | 'cylinderLossKWhPerDay'
  | 'flowC'
  | 'backupShare';

const FOAM_MM = 50;
const fallback = (text: string, source: string): Fallback => ({ text, source });

export function fallbackFor(field: FallbackField, household: Household, appraisal: Appraisal): Fallback {
  const area = household.home.floorAreaM2?.value;
  switch (field) {
    case 'floorAreaM2':
      return fallback(formatPlain(FLOOR_AREA_M2), say('a typical British home.'));
    case 'people':
      return area === undefined
        ? fallback(formatPlain(PEOPLE), say('the average British household.'))
        : fallback(grouped(peopleOfFloorArea(area), 1), say('as many as usually live on this floor area.'));
    case 'designOutdoorC': {
      const taken = appraisal.questions.find((question) => question.code === 'design-temperature-assumed')?.data;
      return taken
        ? fallback(
            formatPlain(Number(taken.outdoorC)),
            say('{place}, the {rule} set.', { place: String(taken.place), rule: String(taken.rule) }),
          )
        : fallback('', say('the nearest place in the table, once a heat loss is typed.'));
    }
    case 'roomC':
      return fallback(formatPlain(ROOM_C), say('as in most British homes.'));
    case 'baseC':
      return household.heat.roomC || household.heat.heatLossKW
        ? fallback(
            grouped(appraisal.demand.baseC, 1),
            say('room temperature less what people, sun and appliances give.'),
          )
        : fallback(
            grouped(appraisal.demand.signature?.baseC ?? BASE_C, 1),
            say('your own readings, or common practice.'),
          );
    case 'efficiency': {
      const { system } = household.present;
      const row = reference.efficiency[system === 'heat-pump' || system === 'other' ? 'gas-condensing' : system];
      return fallback(grouped(row.space.middle * 100), row.space.source);
    }
    case 'litresPerDay':
      return fallback('', say('worked out from the number of people.'));
    case 'hotC':
      return fallback(formatPlain(HOT_C), say('the usual draw-off temperature.'));
    case 'cylinderLitres':
      return fallback(formatPlain(CYLINDER_LITRES), say('the usual size beside a heat pump.'));
    case 'cylinderLossKWhPerDay': {
      const litres = household.hotWater.cylinderLitres?.value ?? CYLINDER_LITRES;
      const loss = cylinderLossKWhPerDay({ litres, foamMm: FOAM_MM, separatelyTimed: true });
      return fallback(grouped(loss, 1), say('by its size, with 50 mm of foam.'));
    }
    case 'flowC':
      return fallback(String(designFlow(household.machine).flowC), say('the usual one for these emitters.'));
    case 'backupShare':
      return fallback('0', say('none, except the weekly heat-up of the cylinder.'));
  }
}
