/** One made year of a home in many dialects, read back: `npm run dialects -- [count] [first seed]`. Exits 1 where one is silently wrong. */
import { judgeDialect, type Outcome, type Verdict } from './judge.ts';

const OUTCOMES: readonly Outcome[] = ['right', 'asked', 'asked needlessly', 'refused', 'wrong'];
const DIMENSIONS = [
  'language',
  'what',
  'measure',
  'unit',
  'unitPlace',
  'minutes',
  'layout',
  'dateForm',
  'hours',
  'clock',
  'clockSaid',
  'side',
  'titles',
  'gaps',
  'encoding',
] as const;

const count = Number(process.argv[2] ?? 2000);
const first = Number(process.argv[3] ?? 1);
const verdicts: Verdict[] = [];
for (let seed = first; seed < first + count; seed++) {
  try {
    verdicts.push(judgeDialect(seed));
  } catch (error) {
    throw new Error(`dialect ${seed}`, { cause: error });
  }
}
const row = (name: string, list: readonly Verdict[]) =>
  console.log(
    `${name.padEnd(34)}${OUTCOMES.map((o) => String(list.filter((v) => v.outcome === o).length).padStart(18)).join('')}`,
  );
console.log(`${''.padEnd(34)}${OUTCOMES.map((o) => o.padStart(18)).join('')}`);
for (const dimension of DIMENSIONS) {
  for (const [value, list] of [...Map.groupBy(verdicts, (v) => String(v.dialect[dimension]))].sort(
    (a, b) => b[1].length - a[1].length,
  ))
    row(`${dimension} ${value}`, list);
}
row('all', verdicts);
for (const outcome of ['asked needlessly', 'refused', 'wrong'] as const)
  for (const { dialect: d, why } of verdicts
    .filter((v) => v.outcome === outcome)
    .slice(0, outcome === 'wrong' ? 60 : 25))
    console.log(
      `${outcome}: ${d.seed} ${d.language} ${d.what} ${d.measure} ${d.unit} ${d.unitPlace} ${d.minutes} ${d.layout} ${d.dateForm} ${d.hourForm} ${d.clock} ${d.clockSaid} ${d.side}: ${why}`,
    );
process.exitCode = verdicts.some(({ outcome }) => outcome === 'wrong') ? 1 : 0;
