/** Where a reading stands against its usual band: a bracket for the band and a mark inside or outside it. */

import type { Standing } from '../../model/shapes/site-readings.ts';
import { phrase, say } from '../../words/say.ts';

const WIDTH = 64;
const HEIGHT = 20;
const BAND = { left: 18, right: 46 };
const MIDDLE = HEIGHT / 2;
const X: { readonly [standing in Standing]: number } = { below: 7, inside: WIDTH / 2, above: WIDTH - 7, 'no band': 0 };
const WORDS: { readonly [standing in Standing]: string } = {
  inside: phrase('inside'),
  below: phrase('below'),
  above: phrase('above'),
  'no band': phrase('no usual band'),
};

export function StandingMark({ standing }: { readonly standing: Standing }) {
  const outside = standing === 'below' || standing === 'above';
  return (
    <span className={outside ? 'standing standing-outside' : 'standing'}>
      {standing === 'no band' ? null : (
        <svg width={WIDTH} height={HEIGHT} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
          <path d={`M2 ${MIDDLE}H${WIDTH - 2}`} stroke="var(--line)" strokeWidth={1.5} />
          <rect
            x={BAND.left}
            y={3}
            width={BAND.right - BAND.left}
            height={HEIGHT - 6}
            fill="var(--paper)"
            stroke="var(--quiet)"
            strokeWidth={1.5}
          />
          {outside ? (
            <path d={`M${X[standing] - 5} ${MIDDLE}l5 -6l5 6l-5 6z`} fill="var(--ink)" />
          ) : (
            <circle cx={X[standing]} cy={MIDDLE} r={4.5} fill="none" stroke="var(--ink)" strokeWidth={2} />
          )}
        </svg>
      )}
      <span>{say(WORDS[standing])}</span>
    </span>
  );
}
