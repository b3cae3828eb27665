import { say } from '../../words/say.ts';
import { BatteryFields } from './battery-fields.tsx';
import { CarFields } from './car-fields.tsx';
import { RoofFields } from './roof-fields.tsx';

/** What the household has or may take beside its heating: panels, a battery, an electric car. */
export function EquipmentSection() {
  return (
    <section>
      <h3>{say('Roof, battery and car')}</h3>
      <p className="explain quiet">
        {say(
          'What is typed here is counted in “Which tariff”, for each way of heating alike. Leave empty what there is not.',
        )}
      </p>
      <p className="explain quiet">
        {say('Panels, batteries and chargers are connected by a qualified electrician only.')}
      </p>
      <RoofFields />
      <BatteryFields />
      <CarFields />
    </section>
  );
}
