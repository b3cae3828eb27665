import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import {
  type IntakeChoices,
  type IntakeContext,
  IntakePreview,
  type IntakeResult,
} from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { remarkSentence } from '../../../src/words/remarks.ts';

const CORPUS = fileURLToPath(new URL('../../corpus/', import.meta.url));
const context: IntakeContext = {
  zone: 'Europe/London',
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
};
const bytesOf = (file: string) => new Uint8Array(readFileSync(`${CORPUS}${file}`));
const read = (file: string, choices: IntakeChoices = {}): IntakeResult =>
  readFile(file, bytesOf(file), choices, context);

/** "readings electricity 30' 2025-01-14..2025-01-17 76.8 144/144 3d": what a file came to, in one line. */
function summary({ preview }: IntakeResult): string[] {
  return preview.series.map((s) => {
    const whole = s.days?.values.filter((v) => v !== null).length;
    const what = s.role === 'import' || s.role === 'weather' ? s.carrier : `${s.carrier} ${s.role}`;
    const length = s.resolution === 'interval' ? `${s.intervalMinutes}'` : s.resolution;
    const parts = whole === undefined ? `${s.periods?.length}p` : `${whole}d`;
    return `${what} ${length} ${s.from}..${s.to} ${Number(s.total.toFixed(3))} ${s.present}/${s.expected} ${parts}`;
  });
}
/** Codes with the line they name, questions marked with "?", refusals with "!". */
const codes = ({ preview }: IntakeResult): string =>
  preview.remarks
    .map(
      (r) => `${r.code}${r.row === undefined ? '' : `@${r.row}`}${{ note: '', question: '?', refusal: '!' }[r.weight]}`,
    )
    .join(' ');

/** The pattern of the invented readings comes to 25.6 kWh on a day of 48, 24.9 on one of 46 and 26.3 on one of 50 half-hours. */
const THREE_DAYS = "electricity 30' 2025-01-14..2025-01-17 76.8 144/144 3d";
const SPRING = "electricity 30' 2025-03-29..2025-04-01 76.1 142/142 3d";
const AUTUMN = "electricity 30' 2025-10-25..2025-10-28 77.5 146/146 3d";

const CASES: readonly [file: string, shape: string, series: string | readonly string[], remarks: string][] = [
  // Long: stamps
  ['long-start.csv', 'readings', THREE_DAYS, ''],
  ['long-end.csv', 'readings', THREE_DAYS, 'stamp-is-end'],
  ['long-midnight-24.csv', 'readings', "electricity 30' 2025-01-14..2025-01-16 51.2 96/96 2d", 'stamp-is-end'],
  ['long-last-second.csv', 'readings', THREE_DAYS, 'stamp-is-end'],
  ['long-two-columns-of-time.csv', 'readings', THREE_DAYS, ''],
  // Long: units
  ['long-watt-hours.csv', 'readings', THREE_DAYS, ''],
  ['long-no-words.csv', 'readings', THREE_DAYS, 'carrier-guessed? unit-guessed?'],
  ['long-no-words-large.csv', 'readings', THREE_DAYS, 'carrier-guessed? unit-guessed?'],
  ['long-no-heading.csv', 'readings', THREE_DAYS, 'carrier-guessed? unit-guessed?'],
  ['long-units-below.csv', 'readings', THREE_DAYS, 'carrier-guessed?'],
  // 76.8 tenths of m³ × 1.02264 × 39.5 ÷ 3.6 = 86.174 kWh
  ['long-gas-m3.csv', 'readings', "gas 30' 2025-01-14..2025-01-17 86.174 144/144 3d", 'calorific-assumed?'],
  ['long-quarter-hours.csv', 'readings', "electricity 15' 2025-01-14..2025-01-16 51.2 192/192 2d", ''],
  // Long: clocks
  ['long-spring-local.csv', 'readings', SPRING, ''],
  ['long-spring-utc.csv', 'readings', SPRING, 'clock-utc'],
  ['long-spring-filled.csv', 'readings', SPRING, 'spring-hour-filled'],
  ['long-offset.csv', 'readings', SPRING, 'clock-from-offset'],
  ['long-autumn-local.csv', 'readings', AUTUMN, ''],
  ['long-autumn-newest-first.csv', 'readings', AUTUMN, 'newest-first'],
  ['long-autumn-ends.csv', 'readings', AUTUMN, 'stamp-is-end'],
  ['long-autumn-ends-added.csv', 'readings', AUTUMN, 'stamp-is-end'],
  ['long-autumn-once.csv', 'readings', "electricity 30' 2025-10-25..2025-10-28 76.8 144/144 2d", 'clock-autumn-asked?'],
  ['long-heading-utc.csv', 'readings', "electricity 30' 2025-07-01..2025-07-04 76.8 144/144 3d", 'clock-utc'],
  ['long-zulu.csv', 'readings', "electricity 30' 2025-07-01..2025-07-04 76.8 144/144 3d", 'clock-from-offset'],
  ['long-epoch.csv', 'readings', "electricity 30' 2025-07-01..2025-07-04 76.8 144/144 3d", 'clock-from-offset'],
  ['long-summer-no-clock.csv', 'readings', "electricity 30' 2025-07-01..2025-07-04 76.8 144/144 3d", 'clock-assumed?'],
  // Long: dates
  ['long-day-first.csv', 'readings', "electricity 30' 2025-03-12..2025-03-15 76.8 144/144 3d", ''],
  ['long-month-first.csv', 'readings', "electricity 30' 2025-03-12..2025-03-15 76.8 144/144 3d", ''],
  ['long-date-full-days.csv', 'readings', "electricity 30' 2025-02-03..2025-02-06 76.8 144/144 3d", ''],
  [
    'long-date-mixed.csv',
    'readings',
    "electricity 30' 2025-03-12..2025-03-14 51.2 96/96 2d",
    'date-order-mixed@98? date-impossible@98',
  ],
  ['long-twelve-hours.csv', 'readings', THREE_DAYS, ''],
  ['long-serial.csv', 'readings', THREE_DAYS, 'dates-are-serials'],
  [
    'long-impossible-date.csv',
    'readings',
    "electricity 30' 2025-02-27..2025-03-01 51.2 96/96 2d",
    'unread-asked@98? date-impossible@98 date-impossible@99 date-impossible@100 date-impossible@101 date-impossible@102 date-impossible@103',
  ],
  // Long: numbers
  ['long-decimal-comma.csv', 'readings', THREE_DAYS, 'decimal-comma'],
  ['long-thousands.csv', 'readings', THREE_DAYS, ''],
  // 26 or so of the cells are 1,000 Wh; read as one Wh until the question is answered.
  [
    'long-ambiguous-comma.csv',
    'readings',
    "electricity 30' 2025-01-14..2025-01-17 64.812 144/144 3d",
    'decimal-asked@11?',
  ],
  ['long-ambiguous-point.csv', 'readings', "gas 30' 2025-01-14..2025-01-17 220.8 144/144 3d", 'decimal-asked@2?'],
  [
    'long-mixed-decimals.csv',
    'readings',
    "electricity 30' 2025-01-14..2025-01-16 25.6 48/49 1d",
    'decimal-mixed@50? number-unreadable@50 gap',
  ],
  [
    'long-letter-o.csv',
    'readings',
    "electricity 30' 2025-01-14..2025-01-17 75.8 143/144 2d",
    'number-unreadable@11 gap',
  ],
  [
    'long-letter-o-inside.csv',
    'readings',
    "electricity 30' 2025-01-14..2025-01-17 75.8 143/144 2d",
    'number-unreadable@11 gap',
  ],
  ['long-missing-words.csv', 'readings', "electricity 30' 2025-01-14..2025-01-17 75.5 141/144 2d", 'gap'],
  // Long: text
  ['long-latin1.csv', 'readings', THREE_DAYS, 'encoding-taken'],
  ['long-utf16.csv', 'readings', THREE_DAYS, ''],
  ['long-mark-crlf.csv', 'readings', THREE_DAYS, ''],
  ['long-returns-only.csv', 'readings', THREE_DAYS, ''],
  ['long-sep-line.csv', 'readings', THREE_DAYS, ''],
  ['long-bars.txt', 'readings', THREE_DAYS, ''],
  ['long-quoted.csv', 'readings', THREE_DAYS, ''],
  ['long-titles-totals.csv', 'readings', THREE_DAYS, 'preamble-skipped@1 totals-skipped@150 row-skipped@152'],
  ['long-heading-again.csv', 'readings', THREE_DAYS, 'heading-repeated@50 heading-repeated@99'],
  ['long-cut-off.csv', 'readings', "electricity 30' 2025-01-14..2025-01-17 76 143/143 2d", 'row-cut-off@145'],
  // Long: quality
  ['long-estimated.csv', 'readings', THREE_DAYS, 'estimated'],
  [
    'long-repeats.csv',
    'readings',
    "electricity 30' 2025-01-14..2025-01-17 76.4 144/144 3d",
    'duplicate-same@21 duplicate-different@23',
  ],
  ['long-gap.csv', 'readings', "electricity 30' 2025-01-14..2025-01-17 71.3 134/144 2d", 'gap'],
  [
    'long-negative-spike.csv',
    'readings',
    "electricity 30' 2025-01-14..2025-01-17 75.7 142/144 2d",
    'negative@11 spike@12 gap',
  ],
  ['long-frozen.csv', 'readings', "electricity 30' 2025-01-14..2025-01-18 72.032 192/192 4d", 'frozen'],
  // Long: columns
  ['long-cost-beside.csv', 'readings', THREE_DAYS, ''],
  [
    'long-import-export.csv',
    'readings',
    [THREE_DAYS, "electricity export 30' 2025-01-14..2025-01-17 38.4 144/144 3d"],
    'several-series',
  ],
  ['hourly-temperature.csv', 'readings', "outdoor-temperature 60' 2025-03-29..2025-04-01 6.166 71/71 3d", 'clock-utc'],
  // Wide
  ['wide-48.csv', 'days across', "electricity 30' 2025-01-14..2025-01-18 102.4 192/192 4d", ''],
  ['wide-48-ends.csv', 'days across', "electricity 30' 2025-01-14..2025-01-18 102.4 192/192 4d", ''],
  ['wide-24.csv', 'days across', "gas 60' 2025-01-14..2025-01-18 48 96/96 4d", ''],
  ['wide-total-column.csv', 'days across', "electricity 30' 2025-01-14..2025-01-18 102.4 192/192 4d", ''],
  ['wide-spring-empty.csv', 'days across', "electricity 30' 2025-03-28..2025-04-01 101.7 190/190 4d", ''],
  [
    'wide-spring-noughts.csv',
    'days across',
    "electricity 30' 2025-03-28..2025-04-01 101.7 190/190 4d",
    'spring-hour-filled',
  ],
  ['wide-spring-46.csv', 'days across', "electricity 30' 2025-03-28..2025-04-01 101.7 190/190 4d", ''],
  ['wide-autumn-50.csv', 'days across', AUTUMN, ''],
  // Days
  ['days-kwh.csv', 'days', 'electricity day 2025-01-10..2025-01-30 190 19/20 19d', 'gap'],
  ['days-mean.csv', 'days', 'outdoor-temperature day 2025-01-10..2025-01-20 6.25 10/10 10d', ''],
  ['days-max-min.csv', 'days', 'outdoor-temperature day 2025-01-10..2025-01-20 9.25 10/10 10d', ''],
  // Bills
  ['bills-inclusive.csv', 'bills', 'electricity period 2025-01-01..2025-10-01 3060 273/273 2p', 'estimated-merged@3'],
  ['bills-exclusive.csv', 'bills', 'gas period 2025-01-14..2025-10-14 5900 273/273 3p', ''],
  // 100 m³ at 39.3 MJ/m³ are 1,116.382 kWh, 100 m³ at 38.0 are 1,079.45 kWh: bill arithmetic of public consumer guides.
  ['bills-gas-calorific.csv', 'bills', 'gas period 2025-01-01..2025-07-01 2195.835 181/181 2p', ''],
  // 3,159.361 + 4,627.70 kWh: the same guides, with 2.83 m³ to the hundred cubic feet.
  ['bills-hundred-cubic-feet.csv', 'bills', 'gas period 2025-01-01..2025-07-01 7787.061 181/181 2p', ''],
  [
    'bills-gas-no-calorific.csv',
    'bills',
    'gas period 2025-01-01..2025-07-01 5834.729 181/181 2p',
    'calorific-assumed?',
  ],
  ['bills-months.csv', 'bills', 'gas period 2025-01-01..2025-04-01 5400 90/90 3p', ''],
  ['bills-month-names.csv', 'bills', 'electricity period 2024-01-01..2024-04-01 880 91/91 3p', ''],
  ['bills-quarters.csv', 'bills', 'electricity period 2025-01-01..2025-10-01 2060 273/273 3p', ''],
  [
    'bills-first-days.csv',
    'bills',
    'electricity period 2025-01-01..2025-05-01 1120 120/120 4p',
    'date-order-asked@3? months-by-first-day',
  ],
  ['bills-weekly.csv', 'bills', 'electricity period 2025-01-06..2025-02-17 465 42/42 6p', ''],
  [
    'bills-overlap-hole.csv',
    'bills',
    'electricity period 2025-01-01..2025-06-01 1180 121/151 4p',
    'period-overlap-asked@4? period-hole@5',
  ],
  ['bills-one.csv', 'bills', 'electricity period 2025-01-13..2025-04-18 900 95/95 1p', 'to-inclusive-asked@2?'],
  [
    'bills-backwards.csv',
    'bills',
    'electricity period 2025-01-01..2025-04-01 570 62/90 2p',
    'to-inclusive-asked@2? period-backwards@3 period-hole@4',
  ],
  [
    'bills-day-night.csv',
    'bills',
    [
      'electricity period 2025-01-01..2025-07-01 920 181/181 2p',
      'electricity period 2025-01-01..2025-07-01 2000 181/181 2p',
    ],
    'several-series cost-of-several',
  ],
  [
    'bills-two-fuels.csv',
    'bills',
    ['electricity period 2025-01-01..2025-03-01 580 59/59 2p', 'gas period 2025-01-01..2025-03-01 3900 59/59 2p'],
    'several-series',
  ],
  // Deliveries: 900 + 700 + 1,100 litres at 10.30 kWh; 750 + 500 litres at 7.21 kWh
  ['oil-deliveries.csv', 'deliveries', 'oil period 2023-10-12..2024-10-25 27810 379/379 3p', 'delivery-rule@2'],
  [
    'lpg-deliveries.csv',
    'deliveries',
    'lpg period 2024-11-02..2025-04-02 9012.5 151/151 2p',
    'decimal-comma delivery-rule@2',
  ],
  // Counters
  [
    'counter-months.csv',
    'counter',
    'electricity period 2024-12-31..2025-03-31 2700 90/90 3p',
    'register-rollover@4 estimated',
  ],
  [
    'counter-exchange.csv',
    'counter',
    'electricity period 2025-01-01..2025-04-01 750 62/90 2p',
    'unit-guessed? register-exchange@4 period-hole@5',
  ],
  // 490 to the old meter's last reading, 350 from the new one's first
  [
    'counter-exchange-read.csv',
    'counter',
    'electricity period 2025-01-01..2025-03-15 840 73/73 3p',
    'register-exchange-read@5',
  ],
  ['counter-half-hours.csv', 'counter', SPRING, ''],
  [
    'counter-still.csv',
    'counter',
    'electricity day 2025-01-01..2025-01-20 0 19/19 19d',
    'carrier-guessed? unit-guessed? register-still?',
  ],
  // 11 days of 4.5 m³ × 1.02264 × 39.5 ÷ 3.6
  ['counter-days.csv', 'counter', 'gas day 2025-01-10..2025-01-21 555.421 11/11 11d', 'calorific-assumed?'],
  // Meter data in the open XML standard
  ['espi-hours.xml', 'open meter XML', "electricity 60' 2025-01-14..2025-01-17 35.1 72/72 3d", ''],
  ['espi-kilowatt-hours.xml', 'open meter XML', "electricity 60' 2025-01-14..2025-01-17 144 72/72 3d", ''],
  // 2 × 6 m³ × 1.02264 × 39.5 ÷ 3.6
  [
    'espi-three-records.xml',
    'open meter XML',
    [
      "electricity 30' 2025-01-14..2025-01-16 28.8 96/96 2d",
      "electricity export 30' 2025-01-14..2025-01-16 7.2 96/96 2d",
      'gas day 2025-01-14..2025-01-16 134.648 2/2 2d',
    ],
    'calorific-assumed? several-series',
  ],
  [
    'espi-spring-no-length.xml',
    'open meter XML',
    "electricity 60' 2025-03-29..2025-03-31 22.075 47/47 2d",
    'espi-no-length@39',
  ],
  [
    'espi-autumn-two-hours.xml',
    'open meter XML',
    "electricity 60' 2025-10-25..2025-10-27 22.975 49/49 2d",
    'espi-long-reading@39',
  ],
  ['espi-days.xml', 'open meter XML', 'electricity day 2025-03-28..2025-04-01 36.1 4/4 4d', 'estimated'],
  ['espi-days-long.xml', 'open meter XML', 'electricity day 2025-10-25..2025-10-28 27.6 3/3 3d', ''],
  [
    'espi-repeats.xml',
    'open meter XML',
    "electricity 60' 2025-01-14..2025-01-16 23.95 48/48 2d",
    'duplicate-same@62 duplicate-different@86',
  ],
  ['espi-no-type.xml', 'open meter XML', "electricity 60' 2025-01-14..2025-01-16 23.4 48/48 2d", 'espi-type-missing?'],
  ['espi-counter.xml', 'open meter XML', "electricity 60' 2025-01-14..2025-01-16 23.4 48/48 2d", ''],
  ['espi-hours-and-days.xml', 'open meter XML', "electricity 60' 2025-01-14..2025-01-16 23.4 48/48 2d", 'espi-coarser'],
  [
    'espi-local-clock.xml',
    'open meter XML',
    "electricity 60' 2025-03-29..2025-03-31 22.075 47/47 2d",
    'espi-clock-asked?',
  ],
  [
    'espi-bills.xml',
    'open meter XML',
    'electricity period 2025-01-01..2025-04-01 1140 90/90 2p',
    'estimated-merged@15',
  ],
  [
    'espi-net.xml',
    'open meter XML',
    [
      "electricity 60' 2025-01-14..2025-01-16 16 48/48 2d",
      "electricity export 60' 2025-01-14..2025-01-16 2.4 48/48 2d",
    ],
    'espi-net several-series',
  ],
  // 4 × 3 hundred cubic feet × 2.83 m³ × 1.02264 × 39.5 ÷ 3.6
  ['espi-gas-feet.xml', 'open meter XML', 'gas day 2025-01-14..2025-01-18 381.053 4/4 4d', 'calorific-assumed?'],
  ['espi-power.xml', 'open meter XML', "electricity 30' 2025-01-14..2025-01-16 28.8 96/96 2d", 'espi-power'],
  ['espi-water-beside.xml', 'open meter XML', "electricity 60' 2025-01-14..2025-01-16 23.4 48/48 2d", 'espi-left-out'],
  // Workbooks
  ['book-half-hours.xlsx', 'readings', "electricity 30' 2025-01-14..2025-01-16 41.76 96/96 2d", ''],
  ['book-cover-first.xlsx', 'readings', "electricity 30' 2025-01-14..2025-01-16 41.76 96/96 2d", 'sheet-taken'],
  ['book-two-meters.xlsx', 'readings', "electricity 30' 2025-01-14..2025-01-16 41.76 96/96 2d", 'sheet-asked?'],
  ['book-bills-1904.xlsx', 'bills', 'gas period 2025-01-01..2025-04-01 4900 90/90 3p', 'preamble-skipped@1'],
  ['book-date-and-time.xlsx', 'readings', "electricity 30' 2025-01-14..2025-01-16 41.76 96/96 2d", 'carrier-guessed?'],
  // 9.125 is a number there and no nine thousand.
  ['book-thousandths.xlsx', 'days', 'electricity day 2025-01-14..2025-01-22 101 8/8 8d', ''],
  // Weather files
  ['weather-record.epw', 'weather file', "outdoor-temperature 60' 2025-03-28..2025-04-02 6 96/96 4d", 'epw-place'],
  // Logs of heat pumps and heat meters
  [
    'log-hours.csv',
    'readings',
    [
      "electricity heat-pump 60' 2025-01-14..2025-01-17 66.6 72/72 3d",
      "heat heat-output 60' 2025-01-14..2025-01-17 221.4 72/72 3d",
      "flow-temperature machine 60' 2025-01-14..2025-01-17 39 72/72 3d",
      "return-temperature machine 60' 2025-01-14..2025-01-17 34 72/72 3d",
      "outdoor-temperature 60' 2025-01-14..2025-01-17 5.958 72/72 3d",
    ],
    'columns-left-out several-series heat-pump-taken',
  ],
  [
    'log-counters.csv',
    'counter',
    [
      'heat heat-output period 2024-10-01..2025-02-01 5900 123/123 4p',
      'electricity heat-pump period 2024-10-01..2025-02-01 1740 123/123 4p',
    ],
    'decimal-asked@2? part-pump-asked? columns-left-out several-series',
  ],
  [
    'log-running-totals.csv',
    'counter',
    [
      "electricity heat-pump 60' 2025-01-14..2025-01-17 66.6 72/72 3d",
      "heat heat-output 60' 2025-01-14..2025-01-17 221.4 72/72 3d",
    ],
    'columns-left-out several-series heat-pump-taken',
  ],
  [
    'log-days.csv',
    'days',
    [
      'electricity heat-pump day 2025-01-14..2025-01-24 165 10/10 10d',
      'heat heat-output day 2025-01-14..2025-01-24 535 10/10 10d',
    ],
    'columns-left-out several-series heat-pump-taken',
  ],
  // 6.48 + 5.40 + 4.32 GJ ÷ 3.6 MJ a kWh
  ['heat-meter-gigajoules.csv', 'bills', 'heat heat-output period 2025-01-01..2025-04-01 4500 90/90 3p', ''],
  // A heat meter without the machine's electricity; the degrees are means by the day: (31 × -1.5 + 28 × 5.1 + 31 × 7.2) ÷ 90
  [
    'heat-meter-months.csv',
    'bills',
    [
      'heat heat-output period 2025-01-01..2025-04-01 2300 90/90 3p',
      'outdoor-temperature period 2025-01-01..2025-04-01 3.55 90/90 3p',
      'flow-temperature machine period 2025-01-01..2025-04-01 37.224 90/90 3p',
    ],
    'several-series',
  ],
  [
    'heat-meter-hours.csv',
    'readings',
    [
      "heat heat-output 60' 2025-01-01..2025-01-03 68.8 48/48 2d",
      "water 60' 2025-01-01..2025-01-03 14.88 48/48 2d",
      "flow-temperature machine 60' 2025-01-01..2025-01-03 38.433 48/48 2d",
      "return-temperature machine 60' 2025-01-01..2025-01-03 33.294 48/48 2d",
    ],
    'several-series',
  ],
  // 24 hours of market time are 01:00 to 01:00 in the summer of Sydney; the home here is not there, so its clock is asked for.
  [
    'rows-by-type.csv',
    'rows by type',
    [
      "electricity 30' 2025-01-02..2025-01-05 52.8 96/96 1d",
      "electricity export 30' 2025-01-02..2025-01-05 4.5 96/96 1d",
    ],
    'zone-asked? estimated several-series',
  ],
  // Registers named in a column
  [
    'registers-import-export.csv',
    'readings',
    [
      "electricity 30' 2025-01-14..2025-01-16 41.76 96/96 2d",
      "electricity export 30' 2025-01-14..2025-01-16 7.2 96/96 2d",
    ],
    'registers-by-column',
  ],
  [
    'registers-one-after-another.csv',
    'days',
    ['electricity day 2025-01-14..2025-01-26 120 12/12 12d', 'gas day 2025-01-14..2025-01-26 666 12/12 12d'],
    'registers-by-column',
  ],
  [
    'registers-day-night-bills.csv',
    'bills',
    [
      'electricity period 2025-01-01..2025-07-01 920 181/181 2p',
      'electricity period 2025-01-01..2025-07-01 2000 181/181 2p',
    ],
    'carrier-guessed? registers-by-column',
  ],
  // Two registers of one meter and another meter beside them
  [
    'days-day-night-garage.csv',
    'days',
    ['electricity day 2025-01-01..2025-01-06 40.6 5/5 5d', 'electricity day 2025-01-01..2025-01-06 15.5 5/5 5d'],
    'column-asked? columns-left-out several-series',
  ],
  ['long-peak-label.csv', 'readings', "electricity 30' 2025-01-14..2025-01-16 41.76 96/96 2d", ''],
  // Estimates put right by a later actual reading
  [
    'counter-marks-behind.csv',
    'counter',
    'electricity period 2024-12-31..2025-04-30 1655 120/120 2p',
    'estimated-merged@3 estimated',
  ],
  [
    'counter-marks-close.csv',
    'counter',
    'electricity period 2024-12-31..2025-04-30 1655 120/120 2p',
    'estimated-merged@3 estimated',
  ],
  // Bills with all that they print; the bills themselves are checked in bill-files.test.ts
  [
    'bills-whole-electricity.csv',
    'bills',
    'electricity period 2026-01-01..2026-07-01 1500 181/181 2p',
    'estimated columns-not-understood',
  ],
  ['bills-last-reading.csv', 'bills', 'electricity period 2026-01-01..2026-03-01 560 59/59 2p', 'carrier-guessed?'],
  [
    'bills-whole-day-night.csv',
    'bills',
    [
      'electricity period 2026-01-01..2026-03-01 580 59/59 2p',
      'electricity period 2026-01-01..2026-03-01 950 59/59 2p',
    ],
    'several-series decimal-comma cost-of-several standing-taken',
  ],
  ['bills-whole-gas-m3.csv', 'bills', 'gas period 2026-01-01..2026-03-01 3021.9 59/59 2p', 'estimated'],
  // 61 hundred cubic feet × 2.83 × 1.02264 × 39.5 ÷ 3.6 = 1,937.018 kWh, from readings alone
  ['bills-whole-feet.csv', 'bills', 'gas period 2026-01-01..2026-03-01 1937.018 59/59 2p', 'estimated'],
  // The second bill keeps the first one's price after a change, the third has VAT of 20%.
  [
    'bills-whole-old-rate.csv',
    'bills',
    'electricity period 2026-01-01..2026-10-01 2000 273/273 3p',
    'carrier-guessed? estimated columns-not-understood',
  ],
  [
    'bills-whole-unknown.csv',
    'bills',
    'electricity period 2026-01-01..2026-03-01 700 59/59 2p',
    'columns-left-out standing-taken columns-not-understood',
  ],
  [
    'bills-estimated-then-actual.csv',
    'bills',
    'gas period 2025-01-01..2025-05-01 6400 120/120 3p',
    'estimated-merged@3 estimated',
  ],
];

const REFUSED: readonly [file: string, code: string, sentence: RegExp][] = [
  ['refused-empty.csv', 'file-empty', /refused-empty\.csv is empty/],
  ['refused-blank.csv', 'file-empty', /nothing stands in it/],
  ['refused-picture.csv', 'file-foreign', /is a picture, .* or type the figures in/],
  ['refused-workbook.xlsx', 'workbook-broken', /damaged workbook \(it is cut off\)/],
  ['refused-paper.pdf', 'file-foreign', /is a PDF/],
  ['refused-page.csv', 'file-foreign', /is a web page/],
  ['refused-binary.dat', 'file-binary', /is not text, nor/],
  ['refused-no-dates.csv', 'no-dates', /no column of dates\. Its columns are Name, Rooms, Area/],
  ['refused-words.txt', 'no-table', /is no table/],
  ['refused-heading-only.csv', 'no-rows', /headings \(Start, kWh\) and no row below them/],
  ['refused-letter.csv', 'no-shape-fits', /Its columns are Date, Name/],
  ['refused-comma-inside.csv', 'comma-inside-numbers', /^Line 2 of refused-comma-inside\.csv/],
  ['refused-empty-book.xlsx', 'workbook-empty', /no sheet with rows in it/],
  ['refused-damaged.xlsx', 'workbook-broken', /is a damaged workbook/],
  ['refused-cut-off.xml', 'xml-broken', /^Line \d+ of refused-cut-off\.xml is no valid XML/],
  ['refused-doctype.xml', 'xml-doctype', /^Line 2 of refused-doctype\.xml declares a document type/],
  ['refused-news.xml', 'file-foreign', /not of the open standard for meter data/],
  ['refused-water-only.xml', 'espi-empty', /none of its 24 readings could be used/],
  ['refused-typical-year.epw', 'epw-years-mixed', /joins months of 2 years \(2004, 2009\) into one typical year/],
  ['refused-no-clock.epw', 'epw-title', /hours east of Greenwich/],
  ['oil-one-delivery.csv', 'delivery-alone', /one delivery only/],
];

describe('what a file comes to', () => {
  test.each(CASES)('%s', (file, shape, series, remarks) => {
    const result = read(file);
    expect(IntakePreview.safeParse(result.preview).error).toBeUndefined();
    expect(result.preview.shape).toBe(shape);
    expect(summary(result)).toEqual(typeof series === 'string' ? [series] : series);
    expect(codes(result)).toBe(remarks);
  });
  test('every file of the corpus stands in a table', () => {
    const known = new Set([...CASES, ...REFUSED].map(([file]) => file));
    expect(readdirSync(CORPUS).filter((name) => !name.startsWith('tariff') && !known.has(name))).toEqual([]);
  });
});

describe('what is refused, and in which words', () => {
  test.each(REFUSED)('%s: %s', (file, code, sentence) => {
    const { preview, intervals } = read(file);
    expect(preview.series).toEqual([]);
    expect(intervals).toEqual([]);
    const refusal = preview.remarks.find((r) => r.weight === 'refusal');
    expect(refusal?.code).toBe(code);
    expect(remarkSentence(refusal!)).toMatch(sentence);
  });
  test('a file of 200 MB is refused before it is read', () => {
    const { preview } = readFile('large.csv', new Uint8Array(200 * 1024 * 1024), {}, context);
    expect(preview.remarks.map(remarkSentence)).toEqual([
      'large.csv has 200 MB; we read at most 16 MB. Export each year by itself, half-hours instead of minutes, or one meter at a time.',
    ]);
  });
});

describe('the preview is the import', () => {
  test.each(CASES.map(([file]) => file))('%s reads the same again with the choices it settled on', (file) => {
    const first = read(file);
    const again = read(file, first.preview.choices);
    expect(again.preview.series).toEqual(first.preview.series);
    expect(again.preview.choices).toEqual(first.preview.choices);
    expect(again.intervals).toEqual(first.intervals);
  });
});

describe('the installer corrects', () => {
  /** Questions of these files that the one correction does not answer. */
  const UNTOUCHED = new Set(['carrier-guessed', 'clock-assumed']);
  const total = (file: string, choices: IntakeChoices) => {
    const [series] = read(file, choices).preview.series;
    return [series?.from, Number(series?.total.toFixed(3))];
  };
  test.each<[string, string, IntakeChoices, [string, number]]>([
    ['the unit', 'long-no-words.csv', { unit: 'Wh' }, ['2025-01-14', 0.077]],
    ['the fuel and its calorific value', 'long-gas-m3.csv', { calorificMJPerM3: 38 }, ['2025-01-14', 82.902]],
    ['the order of day and month', 'long-date-full-days.csv', { dayFirst: false }, ['2025-03-02', 76.8]],
    ['the decimal sign', 'long-ambiguous-comma.csv', { decimal: '.' }, ['2025-01-14', 76.8]],
    ['the side of the stamp', 'long-start.csv', { stamp: 'end' }, ['2025-01-13', 76.8]],
    ['the clock', 'long-summer-no-clock.csv', { clock: 'utc' }, ['2025-07-01', 76.8]],
    ['the column', 'long-import-export.csv', { columns: { value: 2 } }, ['2025-01-14', 38.4]],
    ['the last day of a bill', 'bills-one.csv', { toInclusive: false }, ['2025-01-13', 900]],
  ])('%s', (_, file, choices, expected) => {
    expect(total(file, choices)).toEqual(expected);
    const asked = read(file, choices).preview.remarks.filter(
      (r) => r.weight === 'question' && /asked|guessed|assumed/.test(r.code) && !UNTOUCHED.has(r.code),
    );
    expect(asked).toEqual([]);
  });

  test.each(['days-kwh.csv', 'long-start.csv', 'bills-months.csv'])(
    'the only amount of %s is none where it was said to be a cost',
    (file) => {
      const { uses } = read(file).preview;
      const cost = uses!.find(({ use }) => use === 'value')!.column;
      const { series, choices } = read(file, { columns: { cost } }).preview;
      expect([series, choices.columns]).toEqual([[], expect.not.objectContaining({ value: cost })]);
    },
  );
});

describe('a shape that does not fit', () => {
  const shapes = read('long-start.csv').preview.candidates.map((c) => c.shape);
  test.each(shapes)('%s is tried on every file without an error of ours', (shape) => {
    for (const [file] of CASES) {
      const { preview } = read(file, { shape });
      expect(IntakePreview.safeParse(preview).error).toBeUndefined();
      const refused = preview.remarks.some((r) => r.weight === 'refusal');
      expect([file, refused]).toEqual([file, preview.series.length === 0]);
    }
  });
});

describe('sentences name file, line and remedy', () => {
  test.each([
    [
      'long-letter-o.csv',
      'number-unreadable',
      'Line 11 of long-letter-o.csv: the reading is 1O.5 (with a letter O); a number in kWh is expected. It counts as missing. Correct the file or leave the row out.',
    ],
    [
      'long-gap.csv',
      'gap',
      'long-gap.csv has nothing from 15 January 2025, 05:30 to 15 January 2025, 10:30: 10 readings missing, about 5.3 kWh. They are not taken for nought.',
    ],
    [
      'long-impossible-date.csv',
      'date-impossible',
      'Line 98 of long-impossible-date.csv: "2025-02-30 00:00" in column "Start" is no day of the calendar. The row was left out. Correct the date in the file.',
    ],
    [
      'bills-overlap-hole.csv',
      'period-hole',
      'bills-overlap-hole.csv has no bill from 1 April 2025 to 30 April 2025, 30 days, about 272.3 kWh. Add the missing bill if you have it.',
    ],
  ])('%s: %s', (file, code, sentence) => {
    const remark = read(file).preview.remarks.find((r) => r.code === code);
    expect(remarkSentence(remark!)).toBe(sentence);
  });
});
