/** Weather that is no record of real days: means over many years, a typical year, a model of the climate. */
import type { Series } from '../../model/shapes/evidence.ts';
import { tell } from '../../model/shapes/told.ts';
import { plainWords } from '../layout/headings.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';

const SAYS_SO =
  /\btmy\w*|iwec|\btry\d*\b|typical|reference year|testreferenzjahr|\bnormals?\b|climatolog|\brcp ?\d|\bssp ?\d|\bcmip|projection|scenario|szenario|climate model|klimamodell|langjahrig|annee type|ano tipo|anno tipo|typisk|vieljahrig/;
const MEAN = /mean|average|\bavg\b|mittel|moyenne|media|gemiddeld|gennemsnit/;
/** The warmest or the coldest of a day in the words above a column or of a title. */
const OF_HIGHEST =
  /\bt? ?max(?=temp|\b)|\btxk?\b|maxim|maks|\bhighest\b|\bhottest\b|\bwarmest\b|hochst(?=temp|wert|e)|\bhoogste\b|\bhojeste\b|plus hautes?\b|massim/;
const OF_LOWEST =
  /\bt? ?(?<![\d/] ?)min(?=temp|\b)|\btnk?\b|minim|\blowest\b|\bcoldest\b|(?<!s)tiefst(?=temp|wert|e)|niedrigst|\blaagste\b|\blaveste\b|plus basses?\b/;
/** People are called so too, and minutes. */
const BARE = /(?<!temp\w* )\b(max|min)\b(?!\.? ?temp)/g;
/** Places are called so too. */
const HIGH_OR_LOW = /^(high|low)s?( temp\w*)?(?= ?([([]|°|$))|\b(high|low)s?(?= ?([([]|°|$))/;
/** A mean over so many years is one of the climate. Common practice, no source. */
const MANY_YEARS = 8;
/** Real days differ from the day before by one to three degrees; means of many years by a third of one. A judgement. */
const SMOOTHEST_C = 0.6;
const LEAST_DAYS = 60;

/**
 * Refuses months of several years that are put together to one; asks where words or smoothness say that no day is real, and
 * where they are of the warmest or the coldest hour of each.
 * @param titles of the file, with its name @param said all its words, headings too
 */
export function doubtWeather(
  series: Series,
  titles: string,
  said: string,
  choices: IntakeChoices,
  book: RemarkBook,
): void {
  if (series.carrier !== 'outdoor-temperature') return;
  const years = mixedYears(series);
  if (years.length > 0 && !book.has('epw-years-mixed')) {
    const found = years.length > 4 ? `${years.slice(0, 4).join(', ')} …` : years.join(', ');
    book.add('epw-years-mixed', 'refusal', { found, count: years.length });
    return;
  }
  if (choices.weatherMeasured === true) return;
  const word = wordOf(plainWords(said));
  const smooth = smoothnessC(series);
  const column = series.name;
  if (choices.weatherMeasured === false) book.add('weather-typical', 'refusal', { column });
  else if (word !== undefined) book.add('weather-asked', 'question', { column, found: word });
  else if (smooth !== undefined && smooth < SMOOTHEST_C)
    book.add('weather-smooth-asked', 'question', {
      column,
      foundTold: tell('figure', { figure: Math.round(smooth * 100) / 100 }),
    });
  else if (isExtreme(series, titles)) book.add('weather-extreme-asked', 'question', { column });
  else if (isLikeARoom(series)) book.add('weather-indoors-asked', 'question', { column });
}

/** Whether its own words, or those of a title where they say neither, tell of one end of each day. */
function isExtreme({ name, resolution }: Series, titles: string): boolean {
  if (resolution !== 'day' && resolution !== 'period') return false;
  const own = plainWords(name);
  const ends = (words: string) => [OF_HIGHEST.test(words), OF_LOWEST.test(words)].filter(Boolean).length;
  if (ends(own) > 0 || HIGH_OR_LOW.test(own)) return ends(own) < 2;
  const said = plainWords(titles).replaceAll(BARE, ' ');
  return !MEAN.test(own) && !MEAN.test(said) && ends(said) === 1;
}

function wordOf(words: string): string | undefined {
  const own = SAYS_SO.exec(words)?.[0];
  if (own !== undefined) return own;
  const span = /\b((?:19|20)\d\d) ?[-–/] ?((?:19|20)\d\d)\b/.exec(words);
  return span && MEAN.test(words) && Number(span[2]) - Number(span[1]) >= MANY_YEARS ? span[0] : undefined;
}

/** Middle difference between one day and the next [°C]; undefined with too few days. */
function smoothnessC({ days }: Series): number | undefined {
  const values = days?.values ?? [];
  const steps = values.flatMap((value, i) => {
    const before = values[i - 1];
    return i > 0 && typeof value === 'number' && typeof before === 'number' ? [Math.abs(value - before)] : [];
  });
  return steps.length < LEAST_DAYS ? undefined : steps.sort((a, b) => a - b)[steps.length >> 1];
}

/** The years of a record of which each month stands in one year only though they do not follow each other; else none. */
function mixedYears({ days, from, to }: Series): number[] {
  if (!days || Date.parse(to) - Date.parse(from) < 400 * 86_400_000) return [];
  const yearsOf = new Map<number, Set<number>>();
  let present = 0;
  days.values.forEach((value, i) => {
    if (value === null) return;
    present++;
    const date = new Date(Date.parse(days.first) + i * 86_400_000);
    const month = date.getUTCMonth();
    yearsOf.set(month, (yearsOf.get(month) ?? new Set()).add(date.getUTCFullYear()));
  });
  if (present > 370 || [...yearsOf.values()].some((years) => years.size > 1)) return [];
  return [...new Set([...yearsOf.values()].flatMap((years) => [...years]))].sort((a, b) => a - b);
}

/** Days that a room's temperature is told from the weather by, and what it stays within [°C]. A judgement. */
const ROOM = { days: 20, lowestC: 15, highestC: 27, spanC: 7 };

function isLikeARoom({ days }: Series): boolean {
  const values = (days?.values ?? []).filter((value) => value !== null);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return values.length >= ROOM.days && low >= ROOM.lowestC && high <= ROOM.highestC && high - low <= ROOM.spanC;
}
