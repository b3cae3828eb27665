/** Which hours a register of a meter counts, by its name: the one list for all who add registers or hold them apart. */
import { isTemperature } from '../shapes/carrier.ts';
import type { Series } from '../shapes/evidence.ts';

/** All hours of the day; the dear or the cheap ones; some, where the name does not say which. */
export type RegisterHours = 'all' | 'dear' | 'cheap' | 'some';

/** Words of one way to name registers, in small letters without accents. */
type Naming = readonly (readonly [RegExp, RegisterHours])[];

/**
 * Ways to name the registers of a meter, one a language or a code; within one, the first that fits counts. Words of two
 * ways never make one meter: "HP" is a register beside "HC", and a machine beside "Night". Common practice, no source.
 */
const NAMINGS: readonly Naming[] = [
  [
    [/\b(evening|weekend|weekday)\b/, 'some'],
    [/\b(night|off[- ]?peak|low|cheap|nt)\b/, 'cheap'],
    [/\b(day|peak|high|normal|standard|dear|ht)\b/, 'dear'],
    [/\b(rate ?\d|register ?\d|tariff ?\d|[rt]0?\d)\b/, 'some'],
  ],
  [
    [/\b(nacht|niedertarif|laag|dal)\b/, 'cheap'],
    [/\b(tag|hochtarif|dag|hoog|piek|normaal)\b/, 'dear'],
  ],
  [
    [/\b(heures creuses|hc|hcj[brw]|nuit|bas tarif|tarif bas)\b/, 'cheap'],
    [/\b(heures pleines|hp|hpj[brw]|jour|(haut|plein) tarif|tarif (haut|plein))\b/, 'dear'],
  ],
  [
    [/\b(valle|noche)\b/, 'cheap'],
    [/\b(punta|dia)\b/, 'dear'],
    [/\bllano\b/, 'some'],
  ],
  [
    [/\b(lav|natt?)\b/, 'cheap'],
    [/\b(spids|hoj|dag)\b/, 'dear'],
  ],
  [[/\b(f ?[1-6]|fascia ?[1-6])\b/, 'some']],
  [[/\b(f ?1|fascia ?1|f ?23)\b/, 'some']],
  [[/\bp[1-6]\b/, 'some']],
  [[/\btarie?f ?[1-9]\b/, 'some']],
  [[/(?<![\d.:])1[.:]8[.:][1-9](?!\d)/, 'some']],
];

const plain = (name: string): string =>
  name
    .normalize('NFD')
    .replaceAll(/\p{Mark}/gu, '')
    .replaceAll(/[øØ]/g, 'o')
    .replaceAll('_', ' ')
    .toLowerCase();

export const registerHours = (name: string): RegisterHours =>
  NAMINGS.flat().find(([words]) => words.test(plain(name)))?.[1] ?? 'all';

/** Whether two names are of two registers of one meter; a name of both is of neither. */
export function areOtherRegisters(one: string, other: string): boolean {
  if ([one, other].some((name) => name.includes(' + '))) return false;
  return NAMINGS.some((naming) => {
    const [mine, theirs] = [one, other].map((name) => {
      const found = naming.find(([words]) => words.test(plain(name)));
      return found && { hours: found[1], word: found[0].exec(plain(name))![0] };
    });
    if (!mine || !theirs) return false;
    return mine.hours !== theirs.hours || (mine.hours === 'some' && mine.word !== theirs.word);
  });
}

/**
 * The registers of some hours that make up one meter; fewer than two, or all of the same hours, are no parts of
 * anything. Of several ways to name them that which names most counts.
 */
export function registersOfSomeHours(ofMeter: readonly Series[]): Series[] {
  const use = ofMeter.filter(({ carrier }) => !isTemperature(carrier));
  return NAMINGS.reduce<Series[]>((most, naming) => {
    const wordOf = ({ name }: Series) => naming.find(([words]) => words.test(plain(name)))?.[0].exec(plain(name))?.[0];
    const some = use.filter((one) => wordOf(one) !== undefined);
    return some.length > most.length && new Set(some.map(wordOf)).size > 1 ? some : most;
  }, []);
}

/** Series by the meter they belong to: one import, one carrier, one role, readings and bills apart. */
export function seriesByMeter(series: readonly Series[]): Series[][] {
  const meters = Map.groupBy(series, ({ evidenceId, carrier, role, days }) =>
    [evidenceId, carrier, role, days ? 'days' : 'periods'].join('|'),
  );
  return [...meters.values()];
}
