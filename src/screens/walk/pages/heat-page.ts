import { heatParts } from '../../../charts/month-parts/series.ts';
import { findSideBySide } from '../../../model/comparison/beside.ts';
import { heatByMonth } from '../../../words/explained/months.ts';
import { rangedWorking } from '../../../words/explained/ranged.ts';
import { spokenKWh } from '../../../words/numbers.ts';
import { say } from '../../../words/say.ts';
import type { WalkInput, WalkPage } from '../page.ts';

export function heatPage({ household, appraisal }: WalkInput): WalkPage {
  const { demand, climate } = appraisal;
  const { hasRecord } = findSideBySide(appraisal);
  const water = demand.water.value;
  const basis = hasRecord
    ? say('It comes from your record, put right for the weather.')
    : say('It comes from the home itself, not from bills, so it is less sure.');
  return {
    name: 'heat',
    sentence: say('Your home needs about {heat} of heat in a typical year.', { heat: spokenKWh(demand.total.value) }),
    say: [
      water > 0
        ? say('About {water} of it is hot water.', { water: spokenKWh(water) })
        : say('None of it is hot water.'),
      say('It could be as low as {low} or as high as {high}.', {
        low: spokenKWh(demand.total.low),
        high: spokenKWh(demand.total.high),
      }),
      basis,
    ].join(' '),
    foot: say('{name} · typical winter, {region} · a unit is one kWh on your bill', {
      name: household.name,
      region: climate.regionName,
    }),
    picture: { kind: 'months', parts: heatParts(appraisal) },
    knobs: ['room', 'water', 'winter'],
    workings: [rangedWorking(demand.total), demand.space.working, demand.water.working, heatByMonth(demand)],
    notes: [
      say('Any boiler or heat pump must make this heat. Only what is bought to make it differs.'),
      ...(demand.estimates.length > 1
        ? [say('{count} ways of working it out stand behind this figure.', { count: demand.estimates.length })]
        : []),
    ],
  };
}
