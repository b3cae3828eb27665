import { findSideBySide } from '../../../model/appraisal/beside.ts';
import { systemInSentence } from '../../../words/systems.ts';
import type { WalkInput, WalkPage } from '../page.ts';
import { countFutures, spokenDriver } from '../spoken.ts';

export function surePage({ household, appraisal }: WalkInput): WalkPage {
  const { versus, beside, pump } = findSideBySide(appraisal);
  const strongest = appraisal.drivers.toSorted((a, b) => b.share - a.share)[0];
  if (!versus || !beside) {
    return {
      name: 'sure',
      sentence: 'We have nothing yet to hold the heat pump against.',
      say: 'Once we know what you pay now, this page counts how often the heat pump comes out dearer.',
      foot: household.name,
      picture: { kind: 'none' },
      knobs: [],
      workings: [pump.cost.working],
      notes: [],
    };
  }
  const { less, more } = countFutures(versus.twenty);
  const name = systemInSentence(beside.id, beside.kind);
  const sentence =
    more === 0
      ? 'In all 20 futures we tried, the heat pump costs you less. In none it costs more.'
      : less === 0
        ? 'In all 20 futures we tried, the heat pump costs you more. In none it costs less.'
        : `In ${less} futures out of 20 the heat pump costs you less. In ${more} it costs more.`;
  return {
    name: 'sure',
    sentence,
    say: [
      'Each dot is one future, as likely as any other: a different winter, price, factor and way of living.',
      strongest ? `What matters most is ${spokenDriver(strongest.input)}.` : '',
    ]
      .filter(Boolean)
      .join(' '),
    foot: `${household.name} · against ${name}`,
    picture: { kind: 'twenty', versus },
    knobs: ['flow', 'electricity', 'winter'],
    workings: [versus.saving.working],
    notes: ['Ask: how would you put that to somebody who was not here? It shows whether the page was clear.'],
  };
}
