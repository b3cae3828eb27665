/** What the demand part asks or remarks, with the data that the sentence needs. The sentences are in `words`. */
import type { Question } from '../shapes/appraisal.ts';

export type DemandQuestionCode =
  /** Nothing typed and no record: a typical British home stands in. data: spaceKWh */
  | 'demand-unknown'
  /** Two ways differ by more than their errors explain. data: a, b, aKWh, bKWh, aErrorKWh, bErrorKWh, differenceKWh, likely (codes, commas between) */
  | 'estimates-disagree'
  /** The way the installer chose cannot be gone. data: way, reason */
  | 'chosen-way-missing'
  /** Heat that no meter sees. data: kind, perhapsKWh (a usual second heater's, beside the record's rooms; 0 unknown) */
  | 'other-heat'
  /** Electricity beside a fuel that rises with the cold. data: inColdKWh (a typical year) */
  | 'electricity-in-the-cold'
  /** Whole-house electricity: the daily base is other electricity and hot water together. data, kWh a year: baseKWh, waterKWh */
  | 'whole-house-meter'
  /** Use in the same weather fell or rose from a day on. data: on, earliest, latest, carrier, share, shareLow, shareHigh, sure, used ("after", "whole"), beforeSlope, afterSlope */
  | 'house-changed'
  /** data: share (0 to 1), count */
  | 'estimated-readings'
  /** All that is there was said to be of further meters. data: carrier */
  | 'further-meters-alone'
  /** Periods with less than no use, or with no days, were left out. data: count */
  | 'periods-left-out'
  /** The record does not rise when it gets colder. data: carrier, r2 */
  | 'no-heating-in-record'
  /** The line explains little of the record. data: r2, cvRmse */
  | 'record-scatter'
  /** Bills or months stray further from the line than those of one home do. data: period, cvRmse */
  | 'record-uneven'
  /** The typical year stands in for the weather of the record. data: region, days */
  | 'typical-weather-stands-in'
  /** Use that neither hot water nor cooking explains. data, all kWh a year: leftoverKWh (heat), baseKWh (as metered), waterKWh (heat) */
  | 'base-unexplained'
  /** The record's daily base is less than the hot water of so many people. data: baseHeatKWh, predictedKWh, people */
  | 'base-below-hot-water'
  /** All that the record holds is less than the hot water of so many people. data: people */
  | 'record-below-hot-water'
  /** Use known only as a total over a span. data: days, deliveries */
  | 'total-only'
  /** data: heatLossKW */
  | 'heat-loss-zero'
  /** data: heatLossWPerK, floorAreaM2 (0 unknown), wattsPerKM2 (0 unknown) */
  | 'heat-loss-unlikely'
  /** data: roomC, designOutdoorC */
  | 'room-below-design'
  /** No design temperature typed; one was taken from the table. data: place, rule, outdoorC */
  | 'design-temperature-assumed'
  /** A heat loss, and neither a design temperature nor a table of places for this country. data: none */
  | 'design-temperature-asked'
  /** Nobody said the climate region, and no table knows the postcodes of this country. data: region */
  | 'region-asked'
  /** The region typed is none of this country. data: region (that stands in) */
  | 'region-not-listed'
  /** No table knows the postcode typed. data: postcode, region (that stands in) */
  | 'postcode-not-listed'
  /** What is British stands in where the country has no table. data: none */
  | 'british-tables'
  /** data: efficiency */
  | 'efficiency-above-one';

/** Bills of one home stray from its line by 2 to 20 %, so that others lived there or a number is wrong. Common practice, no source. */
const MOST_STRAY = 0.3;

/** Whether bills or months miss the line by more than the habits of one home; single days may. */
export const isUneven = ({ period, cvRmse }: { readonly period: string; readonly cvRmse: number }): boolean =>
  period !== 'day' && cvRmse > MOST_STRAY;

/** A question of the demand part. */
export function ask(
  code: DemandQuestionCode,
  weight: Question['weight'],
  data: Question['data'],
  field?: string,
): Question {
  return { code, weight, stage: 'heat', ...(field === undefined ? {} : { field }), data };
}
