/** Answers to what customers ask, two sentences each, in this home's own figures where there are any. */
import { type GroundYield, groundAtHome, radiatorShare, waterAtHome } from '../model/at-home.ts';
import { daysBetween } from '../model/calendar/civil.ts';
import { findSideBySide } from '../model/comparison/beside.ts';
import { designFlow } from '../model/heat-pump/flow.ts';
import type { Appraisal } from '../model/shapes/appraisal.ts';
import { countryOf } from '../model/shapes/country.ts';
import {
  type CustomerFact,
  type CustomerFacts,
  type FactsByCountry,
  QUESTION_IDS,
  type QuestionId,
} from '../model/shapes/customer-question.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import type { Household } from '../model/shapes/household.ts';
import { tankSentence } from './at-home.ts';
import { guaranteeSentence } from './estimate.ts';
import { degrees, exactPounds, grouped, longDate, percent, roundTo, spokenCount } from './numbers.ts';
import { say } from './say.ts';

export interface Answer {
  readonly id: QuestionId;
  readonly question: string;
  /** Two sentences. */
  readonly answer: string;
  /** What the installer has to add. */
  readonly adds: string;
  /** What nobody may say for certain; empty where there is nothing. */
  readonly never: string;
  /** Where the matter can hurt somebody. */
  readonly caution: string;
  readonly fact: CustomerFact;
}

interface Home {
  readonly household: Household;
  readonly appraisal: Appraisal;
}
/** `ours`: in this home the answer rests on nothing published. */
type Said = readonly [question: string, answer: string, adds: string, never: string, caution?: string, ours?: boolean];

/** All questions of the home's country, in their order. */
export function answerQuestions(home: Home, facts: FactsByCountry): Answer[] {
  const known = facts[countryOf(home.household)];
  return QUESTION_IDS.map((id) => {
    const [question, answer, adds, never, caution = '', ours = false] = TELL[id](home, known);
    const fact: CustomerFact = ours ? { ...known[id], provenance: 'memory', source: '' } : known[id];
    return { id, question, answer, adds, never, caution, fact };
  });
}

/** "Looked up on 28 November 2026." and, once it is old, that it has to be looked up again. */
export function factAge({ on, oldAfterDays, provenance }: CustomerFact, today: CivilDate): string {
  const date = longDate(on);
  if (provenance === 'memory') return say('Our own assumption of {date}, not checked.', { date });
  if (oldAfterDays !== null && daysBetween(on, today) > oldAfterDays)
    return say('Looked up on {date}: old. Look it up again before you rely on it.', { date });
  return provenance === 'computed' ? say('Worked out on {date}.', { date }) : say('Looked up on {date}.', { date });
}

export const isOldFact = ({ on, oldAfterDays }: CustomerFact, today: CivilDate): boolean =>
  oldAfterDays !== null && daysBetween(on, today) > oldAfterDays;

const factValue = ({ values }: CustomerFact, name: string): number => values?.[name] ?? Number.NaN;
const isGround = ({ appraisal }: Home) => appraisal.machine.source === 'ground';
const german = ({ household }: Home) => countryOf(household) === 'DE';
const join = (...sentences: string[]) => sentences.join(' ');

const TELL: { readonly [id in QuestionId]: (home: Home, facts: CustomerFacts) => Said } = {
  warm: ({ household }) => [
    say('Will it be warm enough?'),
    join(
      household.heat.heatLossKW && household.heat.designOutdoorC
        ? say('Yes, if it can give {kW} kW at {outdoor} outside, and the rooms can take that up.', {
            kW: grouped(household.heat.heatLossKW.value, 1),
            outdoor: degrees(household.heat.designOutdoorC.value),
          })
        : say('Yes, if the machine and the rooms are sized for the coldest day of your area.'),
      say('In a German trial of 56 older homes, heat pumps gave the heat that was wanted.'),
    ),
    say('Heat loss room by room, and what the machine gives on the coldest day.'),
    say('A room temperature on days colder than that.'),
  ],
  radiators: ({ household, appraisal }) => {
    const flow = designFlow(household.machine).flowC;
    return household.machine.emitters === 'floor'
      ? [
          say('Is the floor heating good enough?'),
          join(
            say('Floor heating works with cool water, here {flow} on the coldest day.', { flow: degrees(flow) }),
            say('Each room is checked before anything is changed.'),
          ),
          say('Pipe spacing and heat loss of each room.'),
          say('That no room needs more, before each is checked.'),
        ]
      : [
          say('Do I need new radiators?'),
          join(
            say('At a flow of {flow} a radiator gives about {share} of the heat on its label.', {
              flow: degrees(flow),
              share: percent(roundTo(radiatorShare(flow, appraisal.demand.roomC), 0.05)),
            }),
            say('So each room is checked, and some may need a larger one.'),
          ),
          say('Watts on each label, heat loss of each room, flow and return temperature.'),
          say('“No new radiators” before each room is checked.'),
        ];
  },
  'hot-water': ({ household }) => {
    const water = waterAtHome(household);
    return [
      say('Is there enough hot water?'),
      water.reheatMinutes === null
        ? join(tankSentence(water), say('How long it takes to heat depends on the machine.'))
        : tankSentence(water),
      say('Size of the tank, its temperature, and what the machine gives for hot water.'),
      say('Endless hot water, or a time for a half-full tank.'),
      say('Water above about 50 °C scalds. A mixing valve protects children and old people.'),
    ];
  },
  'water-safe': () => [
    say('Is the water safe from legionella?'),
    join(
      say('Germs grow in still, lukewarm water, so the tank must get hot enough for long enough.'),
      say('The British safety body says: store at 60 °C, and 50 °C at the tap within a minute.'),
    ),
    say('Temperature of the tank, the weekly heating, and who in the home is at risk.'),
    say('That there is no risk.'),
    say('Water at 60 °C scalds. A mixing valve protects children and old people.'),
  ],
  noise: (home) => [
    say('How loud is it?'),
    isGround(home)
      ? join(
          say('The machine stands indoors and has no fan outside.'),
          say('You hear a hum in the room where it stands, so choose that room with care.'),
        )
      : join(
          say('By a simple sum, a unit labelled 60 dB gives about 41 dB five metres away.'),
          german(home)
            ? say('At night 35 to 40 dB are allowed outside the neighbour’s window, by kind of area.')
            : say('In England a set sum for the neighbour’s window decides. It changed on 29 May 2025.'),
        ),
    say('Sound power on the label, metres to the next window, walls nearby.'),
    say('“Silent”, or that nobody will complain.'),
    '',
    isGround(home),
  ],
  'power-cut': (home) => [
    say('What happens in a power cut?'),
    join(
      say('The heat pump stops, as a gas boiler does, and usually starts again by itself.'),
      german(home)
        ? say('The tank stays hot for some hours.')
        : say('The tank stays hot for some hours. Call 105, and ask for priority help if someone is frail.'),
    ),
    say('How it starts again, frost protection outside, and any other heat.'),
    say('Heat in a power cut, or that solar panels keep it running.'),
  ],
  grant: (home, { grant }) => [
    say('What does the state pay?'),
    german(home)
      ? join(
          say('The state pays {base} of up to {ceiling}, and extras lift that to at most {most}.', {
            base: percent(factValue(grant, 'basePercent') / 100),
            ceiling: exactPounds(factValue(grant, 'ceiling') * 100),
            most: percent(factValue(grant, 'mostPercent') / 100),
          }),
          say('You ask for it before the work starts, and nobody has a right to it.'),
        )
      : join(
          say('In England and Wales the grant is {grant}, and the installer takes it off the price.', {
            grant: exactPounds(factValue(grant, 'grant') * 100),
          }),
          home.household.present.system === 'oil' || home.household.present.system === 'lpg'
            ? say('Some homes on oil or LPG off the gas grid can get {more}. Scotland has its own scheme.', {
                more: exactPounds(factValue(grant, 'offGas') * 100),
              })
            : say('Scotland has a scheme of its own.'),
        ),
    say('Fuel until now, gas grid, owner, energy certificate, and the rules on the day.'),
    say('That the money is certain, or how long the scheme runs.'),
  ],
  lasting: () => [
    say('How long does it last?'),
    join(
      say('Plan for about 15 to 20 years for the machine, and far longer for pipes in the ground.'),
      say('What the maker stands for is in the warranty.'),
    ),
    say('Years and conditions of the warranty.'),
    say('A lifetime, or a warranty without its yearly service.'),
  ],
  service: ({ appraisal }) => [
    say('What does it need every year?'),
    join(
      say('It is serviced once a year, and {amount} for that is in the yearly cost here.', {
        amount: exactPounds(findSideBySide(appraisal).pump.split.servicePence),
      }),
      say('Machines with much refrigerant also need a leak check by law.'),
    ),
    say('Kind and kilograms of refrigerant, and the price of a service.'),
    '',
    say('Only certified people open the refrigerant circuit.'),
  ],
  garden: (home, { garden }) => {
    if (!isGround(home))
      return [
        say('What happens to the garden?'),
        join(
          say('An air-source unit needs no digging, only a firm base and free air around it.'),
          say('Water drips from it in winter and freezes, so it needs a drain.'),
        ),
        say('Where it stands, its drain, and the way of the pipes.'),
        '',
        '',
        true,
      ];
    const yields: GroundYield = {
      boreWPerM: [factValue(garden, 'leastWPerM'), factValue(garden, 'mostWPerM')],
      trenchWPerM2: [factValue(garden, 'leastWPerM2'), factValue(garden, 'mostWPerM2')],
    };
    const ground = groundAtHome(home.household, home.appraisal, yields);
    const span = ([low, high]: readonly [number, number]) => ({ low: roundTo(low, 10), high: roundTo(high, 10) });
    return [
      say('What happens to the garden?'),
      ground
        ? join(
            say('On the coldest day about {ground} of {heat} kW comes from the ground.', {
              ground: grouped(ground.groundKW, 1),
              heat: grouped(ground.heatKW, 1),
            }),
            say('As a rough guide that is {low} to {high} m of borehole, or {from} to {to} m² of trenches.', {
              low: grouped(span(ground.boreM).low),
              high: grouped(span(ground.boreM).high),
              from: grouped(span(ground.trenchM2).low),
              to: grouped(span(ground.trenchM2).high),
            }),
          )
        : join(
            say('Trenches need much open ground, and a borehole needs room for a drill rig.'),
            say('A borehole is often 75 to 200 metres deep.'),
          ),
      say('The ground under the house. A designer sizes boreholes and trenches.'),
      say('A depth before the ground is known, or a lawn without a mark.'),
      say('Cables, pipes and mines are looked for before anybody digs.'),
    ];
  },
  permission: (home) => [
    isGround(home) ? say('Do I need permission to drill?') : say('Do I need permission for the unit outside?'),
    german(home)
      ? isGround(home)
        ? join(
            say('The water authority is told at least a month before, and it can say no.'),
            say('Deeper than 100 metres the mining authority is asked too.'),
          )
        : join(
            say('At night 35 to 40 dB are allowed outside the neighbour’s window, by kind of area.'),
            say('What else is asked for differs from Land to Land.'),
          )
      : isGround(home)
        ? join(
            say('In England a closed loop for one house is usually allowed if set rules are met.'),
            say('Zones for drinking water are checked first. Scotland and Wales have their own rules.'),
          )
        : join(
            say('In England a unit of up to 1.5 m³ is usually allowed if its noise passes the set sum.'),
            say('Wales, Scotland and Northern Ireland have their own rules.'),
          ),
    say('Protected zones, listed building, old mines, and what the council says.'),
    say('“No permission needed”.'),
  ],
  'gas-hob': ({ household, appraisal }) => [
    say('Can I keep my gas hob?'),
    join(
      household.present.cooksOnGas && appraisal.prices.gasStandingPence
        ? say('Usually yes, but it keeps the standing charge for gas, {amount} a year here.', {
            amount: exactPounds(appraisal.prices.gasStandingPence),
          })
        : say('Usually yes, but gas for cooking keeps its standing charge.'),
      say('The British grant does not pay for a gas boiler beside a heat pump.'),
    ),
    say('What stays on gas, and what the grant says of it.'),
    say('A grant with any gas or oil heating left in.'),
    say('Only a registered gas engineer works on gas.'),
  ],
  stove: () => [
    say('Can I keep my wood stove or solar hot water?'),
    join(
      say('A wood stove can usually stay, if the room sensor does not stand beside it.'),
      say('Solar hot water can stay if the tank has a second coil.'),
    ),
    say('Where the sensor is, and what the tank has.'),
    '',
    say('A stove needs its own air and an alarm for carbon monoxide.'),
  ],
  solar: ({ appraisal }) => {
    const { monthly, bought } = findSideBySide(appraisal).pump;
    const winter = [9, 10, 11, 0, 1, 2].reduce((sum, month) => sum + monthly.boughtKWh[month]!, 0);
    return [
      say('Do solar panels run it?'),
      join(
        say('Solar panels help most from spring to autumn, and the heat pump works most in winter.'),
        say('Here it takes {winter} of its {year} kWh from October to March.', {
          winter: spokenCount(winter),
          year: spokenCount(bought.value),
        }),
      ),
      say('Panels, battery, and what they give in December.'),
      say('“Free heating from the roof”.'),
    ];
  },
  car: () => [
    say('What about charging a car?'),
    join(
      say('A charger and a heat pump together can be too much for the main fuse of the house.'),
      say('The network is told of both, and asked first where it may not be enough.'),
    ),
    say('Size of the main fuse, a shared supply, and the answer of the network.'),
    say('That the fuse need not be changed.'),
    say('Only the network or an electrician opens the main fuse.'),
  ],
  away: () => [
    say('Can I turn it off when I am away?'),
    join(
      say('Turn it down, not off, while it may freeze, so that the frost guard can work.'),
      say('After a long break let the tank get hot and run the taps before you use them.'),
    ),
    say('Setting for holidays, setting for frost, and hours to warm up again.'),
    say('A saving for a few days away.'),
    say('Run the taps gently: germs are breathed in with the spray.'),
  ],
  'minus-ten': (home, facts) => [
    say('Does it work at ten below zero?'),
    isGround(home)
      ? join(
          say('Yes: the ground feels a cold day little, but the house needs more heat.'),
          home.household.heat.designOutdoorC
            ? say('Here {outdoor} is the day it is sized for.', {
                outdoor: degrees(home.household.heat.designOutdoorC.value),
              })
            : say('It is sized for the coldest day of your area.'),
        )
      : join(
          say('Yes: in tests near −10 °C, air-source machines still gave about twice the electricity as heat.'),
          say('In a British trial the factor was {cold} on cold days, against {year} over the year.', {
            cold: grouped(factValue(facts['minus-ten'], 'coldDay'), 1),
            year: grouped(factValue(facts['minus-ten'], 'year'), 1),
          }),
        ),
    say('What the machine gives on the coldest day, and when the backup heater starts.'),
    say('The factor of the year on a cold day.'),
    '',
    isGround(home),
  ],
  value: () => [
    say('Does the house gain value?'),
    join(
      say('In a large English study, homes with a better energy label sold for more.'),
      say('That does not prove it of a heat pump, and a label may go up or down.'),
    ),
    say('The label now, and the label after, worked out by an assessor.'),
    say('Any rise in price or label.'),
  ],
  cancel: () => [
    say('Can I cancel?'),
    join(
      say('If you sign at home you normally have 14 days to cancel, without a reason.'),
      say('If nobody told you of it, you have longer.'),
    ),
    say('The form for cancelling, with its date.'),
    say('That starting early takes the right away.'),
  ],
  complain: (home) => [
    say('Who helps if something goes wrong?'),
    join(
      say('First tell your installer, in writing.'),
      german(home)
        ? say('If that does not help, the consumer centre of your Land can advise you.')
        : say('If that does not help, turn to the certification or dispute body named in your papers.'),
    ),
    say('Name and address of that body.'),
    say('How a dispute ends.'),
  ],
  dearer: () => [
    say('What if it costs more than you say?'),
    join(guaranteeSentence(), say('After the winter we compare the bill with it, and show what made the difference.')),
    say('Whom to call, and which reading to take now.'),
    say('That it will cost less.'),
  ],
};
