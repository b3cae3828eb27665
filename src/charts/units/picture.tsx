import { Measured, type Standing } from '../frame/measured.tsx';
import { layOutUnits, type UnitsInput, type UnitsLayout } from './layout.ts';

/** Where the heat comes from, as tiles that can be counted. */
export function UnitsPicture({ input, ...standing }: Standing & { readonly input: UnitsInput }) {
  return <Measured {...standing}>{(place) => <Painted layout={layOutUnits(input, standing.size, place)} />}</Measured>;
}

function Painted({ layout }: { readonly layout: UnitsLayout }) {
  const { width, height, font, faint, tile, arrow } = layout;
  const both = layout.groups.at(-1)!;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      {layout.groups.map((group) => (
        <g key={group.title}>
          {group.tiles.map((one) => (
            <rect
              key={`${one.x} ${one.y}`}
              x={one.x}
              y={one.y}
              width={tile}
              height={tile}
              fill={one.from === 'meter' ? 'var(--meter-tint)' : 'var(--ground-tint)'}
              stroke={one.from === 'meter' ? 'var(--meter)' : 'var(--ground)'}
              strokeWidth={1.5}
              data-from={one.from}
            />
          ))}
          {/* Bought tiles bear a stroke as well, so that they differ without hue. */}
          {group.tiles
            .filter((one) => one.from === 'meter')
            .map((one) => (
              <path
                key={`${one.x} ${one.y}`}
                d={`M${one.x + tile * 0.25} ${one.y + tile * 0.75}L${one.x + tile * 0.75} ${one.y + tile * 0.25}`}
                stroke="var(--meter)"
                strokeWidth={1.5}
              />
            ))}
          <text x={group.x} y={group.bottom + font + 18} fontSize={font} fontWeight={650}>
            {group.title}
          </text>
          <text className="faint" x={group.x} y={group.bottom + font + faint + 26} fontSize={faint}>
            {group.below}
          </text>
        </g>
      ))}
      {both.tiles.length > 0 ? (
        <path
          d={`M${both.x} ${both.bottom + 5}v7H${both.x + both.width}v-7`}
          fill="none"
          stroke="var(--ink)"
          strokeWidth={1.75}
        />
      ) : null}
      <path
        d={`M${arrow.x} ${arrow.y}h${font * 2.2}m${-font * 0.6} ${-font * 0.55}l${font * 0.6} ${font * 0.55}l${-font * 0.6} ${font * 0.55}`}
        fill="none"
        stroke="var(--ink)"
        strokeWidth={2}
      />
    </svg>
  );
}
