/** What single changes do to the yearly cost, the largest first. */
import { pence } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { lookUp, unknownName } from '../../words/unknown.ts';

export interface Change {
  /** As `changeSentence` of the words knows it. */
  readonly code: string;
  readonly pence: number;
}
export interface ChangeRow extends Change {
  readonly name: string;
}

const NAMES = {
  'electricity-up': phrase('A unit of electricity {price} dearer'),
  'electricity-down': phrase('A unit of electricity {price} cheaper'),
  'flow-up': phrase('Water to the radiators 5 degrees hotter'),
  'flow-down': phrase('Water to the radiators 5 degrees cooler'),
  'room-up': phrase('Rooms one degree warmer'),
  'room-down': phrase('Rooms one degree cooler'),
  'water-up': phrase('Half as much hot water again'),
  'water-down': phrase('Half the hot water'),
  'winter-cold': phrase('A cold winter'),
  'winter-mild': phrase('A mild winter'),
};

export function changeRows(changes: readonly Change[]): ChangeRow[] {
  return changes
    .filter(({ pence }) => Number.isFinite(pence))
    .toSorted((a, b) => Math.abs(b.pence) - Math.abs(a.pence))
    .map((change) => {
      const name = lookUp<string>(NAMES, change.code);
      const said = name === undefined ? unknownName(change.code) : say(name, { price: pence(5, 0) });
      return { ...change, name: said };
    });
}
