import { penceSign } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { PickField, sayChoices } from '../shared/choice-field.tsx';
import { NumberField } from '../shared/number-field.tsx';
import type { BandDraft, BlocksDraft } from './tariff-draft.ts';

const PER = [
  { value: 'day', label: phrase('each day') },
  { value: 'month', label: phrase('each month') },
] as const;
const EMPTY_STEP = { upToKWh: undefined, pencePerKWh: undefined };
const MOST_STEPS = 8;

/** Units that cost another price until so many are used; the band's own price holds for what goes beyond. */
export function BlockEditor(props: { readonly band: BandDraft; readonly onChange: (band: BandDraft) => void }) {
  const { band, onChange } = props;
  const { blocks } = band;
  const set = (next: BlocksDraft | undefined) => onChange({ ...band, blocks: next });
  if (!blocks) {
    return (
      <button type="button" className="plain" onClick={() => set({ per: 'day', steps: [EMPTY_STEP] })}>
        {say('The first kWh cost another price')}
        <span className="unseen">, {sayTold(band.name)}</span>
      </button>
    );
  }
  const put = (at: number, part: Partial<BlocksDraft['steps'][number]>) =>
    set({ ...blocks, steps: blocks.steps.map((step, i) => (i === at ? { ...step, ...part } : step)) });
  return (
    <fieldset className="blocks">
      <legend className="unseen">{say('Steps of {name}', { name: sayTold(band.name) })}</legend>
      <PickField
        label={say('Count starts again')}
        value={blocks.per}
        choices={sayChoices(PER)}
        onChange={(per) => set({ ...blocks, per })}
      />
      {blocks.steps.map((step, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a step is its place in the order.
        <div key={at} className="band-price">
          <NumberField
            label={at === 0 ? say('The first') : say('Then up to')}
            value={step.upToKWh}
            limits={{ min: 0.1, max: 1_000_000, unit: 'kWh' }}
            onChange={(upToKWh) => put(at, { upToKWh })}
          />
          <NumberField
            label={say('Price of these')}
            value={step.pencePerKWh}
            limits={{ min: -200, max: 500, unit: `${penceSign()}/kWh` }}
            onChange={(pencePerKWh) => put(at, { pencePerKWh })}
          />
        </div>
      ))}
      <p className="quiet small">{say('The price above is for all kWh beyond.')}</p>
      <div className="actions">
        {blocks.steps.length < MOST_STEPS ? (
          <button
            type="button"
            className="plain"
            onClick={() => set({ ...blocks, steps: [...blocks.steps, EMPTY_STEP] })}
          >
            {say('Add a step')}
          </button>
        ) : null}
        <button
          type="button"
          className="plain"
          onClick={() => set(blocks.steps.length > 1 ? { ...blocks, steps: blocks.steps.slice(0, -1) } : undefined)}
        >
          {say('Remove the last step')}
        </button>
      </div>
    </fieldset>
  );
}
