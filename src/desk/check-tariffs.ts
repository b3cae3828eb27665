/** Refuses a tariff whose bands leave an hour without a price or give one hour two prices. */

import type { Tariff } from '../model/shapes/tariff.ts';
import { findTariffFaults } from '../model/tariff/check-tariff.ts';
import { tariffFaultSentence } from '../words/refusals.ts';
import { say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';

export function refuseFaultyTariffs(tariffs: readonly Tariff[]): void {
  for (const tariff of tariffs) {
    const fault = findTariffFaults(tariff).find(({ weight }) => weight === 'refusal');
    if (!fault) continue;
    throw new DeskError({
      code: `tariff-${fault.code}`,
      message: tariffFaultSentence(fault),
      where: say('tariff {name}', { name: tariff.name }),
    });
  }
}
