/** Words of the trade in everyday words. Each entry stands by itself and uses no other unexplained term. */

export interface Term {
  readonly term: string;
  readonly meaning: string;
}

export const GLOSSARY: readonly Term[] = [
  {
    term: 'unit',
    meaning: 'What your meter counts: one kilowatt-hour, or kWh. It runs a small electric fire for one hour.',
  },
  { term: 'unit rate', meaning: 'What you pay for one unit of gas or electricity.' },
  { term: 'standing charge', meaning: 'What you pay each day for being connected, even if you use nothing.' },
  { term: 'tariff', meaning: 'The list of prices you have agreed with your supplier.' },
  { term: 'two-rate tariff', meaning: 'A tariff with one price by day and a lower one by night.' },
  { term: 'time of use', meaning: 'A tariff whose price depends on the hour of the day.' },
  { term: 'estimated reading', meaning: 'A reading that the supplier guessed because nobody read the meter.' },
  {
    term: 'heat pump',
    meaning: 'A machine that takes heat from the ground or the air and brings it indoors at a useful warmth.',
  },
  {
    term: 'ground array',
    meaning: 'Pipes in the ground that fetch heat, laid flat in a field or put down a deep hole.',
  },
  { term: 'brine', meaning: 'Water with frost protection that runs through the pipes in the ground.' },
  {
    term: 'flow temperature',
    meaning: 'How hot the water is on its way to the radiators or the floor. Cooler water costs less.',
  },
  { term: 'return temperature', meaning: 'How warm the water is when it comes back from the radiators.' },
  { term: 'weather compensation', meaning: 'The machine sends cooler water to the radiators when it is mild outside.' },
  {
    term: 'factor',
    meaning:
      'Units of heat you get for one unit of electricity, over a whole year. It is also called the seasonal performance factor, or SPF.',
  },
  {
    term: 'boundary',
    meaning: 'What a factor counts. H1 is the machine alone, H4 has all pumps and the backup heater in it.',
  },
  { term: 'SCOP', meaning: 'A factor from a test in a laboratory. A home seldom reaches it.' },
  { term: 'COP', meaning: 'Units of heat for one unit of electricity at one moment.' },
  { term: 'heat loss', meaning: 'How fast the home loses heat on a very cold day. It sets the size of the machine.' },
  { term: 'heat needed', meaning: 'All the heat that rooms and hot water take in a year, whatever makes it.' },
  {
    term: 'degree days',
    meaning: 'A count of how cold a spell was. Each day adds the degrees it was below a set warmth.',
  },
  { term: 'base temperature', meaning: 'The warmth outside above which your home needs no heating.' },
  { term: 'typical year', meaning: 'A year with the usual weather of your region, neither cold nor mild.' },
  { term: 'backup heater', meaning: 'A plain electric heater that helps on the coldest days. It costs more to run.' },
  { term: 'immersion heater', meaning: 'A plain electric heater inside the hot water tank.' },
  { term: 'boiler efficiency', meaning: 'How much of the fuel becomes useful heat. The rest goes up the flue.' },
  { term: 'energy certificate', meaning: 'A paper that says how much heat a home like yours should need.' },
  {
    term: 'refrigerant',
    meaning: 'A liquid that boils when it is cold. It goes round inside the machine and carries the heat.',
  },
  { term: 'evaporator', meaning: 'The part where the liquid in the machine boils and takes up heat from outside.' },
  {
    term: 'compressor',
    meaning: 'The pump in the machine. It squeezes the vapour until it is hot, and uses most of the power.',
  },
  { term: 'condenser', meaning: 'The part where the hot vapour turns back into liquid and warms your water.' },
  { term: 'expansion valve', meaning: 'A narrow gap that lets the pressure go, so that the liquid turns cold again.' },
  {
    term: 'saturation temperature',
    meaning: 'Where a liquid boils at the pressure it is under. More pressure, hotter.',
  },
  {
    term: 'superheat',
    meaning: 'How much warmer the vapour is than it was when it boiled. It shows the part is fed right.',
  },
  { term: 'subcooling', meaning: 'How much cooler the liquid is than it was when it formed from vapour.' },
  { term: 'gauge pressure', meaning: 'Pressure counted from the air around us, as the dials on site show it.' },
  { term: 'glycol', meaning: 'What keeps the water in the ground pipes from freezing. It is mixed in as a share.' },
  { term: 'pasteurisation', meaning: 'Making the hot water tank very hot now and then, so that no germs grow in it.' },
  { term: 'promise', meaning: 'A copy of our figures, with number and date. It never changes afterwards.' },
  { term: 'bill check', meaning: 'A later bill held against the promise, to see why they differ.' },
  { term: 'range', meaning: 'Two figures with the answer between them in 8 cases out of 10. In 2 it lies outside.' },
  {
    term: 'measured, estimated, assumed',
    meaning: 'How far to trust a figure: read from a meter, worked out, or taken from a table.',
  },
];

const BY_TERM = new Map(GLOSSARY.map((entry) => [entry.term.toLowerCase(), entry]));

/** The meaning of a term, or nothing where it has none. */
export function meaningOf(term: string): string | undefined {
  return BY_TERM.get(term.toLowerCase())?.meaning;
}
