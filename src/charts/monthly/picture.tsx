import { Bar, BarChart, CartesianGrid, XAxis, YAxis } from 'recharts';
import { spokenPounds } from '../../words/numbers.ts';
import { KeyLine } from '../frame/key-line.tsx';
import { Measured, type Standing } from '../frame/measured.tsx';
import { axisFor } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import type { MonthlySeries } from './series.ts';

const HEIGHT = { desk: 320, table: 400, paper: 260 } as const;

/** Two bars a month: the heat pump filled, the other outlined, so that they differ without colour. */
export function MonthlyPicture({ series, ...standing }: Standing & { readonly series: MonthlySeries }) {
  return (
    <Measured {...standing}>
      {({ width, height = HEIGHT[standing.size] }) => (
        <Painted series={series} size={standing.size} width={width} height={height} />
      )}
    </Measured>
  );
}

function Painted(props: {
  readonly series: MonthlySeries;
  readonly size: PictureSize;
  readonly width: number;
  readonly height: number;
}) {
  const { series, size, width, height } = props;
  const { font, faint } = measuresOf(size);
  const axis = axisFor(
    series.rows.flatMap((row) => [row.pump ?? 0, row.beside ?? 0]),
    4,
    500,
  );
  const letters = width > 60 * font ? 20 : width > 20 * font ? 3 : 1;
  const tick = { fontSize: faint, fill: 'var(--quiet)' };
  return (
    <BarChart
      width={width}
      height={height}
      data={[...series.rows]}
      accessibilityLayer={false}
      margin={{ top: font * 2.2, right: 4, bottom: 4, left: 4 }}
      barGap={2}
      barCategoryGap="22%"
    >
      <CartesianGrid vertical={false} stroke="var(--line)" />
      <XAxis
        dataKey="month"
        interval={0}
        tick={tick}
        tickLine={false}
        tickFormatter={(month: string) => month.slice(0, letters)}
        stroke="var(--ink)"
        strokeWidth={1.5}
      />
      <YAxis
        width="auto"
        domain={[axis.low, axis.high]}
        ticks={[...axis.ticks]}
        tick={tick}
        tickLine={false}
        axisLine={false}
        tickFormatter={(pence: number) => spokenPounds(pence)}
      />
      <Bar dataKey="pump" fill="var(--ground)" stroke="var(--ground)" strokeWidth={1.5} isAnimationActive={false} />
      {series.besideName ? (
        <Bar
          dataKey="beside"
          fill="var(--fuel-tint)"
          stroke="var(--fuel)"
          strokeWidth={1.5}
          isAnimationActive={false}
        />
      ) : null}
      <KeyLine
        x={Math.min(70, width * 0.12)}
        y={font}
        font={font}
        entries={[
          { name: series.pumpName, fill: 'var(--ground)', stroke: 'var(--ground)', bold: true },
          ...(series.besideName ? [{ name: series.besideName, fill: 'var(--fuel-tint)', stroke: 'var(--fuel)' }] : []),
        ]}
      />
    </BarChart>
  );
}
