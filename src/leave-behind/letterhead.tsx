import { longDate } from '../words/numbers.ts';
import { say } from '../words/say.ts';
import type { EstimateParts } from './parts.ts';

/** "Estimate no. 1 of 28 November 2026". */
export const estimateName = ({ estimate, madeOn }: Pick<EstimateParts, 'estimate' | 'madeOn'>): string =>
  say('Estimate no. {number} of {date}', { number: String(estimate.number), date: longDate(madeOn) });

/** Who writes, with the logo, and which estimate it is. */
export function Letterhead({ parts }: { readonly parts: EstimateParts }) {
  const { logo, installerName } = parts.settings;
  return (
    <div className="letterhead">
      <span className="sender">
        {/* Beside the name it says nothing more; alone it stands for it. */}
        {logo ? <img src={logo} alt={installerName ? '' : say('Logo of the installer')} /> : null}
        {installerName}
      </span>
      <span>{estimateName(parts)}</span>
    </div>
  );
}
