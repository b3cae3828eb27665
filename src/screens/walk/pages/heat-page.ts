import { heatParts } from '../../../charts/month-parts/series.ts';
import { findSideBySide } from '../../../model/appraisal/beside.ts';
import { spokenKWh } from '../../../words/numbers.ts';
import type { WalkInput, WalkPage } from '../page.ts';

export function heatPage({ household, appraisal }: WalkInput): WalkPage {
  const { demand, climate } = appraisal;
  const { hasRecord } = findSideBySide(appraisal);
  const water = demand.water.value;
  const basis = hasRecord
    ? 'It comes from your record, put right for the weather.'
    : 'It comes from the home itself, not from bills, so it is less sure.';
  return {
    name: 'heat',
    sentence: `Your home needs about ${spokenKWh(demand.total.value)} of heat in a typical year.`,
    say: [
      water > 0 ? `About ${spokenKWh(water)} of it is hot water.` : 'None of it is hot water.',
      `It could be as low as ${spokenKWh(demand.total.low)} or as high as ${spokenKWh(demand.total.high)}.`,
      basis,
    ].join(' '),
    foot: `${household.name} · typical winter, ${climate.regionName} · a unit is one kWh on your bill`,
    picture: { kind: 'months', parts: heatParts(appraisal) },
    knobs: ['room', 'water', 'winter'],
    workings: [demand.total.working, demand.space.working, demand.water.working],
    notes: [
      'Any boiler or heat pump must make this heat. Only what is bought to make it differs.',
      ...(demand.estimates.length > 1
        ? [`${demand.estimates.length} ways of working it out stand behind this figure.`]
        : []),
    ],
  };
}
