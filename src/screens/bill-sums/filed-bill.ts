import type { Bill } from '../../model/shapes/bill.ts';

/** A bill of a kept file, opened from its row. */
export interface FiledBillOpened {
  readonly fileName: string;
  readonly row: number;
  readonly bill: Bill;
}
