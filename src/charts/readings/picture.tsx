import { CartesianGrid, Line, LineChart, XAxis, YAxis } from 'recharts';
import { thin } from '../../model/thin/thin.ts';
import { grouped, shortMonthNames } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { Measured, type Standing } from '../frame/measured.tsx';
import { axisFor, decimalsOf } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { dayTicks, type ReadingsSeries } from './series.ts';

/** Room for the units at the axis. */
const UNITS_WIDTH = 80;
const HEIGHT = { desk: 240, table: 320, paper: 200 } as const;
const COLOURS: Readonly<Record<string, string>> = {
  electricity: 'var(--meter)',
  heat: 'var(--ground)',
  'outdoor-temperature': 'var(--sky)',
  'flow-temperature': 'var(--ground)',
  'return-temperature': 'var(--ground)',
  'source-temperature': 'var(--sky)',
};

const dayName = (minute: number): string => {
  const date = new Date(minute * 60_000);
  return say('{day} {month}', { day: date.getUTCDate(), month: shortMonthNames()[date.getUTCMonth()]! });
};

/** Energy as steps from zero, temperature as a line; never more marks than pixels. */
export function ReadingsPicture({ series, ...standing }: Standing & { readonly series: ReadingsSeries }) {
  return (
    <Measured {...standing}>
      {({ width, height = HEIGHT[standing.size] }) => (
        <Painted series={series} size={standing.size} width={width} height={height} />
      )}
    </Measured>
  );
}

function Painted(props: {
  readonly series: ReadingsSeries;
  readonly size: PictureSize;
  readonly width: number;
  readonly height: number;
}) {
  const { series, size, width, height } = props;
  const { faint } = measuresOf(size);
  const shown = thin(series.readings, Math.max(50, Math.floor(width - UNITS_WIDTH)), ({ value }) => value);
  const axis = axisFor(
    shown.map((reading) => reading.value ?? 0),
    4,
  );
  const decimals = decimalsOf(axis.step);
  const tick = { fontSize: faint, fill: 'var(--quiet)' };
  return (
    <LineChart
      width={width}
      height={height}
      data={shown}
      accessibilityLayer={false}
      margin={{ top: faint, right: faint * 2, bottom: 4, left: 4 }}
    >
      <CartesianGrid vertical={false} stroke="var(--line)" />
      <XAxis
        dataKey="minute"
        type="number"
        domain={['dataMin', 'dataMax']}
        ticks={dayTicks(series.readings, Math.max(2, Math.floor(width / 90)))}
        tickFormatter={dayName}
        tick={tick}
        tickMargin={6}
        stroke="var(--ink)"
        strokeWidth={1.5}
        interval={0}
      />
      <YAxis
        width="auto"
        domain={[axis.low, axis.high]}
        ticks={[...axis.ticks]}
        tick={tick}
        tickLine={false}
        axisLine={false}
        tickFormatter={(value: number) =>
          value === axis.high ? `${grouped(value, decimals)} ${series.unit}` : grouped(value, decimals)
        }
      />
      <Line
        dataKey="value"
        type={series.unit === 'kWh' ? 'stepAfter' : 'linear'}
        stroke={COLOURS[series.carrier] ?? 'var(--fuel)'}
        strokeWidth={1.5}
        dot={shown.length < 40 ? { r: 2.5 } : false}
        connectNulls={false}
        isAnimationActive={false}
      />
    </LineChart>
  );
}
