import { usualPowerKW } from '../../model/balance/settle-home.ts';
import type { HomeBattery } from '../../model/shapes/choices.ts';
import { referenceOf } from '../../reference/index.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { TickField } from '../shared/choice-field.tsx';
import { GivenField } from '../shared/given-field.tsx';
import { NumberField } from '../shared/number-field.tsx';
import { formatPlain } from '../shared/number-text.ts';
import { PER_CENT, putEquipment, usual, withField } from './equipment.ts';

export function BatteryFields() {
  const { household, today, change } = useHousehold();
  const reference = referenceOf(household);
  const { battery } = household;
  const set = (field: Parameters<typeof withField<HomeBattery>>[1]) =>
    battery && change(putEquipment({ battery: withField<HomeBattery>(battery, field) }));
  return (
    <div className="fields">
      <NumberField
        label={say('Battery')}
        value={battery?.usableKWh}
        limits={{ min: 0.1, max: 200, unit: 'kWh', why: say('A battery that holds nothing is left empty here.') }}
        note={say('What it gives from full to empty, as the offer says.')}
        onChange={(usableKWh) =>
          change(putEquipment({ battery: usableKWh === undefined ? undefined : { ...battery, usableKWh } }))
        }
      />
      {battery ? (
        <>
          <GivenField
            label={say('Power of the battery')}
            given={battery.powerKW}
            limits={{ min: 0.1, max: 100, unit: 'kW' }}
            today={today}
            fallback={{
              ...usual(reference.battery.powerPerKWh),
              text: formatPlain(Number(usualPowerKW(battery.usableKWh, reference).toPrecision(3))),
            }}
            onChange={(powerKW) => set({ powerKW })}
          />
          <GivenField
            label={say('Comes out of what goes in')}
            given={battery.roundTripShare}
            limits={{ min: 30, max: 100, unit: '%' }}
            scale={PER_CENT}
            today={today}
            fallback={usual(reference.battery.roundTripShare, PER_CENT)}
            onChange={(roundTripShare) => set({ roundTripShare })}
          />
          <GivenField
            label={say('Draws itself')}
            given={battery.standbyW}
            limits={{ min: 0, max: 500, unit: 'W' }}
            today={today}
            fallback={usual(reference.battery.standbyW)}
            onChange={(standbyW) => set({ standbyW })}
          />
          <TickField
            label={say('May be filled from the grid in cheap hours')}
            checked={battery.fromNight ?? false}
            note={say('Its control and the contract must allow it.')}
            onChange={(fromNight) => set({ fromNight })}
          />
        </>
      ) : null}
    </div>
  );
}
