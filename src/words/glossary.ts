/** Words of the trade in everyday words. Each entry stands by itself and uses no other unexplained term. */

import { type Language, language, phrase, say } from './say.ts';

export interface Term {
  readonly term: string;
  readonly meaning: string;
}

const TERMS: readonly Term[] = [
  {
    term: phrase('kWh'),
    meaning: phrase('Kilowatt-hour: the unit that your meter counts. It runs a small electric fire for one hour.'),
  },
  { term: phrase('unit rate'), meaning: phrase('What you pay for one kWh of gas or electricity.') },
  {
    term: phrase('standing charge'),
    meaning: phrase('What you pay each day for being connected, even if you use nothing.'),
  },
  { term: phrase('tariff'), meaning: phrase('The list of prices you have agreed with your supplier.') },
  { term: phrase('two-rate tariff'), meaning: phrase('A tariff with one price by day and a lower one by night.') },
  { term: phrase('time of use'), meaning: phrase('A tariff whose price depends on the hour of the day.') },
  {
    term: phrase('estimated reading'),
    meaning: phrase('A reading that the supplier guessed because nobody read the meter.'),
  },
  {
    term: phrase('heat pump'),
    meaning: phrase('A machine that takes heat from the ground or the air and brings it indoors at a useful warmth.'),
  },
  {
    term: phrase('ground array'),
    meaning: phrase('Pipes in the ground that fetch heat, laid flat in a field or put down a deep hole.'),
  },
  { term: phrase('brine'), meaning: phrase('Water with frost protection that runs through the pipes in the ground.') },
  {
    term: phrase('flow temperature'),
    meaning: phrase('How hot the water is on its way to the radiators or the floor. Cooler water costs less.'),
  },
  {
    term: phrase('return temperature'),
    meaning: phrase('How warm the water is when it comes back from the radiators.'),
  },
  {
    term: phrase('weather compensation'),
    meaning: phrase('The heat pump sends cooler water to the radiators when it is mild outside.'),
  },
  {
    term: phrase('seasonal factor'),
    meaning: phrase('How many kWh of heat you get for one kWh of electricity, over a full year. Also called SPF.'),
  },
  {
    term: phrase('boundary'),
    meaning: phrase(
      'What a seasonal factor counts. H1 is the heat pump alone. H4 adds all pumps and the backup heater.',
    ),
  },
  { term: phrase('SCOP'), meaning: phrase('A seasonal factor from the test laboratory. A home seldom reaches it.') },
  { term: phrase('COP'), meaning: phrase('How many kWh of heat for one kWh of electricity at one moment.') },
  {
    term: phrase('heat loss'),
    meaning: phrase('How fast the home loses heat on a very cold day. It sets the size of the heat pump.'),
  },
  {
    term: phrase('heat needed'),
    meaning: phrase('All the heat that rooms and hot water take in a year, whatever makes it.'),
  },
  {
    term: phrase('degree days'),
    meaning: phrase('A count of how cold a spell was. Each day adds the degrees it was below a fixed temperature.'),
  },
  {
    term: phrase('base temperature'),
    meaning: phrase('The outdoor temperature above which your home needs no heating.'),
  },
  {
    term: phrase('typical year'),
    meaning: phrase('A year with the usual weather of your region, neither cold nor mild.'),
  },
  {
    term: phrase('backup heater'),
    meaning: phrase('A plain electric heater that helps on the coldest days. It costs more to run.'),
  },
  { term: phrase('immersion heater'), meaning: phrase('A plain electric heater inside the hot water tank.') },
  {
    term: phrase('boiler efficiency'),
    meaning: phrase('How much of the fuel becomes useful heat. The rest goes up the flue.'),
  },
  {
    term: phrase('energy certificate'),
    meaning: phrase('A paper that says how much heat a home like yours should need.'),
  },
  {
    term: phrase('refrigerant'),
    meaning: phrase(
      'A liquid that boils even when it is cold. It goes round inside the heat pump and carries the heat.',
    ),
  },
  {
    term: phrase('evaporator'),
    meaning: phrase('The part where the liquid in the heat pump boils and takes up heat from outside.'),
  },
  {
    term: phrase('compressor'),
    meaning: phrase('The part that squeezes the vapour until it is hot. It uses most of the electricity.'),
  },
  {
    term: phrase('condenser'),
    meaning: phrase('The part where the hot vapour turns back into liquid and warms your water.'),
  },
  {
    term: phrase('expansion valve'),
    meaning: phrase('A narrow gap that lets the pressure drop, so that the liquid turns cold again.'),
  },
  {
    term: phrase('saturation temperature'),
    meaning: phrase('The temperature at which a liquid boils under its pressure. More pressure, hotter.'),
  },
  {
    term: phrase('superheat'),
    meaning: phrase(
      'How much warmer the vapour is than when it boiled. It shows whether the evaporator gets the right amount.',
    ),
  },
  {
    term: phrase('subcooling'),
    meaning: phrase('How much cooler the liquid is than when it condensed.'),
  },
  {
    term: phrase('gauge pressure'),
    meaning: phrase('Pressure above that of the air around us, as the gauges on site show it.'),
  },
  {
    term: phrase('glycol'),
    meaning: phrase('What keeps the water in the ground pipes from freezing. It is mixed into the water.'),
  },
  {
    term: phrase('pasteurisation'),
    meaning: phrase('Making the hot water tank very hot now and then, so that no germs grow in it.'),
  },
  {
    term: phrase('written estimate'),
    meaning: phrase('A copy of our figures, with number and date. It does not change later, and it is no guarantee.'),
  },
  { term: phrase('bill check'), meaning: phrase('A later bill beside the written estimate, to see why they differ.') },
  {
    term: phrase('range'),
    meaning: phrase('Two figures: 8 in 10 homes like yours lie between them, 2 outside.'),
  },
  {
    term: phrase('measured, estimated, assumed'),
    meaning: phrase('How sure a figure is: read from a meter, worked out, or taken from a table.'),
  },
];

/** All terms with their meanings, in the language spoken. */
export function glossary(): readonly Term[] {
  return TERMS.map(({ term, meaning }) => ({ term: say(term), meaning: say(meaning) }));
}

export interface FoundTerm {
  readonly at: number;
  readonly end: number;
  readonly entry: Term;
}

/** Plurals of both languages; a longer word that only begins like a term is another word. */
const ENDINGS = '(?:s|es|n|en)?';
let found: { readonly language: Language; readonly pattern: RegExp; readonly byName: ReadonlyMap<string, Term> };

/** "Jahresarbeitszahl (JAZ)" is found as a whole, in full and in short. */
const namesOf = (term: string) => [term, ...term.split(/ \(|\)/).filter((name) => name && name !== term)];

function finder(): typeof found {
  if (found?.language === language()) return found;
  const terms = glossary().filter(({ term }) => !term.includes(','));
  const byName = new Map(terms.flatMap((entry) => namesOf(entry.term).map((name) => [name.toLowerCase(), entry])));
  const longestFirst = [...byName.keys()].toSorted((a, b) => b.length - a.length);
  const escaped = longestFirst.map((name) => name.replace(/[()]/g, '\\$&'));
  const pattern = new RegExp(`(?<![\\p{L}-])(${escaped.join('|')})${ENDINGS}(?![\\p{L}-])`, 'giu');
  found = { language: language(), pattern, byName };
  return found;
}

/** Where terms of the glossary stand in a text, each at its first standing. */
export function findTerms(text: string): FoundTerm[] {
  const { pattern, byName } = finder();
  const seen = new Set<Term>();
  return [...text.matchAll(pattern)].flatMap((match) => {
    const entry = byName.get(match[1]!.toLowerCase())!;
    if (seen.has(entry)) return [];
    seen.add(entry);
    return [{ at: match.index, end: match.index + match[0].length, entry }];
  });
}
