import type { FullMachine, Household } from '../../model/household/household.ts';
import { reference } from '../../reference/index.ts';
import { CylinderFields, PasteuriseField } from '../heat/cylinder-fields.tsx';
import { useHousehold } from '../household-context.tsx';
import { type Choice, PickField } from '../shared/choice-field.tsx';
import { GivenField } from '../shared/given-field.tsx';
import { patchSection } from '../shared/patch.ts';
import { BrineMonths } from './brine-months.tsx';
import { brineByMonth, type WorkedYear } from './full-year.ts';
import { RatedPointsField } from './rated-points.tsx';
import { settledFallback } from './settled-fallback.ts';

type Control = NonNullable<FullMachine['control']>;
type Flow = NonNullable<FullMachine['flow']>;
type ArrayKind = NonNullable<FullMachine['ground']>['kind'];
const CONTROLS: readonly Choice<Control>[] = [
  { value: 'fixed-speed', label: 'on and off' },
  { value: 'variable', label: 'variable speed' },
];
const FLOWS: readonly Choice<Flow>[] = [
  { value: 'weather-compensated', label: 'by weather' },
  { value: 'fixed', label: 'fixed' },
];
const ARRAYS: readonly Choice<ArrayKind>[] = [
  { value: 'vertical', label: 'boreholes' },
  { value: 'horizontal', label: 'trenches' },
];

/** What the full way asks first: the data sheet, the output, the ground, the control of the flow. */
export function FullFields({ worked }: { readonly worked: WorkedYear }) {
  const { household, today, change } = useHousehold();
  const { machine } = household;
  const full = machine.full ?? {};
  const patch = (part: Partial<FullMachine>) => change(patchFull(part));
  const usually = (name: string, scale?: number) => settledFallback(worked.settled, name, scale);
  const kind = full.ground?.kind ?? 'vertical';
  const ground = (part: Partial<NonNullable<FullMachine['ground']>>) =>
    patch({ ground: withoutUndefined({ kind, ...full.ground, ...part }) });
  return (
    <>
      <section>
        <h3>From the data sheet</h3>
        <RatedPointsField
          source={machine.source}
          given={full.ratedPoints}
          today={today}
          onChange={(ratedPoints) => patch({ ratedPoints })}
        />
        <div className="fields">
          <GivenField
            label={machine.source === 'ground' ? 'Most output, at B0/W35' : 'Most output, coldest day'}
            given={full.capacityKW}
            limits={{ min: 0.1, max: 200, unit: 'kW' }}
            today={today}
            fallback={usually('Output of the machine')}
            onChange={(capacityKW) => patch({ capacityKW })}
          />
          <PickField
            label="Runs"
            value={full.control ?? (machine.source === 'ground' ? 'fixed-speed' : 'variable')}
            choices={CONTROLS}
            note={full.control === undefined ? 'Assumed: usual for this source.' : undefined}
            onChange={(control) => patch({ control })}
          />
          <PickField
            label="Water to the rooms is set"
            value={full.flow ?? 'weather-compensated'}
            choices={FLOWS}
            note={full.flow === undefined ? 'Assumed: weather-compensated.' : undefined}
            onChange={(flow) => patch({ flow })}
          />
          {machine.source === 'ground' ? (
            <>
              <PickField
                label="Pipes in the ground"
                value={kind}
                choices={ARRAYS}
                note={full.ground === undefined ? 'Assumed: boreholes.' : undefined}
                onChange={(next) => patch({ ground: { kind: next } })}
              />
              <GivenField
                label="Depth"
                given={full.ground?.depthM}
                limits={{ min: 0.3, max: 400, unit: 'm' }}
                today={today}
                fallback={
                  full.brineMonthlyC ? { text: '', source: 'not needed, since the brine is typed' } : usually('Depth')
                }
                onChange={(depthM) => ground({ depthM })}
              />
            </>
          ) : null}
        </div>
      </section>
      <details className="notes machine-more">
        <summary>Pumps, hot water and finer points, if you have them</summary>
        <MoreFields worked={worked} patch={patch} ground={ground} />
      </details>
    </>
  );
}

function MoreFields(props: {
  readonly worked: WorkedYear;
  readonly patch: (part: Partial<FullMachine>) => void;
  readonly ground: (part: Partial<NonNullable<FullMachine['ground']>>) => void;
}) {
  const { worked, patch, ground } = props;
  const { household, today, change } = useHousehold();
  const { machine } = household;
  const full = machine.full ?? {};
  const usually = (name: string, scale?: number) => settledFallback(worked.settled, name, scale);
  const array = reference.ground.arrays[full.ground?.kind ?? 'vertical'];
  return (
    <div className="fields machine-finer">
      <GivenField
        label="Source pump, running"
        given={full.sourcePumpW}
        limits={{ min: 0, max: 5000, unit: 'W' }}
        today={today}
        fallback={usually('Source pump or fan')}
        onChange={(sourcePumpW) => patch({ sourcePumpW })}
      />
      <GivenField
        label="Heating pump, running"
        given={full.circulatorW}
        limits={{ min: 0, max: 2000, unit: 'W' }}
        today={today}
        fallback={usually('Pump of the heating circuit')}
        onChange={(circulatorW) => patch({ circulatorW })}
      />
      <GivenField
        label="Standby, all year"
        given={full.standbyW}
        limits={{ min: 0, max: 500, unit: 'W' }}
        today={today}
        fallback={usually('Standby')}
        onChange={(standbyW) => patch({ standbyW })}
      />
      <CylinderFields keptAtLabel="Hot water kept at" />
      <PasteuriseField />
      <GivenField
        label="Flow less return, coldest day"
        given={full.spreadK}
        limits={{ min: 1, max: 20, unit: 'K' }}
        today={today}
        fallback={usually('Flow less return')}
        onChange={(spreadK) => patch({ spreadK })}
      />
      <GivenField
        label="Curve set too high by"
        given={full.curveShiftK}
        limits={{ min: -10, max: 25, unit: 'K' }}
        today={today}
        fallback={{ text: '0', source: 'just what the rooms need' }}
        onChange={(curveShiftK) => patch({ curveShiftK })}
      />
      {full.control === 'variable' || (machine.source === 'air' && full.control === undefined) ? (
        <GivenField
          label="Least output without stopping"
          given={full.leastShare}
          limits={{ min: 10, max: 100, unit: '%' }}
          scale={100}
          today={today}
          fallback={usually('Least output', 100)}
          onChange={(leastShare) => patch({ leastShare })}
        />
      ) : null}
      <GivenField
        label="Installed against tested"
        given={full.installedShare}
        limits={{ min: 50, max: 110, unit: '%' }}
        scale={100}
        today={today}
        help="How much of the tested COP is reached in homes."
        fallback={{ ...usually('Installed against rated', 100), source: 'measured homes lie below certificates' }}
        onChange={(installedShare) => patch({ installedShare })}
      />
      <GivenField
        label="Heat from the backup heater"
        given={machine.backupShare}
        limits={{ min: 0, max: 100, unit: '%' }}
        scale={100}
        today={today}
        help="Beyond what the output falls short of."
        fallback={{ text: '0', source: 'none in any case' }}
        onChange={(backupShare) => change(patchSection('machine', { backupShare }))}
      />
      {machine.source === 'ground' ? (
        <>
          <GivenField
            label="Size of the array"
            given={full.ground?.size}
            limits={{ min: 20, max: 500, unit: '%' }}
            scale={100}
            today={today}
            help="Against the usual one for this heat loss."
            fallback={{ text: '100', source: 'the usual one' }}
            onChange={(size) => ground({ size })}
          />
          <GivenField
            label="Brine below the ground, hard cold"
            given={full.ground?.dropK}
            limits={{ min: 0, max: 25, unit: 'K' }}
            today={today}
            help="After weeks at the design heat, usual array."
            fallback={{ text: String(array.dropK.value), source: 'brine at 4 to 9 °C over a season, from memory' }}
            onChange={(dropK) => ground({ dropK })}
          />
          <BrineMonths
            given={full.brineMonthlyC}
            workedOutC={brineByMonth(worked)}
            today={today}
            onChange={(brineMonthlyC) => patch({ brineMonthlyC })}
          />
        </>
      ) : null}
    </div>
  );
}

function withoutUndefined<T extends object>(part: T): T {
  return Object.fromEntries(Object.entries(part).filter(([, value]) => value !== undefined)) as T;
}

/** A change inside the fields of the full way; a field set to undefined is taken out. */
function patchFull(part: Partial<FullMachine>) {
  return (household: Household) =>
    patchSection('machine', { full: withoutUndefined({ ...household.machine.full, ...part }) })(household);
}
