import type { ChangeCode } from '../../words/change.ts';
import { signedPounds, spokenPounds } from '../../words/numbers.ts';
import { axisFor, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth, wrapText } from '../frame/text.ts';
import type { ChangeRow } from './series.ts';

export interface ChangeMark {
  readonly code: ChangeCode;
  readonly nameLines: readonly string[];
  readonly y: number;
  readonly x: number;
  readonly width: number;
  readonly costs: 'more' | 'less';
  readonly label: string;
  readonly labelX: number;
  readonly anchor: 'start' | 'end';
}
export interface ChangesLayout {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly thickness: number;
  readonly zeroX: number;
  readonly nameX: number;
  readonly marks: readonly ChangeMark[];
}

const ROW_HEIGHT = { desk: 48, table: 70, paper: 40 } as const;

export function layOutChanges(
  rows: readonly ChangeRow[],
  size: PictureSize,
  place: { width?: number; height?: number } = {},
): ChangesLayout {
  const { width, font } = measuresOf(size, place.width);
  const height = place.height ?? ROW_HEIGHT[size] * Math.max(rows.length, 1) + 8;
  const step = (height - 8) / Math.max(rows.length, 1);
  const nameWidth = Math.min(Math.max(font * 6, ...rows.map((row) => textWidth(row.name, font))), width * 0.42);
  const labels = rows.map((row) => signedPounds(row.pence, spokenPounds));
  const labelWidth = Math.max(font * 3, ...labels.map((label) => textWidth(label, font, true))) + 14;
  const left = nameWidth + 16;
  const anyLess = rows.some((row) => row.pence < 0);
  const axis = axisFor(
    rows.map((row) => row.pence),
    4,
    100,
  );
  const x = placeOn(axis, left + (anyLess ? labelWidth : 0), width - labelWidth);
  return {
    width,
    height,
    font,
    thickness: Math.min(step * 0.5, font * 1.5),
    zeroX: x(0),
    nameX: nameWidth,
    marks: rows.map((row, index) => {
      const less = row.pence < 0;
      const [from, to] = less ? [x(row.pence), x(0)] : [x(0), x(row.pence)];
      return {
        code: row.code,
        nameLines: wrapText(row.name, font, nameWidth + 2),
        y: 4 + step * (index + 0.5),
        x: from,
        width: Math.max(to - from, 1),
        costs: less ? 'less' : 'more',
        label: labels[index]!,
        labelX: less ? from - 10 : to + 10,
        anchor: less ? 'end' : 'start',
      };
    }),
  };
}
