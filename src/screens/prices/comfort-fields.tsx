import type { Comfort } from '../../model/shapes/choices.ts';
import { grouped } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { type Choice, ChoiceField, sayChoices, TickField } from '../shared/choice-field.tsx';
import { NumberField } from '../shared/number-field.tsx';
import { patchSection } from '../shared/patch.ts';

const MASSES: readonly Choice<NonNullable<Comfort['mass']>>[] = [
  { value: 'very light', label: phrase('timber or steel frame, carpets') },
  { value: 'light', label: phrase('timber frame, some masonry') },
  { value: 'medium', label: phrase('masonry outside, light inside') },
  { value: 'heavy', label: phrase('masonry and concrete') },
  { value: 'very heavy', label: phrase('thick stone or concrete throughout') },
];

/** Whether the heat pump moves its hours, and how far the rooms may go for it. */
export function ComfortFields() {
  const { household, change } = useHousehold();
  const { comfort } = household;
  if (!household.tariffs.some(({ fuel }) => fuel === 'electricity') && !household.roof) return null;
  const patch = (part: Partial<Comfort>) => change(patchSection('comfort', part));
  return (
    <section>
      <h3>{say('Best hours of the heat pump')}</h3>
      <div className="fields">
        <TickField
          label={say('Count the best hours of each tariff')}
          checked={comfort?.hours === 'best'}
          onChange={(checked) => patch({ hours: checked ? 'best' : undefined })}
          note={say('Only with a control that can choose them by price.')}
        />
        <NumberField
          label={say('Rooms may be cooler by')}
          value={comfort?.downK}
          limits={{ min: 0, max: 5, unit: 'K' }}
          placeholder="1"
          note={say('Never below 18 °C.')}
          onChange={(downK) => patch({ downK })}
        />
        <NumberField
          label={say('Rooms may be warmer by')}
          value={comfort?.upK}
          limits={{ min: 0, max: 3, unit: 'K' }}
          placeholder={grouped(0.5, 1)}
          onChange={(upK) => patch({ upK })}
        />
        <ChoiceField
          label={say('Built of')}
          value={comfort?.mass}
          emptyLabel={say('not known')}
          choices={sayChoices(MASSES)}
          note={say('Counts where the floor area is known.')}
          onChange={(mass) => patch({ mass })}
        />
        <NumberField
          label={say('Time constant of the home')}
          value={comfort?.timeConstantHours}
          limits={{ min: 3, max: 400, unit: 'h' }}
          note={say('In hours, where a calculation or a measurement gives it. It stands above “Built of”.')}
          onChange={(timeConstantHours) => patch({ timeConstantHours })}
        />
      </div>
    </section>
  );
}
