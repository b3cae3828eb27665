/**
 * The readings of a series in one piece, day after day: the day, counted from 1970-01-01, and the length of its readings,
 * as whole numbers of 32 bits; then these, as 64-bit floating point, so that what was read comes back to the last digit.
 * All little-endian. Reading checks the piece whole, so that rows of single days would cost time and spare none.
 */
export interface PackedDay {
  readonly day: number;
  readonly readings: Uint8Array;
}

const HEAD_BYTES = 8;

export function packDays(days: readonly PackedDay[]): Uint8Array {
  const packed = new Uint8Array(days.reduce((sum, { readings }) => sum + HEAD_BYTES + readings.byteLength, 0));
  const heads = new Int32Array(packed.buffer);
  let at = 0;
  for (const { day, readings } of days) {
    heads[at / 4] = day;
    heads[at / 4 + 1] = readings.byteLength;
    packed.set(readings, at + HEAD_BYTES);
    at += HEAD_BYTES + readings.byteLength;
  }
  return packed;
}

/** Of what `packDays` made. */
export function unpackDays(packed: Uint8Array): { day: number; values: Float64Array }[] {
  // The database hands out views at any offset; a copy starts at a multiple of eight.
  const { buffer } = new Uint8Array(packed);
  const heads = new Int32Array(buffer);
  const days: { day: number; values: Float64Array }[] = [];
  for (let at = 0; at < buffer.byteLength; ) {
    const bytes = heads[at / 4 + 1]!;
    days.push({ day: heads[at / 4]!, values: new Float64Array(buffer, at + HEAD_BYTES, bytes / 8) });
    at += HEAD_BYTES + bytes;
  }
  return days;
}
