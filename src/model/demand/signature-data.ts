/** A record as the signature takes it: numbers in rows, nothing else. */

/** Use over spans of one day or more, with the outdoor temperature of every day in them. */
export interface SignatureData {
  /** Day number of the first day of each span. */
  readonly first: Int32Array;
  /** Days of each span; they are the weights too. */
  readonly days: Float64Array;
  /** Use per day of each span, kWh. */
  readonly perDayKWh: Float64Array;
  /** Daily outdoor temperatures of all spans one after the other, °C. */
  readonly outdoorC: Float64Array;
  /** Where each span's temperatures begin, with one entry past the end. */
  readonly start: Uint32Array;
}
