import { CartesianGrid, ComposedChart, Line, ReferenceLine, Scatter, XAxis, YAxis } from 'recharts';
import { thinPoints } from '../../model/thin/thin.ts';
import { degrees, grouped, longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { carrierName } from '../../words/systems.ts';
import { Measured, type Standing } from '../frame/measured.tsx';
import { axisFor, decimalsOf, niceStep } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import type { SignatureSeries } from './series.ts';

/** Room for the units at the axis. */
const UNITS_WIDTH = 80;
const HEIGHT = { desk: 340, table: 420, paper: 280 } as const;

/** One ring a day or bill; the line is ink, so that it differs from the rings without colour. */
export function SignaturePicture({ series, ...standing }: Standing & { readonly series: SignatureSeries }) {
  return (
    <Measured {...standing}>
      {({ width, height = HEIGHT[standing.size] }) => (
        <Painted series={series} size={standing.size} width={width} height={height} />
      )}
    </Measured>
  );
}

function temperatureTicks(values: readonly number[]): number[] {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const step = niceStep(Math.max(high - low, 4) / 6);
  const first = Math.floor(low / step);
  const last = Math.max(Math.ceil(high / step), first + 1);
  return Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step);
}

function Painted(props: {
  readonly series: SignatureSeries;
  readonly size: PictureSize;
  readonly width: number;
  readonly height: number;
}) {
  const { series, size, width, height } = props;
  const { font, faint } = measuresOf(size);
  const all = [...series.points, ...series.line, ...(series.before?.line ?? [])];
  const axis = axisFor(
    all.map((point) => point.kWhPerDay),
    4,
  );
  const ticks = temperatureTicks(all.length > 0 ? all.map((point) => point.outdoorC) : [0, 20]);
  const strong = series.carrier === 'electricity' ? 'meter' : 'fuel';
  const tick = { fontSize: faint, fill: 'var(--quiet)' };
  return (
    <ComposedChart
      width={width}
      height={height}
      accessibilityLayer={false}
      margin={{ top: font * 2, right: font * 1.8, bottom: font * 1.6, left: 4 }}
    >
      <CartesianGrid vertical={false} stroke="var(--line)" />
      <XAxis
        dataKey="outdoorC"
        type="number"
        domain={[ticks[0]!, ticks.at(-1)!]}
        ticks={ticks}
        interval={0}
        tick={tick}
        tickMargin={6}
        tickFormatter={(value: number) => degrees(value)}
        stroke="var(--ink)"
        strokeWidth={1.5}
        label={{
          value: say('outside, average of the day'),
          position: 'bottom',
          offset: 2,
          fontSize: faint,
          fill: 'var(--quiet)',
        }}
      />
      <YAxis
        dataKey="kWhPerDay"
        width="auto"
        domain={[axis.low, axis.high]}
        ticks={[...axis.ticks]}
        tick={tick}
        tickLine={false}
        axisLine={false}
        tickFormatter={(value: number) => grouped(value, decimalsOf(axis.step))}
      />
      <Scatter
        data={[...thinPoints(series.points, Math.max(50, Math.floor(width - UNITS_WIDTH)))]}
        shape={({ cx, cy }: { cx?: number; cy?: number }) => (
          <circle cx={cx} cy={cy} r={3} fill={`var(--${strong}-tint)`} stroke={`var(--${strong})`} />
        )}
        isAnimationActive={false}
      />
      <Line
        data={[...series.line]}
        dataKey="kWhPerDay"
        type="linear"
        stroke="var(--ink)"
        strokeWidth={2.5}
        zIndex={700}
        dot={false}
        isAnimationActive={false}
      />
      {series.before ? (
        <Line
          data={[...series.before.line]}
          dataKey="kWhPerDay"
          type="linear"
          stroke="var(--ink)"
          strokeWidth={1.5}
          strokeDasharray="7 5"
          dot={false}
          label={({ x, y, index }: { x?: number | string; y?: number | string; index?: number }) =>
            index === 0 ? (
              <text x={Number(x) + font} y={Number(y) + 4} fontSize={faint} fill="var(--ink)">
                {say('before {date}', { date: longDate(series.before!.until) })}
              </text>
            ) : null
          }
          isAnimationActive={false}
        />
      ) : null}
      {series.slopeKWhPerKDay > 0 && Number.isFinite(series.baseC) ? (
        <ReferenceLine
          x={series.baseC}
          stroke="var(--quiet)"
          strokeDasharray="4 4"
          label={{
            value: say('no heating above {base}', { base: degrees(series.baseC) }),
            position: 'insideTopRight',
            fontSize: faint,
            fill: 'var(--ink)',
          }}
        />
      ) : null}
      <text className="faint" x={4} y={font} fontSize={faint}>
        {say('kWh of {carrier} a day', { carrier: carrierName(series.carrier) })}
      </text>
    </ComposedChart>
  );
}
