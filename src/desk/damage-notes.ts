/** Damage as the window hears of it. */
import type { OnDamage } from '../store/sealed.ts';
import { type Damage, StoreFault } from '../store/store-fault.ts';
import type { DamageNote } from './contract.ts';
import { explainDamage } from './store-refusal.ts';

export const isDamage = (error: unknown): error is StoreFault =>
  error instanceof StoreFault && error.data.code === 'damaged';

/** What is damaged is told and answered as undefined; without anybody to tell, it is a fault. */
export function orDamage<T>(read: () => T, onDamage: OnDamage | undefined): T | undefined {
  try {
    return read();
  } catch (error) {
    if (!onDamage || !isDamage(error)) throw error;
    onDamage(error.data.damage!);
    return undefined;
  }
}

const isSame = (a: Damage, b: Damage) =>
  a.kind === b.kind && a.householdId === b.householdId && a.evidenceId === b.evidenceId && a.number === b.number;

/** Each once, in words. */
export const listDamage = (damage: readonly Damage[]): DamageNote[] =>
  damage
    .filter((one, at) => !damage.slice(0, at).some((earlier) => isSame(earlier, one)))
    .map((one) => {
      const { message, remedy = '' } = explainDamage(one);
      const { kind, evidenceId, householdId } = one;
      return {
        kind,
        message,
        remedy,
        ...(evidenceId === undefined ? {} : { evidenceId }),
        ...(householdId === undefined ? {} : { householdId }),
      };
    });
