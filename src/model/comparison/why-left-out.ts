/** Which ways of heating stand beside the heat pump in one home, and why the others do not. */
import type { WhyLeftOut } from '../shapes/appraisal.ts';
import { carrierOf, FUELS, isFuel, OFFERED, type System, systemRow } from '../shapes/heating.ts';
import type { Household } from '../shapes/household.ts';

/** Whether there is gas: said, or seen from what burns it; undefined where nobody knows. */
function hasGas({ home, present, prices }: Household): boolean | undefined {
  const now = present.assumed ? undefined : carrierOf(present.system);
  if (now === 'gas' || present.cooksOnGas || prices.gasTariffId !== undefined) return true;
  return home.gasGrid ?? (isFuel(now) && FUELS[now].sold === 'by amount' ? false : undefined);
}

/** Why each way of heating that is not there already is left out; null where it stands. The installer's word goes before the rule. */
export function whyLeftOut(household: Household): (system: System) => WhyLeftOut | null {
  const { home, present, beside } = household;
  const gas = hasGas(household);
  const electricNow = !present.assumed && (present.system === 'direct-electric' || present.system === 'storage');
  const byRule = ({ suits }: NonNullable<ReturnType<typeof systemRow>>): WhyLeftOut | null => {
    if (suits.gasGrid === true && gas !== true) return gas === undefined ? 'gas-not-said' : 'no-gas';
    if (suits.house && home.kind === 'flat') return 'no-room';
    if (suits.gasGrid === false && gas !== false) return gas === undefined ? 'gas-not-said' : 'gas-here';
    if (suits.electricNow && !electricNow && !(home.kind === 'flat' && gas !== true)) return 'not-electric';
    if (suits.ground && (home.kind === 'flat' || home.kind === 'terrace')) return 'no-ground';
    return null;
  };
  return (system) => {
    const chosen = isChoosable(system) ? beside?.[system] : undefined;
    if (chosen !== undefined) return chosen ? null : 'chosen';
    return byRule(systemRow(system)!);
  };
}

const isChoosable = (system: System): system is (typeof OFFERED)[number] =>
  (OFFERED as readonly System[]).includes(system);

/** What the installer may put beside the heat pump in this home: all but the same machine and the same heater again. */
export function choosable({ machine, present }: Household): (typeof OFFERED)[number][] {
  return OFFERED.filter(
    (system) =>
      system !== `${machine.source}-source` &&
      (system !== present.system || (systemRow(system)!.offeredAnew && present.efficiency !== undefined)),
  );
}
