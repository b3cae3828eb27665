import { Said } from '../../charts/said.tsx';
import type { FileAccount } from '../../model/shapes/evidence.ts';
import { tariffWorkings } from '../../words/explained/tariffs.ts';
import { gradeName } from '../../words/grades.ts';
import { fileAccountLines } from '../../words/record-uses.ts';
import { say } from '../../words/say.ts';
import { keyOf, sayTold } from '../../words/say-told.ts';
import { inputKey, type ShownWorking, workingValue } from '../../words/working.ts';
import { listChapters } from '../list-assumptions.ts';
import { Origin } from '../origin.tsx';
import type { EstimateParts } from '../parts.ts';

/** A sum that has stood already is named, not written out again. */
interface Written {
  readonly working: ShownWorking;
  readonly before: boolean;
  readonly steps: readonly Written[];
}

const sumKey = ({ title, result }: ShownWorking) => `${keyOf(title)}|${result.value}|${keyOf(result.unit)}`;

/** Marks each sum that has been written out before, in the order of reading. */
function markRepeats(working: ShownWorking, seen: Set<string>): Written {
  const before = seen.has(sumKey(working));
  seen.add(sumKey(working));
  return { working, before, steps: before ? [] : (working.steps ?? []).map((step) => markRepeats(step, seen)) };
}

/** The sums as an appendix: heat, machine, then a year of the heat pump and of what stands beside it. */
export function WorkingsPart({ parts }: { readonly parts: EstimateParts }) {
  const seen = new Set<string>();
  const { tariffs } = parts.estimate;
  const choice = tariffs ? [{ title: say('What you can choose'), workings: tariffWorkings(tariffs) }] : [];
  const chapters = [...listChapters(parts), ...choice].map(({ workings, ...chapter }) => ({
    note: undefined,
    ...chapter,
    written: workings.map((working) => markRepeats(working, seen)),
  }));
  return (
    <section>
      <h2>{say('The sums')}</h2>
      {chapters.map(({ title, note, written }) => (
        <div key={title}>
          <h3>{title}</h3>
          {note ? <p className="quiet">{note}</p> : null}
          {written.map((one) => (
            <WorkingBlock key={sumKey(one.working)} written={one} />
          ))}
        </div>
      ))}
      <FilesAccount files={parts.estimate.files ?? []} />
    </section>
  );
}

/** What was made of each file: every record and every column. */
function FilesAccount({ files }: { readonly files: readonly FileAccount[] }) {
  if (files.length === 0) return null;
  return (
    <>
      <h3>{say('What each file was used for')}</h3>
      {files.map((file, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a file may have been kept in two parts under one name.
        <div className="working" key={i}>
          <h4>{sayTold(file.fileName)}</h4>
          {fileAccountLines(file).map((line) => (
            <p className="quiet" key={line}>
              {line}
            </p>
          ))}
        </div>
      ))}
    </>
  );
}

function WorkingBlock({ written }: { readonly written: Written }) {
  const { working, before, steps } = written;
  const result = workingValue(working.result.value, working.result.unit);
  if (before) {
    return (
      <p className="working quiet">
        {say('{title}: {result}, worked out above.', { title: sayTold(working.title), result })}
      </p>
    );
  }
  return (
    <div className="working">
      <h4>
        {sayTold(working.title)}: {result}
      </h4>
      <p className="quiet">
        <Origin text={working.formula} />
      </p>
      {working.inputs.length > 0 ? (
        <table>
          <tbody>
            {working.inputs.map((input) => (
              <tr key={inputKey(input)}>
                <td>
                  <Origin text={input.name} />
                </td>
                <td className="number">{workingValue(input.value, input.unit)}</td>
                <td>
                  {gradeName(input.grade)}, <Origin text={input.origin} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : null}
      {working.source ? (
        <p className="quiet">
          <Said text="Source: {source}" with={{ source: <Origin text={working.source} /> }} />
        </p>
      ) : null}
      {steps.map((step) => (
        <WorkingBlock key={sumKey(step.working)} written={step} />
      ))}
    </div>
  );
}
