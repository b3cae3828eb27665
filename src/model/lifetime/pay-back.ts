/** When the dearer purchase has been brought back, year by year, where equipment is bought again on the way. */

export interface Crossings {
  /** Years after which the heat pump has cost less in all and stays so to the end; 0 from the first day, null never. */
  readonly payback: number | null;
  /** Where it costs more in all at the end, but less before: years after which it falls behind; else null. */
  readonly fallsBehind: number | null;
}

/**
 * Walks the difference of what has been paid [years]. `savings` of year k accrue evenly within it, `steps` fall at its
 * end, `steps[0]` at the start; positive means that the heat pump has cost less. With level savings and one step it is
 * cost over saving.
 */
export function findCrossings(savings: ArrayLike<number>, steps: ArrayLike<number>): Crossings {
  let difference = steps[0]!;
  let ahead = difference >= 0;
  let lastUp: number | null = ahead ? 0 : null;
  let lastDown: number | null = null;
  const note = (isAhead: boolean, at: number) => {
    if (isAhead === ahead) return;
    ahead = isAhead;
    if (isAhead) lastUp = at;
    else lastDown = at;
  };
  for (let year = 0; year < savings.length; year++) {
    const saving = savings[year]!;
    const after = difference + saving;
    note(after >= 0, year - difference / saving);
    difference = after + steps[year + 1]!;
    note(difference >= 0, year + 1);
  }
  return ahead ? { payback: lastUp, fallsBehind: null } : { payback: null, fallsBehind: lastDown };
}
