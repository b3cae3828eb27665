/** The units of a bill taken apart as far as the evidence reaches; what it cannot separate stays joined and is named so. */
import type { BillCheckInput } from '../shapes/bill-check.ts';
import { tell } from '../shapes/told.ts';
import { type Lever, workingLine as line } from './cost-state.ts';
import { heatLevers } from './heat-levers.ts';
import type { Hidden, UnitsInput } from './units-input.ts';

/** Levers of everything counted in units [kWh]; with all of them switched, the units are those of the bill. */
export function unitLevers(input: UnitsInput): Lever[] {
  const { bill } = input;
  const levers: Lever[] = [];
  const inside: Hidden[] = [];
  let left = bill.boughtKWh;

  const ownUseKWh = ownUseOf(bill);
  if (ownUseKWh > 0) {
    levers.push(ownUseLever(ownUseKWh));
    left += ownUseKWh;
  }

  if (bill.meter === 'whole-house' && bill.heatPumpKWh !== undefined) {
    const wholeKWh = (bill.readKWh ?? bill.boughtKWh) + ownUseKWh;
    levers.push(otherLever(bill, wholeKWh - bill.heatPumpKWh));
    left -= wholeKWh - bill.heatPumpKWh;
  } else if (bill.meter === 'whole-house') inside.push('other-electricity');

  if (bill.readKWh !== undefined) {
    levers.push(meteringLever(bill, bill.boughtKWh - bill.readKWh));
    left -= bill.boughtKWh - bill.readKWh;
  } else if (bill.readings !== 'actual') inside.push('metering');

  if (bill.immersionKWh !== undefined) {
    const kWh = Math.min(bill.immersionKWh, Math.max(0, left));
    levers.push(backupLever(kWh));
    left -= kWh;
  } else inside.push('backup');

  return [...heatLevers(input, { kWh: left, inside }), ...levers];
}

/** Units of the panels at home that are on no bill, kWh; what a heat pump's own meter counts holds them already. */
export const ownUseOf = ({ meter, ownUseKWh = 0 }: BillCheckInput): number => (meter === 'whole-house' ? ownUseKWh : 0);

function ownUseLever(kWh: number): Lever {
  return {
    cause: 'own-generation',
    to: { ownUseKWh: kWh },
    grade: 'measured',
    title: tell('own-generation'),
    inputs: [line(tell('units-used-of-own'), kWh, 'kWh', 'measured', tell('made-less-sent-out'))],
  };
}

function otherLever(bill: BillCheckInput, kWh: number): Lever {
  return {
    cause: 'other-electricity',
    to: { otherKWh: kWh },
    // Metered less what somebody said is usual.
    grade: 'estimated',
    title: tell('other-electricity'),
    inputs: [
      line(tell('units-usual-off'), bill.boughtKWh, 'kWh', 'estimated', tell('the-bill')),
      ...(bill.ownUseKWh
        ? [line(tell('units-used-of-own'), bill.ownUseKWh, 'kWh', 'measured', tell('made-less-sent-out'))]
        : []),
      line(tell('units-of-pump'), bill.heatPumpKWh!, 'kWh', 'measured', tell('pump-meter')),
      line(tell('other-taken-off'), bill.otherKWh ?? 0, 'kWh', 'estimated', tell('told')),
      line(tell('other-beyond'), kWh, 'kWh', 'estimated', tell('worked-out')),
    ],
  };
}

function meteringLever(bill: BillCheckInput, kWh: number): Lever {
  return {
    cause: 'metering',
    to: { meteringKWh: kWh },
    grade: 'measured',
    title: tell('estimated-reading'),
    inputs: [
      line(tell('units-on-bill'), bill.boughtKWh, 'kWh', 'estimated', tell(`bill-${bill.readings}`)),
      line(tell('units-by-readings'), bill.readKWh!, 'kWh', 'measured', tell('taken-at-meter')),
    ],
  };
}

function backupLever(kWh: number): Lever {
  return {
    cause: 'backup',
    to: { backupKWh: kWh },
    grade: 'estimated',
    title: tell('backup-part'),
    inputs: [line(tell('units-of-heater'), kWh, 'kWh', 'estimated', tell('even-steps'))],
  };
}
