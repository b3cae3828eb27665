/** The units of a bill taken apart as far as the evidence reaches; what it cannot separate stays joined and is named so. */
import type { BillCheckInput } from '../shapes/bill-check.ts';
import { type Lever, workingLine as line } from './cost-state.ts';
import { heatLevers } from './heat-levers.ts';
import type { UnitsInput } from './units-input.ts';

/** Levers of everything counted in units [kWh]; with all of them switched, the units are those of the bill. */
export function unitLevers(input: UnitsInput): Lever[] {
  const { bill } = input;
  const levers: Lever[] = [];
  const inside: string[] = [];
  let left = bill.boughtKWh;

  if (bill.meter === 'whole-house' && bill.heatPumpKWh !== undefined) {
    const wholeKWh = bill.readKWh ?? left;
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

function otherLever(bill: BillCheckInput, kWh: number): Lever {
  return {
    cause: 'other-electricity',
    to: { otherKWh: kWh },
    // Metered less what somebody said is usual.
    grade: 'estimated',
    title: 'Other electricity',
    inputs: [
      line('Units on the bill, usual other electricity off', bill.boughtKWh, 'kWh', 'estimated', 'the bill'),
      line('Units of the heat pump', bill.heatPumpKWh!, 'kWh', 'measured', 'meter on the heat pump'),
      line('Other electricity taken off', bill.otherKWh, 'kWh', 'estimated', 'told'),
      line('Other electricity beyond that', kWh, 'kWh', 'estimated', 'worked out'),
    ],
  };
}

function meteringLever(bill: BillCheckInput, kWh: number): Lever {
  return {
    cause: 'metering',
    to: { meteringKWh: kWh },
    grade: 'measured',
    title: 'Estimated reading',
    inputs: [
      line('Units on the bill', bill.boughtKWh, 'kWh', 'estimated', `the bill, ${bill.readings} readings`),
      line('Units by own readings', bill.readKWh!, 'kWh', 'measured', 'readings taken at the meter'),
    ],
  };
}

function backupLever(kWh: number): Lever {
  return {
    cause: 'backup',
    to: { backupKWh: kWh },
    grade: 'estimated',
    title: 'Backup or immersion heater',
    inputs: [line('Units of the heater', kWh, 'kWh', 'estimated', 'steps of even power in the readings, or typed')],
  };
}
