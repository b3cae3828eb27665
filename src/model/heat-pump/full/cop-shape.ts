/** How COP runs over source and flow between the points of a data sheet. */
import type { RatedPoint } from '../../shapes/household.ts';
import { carnotLimit, type KnownValue, throughPoints } from './rated-points.ts';

type CopAt = (sourceC: number, flowC: number) => number;

/**
 * COP [1] over source and flow [°C] through every rated point: a shape, raised or lowered to pass through the points.
 * With points at one source or one flow only, the shape is Carnot's limit and the height the Carnot fraction, run
 * straight between the points; else the shape of `copShape`, its height by the nearness of each point.
 */
export function copThrough(points: readonly RatedPoint[]): CopAt {
  const shape = copShape(points);
  const known = points.map(({ sourceC, flowC, cop }) => ({ sourceC, flowC, value: cop / shape(sourceC, flowC) }));
  const height = shape === carnotLimit ? throughPoints(known) : nearPoints(known);
  return (sourceC, flowC) => height(sourceC, flowC) * shape(sourceC, flowC);
}

/** A value through known points, between them their mean weighted by 1 / distance² [1/K²]. */
function nearPoints(points: readonly KnownValue[]): CopAt {
  return (sourceC, flowC) => {
    let [sum, weights] = [0, 0];
    for (const point of points) {
      const weight = 1 / ((sourceC - point.sourceC) ** 2 + (flowC - point.flowC) ** 2 + 1e-6);
      sum += weight * point.value;
      weights += weight;
    }
    return sum / weights;
  };
}

/**
 * Shape of COP [1] over source and flow [°C]; only its ratios count.
 * ln COP = a + b × source + c × flow, least squares, where the points tell both slopes apart and both have the sign
 * that physics asks; else Carnot's limit. Beyond the points' sources and flows Carnot's limit takes over, the Carnot
 * fraction staying as at the edge. Exponential in both because COP falls by much the same share a kelvin
 * (Staffell et al. 2012: 2.2 % at B0/W35).
 */
function copShape(points: readonly RatedPoint[]): CopAt {
  const slopes = slopesOf(points);
  if (slopes === null) return carnotLimit;
  const within = (values: readonly number[]) => {
    const [least, most] = [Math.min(...values), Math.max(...values)];
    return (at: number) => Math.min(most, Math.max(least, at));
  };
  const sourceWithin = within(points.map(({ sourceC }) => sourceC));
  const flowWithin = within(points.map(({ flowC }) => flowC));
  return (sourceC, flowC) => {
    const [s, f] = [sourceWithin(sourceC), flowWithin(flowC)];
    const beyond = s === sourceC && f === flowC ? 1 : carnotLimit(sourceC, flowC) / carnotLimit(s, f);
    return Math.exp(slopes.source * s + slopes.flow * f) * beyond;
  };
}

/** Change of ln COP a kelvin [1/K], or null where the points lie on one line or contradict physics. */
function slopesOf(points: readonly RatedPoint[]): { source: number; flow: number } | null {
  const mean = (value: (point: RatedPoint) => number) =>
    points.reduce((sum, point) => sum + value(point), 0) / points.length;
  const source = (point: RatedPoint) => point.sourceC - meanSourceC;
  const flow = (point: RatedPoint) => point.flowC - meanFlowC;
  const lnCop = (point: RatedPoint) => Math.log(point.cop);
  const meanSourceC = mean((point) => point.sourceC);
  const meanFlowC = mean((point) => point.flowC);
  const ss = mean((point) => source(point) ** 2);
  const ff = mean((point) => flow(point) ** 2);
  const sf = mean((point) => source(point) * flow(point));
  const determinant = ss * ff - sf * sf;
  if (!(determinant > 0.05 * ss * ff)) return null;
  const sl = mean((point) => source(point) * lnCop(point));
  const fl = mean((point) => flow(point) * lnCop(point));
  const found = { source: (sl * ff - fl * sf) / determinant, flow: (fl * ss - sl * sf) / determinant };
  return found.source > 0 && found.flow < 0 ? found : null;
}
