/** What single changes do to the yearly cost, the largest first. */
export interface Change {
  /** As `changeSentence` of the words knows it. */
  readonly code: string;
  readonly pence: number;
}
export interface ChangeRow extends Change {
  readonly name: string;
}

const NAMES: Readonly<Record<string, string>> = {
  'electricity-up': 'A unit of electricity 5 p dearer',
  'electricity-down': 'A unit of electricity 5 p cheaper',
  'flow-up': 'Water to the radiators 5 degrees hotter',
  'flow-down': 'Water to the radiators 5 degrees cooler',
  'room-up': 'Rooms one degree warmer',
  'room-down': 'Rooms one degree cooler',
  'water-up': 'Half as much hot water again',
  'water-down': 'Half the hot water',
  'winter-cold': 'A cold winter',
  'winter-mild': 'A mild winter',
};

export function changeRows(changes: readonly Change[]): ChangeRow[] {
  return changes
    .filter(({ pence }) => Number.isFinite(pence))
    .toSorted((a, b) => Math.abs(b.pence) - Math.abs(a.pence))
    .map((change) => ({ ...change, name: NAMES[change.code] ?? change.code.replaceAll('-', ' ') }));
}
