import { BOUNDARIES, type Boundary } from '../../model/shapes/household.ts';
import { factor } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { fallbackFor } from '../heat/fallbacks.ts';
import { useHousehold } from '../household-context.tsx';
import { ChoiceField } from '../shared/choice-field.tsx';
import { GivenField } from '../shared/given-field.tsx';
import { patchSection } from '../shared/patch.ts';

/** What electricity each boundary counts. Source: SEPEMO-Build, Concept for evaluation of SPF, version 2.2, 2012. */
const BOUNDARY_WORDS: { readonly [boundary in Boundary]: string } = {
  H1: phrase('H1: the compressor alone'),
  H2: phrase('H2: with the brine pump or fan'),
  H3: phrase('H3: with the backup heater too'),
  H4: phrase('H4: with all pumps, as the meter sees it'),
};
const WHY_FACTOR = phrase('Below 1 it would be worse than a plain heater; above 8 no home has been measured.');

/** The quick way: factors for the whole year. Nothing here must be filled: field trials stand in. */
export function QuickFields() {
  const { household, appraisal, today, change } = useHousehold();
  const { machine } = household;
  const given = machine.spaceFactor ?? machine.waterFactor;
  return (
    <section>
      <h3>{say('Seasonal factors')}</h3>
      <div className="fields">
        <GivenField
          label={say('Seasonal factor, rooms')}
          given={machine.spaceFactor}
          limits={{ min: 1, max: 8, unit: '', why: say(WHY_FACTOR) }}
          today={today}
          fallback={{ text: factor(appraisal.machine.space.value), source: fieldSource(appraisal.machine.source) }}
          help={say('For the whole year, not the COP of one moment.')}
          onChange={(spaceFactor) => change(patchSection('machine', { spaceFactor }))}
        />
        <GivenField
          label={say('Factor for hot water')}
          given={machine.waterFactor}
          limits={{ min: 1, max: 8, unit: '', why: say(WHY_FACTOR) }}
          today={today}
          fallback={{
            text: factor(appraisal.machine.water.value),
            source: machine.spaceFactor
              ? say('worked out from the factor for the rooms')
              : fieldSource(appraisal.machine.source),
          }}
          onChange={(waterFactor) => change(patchSection('machine', { waterFactor }))}
        />
        <ChoiceField
          label={say('These factors include')}
          value={machine.boundary}
          emptyLabel={say('not known: {name} assumed', { name: appraisal.machine.boundary })}
          choices={BOUNDARIES.map((value) => ({ value, label: say(BOUNDARY_WORDS[value]) }))}
          note={
            given
              ? say('A factor without its boundary misleads. Ask whoever gave it.')
              : say('The more is counted, the lower the factor of the same heat pump.')
          }
          onChange={(boundary) => change(patchSection('machine', { boundary }))}
        />
        <GivenField
          label={say('Heat from the backup heater')}
          given={machine.backupShare}
          limits={{ min: 0, max: 100, unit: '%' }}
          scale={100}
          today={today}
          fallback={fallbackFor('backupShare', household, appraisal)}
          onChange={(backupShare) => change(patchSection('machine', { backupShare }))}
        />
      </div>
    </section>
  );
}

const fieldSource = (source: 'ground' | 'air') =>
  say('the middle of British {source, select, ground {ground} other {air}}-source field trials', { source });
