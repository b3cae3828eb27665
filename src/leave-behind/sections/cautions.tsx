import { say } from '../../words/say.ts';
import type { EstimateParts } from '../parts.ts';

/** What can hurt. It says what to leave alone and whom to ask; it is no instruction to do any of it. */
export function CautionsPart({ parts }: { readonly parts: EstimateParts }) {
  const ground = parts.appraisal.machine.source === 'ground';
  const cautions = [
    [
      say('Electricity.'),
      say('The machine and its heaters run on mains voltage.'),
      say('Only a qualified electrician works on the wiring: switched off, locked off and proved dead.'),
    ],
    [
      say('Refrigerant.'),
      say('It is under pressure, and some kinds burn. Only certified people open that circuit.'),
      say('If you smell or hear a leak: air the room, no flames or switches, leave and call.'),
    ],
    [
      say('Hot water that scalds.'),
      say('Above about 50 °C water burns skin in seconds, children’s and old people’s soonest.'),
      say('Keep the mixing valves that were fitted.'),
    ],
    [
      say('Legionella.'),
      say('Lukewarm water lets it grow. Do not set the cylinder lower than your installer did.'),
      say('Leave its weekly heating to 60 °C on.'),
    ],
    ground
      ? [
          say('The fluid in the ground loop.'),
          say('It holds antifreeze (glycol). Do not drink, drain or top it up yourself.'),
          say('Keep spills out of drains and water.'),
        ]
      : [
          say('The outdoor unit.'),
          say('Keep its fan and grille clear and keep hands out.'),
          say('Ice or a noise that is new is for your installer.'),
        ],
    [say('Pressure.'), say('Leave safety valves and expansion vessels alone: the systems are closed and hot.')],
  ];
  return (
    <section className="follows">
      <h3>{say('Before anybody opens or changes anything')}</h3>
      <ul className="steps small">
        {cautions.map(([what, ...sentences]) => (
          <li key={what}>
            <strong>{what}</strong> {sentences.join(' ')}
          </li>
        ))}
      </ul>
      <p className="plain small">
        {say('Rules of your country and the maker’s instructions come first.')}{' '}
        {say('Work that needs a licence is done by those who hold one.')}
      </p>
    </section>
  );
}
