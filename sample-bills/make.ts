/**
 * Makes the raw files of the invented households anew: `npm run samples`.
 * Everything comes from the seeds below, so that the same files come out on every machine.
 * The warts are meant: real files have repeated rows, holes, title lines and two hours called 01:00.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { addDays, toCivilDate, toDayNumber } from '../src/model/calendar/civil.ts';
import { heatOfDay, type MadeSlot, madeSlots, ordinaryUse } from './made-use.ts';
import { type MadeDay, madeDays, seeded } from './made-weather.ts';
import { drawPictures, PAPERS } from './make-paper.ts';

const folder = fileURLToPath(new URL('.', import.meta.url));
const write = (name: string, lines: readonly string[], end = '\n') =>
  writeFileSync(`${folder}${name}`, lines.join(end) + end);
const dayFirst = (date: string) => `${date.slice(8, 10)}/${date.slice(5, 7)}/${date.slice(0, 4)}`;

/** A gas semi with radiators: a smart-meter file, gas bills in cubic metres, and the days' temperatures. */
function larchRise() {
  const from = '2025-10-01';
  const to = '2026-10-01';
  const random = seeded(11);
  const weather = madeDays(6, from, to, 12);
  const slots = madeSlots(weather, ordinaryUse(2900, random));
  const rows = slots.map(({ local, kWh }, i) => {
    const stamp = `${dayFirst(local.slice(0, 10))} ${local.slice(11)}`;
    // Six half-hours that the meter did not send and the supplier filled in.
    return `${stamp},${kWh.toFixed(3)},${i >= 9000 && i < 9006 ? 'E' : 'A'}`;
  });
  // Two days lost, and three rows that stand twice.
  const kept = rows.filter((_, i) => i < 6000 || i >= 6096);
  kept.splice(2000, 0, kept[1999]!, kept[1998]!, kept[1997]!);
  write(
    'larch-rise/electricity-half-hourly.csv',
    ['Half-hourly electricity', '', 'Reading start (local time),Energy used (kWh),Quality', ...kept],
    '\r\n',
  );
  write('larch-rise/weather-daily.csv', [
    'Date,Mean outdoor temperature (°C)',
    ...weather.map((day) => `${toCivilDate(day.dayNumber)},${day.meanC.toFixed(1)}`),
  ]);
  const gasKWh = (day: MadeDay) => (heatOfDay(day, 238, 15.6, random) + 6.1) / 0.84 + 0.9;
  write('larch-rise/gas-bills.csv', gasBills(weather, gasKWh, 39.4, 7.33, 29.04));
}

/** Monthly bills of a metric gas meter: cubic metres read, the calorific value, and what it came to. */
function gasBills(
  days: readonly MadeDay[],
  kWhOfDay: (day: MadeDay) => number,
  calorificMJPerM3: number,
  pencePerKWh: number,
  standingPencePerDay: number,
): string[] {
  const lines = ['Bill from,Bill to,Gas used (m3),Calorific value (MJ/m3),Energy (kWh),Reading,Amount (GBP)'];
  for (let start = 0; start < days.length; ) {
    const month = toCivilDate(days[start]!.dayNumber).slice(0, 7);
    let end = start;
    let kWh = 0;
    while (end < days.length && toCivilDate(days[end]!.dayNumber).startsWith(month)) kWh += kWhOfDay(days[end++]!);
    const cubicMetres = Math.round((kWh * 3.6) / (1.02264 * calorificMJPerM3));
    const billed = (cubicMetres * 1.02264 * calorificMJPerM3) / 3.6;
    const pence = Math.round(billed * pencePerKWh) + Math.round((end - start) * standingPencePerDay);
    const from = dayFirst(toCivilDate(days[start]!.dayNumber));
    const to = dayFirst(toCivilDate(days[end - 1]!.dayNumber));
    const reading = month.endsWith('-12') ? 'Estimated' : 'Actual';
    lines.push(
      `${from},${to},${cubicMetres},${calorificMJPerM3.toFixed(1)},${billed.toFixed(2)},${reading},${(pence / 100).toFixed(2)}`,
    );
    start = end;
  }
  return lines;
}

/** An oil farmhouse in the north: delivery slips, newest first, as they come out of the drawer. */
function holmFarm() {
  const random = seeded(21);
  const days = madeDays(9, '2023-09-01', '2026-09-01', 22);
  const litresOfDay = (day: MadeDay) => ((heatOfDay(day, 412, 15.2, random) + 9) * 1) / 0.81 / 10.3;
  const slips: string[] = [];
  let sinceLast = 0;
  const prices = [70, 68, 66, 63, 62, 58];
  days.forEach((day) => {
    sinceLast += litresOfDay(day);
    if (sinceLast < 1150 && !(day.dayNumber === days[0]!.dayNumber)) return;
    const litres = day === days[0] ? 900 : Math.round(sinceLast / 10) * 10;
    const pence = prices[Math.min(slips.length, prices.length - 1)]!;
    const pounds = ((litres * pence) / 100).toFixed(2).replace(/\B(?=(\d{3})+(?!\d))/g, ',');
    slips.push(`${dayFirst(toCivilDate(day.dayNumber))};Kerosene;${litres};${pence.toFixed(1)};"£${pounds}"`);
    sinceLast = 0;
  });
  write('holm-farm/oil-deliveries.csv', [
    'Delivery date;Product;Litres;Pence per litre;Total',
    ...slips.reverse(),
    `Total;;${slips.reduce((sum, slip) => sum + Number(slip.split(';')[2]), 0)};;`,
  ]);
}

/** An all-electric flat with storage heaters on two rates: one row a day with 48 columns. */
function quayFlat() {
  const random = seeded(31);
  const days = madeDays(7, '2025-10-01', '2026-10-01', 32);
  const other = ordinaryUse(1700, random);
  const heat = new Map(days.map((day) => [day.dayNumber, heatOfDay(day, 92, 15, random)]));
  const slots = madeSlots(days, (day, hour) => {
    const night = hour >= 0.5 && hour < 7.5;
    // Seven hours of charge; a fifth of the heat comes from the boost by day.
    const charge = night
      ? (0.8 * heat.get(day.dayNumber)!) / 14
      : hour >= 16 && hour < 21
        ? (0.2 * heat.get(day.dayNumber)!) / 10
        : 0;
    const water = hour >= 4 && hour < 7 ? 5.2 / 6 : 0;
    return other(day, hour) + charge + water;
  });
  const byDay = Map.groupBy(slots, (slot) => slot.local.slice(0, 10));
  const heads = Array.from({ length: 48 }, (_, i) => `${String(i >> 1).padStart(2, '0')}:${i % 2 ? '30' : '00'}`);
  write('quay-flat/electricity-by-day.csv', [
    `Date\t${heads.join('\t')}`,
    ...[...byDay].map(([date, ofDay]) => `${dayFirst(date)}\t${wideDay(ofDay).join('\t')}`),
  ]);
}

/** A day in 48 columns by clock time: the spring day leaves two empty, the autumn day adds the doubled hour up. */
function wideDay(slots: readonly MadeSlot[]): string[] {
  const cells = Array.from({ length: 48 }, () => Number.NaN);
  for (const slot of slots) {
    const column = slot.hour * 2;
    cells[column] = (Number.isNaN(cells[column]!) ? 0 : cells[column]!) + slot.kWh;
  }
  return cells.map((kWh) => (Number.isNaN(kWh) ? '' : kWh.toFixed(2)));
}

/** A well-insulated new house, on electric panels while the array is dug: a file in watt-hours and in UTC. */
function beaconView() {
  const random = seeded(41);
  const days = madeDays(4, '2025-11-01', '2026-10-01', 42);
  const other = ordinaryUse(3300, random);
  const heat = new Map(days.map((day) => [day.dayNumber, heatOfDay(day, 131, 13.6, random)]));
  const slots = madeSlots(days, (day, hour) => {
    const awake = hour >= 6 && hour < 22;
    const water = hour >= 5 && hour < 7 ? 6.4 / 4 : 0;
    return other(day, hour) + (awake ? heat.get(day.dayNumber)! / 32 : 0) + water;
  });
  write('beacon-view/electricity-utc.csv', [
    'interval_start,import_wh',
    ...slots.map(({ startMs, kWh }) => `${new Date(startMs).toISOString().slice(0, 16)}Z,${Math.round(kWh * 1000)}`),
  ]);
}

/** Bulk gas for the bungalow before the heat pump: slips of two winters. */
function millLaneBefore() {
  const random = seeded(55);
  const days = madeDays(13, '2023-08-01', '2025-08-01', 56);
  const slips = ['date,litres,amount'];
  let litres = 0;
  days.forEach((day, i) => {
    litres += (heatOfDay(day, 205, 15.8, random) + 7) / 0.84 / 7.21;
    if (i > 0 && litres < 780) return;
    const delivered = i === 0 ? 600 : Math.round(litres);
    slips.push(`${toCivilDate(day.dayNumber)},${delivered},${(delivered * 0.68).toFixed(2)}`);
    litres = 0;
  });
  write('mill-lane/lpg-deliveries.csv', slips);
}

/** A year with a heat pump and a complaint: a sub-meter on the machine, a colder winter, and a heater left on. */
function millLane() {
  const random = seeded(51);
  const days = madeDays(13, '2025-09-01', '2026-09-01', 52, -0.5);
  const heat = new Map(days.map((day) => [day.dayNumber, heatOfDay(day, 205, 15.8, random)]));
  const leftOnFrom = toDayNumber('2026-01-08');
  const leftOnTo = toDayNumber('2026-02-19');
  const slots = madeSlots(days, (day, hour) => {
    const factor = 3.3 + 0.03 * (day.meanC - 5);
    const space = heat.get(day.dayNumber)! / 48 / factor;
    const water = hour >= 13 && hour < 15 ? 8 / 4 / 2.5 : 0;
    const heater = day.dayNumber >= leftOnFrom && day.dayNumber < leftOnTo && hour >= 2 && hour < 4 ? 1.5 : 0;
    return (space + water + 0.03) * (0.9 + 0.2 * random()) + heater;
  });
  const hours = slots
    .filter((_, i) => i % 2 === 0)
    .map((slot, i) => ({ ...slot, kWh: slot.kWh + slots[2 * i + 1]!.kWh }));
  write('mill-lane/heat-pump-hourly.csv', [
    'Time;Heat pump electricity (kWh)',
    ...hours.map(({ startMs, local, kWh }) => {
      const offset = (Date.parse(`${local}:00Z`) - startMs) / 3_600_000;
      return `${local}:00+0${offset}:00;${kWh.toFixed(3).replace('.', ',')}`;
    }),
  ]);
  write('mill-lane/weather-daily.csv', [
    'Date,Mean outdoor temperature (°C)',
    ...days.map((day) => `${toCivilDate(day.dayNumber)},${day.meanC.toFixed(1)}`),
  ]);
  const winter = hours.filter(({ local }) => local >= '2025-12-01' && local < '2026-03-01');
  const kWh = winter.reduce((sum, hour) => sum + hour.kWh, 0);
  console.log(`Mill Lane, ${addDays('2025-12-01', 0)} to 28 February 2026: ${kWh.toFixed(0)} kWh on the sub-meter.`);
}

larchRise();
holmFarm();
quayFlat();
beaconView();
millLaneBefore();
millLane();
mkdirSync(`${folder}paper`, { recursive: true });
for (const [name, bytes] of [...PAPERS, ...drawPictures()]) writeFileSync(`${folder}paper/${name}`, bytes);
