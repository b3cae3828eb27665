const MS_PER_DAY = 86_400_000;

/** Spans are stored with the first day after them; people name the last day. */
export const lastDayOf = (exclusive: string): string =>
  new Date(Date.parse(exclusive) - MS_PER_DAY).toISOString().slice(0, 10);
