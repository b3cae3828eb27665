import { spokenCount, spokenKWh } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { type FlowInput, flowSeries } from './series.ts';

export const flowName = () => say('From ground and meter to rooms and hot water');

/** "In a year 9,690 units from the ground and 4,210 from the meter become 11,800 units for the rooms and 2,060 for the taps." */
export function flowSentence(input: FlowInput): string {
  const flow = flowSeries(input);
  if (!flow) return say('We do not know yet where the heat would come from and where it would go.');
  const { meterKWh, sourceKWh, roomsKWh, tapsKWh, source } = flow;
  const values = {
    source,
    meter: spokenKWh(meterKWh),
    added: spokenKWh(sourceKWh),
    meterCount: spokenCount(meterKWh),
    rooms: spokenKWh(roomsKWh),
    taps: spokenKWh(tapsKWh),
    tapsCount: spokenCount(tapsKWh),
  };
  if (roomsKWh + tapsKWh <= 0) return say('In a year the meter counts {meter}, and no heat is needed.', values);
  const comes =
    sourceKWh > 0
      ? say(
          'In a year {added} from {source, select, air {the air} other {the ground}} and {meterCount} from the meter',
          values,
        )
      : say('In a year {meter} from the meter', values);
  const said = { ...values, comes };
  if (tapsKWh <= 0) return say('{comes} become {rooms} of heat for the rooms.', said);
  if (roomsKWh <= 0) return say('{comes} become {taps} of hot water.', said);
  return say('{comes} become {rooms} for the rooms and {tapsCount} for hot water.', said);
}
