import { findSideBySide } from '../../../model/appraisal/beside.ts';
import { spokenKWh } from '../../../words/numbers.ts';
import type { WalkInput, WalkPage } from '../page.ts';
import { spokenFactor, spokenQuarters } from '../spoken.ts';

export function sourcePage({ household, appraisal }: WalkInput): WalkPage {
  const { machine, demand } = appraisal;
  const { pump } = findSideBySide(appraisal);
  const from = machine.source === 'ground' ? 'the ground' : 'the air outside';
  const whole = machine.whole.value;
  const meterKWh = pump.bought.value;
  const sourceKWh = Math.max(0, demand.total.value - meterKWh);
  const { fieldSpread: field } = machine;
  return {
    name: 'source',
    sentence:
      whole < 1.125
        ? `For every unit you buy, ${from} adds almost nothing.`
        : `For every unit you buy, ${from} adds about ${spokenQuarters(whole - 1)}.`,
    say: [
      `In a year: ${spokenKWh(meterKWh)} from the meter and ${spokenKWh(sourceKWh)} from ${from}.`,
      'That counts hot water, the pumps and standby too.',
      machine.space.value > whole + 0.05
        ? `For the rooms alone a unit makes ${spokenFactor(machine.space.value)}; the rest takes it down to ${spokenFactor(whole)}.`
        : '',
    ]
      .filter(Boolean)
      .join(' '),
    foot: `${household.name} · factor ${spokenFactor(whole)} for heat and hot water together, pumps included`,
    picture: { kind: 'units', meterKWh, sourceKWh, from: machine.source },
    knobs: ['flow', 'water'],
    workings: [machine.whole.working, machine.space.working, machine.water.working, pump.bought.working],
    notes: [
      `Metered systems of this kind: ${spokenFactor(field.low)} to ${spokenFactor(field.high)}, middle ${spokenFactor(field.middle)} (${field.boundary}). ${field.source}`,
      'A space-heating factor alone is not the household’s factor. Say so now, before the first bill does.',
    ],
  };
}
