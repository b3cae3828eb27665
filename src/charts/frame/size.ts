/** Where a picture stands: on a screen, across a table, or on paper. It settles type and height; the width is the place's own. */
export type PictureSize = 'desk' | 'table' | 'paper';

export interface Measures {
  readonly width: number;
  /** Size of figures and names. */
  readonly font: number;
  /** Size of axis figures. */
  readonly faint: number;
}

const MEASURES: Readonly<Record<PictureSize, Measures>> = {
  desk: { width: 900, font: 16, faint: 15 },
  table: { width: 1080, font: 22, faint: 20 },
  paper: { width: 650, font: 15, faint: 13.5 },
};

export function measuresOf(size: PictureSize, width?: number): Measures {
  const measures = MEASURES[size];
  return width === undefined ? measures : { ...measures, width: Math.max(300, width) };
}
