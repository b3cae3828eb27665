/** Monthly mean outdoor temperature of the 22 climate regions of the United Kingdom, at the height named. */
import type { ClimateRegion } from '../model/shapes/reference.ts';

const SOURCE =
  'SAP 2012 Tables U1 and U4 (two public transcriptions agree); Table U1 regions 0 to 7 also seen labelled SAP 10.2 with the same values';

const region = (
  id: number,
  name: string,
  latitudeN: number,
  heightM: number,
  monthlyMeanC: readonly number[],
): ClimateRegion => ({ id, name, latitudeN, heightM, monthlyMeanC, source: SOURCE, provenance: 'read' });

/** Regions 0 and 11 bear the same temperatures in the table; that is no slip. */
export const regions: readonly ClimateRegion[] = [
  region(0, 'UK average', 53.5, 79, [4.3, 4.9, 6.5, 8.9, 11.7, 14.6, 16.6, 16.4, 14.1, 10.6, 7.1, 4.2]),
  region(1, 'Thames', 51.6, 53, [5.1, 5.6, 7.4, 9.9, 13.0, 16.0, 17.9, 17.8, 15.2, 11.6, 8.0, 5.1]),
  region(2, 'South East England', 51.1, 55, [5.0, 5.4, 7.1, 9.5, 12.6, 15.4, 17.4, 17.5, 15.0, 11.7, 8.1, 5.2]),
  region(3, 'Southern England', 50.9, 50, [5.4, 5.7, 7.3, 9.6, 12.6, 15.4, 17.3, 17.3, 15.0, 11.8, 8.4, 5.5]),
  region(4, 'South West England', 50.5, 85, [6.1, 6.4, 7.5, 9.3, 11.9, 14.5, 16.2, 16.3, 14.6, 11.8, 9.0, 6.4]),
  region(
    5,
    'Severn Wales / Severn England',
    51.5,
    99,
    [4.9, 5.3, 7.0, 9.3, 12.2, 15.0, 16.7, 16.7, 14.4, 11.1, 7.8, 4.9],
  ),
  region(6, 'Midlands', 52.6, 116, [4.3, 4.8, 6.6, 9.0, 11.8, 14.8, 16.6, 16.5, 14.0, 10.5, 7.1, 4.2]),
  region(
    7,
    'West Pennines Wales / West Pennines England',
    53.5,
    71,
    [4.7, 5.2, 6.7, 9.1, 12.0, 14.7, 16.4, 16.3, 14.1, 10.7, 7.5, 4.6],
  ),
  region(
    8,
    'North West England / South West Scotland',
    54.6,
    119,
    [3.9, 4.3, 5.6, 7.9, 10.7, 13.2, 14.9, 14.8, 12.8, 9.7, 6.6, 3.7],
  ),
  region(
    9,
    'Borders Scotland / Borders England',
    55.2,
    101,
    [4.0, 4.5, 5.8, 7.9, 10.4, 13.3, 15.2, 15.1, 13.1, 9.7, 6.6, 3.7],
  ),
  region(10, 'North East England', 54.4, 78, [4.0, 4.6, 6.1, 8.3, 10.9, 13.8, 15.8, 15.6, 13.5, 10.1, 6.7, 3.8]),
  region(11, 'East Pennines', 53.5, 79, [4.3, 4.9, 6.5, 8.9, 11.7, 14.6, 16.6, 16.4, 14.1, 10.6, 7.1, 4.2]),
  region(12, 'East Anglia', 52.1, 29, [4.7, 5.2, 7.0, 9.5, 12.5, 15.4, 17.6, 17.6, 15.0, 11.4, 7.7, 4.7]),
  region(13, 'Wales', 52.6, 138, [5.0, 5.3, 6.5, 8.5, 11.2, 13.7, 15.3, 15.3, 13.5, 10.7, 7.8, 5.2]),
  region(14, 'West Scotland', 55.9, 113, [4.0, 4.4, 5.6, 7.9, 10.4, 13.0, 14.5, 14.4, 12.5, 9.3, 6.5, 3.8]),
  region(15, 'East Scotland', 56.2, 117, [3.6, 4.0, 5.4, 7.7, 10.1, 12.9, 14.6, 14.5, 12.5, 9.2, 6.1, 3.2]),
  region(16, 'North East Scotland', 57.3, 123, [3.3, 3.6, 5.0, 7.1, 9.3, 12.2, 14.0, 13.9, 12.0, 8.8, 5.7, 2.9]),
  region(17, 'Highland', 57.5, 218, [3.1, 3.2, 4.4, 6.6, 8.9, 11.4, 13.2, 13.1, 11.3, 8.2, 5.4, 2.7]),
  region(18, 'Western Isles', 57.7, 59, [5.2, 5.0, 5.8, 7.6, 9.7, 11.8, 13.4, 13.6, 12.1, 9.6, 7.3, 5.2]),
  region(19, 'Orkney', 59.0, 53, [4.4, 4.2, 5.0, 7.0, 8.9, 11.2, 13.1, 13.2, 11.7, 9.1, 6.6, 4.3]),
  region(20, 'Shetland', 60.1, 50, [4.6, 4.1, 4.7, 6.5, 8.3, 10.5, 12.4, 12.8, 11.4, 8.8, 6.5, 4.6]),
  region(21, 'Northern Ireland', 54.6, 72, [4.8, 5.2, 6.4, 8.4, 10.9, 13.5, 15.0, 14.9, 13.1, 10.0, 7.2, 4.7]),
];
