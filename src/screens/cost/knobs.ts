/** What a household or the world may change, as sliders: their limits, today's value, and how they read and write a what-if. */

import { designFlow } from '../../model/heat-pump/flow.ts';
import type { Appraisal, WhatIf } from '../../model/shapes/appraisal.ts';
import type { Household } from '../../model/shapes/household.ts';
import { degrees, grouped, pence, penceSign, uncapitalised } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';

const KNOB_NAMES = ['flow', 'room', 'water', 'electricity', 'winter'] as const;
export type KnobName = (typeof KNOB_NAMES)[number];

export const WINTERS = [phrase('mild'), phrase('typical'), phrase('cold')] as const;

export interface Knob {
  readonly name: KnobName;
  readonly label: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** What holds without any what-if. */
  readonly today: number;
  readonly say: (value: number) => string;
  readonly read: (whatIf: WhatIf) => number;
  /** Today's value takes the change out again, so that nothing is left of it. */
  readonly write: (whatIf: WhatIf, value: number) => WhatIf;
}

const round = (value: number, step: number) => Number((Math.round(value / step) * step).toFixed(6));

interface Plan {
  readonly name: Exclude<KnobName, 'winter'>;
  readonly field: 'flowC' | 'roomC' | 'waterShare' | 'electricityShare';
  readonly label: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly today: number;
  /** Value of the slider for one unit of the what-if's own field. */
  readonly scale: number;
  readonly say: (value: number) => string;
}

function knobOf({ field, scale, ...plan }: Plan): Knob {
  return {
    ...plan,
    min: Math.min(plan.min, Math.floor(plan.today)),
    max: Math.max(plan.max, Math.ceil(plan.today)),
    read: (whatIf) => {
      const value = whatIf[field];
      return value === undefined ? plan.today : Number((value * scale).toFixed(4));
    },
    write: (whatIf, value) => {
      const { [field]: _, ...rest } = whatIf;
      return Math.abs(value - plan.today) < plan.step / 1000 ? rest : { ...rest, [field]: value / scale };
    },
  };
}

function winterKnob(): Knob {
  return {
    name: 'winter',
    label: say('Winter'),
    unit: '',
    min: 0,
    max: 2,
    step: 1,
    today: 1,
    say: (value) => say(WINTERS[value] ?? 'typical'),
    read: (whatIf) => WINTERS.indexOf(whatIf.winter ?? 'typical'),
    write: ({ winter: _, ...rest }, value) => {
      const winter = WINTERS[Math.round(value)];
      return winter === undefined || winter === 'typical' ? rest : { ...rest, winter };
    },
  };
}

export function listKnobs(household: Household, appraisal: Appraisal): Knob[] {
  const flow = designFlow(household.machine).flowC;
  const price = appraisal.prices.electricityPencePerKWh;
  return [
    knobOf({
      name: 'flow',
      field: 'flowC',
      label: say('Flow temperature'),
      unit: '°C',
      min: 30,
      max: 60,
      step: 1,
      today: flow,
      scale: 1,
      say: degrees,
    }),
    knobOf({
      name: 'room',
      field: 'roomC',
      label: say('Rooms'),
      unit: '°C',
      min: 16,
      max: 24,
      step: 0.5,
      today: appraisal.demand.roomC,
      scale: 1,
      say: degrees,
    }),
    knobOf({
      name: 'water',
      field: 'waterShare',
      label: say('Hot water'),
      unit: '%',
      min: 50,
      max: 200,
      step: 5,
      today: 100,
      scale: 100,
      say: (value) => say('{count}% of today’s', { count: grouped(value) }),
    }),
    knobOf({
      name: 'electricity',
      field: 'electricityShare',
      label: say('Electricity'),
      unit: penceSign(),
      min: 10,
      max: 45,
      step: 0.1,
      today: round(price, 0.1),
      scale: price > 0 ? price : 1,
      say: pence,
    }),
    winterKnob(),
  ];
}

export const isUnchanged = (whatIf: WhatIf): boolean => Object.keys(whatIf).length === 0;

/** "radiator water 50 °C, winter cold": what stands changed, in words. */
export function sayWhatIf(knobs: readonly Knob[], whatIf: WhatIf): string {
  return knobs
    .filter((knob) => knob.read(whatIf) !== knob.today)
    .map((knob) => `${uncapitalised(knob.label)} ${knob.say(knob.read(whatIf))}`)
    .join(', ');
}
