import { changeRows } from '../../../charts/changes/series.ts';
import { findSideBySide } from '../../../model/comparison/beside.ts';
import { changeSentence } from '../../../words/change.ts';
import { changesWorking } from '../../../words/explained/steps.ts';
import { say } from '../../../words/say.ts';
import type { WalkInput, WalkPage } from '../page.ts';

export function changePage({ household, appraisal, changes }: WalkInput): WalkPage {
  const { pump } = findSideBySide(appraisal);
  const ordered = changes
    .filter(({ pence }) => Number.isFinite(pence))
    .toSorted((a, b) => Math.abs(b.pence) - Math.abs(a.pence));
  const largest = ordered[0];
  return {
    name: 'change',
    sentence: largest
      ? changeSentence(largest.code, largest.pence)
      : say('We cannot say yet what would change your cost.'),
    say: say(
      'You choose your tariff, how warm the rooms are, the hot water and the settings. The winter nobody can choose.',
    ),
    foot: say('{name} · each change by itself, all else as it is', { name: household.name }),
    picture: largest ? { kind: 'changes', changes: ordered } : { kind: 'none' },
    knobs: ['flow', 'room', 'water', 'electricity', 'winter'],
    choices: true,
    workings: [changesWorking(pump.cost, changeRows(ordered))],
    notes: [say('Move a slider while they watch, then reset it.')],
  };
}
