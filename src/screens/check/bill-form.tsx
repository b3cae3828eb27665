/** A later bill, taken from the evidence or typed from the paper. */

import { useEffect, useId, useRef, useState } from 'react';
import { Said } from '../../charts/said.tsx';
import type { BillPrefill, OpenHousehold } from '../../desk/contract.ts';
import { usualOther } from '../../model/bill-gap/bill-doubts.ts';
import { civilDateOf } from '../../model/calendar/instant.ts';
import { sumRegisters } from '../../model/evidence/sum-registers.ts';
import type { BillCheckInput } from '../../model/shapes/bill-check.ts';
import type { Series } from '../../model/shapes/evidence.ts';
import { sumOf } from '../../model/units/sums.ts';
import { referenceOf } from '../../reference/index.ts';
import { daysWorking } from '../../words/explained/record.ts';
import {
  counted,
  daySpan,
  exactKWh,
  longDate,
  moneySign,
  monthSpan,
  penceSign,
  spokenKWh,
} from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { ChoiceField, PickField } from '../shared/choice-field.tsx';
import { DateEntry } from '../shared/date-entry.tsx';
import { Field, fieldIds } from '../shared/field.tsx';
import { NumberField } from '../shared/number-field.tsx';
import { FigureButton } from '../shared/spoken.tsx';
import { dayBefore, daysOf, estimateInForce, hasHole, listBills, listMeters, listSpans } from './bills.ts';
import {
  type CheckDraft,
  draftOfBill,
  draftOfReadings,
  emptyDraft,
  findOwnWeather,
  finishDraft,
  spanOf,
} from './check-draft.ts';

export function BillForm(props: { readonly busy: boolean; readonly onRun: (input: BillCheckInput) => void }) {
  const { household, series: registers, estimates } = useHousehold();
  const series = sumRegisters(registers);
  const inForce = estimateInForce(estimates, household);
  const form = useCheckDraft(inForce, series);
  const { draft, filled } = form;
  const [asked, setAsked] = useState(false);
  const span = spanOf(draft);
  const weather = span ? findOwnWeather(series, span.from, span.to) : null;
  const others =
    span && draft.meter === 'whole-house'
      ? usualOther(household, span, referenceOf(household), series, inForce.madeOn.slice(0, 10))
      : null;
  const result = finishDraft(draft);
  const run = () => {
    setAsked(true);
    if (result.kind === 'whole') props.onRun(result.input);
  };

  return (
    <section className="stack" aria-labelledby="bill-head" aria-busy={form.looking}>
      <h3 id="bill-head">{say('A later bill')}</h3>
      <BillFields form={form} inForce={inForce} hasSpan={span !== null} hasWeather={weather !== null} />
      {filled ? <p className="quiet small">{filledSentence(filled)}</p> : null}
      <MetersShow form={form} series={series} />
      {others === null ? null : (
        <p className="small">
          {say(
            '{own, select, own {By its records from before, this home took} other {A home like this takes}} about {units} for other things in {own, select, own {as many} other {these}} days.',
            { own: others.isOwn ? 'own' : 'usual', units: spokenKWh(others.kWh) },
          )}{' '}
          <button type="button" onClick={() => form.set({ otherKWh: Math.round(others.kWh) })}>
            {say('Use it')}
          </button>
        </p>
      )}
      {weather ? (
        <p className="quiet small">{say('The weather of these days comes from {name}.', { name: weather.name })}</p>
      ) : null}
      <div className="actions">
        <button type="button" className="main" disabled={props.busy} onClick={run}>
          {props.busy ? say('Checking …') : say('Check the bill')}
        </button>
        {result.kind === 'whole' ? <span className="quiet small">{counted(result.days, 'day')}</span> : null}
      </div>
      {asked && result.kind === 'wanting' ? (
        <p className="refusal" role="alert">
          {result.sentence}
        </p>
      ) : null}
    </section>
  );
}

type EstimateSummary = OpenHousehold['estimates'][number];
type Form = ReturnType<typeof useCheckDraft>;
type Days = { readonly from: string; readonly to: string };

/** The bill as it is typed, and what the readings fill in before anything is. */
function useCheckDraft(inForce: EstimateSummary, series: readonly Series[]) {
  const { household, estimates } = useHousehold();
  const [draft, setDraft] = useState<CheckDraft>(() => emptyDraft(inForce.id));
  const [filled, setFilled] = useState<BillPrefill | null>(null);
  const typed = useRef(false);
  /** What was typed since readings were chosen last; another object once something else was chosen. */
  const typedSince = useRef<Partial<CheckDraft>>({});
  const [looking, setLooking] = useState(false);
  const set = (part: Partial<CheckDraft>) => {
    typed.current = true;
    Object.assign(typedSince.current, part);
    setDraft((before) => ({ ...before, ...part }));
  };

  const estimate = estimates.find(({ id }) => id === draft.estimateId) ?? inForce;
  const estimatedOn = civilDateOf(estimate.madeOn, household.zone);
  const bills = listBills(series, estimatedOn);
  const spans = listSpans(series, estimatedOn);
  const hasSpans = spans.length > 0;

  // What the readings say stands there before anything is typed; a failure leaves the fields empty, as without readings.
  useEffect(() => {
    if (!hasSpans || typed.current) return;
    let gone = false;
    setLooking(true);
    call('check.prefill', { estimateId: estimate.id })
      .then(
        (found) => {
          if (gone || typed.current || !found) return;
          setFilled(found);
          setDraft((before) => draftOfReadings(before, found));
        },
        () => {},
      )
      .finally(() => setLooking(false));
    return () => {
      gone = true;
    };
  }, [estimate.id, hasSpans]);
  /** What somebody types while the answer is on its way stays; days of their own make it the answer to another question. */
  const takeReadings = async (span: Days) => {
    typed.current = true;
    const since: Partial<CheckDraft> = {};
    typedSince.current = since;
    setLooking(true);
    const found = await call('check.prefill', { estimateId: estimate.id, from: span.from, to: span.to }).catch(
      () => null,
    );
    setLooking(false);
    if (!found || typedSince.current !== since || 'from' in since || 'lastDay' in since) return;
    setFilled(found);
    setDraft((before) => ({ ...draftOfReadings(before, found), ...since }));
  };
  /** The price of other days goes, or never comes; one that somebody typed stays: before the answer came or while it was on its way. */
  const takePrice = async (days: Days) => {
    const rounded = (one: BillPrefill | null) =>
      one?.pencePerKWh === undefined ? undefined : Number(one.pencePerKWh.toFixed(2));
    const found = await call('check.prefill', { estimateId: estimate.id, from: days.from, to: days.to }).catch(
      () => null,
    );
    setFilled(found);
    setDraft((now) => {
      const span = spanOf(now);
      const isOfThese = span?.from === days.from && span.to === days.to;
      const isTyped = now.pencePerKWh !== undefined && now.pencePerKWh !== rounded(filled);
      return isOfThese && !isTyped ? { ...now, pencePerKWh: rounded(found) } : now;
    });
  };
  const takeBill = (bill: (typeof bills)[number]) => {
    typed.current = true;
    typedSince.current = {};
    setFilled(null);
    setDraft((before) => draftOfBill(before, bill));
  };
  return { draft, filled, looking, set, bills, spans, takeBill, takeReadings, takePrice };
}

/** Which bill it is: the estimate that it is held against, where it comes from, and what it says. */
function BillFields(props: {
  readonly form: Form;
  readonly inForce: EstimateSummary;
  readonly hasSpan: boolean;
  readonly hasWeather: boolean;
}) {
  const { form, inForce, hasSpan, hasWeather } = props;
  const { draft, set, bills, spans } = form;
  const { household, estimates } = useHousehold();
  return (
    <div className="fields fields-tight">
      {estimates.length > 1 ? (
        <ChoiceField
          label={say('Compared with')}
          value={draft.estimateId}
          choices={estimates
            .toSorted((a, b) => b.number - a.number)
            .map(({ id, number, madeOn }) => ({
              value: id,
              label: say('estimate no. {number} of {date}', {
                number: String(number),
                date: longDate(civilDateOf(madeOn, household.zone)),
              }),
            }))}
          onChange={(estimateId) => set({ estimateId: estimateId ?? inForce.id })}
        />
      ) : null}
      {bills.length + spans.length > 0 ? (
        <ChoiceField
          label={say('From bills and readings')}
          value={undefined}
          emptyLabel={say('or type it below')}
          choices={[
            ...spans.map(({ key, name, from, to }) => ({
              value: key,
              label: `${name}, ${monthSpan(from, dayBefore(to))}`,
            })),
            ...bills.map(({ key, period, series: { name } }) => ({
              value: key,
              label: `${daySpan(period.from, dayBefore(period.to))}, ${exactKWh(period.kWh)}, ${name}`,
            })),
          ]}
          onChange={(key) => {
            const [bill, span] = [bills.find((one) => one.key === key), spans.find((one) => one.key === key)];
            if (bill) form.takeBill(bill);
            else if (span) void form.takeReadings(span);
          }}
        />
      ) : null}
      <DateField label={say('First day')} value={draft.from} onChange={(from) => set({ from })} />
      <DateField label={say('Last day')} value={draft.lastDay} onChange={(lastDay) => set({ lastDay })} />
      <AmountFields form={form} asksWeather={hasSpan && !hasWeather} />
    </div>
  );
}

/** What the meter and the bill say: units, price, charge, and how sure the reading is. */
function AmountFields({ form, asksWeather }: { readonly form: Form; readonly asksWeather: boolean }) {
  const { draft, set } = form;
  return (
    <>
      <PickField
        label={say('Read on')}
        value={draft.meter}
        choices={[
          { value: 'heat-pump', label: say('own meter') },
          { value: 'whole-house', label: say('whole home') },
        ]}
        onChange={(meter) => set({ meter })}
      />
      <NumberField
        label={draft.meter === 'heat-pump' ? say('kWh of the heat pump') : say('kWh of the whole bill')}
        value={draft.kWh}
        limits={{ min: 0, max: 200_000, unit: 'kWh' }}
        onChange={(kWh) => set({ kWh })}
      />
      {draft.meter === 'whole-house' ? (
        <NumberField
          label={say('Of these for other things')}
          value={draft.otherKWh}
          limits={{ min: 0, max: 200_000, unit: 'kWh' }}
          onChange={(otherKWh) => set({ otherKWh })}
          note={say('Lights, cooking and the rest, for the same days. Leave it empty if nobody knows.')}
        />
      ) : null}
      {draft.meter === 'whole-house' ? (
        <NumberField
          label={say('Used from the roof')}
          value={draft.ownUseKWh}
          limits={{ min: 0, max: 100_000, unit: 'kWh' }}
          onChange={(ownUseKWh) => set({ ownUseKWh })}
          note={say('Made by panels in these days and used at home. It is on no bill.')}
        />
      ) : null}
      <NumberField
        label={say('Price per kWh')}
        value={draft.pencePerKWh}
        limits={{ min: 0.1, max: 200, unit: penceSign() }}
        onChange={(pencePerKWh) => set({ pencePerKWh })}
        note={say('VAT included.')}
      />
      <NumberField
        label={say('Charged for these kWh')}
        value={draft.totalPounds}
        limits={{ min: 0, max: 50_000, unit: moneySign() }}
        onChange={(totalPounds) => set({ totalPounds })}
        note={say('Only where it is not kWh times price. Without the standing charge.')}
      />
      <ChangeFields form={form} />
      <PickField
        label={say('The reading is')}
        value={draft.readings}
        choices={[
          { value: 'actual', label: say('read') },
          { value: 'estimated', label: say('estimated') },
          { value: 'unknown', label: say('not said') },
        ]}
        onChange={(readings) => set({ readings })}
      />
      {asksWeather ? (
        <NumberField
          label={say('Degree days of these days')}
          value={draft.degreeDays}
          limits={{ min: 0, max: 10_000, unit: say('K day') }}
          onChange={(degreeDays) => set({ degreeDays })}
          note={say(
            'You have no weather for these days. Leave it empty if unknown; the weather then stays with the rest.',
          )}
        />
      ) : null}
    </>
  );
}

/** Whether the bill is on the tariff of the estimate, and what it would have cost on that. */
function ChangeFields({ form }: { readonly form: Form }) {
  const { draft, filled, set } = form;
  const tariffName = filled?.changed?.tariffName;
  return (
    <>
      <PickField
        label={say('Tariff since the estimate')}
        value={draft.tariff}
        choices={[
          { value: 'same', label: say('same tariff') },
          { value: 'changed', label: say('other tariff') },
        ]}
        onChange={(tariff) => set({ tariff })}
      />
      {draft.tariff === 'changed' ? (
        <>
          <DateField
            label={say('First day of the new tariff')}
            value={draft.changedOn}
            onChange={(changedOn) => set({ changedOn })}
          />
          <NumberField
            label={say('Price per kWh on the tariff before')}
            value={draft.beforePence}
            limits={{ min: 0.1, max: 200, unit: penceSign() }}
            onChange={(beforePence) => set({ beforePence })}
            note={
              tariffName
                ? say('Leave it empty: it is worked out from the tariffs of this home, now {tariff}.', {
                    tariff: tariffName,
                  })
                : say('What each of these kWh would have cost, VAT included.')
            }
          />
        </>
      ) : null}
    </>
  );
}

/** What each meter shows for the days, to be taken at a press. */
function MetersShow({ form, series }: { readonly form: Form; readonly series: readonly Series[] }) {
  const { openWorking } = useHousehold();
  const { draft } = form;
  const span = spanOf(draft);
  if (!span) return null;
  const meters = listMeters(series);
  const taken = (meter: Series, kWh: number) => ({
    kWh: Number(kWh.toFixed(1)),
    meter: meter.role === 'heat-pump' ? ('heat-pump' as const) : ('whole-house' as const),
  });
  const isTaken = ({ kWh, meter }: ReturnType<typeof taken>) => draft.kWh === kWh && draft.meter === meter;
  const shown = meters.flatMap((meter) => {
    const days = daysOf(meter, span.from, span.to);
    return days ? [{ meter, kWh: sumOf(days) }] : [];
  });
  return (
    <>
      {shown.map(({ meter, kWh }) => (
        <p key={meter.id} className="small">
          <Said
            text="{meter} shows {kWh} for these days."
            with={{
              meter: meter.name,
              kWh: (
                <FigureButton
                  text={exactKWh(kWh)}
                  working={daysWorking(meter, { from: draft.from, to: draft.lastDay, kWh })}
                  onOpen={openWorking}
                />
              ),
            }}
          />{' '}
          {isTaken(taken(meter, kWh)) ? null : (
            <button
              type="button"
              onClick={() => {
                form.set(taken(meter, kWh));
                form.takePrice(span);
              }}
            >
              {say('Use it')}
            </button>
          )}
        </p>
      ))}
      {meters
        .filter((meter) => hasHole(meter, span.from, span.to))
        .map((meter) => (
          <p key={meter.id} className="small">
            {say(
              '{meter} has days missing among these, perhaps because a meter was changed. Type the kWh from the bill.',
              {
                meter: meter.name,
              },
            )}
          </p>
        ))}
    </>
  );
}

function filledSentence({ meterName, tariffName, from, to }: BillPrefill): string {
  const values = { months: monthSpan(from, dayBefore(to)), meter: sayTold(meterName) };
  return tariffName
    ? say('kWh of {months} from {meter}, the price from {tariff}.', { ...values, tariff: tariffName })
    : say('kWh of {months} from {meter}. The price is not known; type it.', values);
}

function DateField(props: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}) {
  const ids = fieldIds(useId());
  return (
    <Field ids={ids} label={props.label}>
      <DateEntry id={ids.entry} value={props.value} onChange={props.onChange} />
    </Field>
  );
}
