/** Every input that is drawn, for an engineer to follow: its middle where it has one of its own, how far it strays, and where both are from. */
import { z } from 'zod';
import type { AppraisedYears } from '../model/appraise.ts';
import type { Spread } from '../model/chance/multiplier.ts';
import type { Plan } from '../model/comparison/plan.ts';
import { SystemId } from '../model/shapes/appraisal.ts';
import { DELIVERED_FUELS } from '../model/shapes/heating.ts';
import type { Household } from '../model/shapes/household.ts';
import type { Reference, Value } from '../model/shapes/reference.ts';
import { tell, Wording } from '../model/shapes/told.ts';
import { FACTOR_CORRELATION } from '../model/uncertainty/simulate.ts';

/** Slopes of ln(multiplier) by a standard normal draw, below and above the middle. */
const Slopes = z.object({ below: z.number(), above: z.number() });

export const AuditInput = z.object({
  input: z.string(),
  system: SystemId.optional(),
  middle: z.number().optional(),
  unit: z.string().optional(),
  spread: Slopes,
  /** Where the middle is from, or the spread where there is no middle of its own. */
  source: Wording,
  /** Where the spread is from; absent where `source` says it. */
  spreadSource: Wording.optional(),
});
type AuditInput = z.infer<typeof AuditInput>;

const even = (deviation: number): Spread => ({ below: deviation, above: deviation });

const relative = (input: string, { value, source }: Value): AuditInput => ({ input, spread: even(value), source });

export function inputsOf(household: Household, years: AppraisedYears, reference: Reference): AuditInput[] {
  const { appraisal, priced, shared } = years;
  const { spread } = reference;
  const { demand } = appraisal;
  const ways = demand.estimates.map(({ way }) => tell(`from-${way}`));
  return [
    {
      input: 'space-heat',
      middle: demand.space.value,
      unit: 'kWh',
      spread: shared.spaceHeat,
      source: demand.space.working.source ?? tell('mean-of-ways', { shares: ways }),
    },
    {
      input: 'water-heat',
      middle: demand.water.value,
      unit: 'kWh',
      spread: shared.waterHeat,
      source: demand.water.working.source ?? tell('from-water-method'),
    },
    ...correlationsOf(years),
    relative('winter', { ...spread.winter, value: shared.winter }),
    relative('habits', spread.habits),
    ...pricesOf(years, reference),
    relative('price-correlation', spread.priceCorrelation),
    relative('pumps-and-standby', spread.machineExtras),
    relative('boiler-electricity', spread.boilerElectricity),
    ...priced.flatMap(({ plan }) => ofPlan(plan, household, reference)),
  ];
}

/** What goes together: a correlation, or a share, stands in place of a spread. */
function correlationsOf({ shared }: AppraisedYears): AuditInput[] {
  const { waterFollows, heatRestsOn } = shared;
  return [
    ...(waterFollows > 0
      ? [
          {
            input: 'water-follows-rooms',
            spread: even(waterFollows),
            source: tell('water-follows', { share: waterFollows }),
          },
        ]
      : []),
    {
      input: 'water-factor-follows-rooms',
      spread: even(FACTOR_CORRELATION),
      source: tell('factors-go-together', { share: FACTOR_CORRELATION }),
    },
    ...(heatRestsOn
      ? [
          {
            input: 'heat-rests-on-present',
            spread: even(heatRestsOn.weight),
            source: tell('heat-rests-on-record', { share: heatRestsOn.weight }),
          },
        ]
      : []),
  ];
}

function pricesOf({ appraisal, shared }: AppraisedYears, { spread, deliveredPrices }: Reference): AuditInput[] {
  const { prices } = appraisal;
  return [
    {
      ...relative('electricity-price', spread.electricityPrice),
      middle: prices.electricityPencePerKWh,
      unit: 'p/kWh',
      source: prices.electricity.origin,
      spreadSource: spread.electricityPrice.source,
    },
    {
      ...relative('gas-price', spread.gasPrice),
      middle: prices.gasPencePerKWh,
      unit: 'p/kWh',
      source: prices.gas.origin,
      spreadSource: spread.gasPrice.source,
    },
    ...DELIVERED_FUELS.flatMap((fuel): AuditInput[] => {
      const [basis, middle] = [prices[fuel], prices[`${fuel}PencePerKWh`]];
      if (!basis || middle === undefined) return [];
      const isPublished = deliveredPrices.some((row) => row.fuel === fuel && row.kind !== 'assumed');
      return [
        {
          input: `${fuel}-price`,
          middle,
          unit: 'p/kWh',
          spread: even(shared.deliveredPrice[fuel]),
          source: basis.origin,
          spreadSource: tell(isPublished ? 'spread-of-yearly-means' : 'spread-of-no-price'),
        },
      ];
    }),
  ];
}

function ofPlan(plan: Plan, household: Household, reference: Reference): AuditInput[] {
  const { id, serviceGBP, serviceSpread } = plan;
  const [space, water] = sourcesOf(plan, household, reference);
  return [
    { input: 'space-factor', system: id, middle: plan.spaceEfficiency, unit: '', spread: plan.spaceSpread, ...space },
    { input: 'water-factor', system: id, middle: plan.waterEfficiency, unit: '', spread: plan.waterSpread, ...water },
    {
      input: 'service',
      system: id,
      middle: serviceGBP.value,
      unit: 'GBP',
      spread: even(serviceSpread),
      source: serviceGBP.origin,
      spreadSource: serviceSpread > 0 ? reference.spread.service.source : tell('spread-none-agreed'),
    },
  ];
}

type Sources = Pick<AuditInput, 'source' | 'spreadSource'>;

/** Of the two factors or efficiencies of a plan: where each is from, and where its spread. */
function sourcesOf(plan: Plan, { machine, present }: Household, reference: Reference): readonly [Sources, Sources] {
  const [rooms, water] = plan.inputs.map(({ origin }) => origin) as [Wording, Wording];
  const both = (spreadSource: Wording) =>
    [
      { source: rooms, spreadSource },
      { source: water, spreadSource },
    ] as const;
  // Of another machine the field is the source of both.
  if (plan.moves === 'other-machine') return both(rooms);
  if (plan.moves === 'machine') return sourcesOfMachine(plan, machine, reference);
  return both(tell(plan.id === 'present' && present.efficiency ? 'spread-of-typed-efficiency' : 'spread-of-table'));
}

function sourcesOfMachine(
  { steps, spaceSpread, waterSpread, asDesigned, spaceEfficiency }: Plan,
  { source, way, spaceFactor, waterFactor }: Household['machine'],
  { fieldFactor, designDeviation }: Reference,
): readonly [Sources, Sources] {
  const field = fieldFactor[source];
  const given = (place: number): Wording => {
    const worked = steps[place]!;
    const origin = way === 'full' ? worked.source! : worked.inputs[0]!.origin;
    return asDesigned && way !== 'full'
      ? tell('from-design', { origin, share: spaceEfficiency / asDesigned.space })
      : origin;
  };
  const ofHomes =
    way === 'full'
      ? tell('spread-of-worked-out', { source: field.source })
      : tell('both', { first: field.source, second: designDeviation.source });
  const from = (typed: typeof spaceFactor): Wording =>
    way !== 'full' && typed?.grade === 'measured' ? tell('spread-of-metered') : ofHomes;
  const isWider = waterSpread.below > spaceSpread.below;
  return [
    { source: given(0), spreadSource: from(spaceFactor) },
    {
      source: given(1),
      spreadSource: isWider ? tell('spread-of-derived', { source: ofHomes }) : from(waterFactor),
    },
  ];
}
