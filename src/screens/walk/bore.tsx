/** Where we are among the pages: a house at the top, and a bore below it that goes one mark deeper a page. */
import { say } from '../../words/say.ts';

const HEIGHT = 760;
const GROUND_Y = 107;
const MIDDLE = 56;

export function Bore(props: { readonly page: number; readonly pages: number }) {
  const { page, pages } = props;
  const step = (HEIGHT - GROUND_Y - 42) / pages;
  return (
    <svg
      className="bore"
      viewBox={`0 0 112 ${HEIGHT}`}
      role="img"
      aria-label={say('Page {page} of {pages}', { page, pages })}
      preserveAspectRatio="xMidYMin meet"
    >
      <path
        d={`M30 ${GROUND_Y - 1}V66L${MIDDLE} 42L82 66V${GROUND_Y - 1}`}
        fill="none"
        stroke="var(--ink)"
        strokeWidth={2.5}
        strokeLinejoin="round"
      />
      <line x1={8} x2={104} y1={GROUND_Y} y2={GROUND_Y} stroke="var(--ink)" strokeWidth={2.5} />
      {Array.from({ length: pages }, (_, index) => {
        const y = GROUND_Y + 1.5 + step * index;
        const drilled = index < page;
        const uneven = index % 2 === 1;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a layer is its place.
          <g key={index}>
            <path
              d={`M${uneven ? 16 : 24} ${y + step - 8}H44M68 ${y + step - 8}H${uneven ? 96 : 86}`}
              stroke="var(--line)"
              strokeWidth={2}
            />
            <rect
              x={MIDDLE - 6}
              y={y}
              width={12}
              height={step - 2}
              fill={drilled ? 'var(--ground)' : 'none'}
              stroke={drilled ? 'var(--ground)' : 'var(--line)'}
              strokeWidth={1.5}
            />
          </g>
        );
      })}
      <text x={MIDDLE} y={HEIGHT - 10} textAnchor="middle" fontSize={17}>
        {say('{page} of {pages}', { page, pages })}
      </text>
    </svg>
  );
}
