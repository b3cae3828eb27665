import type { Settled } from '../../model/heat-pump/full/settle.ts';
import type { FullMachine, Household } from '../../model/shapes/household.ts';
import { isCode, type ToldCode, type Wording } from '../../model/shapes/told.ts';
import { reference } from '../../reference/index.ts';
import { phrase, say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { CylinderFields, PasteuriseField } from '../heat/cylinder-fields.tsx';
import { useHousehold } from '../household-context.tsx';
import { type Choice, PickField, sayChoices } from '../shared/choice-field.tsx';
import { type Fallback, shortSource } from '../shared/given.ts';
import { GivenField } from '../shared/given-field.tsx';
import { formatPlain, type NumberLimits } from '../shared/number-text.ts';
import { patchSection } from '../shared/patch.ts';
import { BrineMonths } from './brine-months.tsx';
import { brineByMonth, type WorkedYear } from './full-year.ts';
import { RatedPointsField } from './rated-points.tsx';

type Control = NonNullable<FullMachine['control']>;
type Flow = NonNullable<FullMachine['flow']>;
type ArrayKind = NonNullable<FullMachine['ground']>['kind'];
const CONTROLS: readonly Choice<Control>[] = [
  { value: 'fixed-speed', label: phrase('on and off') },
  { value: 'variable', label: phrase('variable speed') },
];
const FLOWS: readonly Choice<Flow>[] = [
  { value: 'weather-compensated', label: phrase('by weather') },
  { value: 'fixed', label: phrase('fixed') },
];
const ARRAYS: readonly Choice<ArrayKind>[] = [
  { value: 'vertical', label: phrase('boreholes') },
  { value: 'horizontal', label: phrase('trenches') },
];

/** Nobody digs a trench deeper or drills a borehole shallower. Common practice, no source. */
const DEPTHS: Readonly<Record<ArrayKind, NumberLimits>> = {
  vertical: { min: 10, max: 400, unit: 'm' },
  horizontal: { min: 0.3, max: 5, unit: 'm' },
};

/** What the full way asks first: the data sheet, the output, the ground, the control of the flow. */
export function FullFields({ worked }: { readonly worked: WorkedYear }) {
  const { household, today, change } = useHousehold();
  const { machine } = household;
  const full = machine.full ?? {};
  const patch = (part: Partial<FullMachine>) => change(patchFull(part));
  const usually = (code: ToldCode, scale?: number) => settledFallback(worked.settled, code, scale);
  const kind = full.ground?.kind ?? 'vertical';
  const ground = (part: Partial<NonNullable<FullMachine['ground']>>) =>
    patch({ ground: withoutUndefined({ kind, ...full.ground, ...part }) });
  return (
    <>
      <section>
        <h3>{say('From the data sheet')}</h3>
        <RatedPointsField
          source={machine.source}
          given={full.ratedPoints}
          today={today}
          onChange={(ratedPoints) => patch({ ratedPoints })}
        />
        <div className="fields">
          <GivenField
            label={machine.source === 'ground' ? say('Maximum output at B0/W35') : say('Maximum output, coldest day')}
            given={full.capacityKW}
            limits={{ min: 0.1, max: 200, unit: 'kW' }}
            today={today}
            fallback={usually('output')}
            onChange={(capacityKW) => patch({ capacityKW })}
          />
          <PickField
            label={say('Runs')}
            value={full.control ?? (machine.source === 'ground' ? 'fixed-speed' : 'variable')}
            choices={sayChoices(CONTROLS)}
            note={full.control === undefined ? say('Assumed: usual for this source.') : undefined}
            onChange={(control) => patch({ control })}
          />
          <PickField
            label={say('Flow temperature control')}
            value={full.flow ?? 'weather-compensated'}
            choices={sayChoices(FLOWS)}
            note={full.flow === undefined ? say('Assumed: weather-compensated.') : undefined}
            onChange={(flow) => patch({ flow })}
          />
          {machine.source === 'ground' ? (
            <>
              <PickField
                label={say('Pipes in the ground')}
                value={kind}
                choices={sayChoices(ARRAYS)}
                note={full.ground === undefined ? say('Assumed: boreholes.') : undefined}
                onChange={(next) => patch({ ground: { kind: next } })}
              />
              <GivenField
                label={say('Depth')}
                given={full.ground?.depthM}
                limits={DEPTHS[kind]}
                today={today}
                fallback={
                  full.brineMonthlyC
                    ? { text: '', source: say('not needed, since the brine is typed') }
                    : usually('depth')
                }
                onChange={(depthM) => ground({ depthM })}
              />
            </>
          ) : null}
        </div>
      </section>
      <details className="notes machine-more">
        <summary>{say('Pumps, hot water and more detail, if known')}</summary>
        <MoreFields worked={worked} patch={patch} ground={ground} />
      </details>
    </>
  );
}

interface FinerProps {
  readonly worked: WorkedYear;
  readonly patch: (part: Partial<FullMachine>) => void;
  readonly ground: (part: Partial<NonNullable<FullMachine['ground']>>) => void;
}

function MoreFields(props: FinerProps) {
  const { worked, patch } = props;
  const { household, today, change } = useHousehold();
  const { machine } = household;
  const full = machine.full ?? {};
  const usually = (code: ToldCode, scale?: number) => settledFallback(worked.settled, code, scale);
  return (
    <div className="fields machine-finer">
      <GivenField
        label={machine.source === 'ground' ? say('Brine pump, running') : say('Fan, beyond the tested COP')}
        given={full.sourcePumpW}
        limits={{ min: 0, max: 5000, unit: 'W' }}
        today={today}
        fallback={usually('source-pump')}
        onChange={(sourcePumpW) => patch({ sourcePumpW })}
      />
      <GivenField
        label={say('Heating circuit pump, running')}
        given={full.circulatorW}
        limits={{ min: 0, max: 2000, unit: 'W' }}
        today={today}
        fallback={usually('circulator-line')}
        onChange={(circulatorW) => patch({ circulatorW })}
      />
      <GivenField
        label={say('Standby, all year')}
        given={full.standbyW}
        limits={{ min: 0, max: 500, unit: 'W' }}
        today={today}
        fallback={usually('standby')}
        onChange={(standbyW) => patch({ standbyW })}
      />
      <CylinderFields keptAtLabel={say('Hot water temperature')} />
      <PasteuriseField />
      <GivenField
        label={say('Flow less return, coldest day')}
        given={full.spreadK}
        limits={{ min: 1, max: 20, unit: 'K' }}
        today={today}
        fallback={usually('flow-spread')}
        onChange={(spreadK) => patch({ spreadK })}
      />
      <GivenField
        label={say('Curve set too high by')}
        given={full.curveShiftK}
        limits={{ min: -10, max: 25, unit: 'K' }}
        today={today}
        fallback={usually('curve-shift')}
        onChange={(curveShiftK) => patch({ curveShiftK })}
      />
      {full.control === 'variable' || (machine.source === 'air' && full.control === undefined) ? (
        <GivenField
          label={say('Lowest output without stopping')}
          given={full.leastShare}
          limits={{ min: 10, max: 100, unit: '%' }}
          scale={100}
          today={today}
          fallback={usually('least-output', 100)}
          onChange={(leastShare) => patch({ leastShare })}
        />
      ) : null}
      <GivenField
        label={say('Installed, compared with tested')}
        given={full.installedShare}
        limits={{ min: 50, max: 110, unit: '%' }}
        scale={100}
        today={today}
        help={say('How much of the tested COP is reached in homes.')}
        fallback={{
          ...usually('installed-share', 100),
          source: say('measured homes are below their certificates'),
        }}
        onChange={(installedShare) => patch({ installedShare })}
      />
      <GivenField
        label={say('Heat from the backup heater')}
        given={machine.backupShare}
        limits={{ min: 0, max: 100, unit: '%' }}
        scale={100}
        today={today}
        help={say('On top of what the output cannot cover.')}
        fallback={{ text: '0', source: say('none in any case') }}
        onChange={(backupShare) => change(patchSection('machine', { backupShare }))}
      />
      {machine.source === 'ground' ? <ArrayFields {...props} /> : null}
    </div>
  );
}

function ArrayFields({ worked, patch, ground }: FinerProps) {
  const { household, today } = useHousehold();
  const full = household.machine.full ?? {};
  const array = reference.ground.arrays[full.ground?.kind ?? 'vertical'];
  return (
    <>
      <GivenField
        label={say('Size of the array')}
        given={full.ground?.size}
        limits={{ min: 20, max: 500, unit: '%' }}
        scale={100}
        today={today}
        help={say('Compared with the usual size for this heat loss.')}
        fallback={{ text: '100', source: say('the usual size') }}
        onChange={(size) => ground({ size })}
      />
      <GivenField
        label={say('Brine below ground temperature, long cold spell')}
        given={full.ground?.dropK}
        limits={{ min: 0, max: 25, unit: 'K' }}
        today={today}
        help={say('After weeks at full heat loss, usual array.')}
        fallback={{
          text: formatPlain(array.dropK.value),
          source: say('brine at 4 to 9 °C over a season, from memory'),
        }}
        onChange={(dropK) => ground({ dropK })}
      />
      <BrineMonths
        given={full.brineMonthlyC}
        workedOutC={brineByMonth(worked)}
        today={today}
        onChange={(brineMonthlyC) => patch({ brineMonthlyC })}
      />
    </>
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

/** Decimals that a person would type: none in figures of two digits and more. */
const decimalsOf = (value: number) => (Math.abs(value) >= 10 ? 0 : 2);

/** The line of that name as a fallback, its value times `scale`; an assumption whose source is a custom says so. */
export function settledFallback({ inputs }: Pick<Settled, 'inputs'>, code: ToldCode, scale = 1): Fallback {
  const line = inputs.find(({ name }) => isCode(name, code));
  if (!line) return { text: '', source: say('the data sheet’s output, once points are typed') };
  const shown = typeof line.value === 'number' ? line.value * scale : line.value;
  const text = typeof shown === 'number' ? formatPlain(Number(shown.toFixed(decimalsOf(shown)))) : sayTold(shown);
  return { text, source: plainOrigin(line.origin) };
}

const SOURCED: ReadonlySet<string> = new Set<ToldCode>(['by-reading', 'by-memory', 'by-computing', 'by-custom']);

/** Without the word for how a figure was come by, except where it was remembered. */
function plainOrigin(origin: Wording): string {
  if (typeof origin === 'string' || !SOURCED.has(origin.code)) return shortSource(sayTold(origin));
  const source = String(origin.data?.source);
  if (origin.code !== 'by-memory') return shortSource(sayTold(source));
  return shortSource(say('{source}, from memory', { source: sayTold(source.split(/[;(]/)[0]!.trim()) }));
}
