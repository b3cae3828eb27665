import { Measured, type Standing } from '../frame/measured.tsx';
import { GradeShape } from '../grade-mark.tsx';
import { type BridgeLayout, type BridgeMark, layOutBridge } from './layout.ts';
import type { BridgeSeries } from './series.ts';

/** From the estimated to the paid amount, cause by cause. */
export function BridgePicture({ series, ...standing }: Standing & { readonly series: BridgeSeries }) {
  return (
    <Measured {...standing}>{(place) => <Painted layout={layOutBridge(series, standing.size, place)} />}</Measured>
  );
}

function Painted({ layout }: { readonly layout: BridgeLayout }) {
  const { width, height, left, baseY, box, font } = layout;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      {layout.marks.map((mark) => (
        <Step key={mark.x} mark={mark} layout={layout} />
      ))}
      <line x1={left} x2={width - 8} y1={baseY} y2={baseY} stroke="var(--ink)" strokeWidth={1.5} />
      {box ? (
        <g data-part="expected">
          <rect
            x={box.x}
            y={box.y}
            width={box.width}
            height={box.height}
            fill="none"
            stroke="var(--paper)"
            strokeWidth={4}
          />
          <rect
            x={box.x}
            y={box.y}
            width={box.width}
            height={box.height}
            fill="none"
            stroke="var(--ink)"
            strokeWidth={2}
            strokeDasharray="7 5"
          />
          {box.lines.map((line, index) => (
            <text key={line} x={box.textX} y={box.textY + index * font * 1.25} fontSize={font} textAnchor="end">
              {line}
            </text>
          ))}
        </g>
      ) : null}
    </svg>
  );
}

function Step({ mark, layout }: { readonly mark: BridgeMark; readonly layout: BridgeLayout }) {
  const { step, x, y, width, height } = mark;
  const { font, nameFont, namesY } = layout;
  const strong = `var(--${step.colour})`;
  const middle = x + width / 2;
  return (
    <g data-step={step.name}>
      <rect
        x={x}
        y={y}
        width={width}
        height={height}
        fill={step.kind === 'part' ? `var(--${step.colour}-tint)` : strong}
        stroke={strong}
        strokeWidth={1.5}
        {...(step.grade === 'assumed' ? { strokeDasharray: '5 4' } : {})}
      />
      {mark.on ? (
        <line
          x1={x + width}
          x2={mark.on.to}
          y1={mark.on.y}
          y2={mark.on.y}
          stroke="var(--quiet)"
          strokeDasharray="2 4"
        />
      ) : null}
      <text x={middle} y={mark.labelY} fontSize={font * 1.1} fontWeight={650} textAnchor="middle">
        {mark.label}
      </text>
      {mark.nameLines.map((line, index) => (
        <text key={line} x={middle} y={namesY + index * font * 1.25} fontSize={nameFont} textAnchor="middle">
          {line}
        </text>
      ))}
      {step.grade ? (
        <GradeShape
          grade={step.grade}
          x={middle}
          y={namesY + mark.nameLines.length * font * 1.25 - font * 0.15}
          radius={font * 0.36}
        />
      ) : null}
    </g>
  );
}
