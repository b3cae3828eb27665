import { findSideBySide } from '../../../model/appraisal/beside.ts';
import { spokenPounds } from '../../../words/numbers.ts';
import type { WalkInput, WalkPage } from '../page.ts';
import { lowerFirst } from '../spoken.ts';

export function changePage({ household, appraisal, changes }: WalkInput): WalkPage {
  const { pump } = findSideBySide(appraisal);
  const ordered = changes.toSorted((a, b) => Math.abs(b.pence) - Math.abs(a.pence));
  const largest = ordered[0];
  return {
    name: 'change',
    sentence: largest
      ? `${largest.name}: your year would cost about ${spokenPounds(Math.abs(largest.pence))} ${largest.pence < 0 ? 'less' : 'more'}.`
      : 'We could not work out what would change your cost.',
    say: [
      largest ? `Of the things below, ${lowerFirst(largest.name)} would move your cost most.` : '',
      'Some of them are yours to choose; the price of electricity and the winter are not.',
    ]
      .filter(Boolean)
      .join(' '),
    foot: `${household.name} · each change by itself, all else as it is`,
    picture: ordered.length > 0 ? { kind: 'changes', changes: ordered } : { kind: 'none' },
    knobs: ['flow', 'room', 'water', 'electricity', 'winter'],
    workings: [pump.cost.working],
    notes: ['Move a slider while they watch, then reset it. Leave the reckoning as it was found.'],
  };
}
