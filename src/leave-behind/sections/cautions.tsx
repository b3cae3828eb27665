import { say } from '../../words/say.ts';
import type { EstimateParts } from '../parts.ts';

/** What can hurt. It says what to leave alone and whom to ask; it is no instruction to do any of it. */
export function CautionsPart({ parts }: { readonly parts: EstimateParts }) {
  const ground = parts.appraisal.machine.source === 'ground';
  return (
    <section className="follows">
      <h2>{say('Before anybody opens or changes anything')}</h2>
      <ul className="steps">
        <li>
          <strong>{say('Electricity.')}</strong>{' '}
          {say(
            'The machine and its heaters run on mains voltage. Only a qualified electrician works on the wiring, after switching off, locking off and proving dead.',
          )}
        </li>
        <li>
          <strong>{say('Refrigerant.')}</strong>{' '}
          {say(
            'It is under pressure, and some kinds burn. Only people certified for it open that circuit. If you smell or hear a leak, air the room, keep flames and switches away, leave and call.',
          )}
        </li>
        <li>
          <strong>{say('Hot water that scalds.')}</strong>{' '}
          {say(
            'Above about 50 °C water burns skin in seconds, children’s and old people’s soonest. Keep the mixing valves that were fitted.',
          )}
        </li>
        <li>
          <strong>{say('Legionella.')}</strong>{' '}
          {say(
            'Water kept lukewarm lets it grow. Do not turn the cylinder below what your installer set, and leave the weekly heating to 60 °C on.',
          )}
        </li>
        {ground ? (
          <li>
            <strong>{say('The fluid in the ground loop.')}</strong>{' '}
            {say(
              'It holds antifreeze (glycol) and other additives. Do not drink, drain or top it up yourself; keep spills out of drains and water.',
            )}
          </li>
        ) : (
          <li>
            <strong>{say('The outdoor unit.')}</strong>{' '}
            {say('Keep its fan and grille clear and keep hands out. Ice or a noise that is new is for your installer.')}
          </li>
        )}
        <li>
          <strong>{say('Pressure.')}</strong>{' '}
          {say('Leave safety valves and expansion vessels alone; the systems are closed and hot.')}
        </li>
      </ul>
      <p className="plain">
        {say(
          'National and local rules and the maker’s instructions come first wherever this paper says something else. Work that needs a licence is done by those who hold it.',
        )}
      </p>
    </section>
  );
}
