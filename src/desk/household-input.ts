/**
 * The household file that a person writes for the command line, and that the invented households are kept in:
 * the household's own fields, all optional, and the raw files that lie beside it.
 * `household-input.schema.json` is made from this schema.
 */
import { z } from 'zod';
import { IntakeChoices } from '../intake/intake.ts';
import { takeInHand } from '../model/offers.ts';
import { BillCheckInput } from '../model/shapes/bill-check.ts';
import { ElectricCar, HomeBattery, Roof } from '../model/shapes/choices.ts';
import { CivilDate, TimeZone } from '../model/shapes/dates.ts';
import { Carrier, EvidencePeriod, SeriesRole } from '../model/shapes/evidence.ts';
import { TypedAnswer } from '../model/shapes/guided-search.ts';
import {
  emptyHousehold,
  Heat,
  Home,
  HotWater,
  Household,
  LetterNames,
  Machine,
  Offer,
  Present,
  Prices,
  Purchase,
} from '../model/shapes/household.ts';
import { Tariff } from '../model/shapes/tariff.ts';
import { phrase, say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';
import { loosen, strictly, tighten } from './loose-section.ts';

const BESIDE = phrase('the name of a file beside the household file');

/** A raw file beside the household file, with corrections of what intake would decide by itself. */
const FileName = z
  .string()
  .max(200)
  .regex(/^(?![/\\])(?!.*\.\.)[^:]+$/, BESIDE)
  // Line feeds and the like would hide what stands behind them. The schema is read where `\p` is unknown, so that this stands apart.
  .refine((name) => !/\p{Cc}/u.test(name), BESIDE);
const InputFile = z.strictObject({
  file: FileName,
  /** Further pages of the same bill, PDFs or pictures. */
  pages: z.array(FileName).max(19).optional(),
  choices: IntakeChoices.omit({ anew: true }).optional(),
});

/** Bills, readings or deliveries written out in the household file. */
const TypedEvidence = z.strictObject({
  carrier: Carrier,
  role: SeriesRole.default('import'),
  name: z.string().min(1).max(120),
  periods: z.array(EvidencePeriod).min(1).max(2000),
});
export type TypedEvidence = z.infer<typeof TypedEvidence>;

/** A bill check; without `boughtKWh` the units come from the heat-pump readings among the files, without a price it is the tariff's. */
export const InputCheck = BillCheckInput.omit({ estimateId: true, priceTariff: true })
  .partial({ boughtKWh: true, otherKWh: true, pencePerKWh: true })
  .extend({ answers: z.array(TypedAnswer).max(40).optional() })
  .strict();
export type InputCheck = z.infer<typeof InputCheck>;

/** What others name must be one: of two alike the second is refused. */
function refuseTwins(
  names: readonly string[],
  pathOf: (at: number) => (string | number)[],
  message: string,
  context: z.RefinementCtx,
): void {
  for (const [at, name] of names.entries())
    if (names.indexOf(name) < at) context.addIssue({ code: 'custom', path: pathOf(at), message, input: name });
}

export const HouseholdInput = strictly(
  z
    .object({
      $schema: z.string().optional(),
      format: z.enum(['plainwarmth.household-input', 'plainwarmth.household']).optional(),
      version: z.literal(1).optional(),
      id: Household.shape.id.optional(),
      name: Household.shape.name,
      jobNumber: Household.shape.jobNumber,
      notes: Household.shape.notes,
      country: Household.shape.country,
      zone: TimeZone.optional(),
      home: loosen(Home).optional(),
      present: loosen(Present).optional(),
      heat: loosen(Heat).optional(),
      hotWater: loosen(HotWater).optional(),
      machine: loosen(Machine).optional(),
      prices: loosen(Prices).optional(),
      purchase: loosen(Purchase).optional(),
      tariffs: z.array(Tariff).max(50).optional(),
      siteReadings: Household.shape.siteReadings,
      /** Whom the letter about a bill greets and whom to ring; `--letter` needs all three. */
      letter: LetterNames.strict().optional(),
      walk: Household.shape.walk,
      beside: Household.shape.beside,
      roof: loosen(Roof).optional(),
      battery: loosen(HomeBattery).optional(),
      car: loosen(ElectricCar).optional(),
      comfort: Household.shape.comfort,
      /** Name of the offer whose machine stands above, where others stand beside it. */
      offer: Offer.shape.name.optional(),
      offers: z
        .array(z.object({ name: Offer.shape.name, machine: loosen(Machine), purchase: loosen(Purchase).optional() }))
        .min(1)
        .max(11)
        .optional(),
      /** The offer that the household took: a bill is held against its estimate. */
      taken: z.strictObject({ offer: Offer.shape.name, on: CivilDate }).optional(),
      files: z.array(InputFile).max(100).optional(),
      typed: z.array(TypedEvidence).max(100).optional(),
      /** Day on which prices are looked up; today when absent. */
      asOf: CivilDate.optional(),
      /** The estimate that a bill check is held against: evidence that begins on or after its day is left out of it. */
      estimate: z.strictObject({ asOf: CivilDate, note: z.string().max(2000).optional() }).optional(),
      check: InputCheck.optional(),
    })
    .superRefine(({ tariffs, offer, offers }, context) => {
      const ids = (tariffs ?? []).map(({ id }) => id);
      refuseTwins(ids, (at) => ['tariffs', at, 'id'], phrase('an id that no tariff before it has'), context);
      const names = offers ? [offer ?? say('First offer'), ...offers.map(({ name }) => name)] : [];
      refuseTwins(names, (at) => ['offers', at - 1, 'name'], phrase('a name that no offer before it has'), context);
    }),
);
export type HouseholdInput = z.infer<typeof HouseholdInput>;

/** The offers of a file; that in hand has the first number. */
function offersOfFile({ offer, offers }: HouseholdInput, usual: Household['machine']) {
  if (!offers) return {};
  return {
    offer: { id: 'offer-1', name: offer ?? say('First offer') },
    otherOffers: offers.map(({ name, machine, purchase }, i) => ({
      id: `offer-${i + 2}`,
      name,
      machine: { ...usual, ...tighten(Machine, machine) },
      purchase: tighten(Purchase, purchase ?? {}),
    })),
  };
}

/** The offer of that name in hand; refused where the file has none. */
export function inHandByName(household: Household, name: string | undefined, where: string): Household {
  if (name === undefined || name === household.offer?.name) return household;
  const found = household.otherOffers?.find((one) => one.name === name);
  if (found) return takeInHand(household, found.id);
  throw new DeskError({
    code: 'no-such-offer',
    message: say('The household file has no offer called “{name}”.', { name }),
    where,
    remedy: say('Name one of its offers as it is written there.'),
  });
}

/** The household document that a written file stands for; the offer that was taken is in hand. */
export function toHousehold(input: HouseholdInput, id: string): Household {
  const empty = emptyHousehold(id, input.name, input.country);
  const household = Household.parse({
    ...empty,
    ...(input.jobNumber === undefined ? {} : { jobNumber: input.jobNumber }),
    ...(input.notes === undefined ? {} : { notes: input.notes }),
    zone: input.zone ?? empty.zone,
    home: tighten(Home, input.home ?? {}),
    present: { ...(input.present?.system ? {} : empty.present), ...tighten(Present, input.present ?? {}) },
    heat: tighten(Heat, input.heat ?? {}),
    hotWater: tighten(HotWater, input.hotWater ?? {}),
    machine: { ...empty.machine, ...tighten(Machine, input.machine ?? {}) },
    prices: tighten(Prices, input.prices ?? {}),
    purchase: tighten(Purchase, input.purchase ?? {}),
    tariffs: input.tariffs ?? [],
    ...(input.siteReadings === undefined ? {} : { siteReadings: input.siteReadings }),
    ...(input.letter === undefined ? {} : { letter: input.letter }),
    ...(input.walk === undefined ? {} : { walk: input.walk }),
    ...(input.beside === undefined ? {} : { beside: input.beside }),
    ...(input.roof === undefined ? {} : { roof: tighten(Roof, input.roof) }),
    ...(input.battery === undefined ? {} : { battery: tighten(HomeBattery, input.battery) }),
    ...(input.car === undefined ? {} : { car: tighten(ElectricCar, input.car) }),
    ...(input.comfort === undefined ? {} : { comfort: input.comfort }),
    ...offersOfFile(input, empty.machine),
  });
  return inHandByName(household, input.taken?.offer, 'taken.offer');
}
