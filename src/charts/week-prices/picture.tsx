import { Area, AreaChart, CartesianGrid, ReferenceLine, XAxis, YAxis } from 'recharts';
import { pence, shortWeekdayNames, weekdayNames } from '../../words/numbers.ts';
import { keyOf, sayTold } from '../../words/say-told.ts';
import { Measured, type Standing } from '../frame/measured.tsx';
import { axisFor, decimalsOf, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth, wrapText } from '../frame/text.ts';
import { HALVES_A_DAY, spreadLabels, thinSteps, type WeekPrices } from './series.ts';

const HEIGHT = { desk: 280, table: 360, paper: 230 } as const;
const AXIS_HEIGHT = 30;
const MOST_NAMED = 6;
/** Room for the prices at the axis. */
const PRICES_WIDTH = 50;

/** The price as a step, each band named at its height. */
export function WeekPricesPicture({ series, ...standing }: Standing & { readonly series: WeekPrices }) {
  return (
    <Measured {...standing}>
      {({ width, height = HEIGHT[standing.size] }) => (
        <Painted series={series} size={standing.size} width={width} height={height} />
      )}
    </Measured>
  );
}

function Painted(props: {
  readonly series: WeekPrices;
  readonly size: PictureSize;
  readonly width: number;
  readonly height: number;
}) {
  const { series, size, width, height } = props;
  const { font, faint } = measuresOf(size);
  const axis = axisFor(
    series.bands.map((band) => band.pence),
    4,
  );
  // Many bands cannot all be named at the edge: the cheapest and the dearest are.
  const named =
    series.bands.length <= MOST_NAMED ? series.bands : [series.bands[0]!, series.bands[series.bands.length - 1]!];
  const labels = named.map((band) => {
    const name = wrapText(sayTold(band.name), font, width * 0.18, 1)[0] ?? '';
    // A class of dated prices bears its prices in its name.
    return series.isMean ? name : `${name} ${pence(band.pence)}`;
  });
  const right = Math.max(20, ...labels.map((label) => textWidth(label, font, true))) + 12;
  const top = font;
  const y = placeOn(axis, height - AXIS_HEIGHT - 4, top);
  const places = named.map((band) => y(band.pence));
  const moved = spreadLabels(places, font * 1.25);
  const tick = { fontSize: faint, fill: 'var(--quiet)' };
  const days = width - right > 800 ? weekdayNames() : shortWeekdayNames();
  return (
    <AreaChart
      width={width}
      height={height}
      data={[...thinSteps(series.steps, Math.max(50, Math.floor(width - right - PRICES_WIDTH)))]}
      accessibilityLayer={false}
      margin={{ top, right, bottom: 4, left: 4 }}
    >
      <CartesianGrid
        stroke="var(--line)"
        horizontal={false}
        verticalCoordinatesGenerator={({ offset }) =>
          days.map((_, day) => (offset.left ?? 0) + ((offset.width ?? 0) * day) / 7)
        }
      />
      <XAxis
        dataKey="half"
        type="number"
        height={AXIS_HEIGHT}
        domain={[0, 7 * HALVES_A_DAY]}
        ticks={days.map((_, day) => (day + 0.5) * HALVES_A_DAY)}
        interval={0}
        tickFormatter={(half: number) => days[Math.floor(half / HALVES_A_DAY)] ?? ''}
        tick={tick}
        tickLine={false}
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
        tickFormatter={(value: number) => pence(value, decimalsOf(axis.step))}
      />
      <Area
        dataKey="pence"
        type="stepAfter"
        baseValue={0}
        stroke="var(--meter)"
        strokeWidth={1.5}
        fill="var(--meter-tint)"
        fillOpacity={1}
        connectNulls={false}
        isAnimationActive={false}
      />
      {named.map((band, index) => (
        <ReferenceLine
          key={keyOf(band.name)}
          y={band.pence}
          stroke="var(--quiet)"
          strokeDasharray="2 4"
          label={{
            value: labels[index]!,
            position: 'right',
            dy: moved[index]! - places[index]!,
            fontSize: font,
            fill: 'var(--ink)',
          }}
        />
      ))}
    </AreaChart>
  );
}
