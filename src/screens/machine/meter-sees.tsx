import { extrasWorking } from '../../words/explained/field.ts';
import { shareSentence } from '../../words/machine.ts';
import { factor, spokenKWh } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { FigureButton, Spoken } from '../shared/spoken.tsx';

/** Why the meter sees a lower factor than the data sheet says. */
export function MeterSees() {
  const { appraisal, openWorking } = useHousehold();
  const { machine } = appraisal;
  const { space, water, whole, boundary } = machine;
  const rows = [
    { name: say('Rooms alone'), figure: space, at: boundary },
    { name: say('Hot water alone'), figure: water, at: boundary },
    { name: say('What the meter sees'), figure: whole, at: 'H4' },
  ] as const;
  return (
    <section>
      <h3>{say('What the meter will see')}</h3>
      <p className="explain">
        <Spoken
          sentence={`${shareSentence(machine)} ${say('Explain this before the first bill comes.')}`}
          figures={[{ text: spokenKWh(machine.extraKWh), working: extrasWorking(machine) }]}
          onOpen={openWorking}
        />
      </p>
      <table className="narrow">
        <thead>
          <tr>
            <th scope="col">{say('kWh of heat for each kWh bought')}</th>
            <th scope="col">{say('Counted at')}</th>
            <th scope="col" className="number">
              {say('Seasonal factor')}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, figure, at }) => (
            <tr key={name} className={figure === whole ? 'ours' : undefined}>
              <th scope="row">{name}</th>
              <td>{at}</td>
              <td className="number">
                <FigureButton text={factor(figure.value)} working={figure.working} onOpen={openWorking} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
