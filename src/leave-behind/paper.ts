/** Width of the text on A4 with 19 mm margins, in CSS pixels of 1/96 inch. Letter is 24 px wider; pictures keep this width. */
export const PAPER_WIDTH = 650;
/** More than five ways of heating in one picture are hard to compare; the tables hold them all. */
export const ROWS_IN_PICTURE = 5;
