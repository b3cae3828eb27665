/** The picture of a page, with its table one key away. */
import { ChangesPicture } from '../../charts/changes/picture.tsx';
import { changesName, changesSentence } from '../../charts/changes/sentence.ts';
import { changeRows } from '../../charts/changes/series.ts';
import { changesTable } from '../../charts/changes/table.ts';
import { ChartFigure } from '../../charts/figure.tsx';
import { MonthPartsPicture } from '../../charts/month-parts/picture.tsx';
import { monthPartsName, monthPartsSentence } from '../../charts/month-parts/sentence.ts';
import { monthPartsTable } from '../../charts/month-parts/table.ts';
import { SpreadPicture } from '../../charts/spread/picture.tsx';
import { spreadName, spreadSentence } from '../../charts/spread/sentence.ts';
import { spreadSeries } from '../../charts/spread/series.ts';
import { spreadTable } from '../../charts/spread/table.ts';
import { TwentyPicture } from '../../charts/twenty/picture.tsx';
import { twentyName, twentySentence } from '../../charts/twenty/sentence.ts';
import { twentyTable } from '../../charts/twenty/table.ts';
import { UnitsPicture } from '../../charts/units/picture.tsx';
import { unitsName, unitsSentence } from '../../charts/units/sentence.ts';
import { unitsSeries } from '../../charts/units/series.ts';
import { unitsTable } from '../../charts/units/table.ts';
import { YearsPicture } from '../../charts/years/picture.tsx';
import { yearsName, yearsSentence } from '../../charts/years/sentence.ts';
import { yearsTable } from '../../charts/years/table.ts';
import { pickForPicture } from '../../model/comparison/beside.ts';
import type { Appraisal } from '../../model/shapes/appraisal.ts';
import type { Household } from '../../model/shapes/household.ts';
import type { PagePicture as Picture } from './page.ts';
import { sizeAtTable } from './size-at-table.ts';
import { WalkOffers } from './walk-offers.tsx';
import { WatchTable } from './watch-table.tsx';

/** Five ways of heating are as many as can be compared across a table. */
const MOST_ROWS = 5;

export function PagePicture(props: {
  readonly picture: Picture;
  readonly appraisal: Appraisal;
  readonly household: Household;
  /** Height there is for the picture, px. */
  readonly height: number;
}) {
  const { picture, appraisal, household, height } = props;
  const shared = { sentenceSaid: true, savable: false } as const;
  switch (picture.kind) {
    case 'months':
      return (
        <ChartFigure
          {...shared}
          name={monthPartsName(picture.parts.what)}
          sentence={monthPartsSentence(picture.parts)}
          picture={<MonthPartsPicture parts={picture.parts} size="table" height={height} />}
          table={monthPartsTable(picture.parts)}
        />
      );
    case 'units': {
      const input = unitsSeries(appraisal);
      return (
        <ChartFigure
          {...shared}
          name={unitsName()}
          sentence={unitsSentence(input)}
          picture={<UnitsPicture input={input} size="table" height={height} />}
          table={unitsTable(input)}
        />
      );
    }
    case 'cost': {
      const rows = spreadSeries({ ...appraisal, systems: pickForPicture(appraisal, household, MOST_ROWS) });
      const { beside } = picture;
      const size = sizeAtTable();
      return (
        <div className={beside === 'offers' ? 'walk-two' : 'walk-two is-bars'}>
          <ChartFigure
            {...shared}
            name={spreadName()}
            sentence={spreadSentence(rows)}
            picture={<SpreadPicture rows={rows} size={size} height={height} />}
            table={spreadTable(rows)}
          />
          {beside === 'offers' ? (
            <WalkOffers />
          ) : beside ? (
            <ChartFigure
              {...shared}
              name={twentyName()}
              sentence={twentySentence(beside.twenty)}
              picture={<TwentyPicture savingsPence={beside.twenty} size="table" height={height} />}
              table={twentyTable(beside.twenty)}
            />
          ) : null}
        </div>
      );
    }
    case 'changes': {
      const rows = changeRows(picture.changes);
      return (
        <ChartFigure
          {...shared}
          name={changesName()}
          sentence={changesSentence(rows)}
          picture={<ChangesPicture rows={rows} size="table" height={height} />}
          table={changesTable(rows)}
        />
      );
    }
    case 'living':
      return (
        <div className="walk-two">
          <dl className="walk-facts">
            {picture.facts.map(({ what, says }) => (
              <div key={what}>
                <dt>{what}</dt>
                <dd>{says}</dd>
              </div>
            ))}
          </dl>
          {picture.rows.length > 0 ? <WatchTable rows={picture.rows} /> : null}
        </div>
      );
    case 'next': {
      const { years } = picture;
      return (
        <div className="walk-two is-even">
          <ol className="walk-steps">
            {picture.steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
          {years ? (
            <ChartFigure
              {...shared}
              name={yearsName()}
              sentence={yearsSentence(years.lifetime)}
              picture={<YearsPicture series={years.series} size="table" height={height} />}
              table={yearsTable(years.series)}
            />
          ) : null}
        </div>
      );
    }
    case 'none':
      return null;
  }
}
