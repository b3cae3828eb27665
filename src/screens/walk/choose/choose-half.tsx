/** The second half of the page of changes: what the household can choose, switched on and off by touch. */
import { useRef } from 'react';
import { tariffWorkings } from '../../../words/explained/tariffs.ts';
import { say } from '../../../words/say.ts';
import { chooseSay } from '../../../words/tariff-choice.ts';
import { chooseSentence, countLeavesOut } from '../../../words/which-tariff.ts';
import { useHousehold } from '../../household-context.tsx';
import { pickTariff } from '../../prices/use-tariffs.ts';
import { BestDayFigure } from '../../shared/best-day-figure.tsx';
import { ChoiceField } from '../../shared/choice-field.tsx';
import { Glossed } from '../../shared/glossary-page.tsx';
import { HowWeKnow } from '../../shared/how-we-know.tsx';
import { TariffBars, tariffBarsName } from '../../shared/tariff-bars.tsx';
import { sizeAtTable } from '../size-at-table.ts';
import { useFill } from '../use-fill.ts';
import { useChoices } from './use-choices.ts';

/** The line or two under the bars that say what their count leaves out. */
const NOTE_PIXELS = 40;

export function ChooseHalf() {
  const { household, change } = useHousehold();
  const { choice, switches, isOld, mayKeep, turn, keep } = useChoices();
  const place = useRef<HTMLDivElement>(null);
  const height = useFill(place);
  const own = household.tariffs.filter(({ fuel }) => fuel === 'electricity');
  return (
    <>
      <h1 className="voice">
        <Glossed
          text={choice ? chooseSentence(choice) : say('You can choose your tariff. We know none of yours yet.')}
        />
      </h1>
      <div className="walk-switches screen-only">
        {switches.map(({ name, label, isOn }) => (
          <button key={name} type="button" aria-pressed={isOn} onClick={() => turn(name)}>
            {say(label)}
          </button>
        ))}
        {mayKeep ? (
          <button type="button" className="plain" onClick={keep}>
            {say('Use this for the estimate')}
          </button>
        ) : null}
        {own.length > 0 ? (
          <ChoiceField
            label={say('Tariff of the estimate')}
            value={household.prices.electricityTariffId}
            emptyLabel={say('the published average')}
            choices={own.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={(id) => change(pickTariff(id, 'electricityTariffId'))}
          />
        ) : null}
      </div>
      <div className="walk-fill" ref={place} aria-busy={isOld}>
        {choice ? (
          <div className={choice.costs[0]?.bestHours ? 'walk-beside' : undefined}>
            <TariffBars
              choice={choice}
              size={sizeAtTable()}
              height={Math.min(height - NOTE_PIXELS, 60 + 84 * choice.costs.length)}
              note={countLeavesOut(choice)}
              atTable
              known={<HowWeKnow find={() => tariffWorkings(choice)} about={tariffBarsName()} plain />}
            />
            <BestDayFigure choice={choice} size={sizeAtTable()} height={Math.min(height, 380)} atTable />
          </div>
        ) : null}
      </div>
      <p className="walk-say voice">
        <Glossed
          text={
            isOld
              ? say('These are still the bars from before. The new ones are on their way.')
              : choice
                ? chooseSay(choice)
                : say('Type the tariffs that you could have under Prices. Then they stand here beside each other.')
          }
        />
      </p>
    </>
  );
}
