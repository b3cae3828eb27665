/**
 * A real British home by day: gas and outdoor temperature, 2020 to 2022, sample data of the open library
 * openeemeter/eemeter (Apache License 2.0). The files lie beside the checkout, not in it.
 */
import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { toDayNumber } from '../../../src/model/calendar/civil.ts';
import type { MadeDay } from './home.ts';

const folder = resolve(import.meta.dirname, '../../../../shared/reference/open-data');
export const HOME_A_THERE = existsSync(resolve(folder, 'home-a-gas-hourly-kwh.csv'));

function gather(file: string, dateColumn: number, valueColumn: number): Map<string, number[]> {
  const days = new Map<string, number[]>();
  for (const line of readFileSync(resolve(folder, file), 'utf8').trim().split('\n').slice(1)) {
    const cells = line.split(',');
    const date = cells[dateColumn]!.slice(0, 10);
    days.set(date, [...(days.get(date) ?? []), Number(cells[valueColumn])]);
  }
  return days;
}

/** UTC days with all 24 hours in both files. */
export function readHomeA(): MadeDay[] {
  const gas = gather('home-a-gas-hourly-kwh.csv', 0, 1);
  const outdoor = gather('home-a-outdoor-temperature-hourly-c.csv', 1, 2);
  const sum = (values: readonly number[]) => values.reduce((total, v) => total + v, 0);
  return [...gas]
    .filter(([date, values]) => values.length === 24 && outdoor.get(date)?.length === 24)
    .map(([date, values]) => ({ day: toDayNumber(date), kWh: sum(values), outdoorC: sum(outdoor.get(date)!) / 24 }));
}
