import { findSideBySide } from '../../../model/comparison/beside.ts';
import { rangedWorking } from '../../../words/explained/ranged.ts';
import { say } from '../../../words/say.ts';
import { dotsSentence, driversSentence, futuresSentence } from '../../../words/sure.ts';
import { systemInSentence } from '../../../words/systems.ts';
import type { WalkInput, WalkPage } from '../page.ts';

export function surePage({ household, appraisal }: WalkInput): WalkPage {
  const { versus, beside, pump } = findSideBySide(appraisal);
  if (!versus || !beside) {
    return {
      name: 'sure',
      sentence: say('We have nothing yet to hold the heat pump against.'),
      say: say('Once we know what you pay now, this page counts how often the heat pump comes out dearer.'),
      foot: household.name,
      picture: { kind: 'none' },
      knobs: [],
      workings: [pump.cost.working],
      notes: [],
    };
  }
  return {
    name: 'sure',
    sentence: futuresSentence(versus.twenty),
    say: `${dotsSentence()} ${driversSentence(appraisal.drivers.toSorted((a, b) => b.share - a.share).slice(0, 1))}`,
    foot: say('{name} · against {other}', { name: household.name, other: systemInSentence(beside.id, beside.kind) }),
    picture: { kind: 'twenty', versus },
    knobs: ['flow', 'electricity', 'winter'],
    workings: [rangedWorking(versus.saving)],
    notes: [say('Ask: how would you put that to somebody who was not here? It shows whether the page was clear.')],
  };
}
