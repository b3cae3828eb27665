/** Brine from visit to visit: one picture, and one finding where it falls. */
import { BrinePicture } from '../../charts/brine/picture.tsx';
import { brineName, brineSentence } from '../../charts/brine/sentence.ts';
import { brineTable } from '../../charts/brine/table.ts';
import { ChartFigure } from '../../charts/figure.tsx';
import type { BrineCourse } from '../../model/site-readings/brine-course.ts';
import { siteTables } from '../../reference/site-tables.ts';
import { say } from '../../words/say.ts';
import { brineFallText } from '../../words/site-readings.ts';

export function BrineFigure({ course }: { readonly course: BrineCourse }) {
  if (course.readings.length < 2) return null;
  return (
    <section className="stack" aria-labelledby="brine-head">
      <h3 id="brine-head">{brineName()}</h3>
      <ChartFigure
        name={brineName()}
        sentence={brineSentence(course)}
        spoken={course.fall ? brineFallText(course.fall, siteTables.bands.fixed['brine-in']) : undefined}
        picture={<BrinePicture series={course} size="desk" />}
        table={brineTable(course)}
        note={say('Read at the machine in steady running. Brine is usually coldest in February and March.')}
      />
    </section>
  );
}
