/**
 * Names of people that stand in a text by themselves: "J. Fairweather", "OKAFOR, Tom", "Jane Fairweather". A capital alone
 * makes no name in a table of energy, so words of such tables, of homes and of companies are known and are nobody's.
 * Given names are those met most in registers of births of five countries, from memory; a rarer one is known by its surname.
 */
import { monthOfName } from '../dates/month-names.ts';
import { plainWords } from './headings.ts';

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** Those that are words too (Mark, May, Rose, Grant, Will) are not among them. */
const GIVEN = set(
  `aaron adam adele adrian agnes aidan aisha alan alastair albert alex alexander alfie alfred alice alison amanda amelia amy andrea andreas andrew angela anita ann anna anne annette anneliese anthony antje antonia antonio arthur astrid audrey barbara beatrice ben benjamin bernard bernd beth bettina birgit bjorn bob brenda brian bridget bruno callum camille carl carla carlos carmen carol caroline catherine cecile celine charles charlotte chloe chris christian christina christine christopher claire clara claude claudia clive colin craig daniel daniela darren david dawn deborah denis dennis derek diana diane diego dieter dirk dominic donald donna doris dorothy douglas duncan edith edward eileen elaine eleanor elena elisabeth elise elizabeth ella ellen emil emily emma eric erik erika ernst esther ethan eva evelyn felix fergus fiona florian frances francesca francesco franco francois frank frederic friedrich fritz gabriel gareth gary gavin geoffrey george georgia gerald gerard gerhard gianni gillian gisela giulia giuseppe gordon graham greg greta guido gunter gwen hannah hans harald harriet harry heike heinrich heinz helen helena helga helmut henri henry herbert hilary hilda holger horst howard hugh hugo ian ilse imran inga inge ingrid ines irene isabel isabella isla ivan jack jacqueline jacques jake james jan jane janet janice jason javier jean jeff jennifer jens jeremy jessica jill jim jo joachim joan joanna joe johan johann johannes john jonas jonathan jorg jorge jose josef joseph joshua joyce juan judith julia julian julie jurgen karen karin karl kate katharina kathe katherine kathleen katie katrin keith kelly ken kenneth kerry kevin kim kirsten klara klaus kurt lars laura lauren laurent lea leah lena leo leon leonie lesley lewis liam lilly linda lisa lorenzo lotte louis louise luc luca lucas lucia lucie lucy luigi luis lukas lydia maarten madeleine malcolm manfred manuel marc marcel marco marcus marek margaret margot maria marie marina mario marion markus marlene marta martha martin martina mary mathilde matthew matthias maureen maurice megan mehmet melanie mette mia michael michel michelle miguel mike mohammed mohamed monica monika monique muhammad nadia nancy naomi natalie natasha neil niall nicholas nicola nicolas nicole niels nigel nils nina noah nora norbert norman odile olaf olga oliver olivia oscar oskar ottilie otto owen pablo paolo pascal patricia patrick paul paula pauline pedro peter petra phil philip philippe phoebe pierre pieter priya rachel rainer ralf ralph raymond rebecca reinhard renate rene rhys richard rita robert roberto robin roger roland ronald rory rosa rosemary rosie ross ruby rudolf rupert russell ruth ryan sabine sally sam samantha samuel sandra sanjay sara sarah scott sean sebastian sergio sharon sheila shirley silke silvia simon simone sjoerd sofia sonia sophia sophie soren stefan stefanie stephanie stephen steve steven stewart stuart susan susanne suzanne sven sylvia tamara tanya teresa thea theo theresa thomas thorsten tim timothy tina tobias todd tom tony tracey trevor ulrich ulrike ursula uwe valerie vanessa vera veronica victor victoria vincent virginia walter wendy werner wiebke wilhelm willem william wolfgang xavier yasmin yves yvonne zoe`,
);

/** Words of meters, times, homes, tariffs and trades in the languages of meter files, in small letters without accents. */
const KNOWN = set(
  `a ab abgelesen abtauen abrechnung abril abschlag absolute account activa active actual actuals address adjusted adresse afname agile agosto air airfield airing airport al alarm all alt am amount an analysis and anfang angebot annex annexe annual aout apartment apparent april aquarium archive area as at attic audit aufzug aug august augustus ausgabe aux auxiliary av average avril awning backofen blanc bleu rouge backstube backup bad bakery balcony bank barn base basement bathroom battery bedroom beds benchmark bezug bike bill billed billing bills blanket blatt blindarbeit block boiler borehole brauchwasser brine british brunnen bst budget building buildings bungalow bunk buro butane by cabin cabinet cable calor calore calorific camper canopy cap car caravan carbon carport cart cellar center central centre cest cet ch chair chalet chaleur channel charge charged charger charges charging chart chiller church cinema circuit circulator city closing co coil cold combined company comparison compressor computer console consommation consumed consumer consumo consumption contador contract control controlled cooker cooler cooling coop copy corrected corridor cost costs cosy cottage counter course court credit creuses csv cubic cumulative current customer cycle cylinder dach daily dairy danish data date datei daten dati dato datos datum day days de debit dec december decembre deg degree dehumidifier delivered demand department der des detail details detector dezember di dia diciembre diff digital dining direct direction discount dishwasher display district dog domestic dormer download downstairs draft drier dryer du duct dusche dutch dwelling earlier early east easter easy eco economy eight ein einheit el elec electric electrical electricidad electricite electricity elevator emergency end ending energia energie energy enero engine english entrance entry entwurf erdgas esme estimate estimated et ev even evening event every exit expected export extension external extra extract extractor factor factura facture fall farm fascia feb febrero februar february fecha feed feet fence fevrier fifth fig file final fioul first fiscal five fix fixed flap flat flats floodlight flow flughafen flur flux for forbrug forecast four fourth foyer fra freezer french fri friday fridge from front fryer fuel fuels full function fuse garage garden garten gas gasoil gaste gateway gaz general generated generation generator german gesamt geyser glasshouse global gmt go gpme green grid gross ground group grundversorgung gutschrift gym half hall halle hallway haus haushalt heat heater heating hebeanlage heizen heizol heizstab heizung herd heures high historique history hob hoist holiday home homes hoog hora horaire horaria horario hot hour hourly hours house household humidity hybrid hydro id img immersion import imported in incomer index indoor induction info input inside instantaneous interim interval inverter invoice irish iron irrigation is isolator italian jacuzzi jahr jan januar january janvier json juillet juin jul juli julio july jun june juni junio kalte keller kennel kerosene kettle kiln kiosk kitchen klassik kopie korrektur kubik kuche kuhlschrank kunde kw kwh laag label laden lampe lane last lastgang later laundry lavage lectura lecturas lecture left legionella let letter level library licht lift lighting lights line list live living llano load local location lodge loft log long lounge low lower lpg lumiere maart machine mai main mains maker maler manifold manor manual mar march marktlokation marz marzo maschine mass master max maximum may mayo mean measured mei melder messlokation messstelle messstellen messtelle messung messwert messwerte meter metered meters meterstand method mews mezzanine microwave mid middle midi milking mill min minimum minute minutes missing mit mitte mixer mode model mon monat monday month monthly months motor mower mpan mpr mprn music mwh nachtrag natural nature net netto network neu new night nine no nom non nord normal north notes nov november novembre noviembre now number nursery observatory occupancy oct october octobre octubre of off offer office offset oil ok oktober old on one only onwards open opening operator or order ost other out outbuilding outdoor outgoing outhouse output outside outstanding oven over overview paddock page paid panel panels pantry parlour part patio pdf peak pellets per percent period phase plan plant playroom pleines plug plus point points pool port potencia pottery power praxis preis premises prepay present pressure previous price primary printer prior private product production profile prognose program project propane provisional puffer puissance pump pumps punta quality quantity quarter quote rack radiator rail rain range rate rates ratio raw reactiva reactive read reader reading readings real rear received reception record records rectory reference refrigerator refund register relative releve remote renewable renewal report reserve result results return review revision right roboter room rooms row run running sale sat saturday sauna saver saving scan scheme scheune school schuppen schwimmbad scottish screen second secondary section sensor sep sept september septembre septiembre sequence serial series server service session set settlement seven shed sheet shop short shower shutter side sign signal silo single sink site six slot slurry small smart snapshot socket sockets software solar sold source south spa spanish spare special speicher spring spulmaschine stable stairs stall standard standing start state statement station status steam steckdosen step sternwarte stock storage store stove strom stroom studio study stunde stunden sub subtotal sud summary summer sump sun sunday supplier supply surface surplus survey sw system tabelle tag tage tagliche tank target tarief tarif tariff tax teller temp temperature ten term terrasse test the third three thu thursday time timeliste title to today tonne tool top tor total totals towel tower town transfer treatment treppe treppenhaus trial trockner truhe tub tue tuesday tumble tv two txt type uberblick ubersicht ufh umwalzpumpe under underfloor unit units unknown up update upload upper upstairs usage use used user utc utility uur vacation valle valley value values van variable vat vehicle vent ventilation verbruik vergleich version vertrag village virtual volt voltage volume von voor waarde wall wallbox wardrobe warme warmer warmwasser waschkuche waschmaschine wash washer washing waste water watts weather wed wednesday week weekday weekend weekly weeks welder welsh werkstatt werte west wet wetter wetterstation wh wifi wind window winter wintergarten wirkarbeit wirkleistung with woche wohnung wood work workshop world xls xlsx xml year yearly yesterday yoga your zahler zeit zeitreihe zip zirkulation zone zwei anlaggning bags buiten degres dodavka dzienna energiledd fattura gemiddelde hushall hytte importo injectie inmatning jours keskiarvo kulutus licznika malt montant nettleie nocna odber paiva pellet prix sahkon siirto site spesa strefa stromforbruk temperatuur teplota teruglevering totale ttc tva ulkolampotila unitaire uttag vaerdi venku yo solarthermie ertrag ertrage celsius fahrenheit grad kelvin`,
);
/** Ends of German, French, Spanish and English nouns that no surname has. */
const OF_THINGS =
  /(?:heit|keit|schaft|arbeit|bezug|erdgas|heizol|leistung|energie|energy|strom|warme|verbrauch|zahler|stande?|werte?|daten|reihe|pumpe|anlage|tarif|preise?|kosten|messung|nummer|raum|zimmer|temperatur\w*|tion|tions|cion|zione|ment|meters?|ity|able|ung|aille|ometer|graph)$/;
/** What makes the words beside it a company, a product or a place rather than a person. */
const OF_COMPANIES = set(
  `energy power energie energia gas ltd limited plc gmbh ag inc llc co tariff tarif saver fix standard klassik plus green eco utilities supply supplier stadtwerke werke group networks services verte grun grunstrom station weather`,
);
const PLACES =
  /^(?:lane|street|st|road|rd|close|avenue|ave|drive|way|court|yard|hill|row|rise|grove|gardens|terrace|crescent|place|farm|mill|barn|cottages?|house|lodge|hall|manor|mews|park|view|wood|green|bank|church|end|rectory|vicarage|grange|school|strasse|str|weg|platz|gasse|allee|rue|chemin|calle|avenida|via|piazza|laan|straat)$/;

const PARTICLES = /^(?:de|des|du|van|von|der|den|del|della|di|le|la|ten|ter|zu)$/i;
const LONGEST_JOIN = 3;
const JOINS = /^(?:&|\+|and|und|y|e|et|en)$/i;

/** Words that are surnames too, behind a given name or an initial with its point. */
const SURNAMES = set('wood woods green day west north price field winter summer march may power rose stone');

export const isSurname = (word: string): boolean => SURNAMES.has(plainWords(word));
export const isPlaceWord = (word: string): boolean => PLACES.test(plainWords(word));
export const isKnownWord = (word: string): boolean =>
  !PARTICLES.test(word) && !JOINS.test(word) && isKnown(plainWords(word));
const isKnown = (plain: string): boolean =>
  KNOWN.has(plain) || OF_THINGS.test(plain) || PLACES.test(plain) || isMonth(plain);
const isMonth = (plain: string): boolean => plain.length <= 3 && monthOfName(plain) > 0;

type Kind = 'initial' | 'given' | 'name' | 'small' | 'particle' | 'join' | 'other';

/** A word of a file’s name may be written small; it is a name then only beside a given one or an initial. */
function kindOf(word: string, isFile: boolean): Kind {
  if (/^\p{Lu}\.?(?:-?\p{Lu}\.?)?$/u.test(word) || (isFile && /^\p{Ll}$/u.test(word))) return 'initial';
  if (word.length <= LONGEST_JOIN && JOINS.test(word)) return 'join';
  if (word.length <= LONGEST_JOIN && PARTICLES.test(word)) return 'particle';
  const isCapital = /^\p{Lu}/u.test(word);
  if ((!isCapital && !isFile) || !/^\p{L}[\p{L}’'-]+\.?$/u.test(word)) return 'other';
  const plain = plainWords(word);
  if (GIVEN.has(word.includes('-') ? plainWords(word.split('-')[0]!) : plain)) return 'given';
  if (isKnown(plain)) return 'other';
  return isCapital ? 'name' : 'small';
}

const INITIAL = /(?<!\p{L})\p{Lu}\.?(?:-?\p{Lu}\.?)?(?!\p{L})/u;
const BEGUN_BIG = /(?<!\p{L})\p{Lu}[\p{L}’']+/gu;
/** Whether an initial or a given name stands in a text; most texts have neither. */
const hasCalledName = (text: string): boolean => INITIAL.test(text) || text.match(BEGUN_BIG)?.some(isGiven) === true;
/** Few words have letters that are to be made plain. */
function isGiven(word: string): boolean {
  const small = word.toLowerCase();
  return GIVEN.has(small) || (/[^a-z]/.test(small) && GIVEN.has(plainWords(word)));
}

/** Runs of what is neither a gap nor a sign that parts. */
const WORDS = /[^\s_,;|:()[\]"“”/–]+/gu;
/** In the name of a file "-" parts words too, as does a capital. */
const WORDS_OF_FILE = /\p{Lu}?[\p{Ll}’']+|\p{Lu}+(?!\p{Ll})|\d+|[&+]/gu;
const FILE = /^\S*_\S*$|\.(?:csv|txt|tsv|xlsx?|json|xml|zip|pdf|jpe?g|png|hei[cf]|gz|dat)$/i;
/** ".json", ".jpeg". */
const LONGEST_END = 5;
/** What a single letter behind it numbers. */
const LETTERED =
  /^(?:phase|flat|block|meter|register|channel|circuit|unit|zone|class|type|sensor|rate|section|column|tarif|plan|part|line|profile|group|series|option|version|k|m)$/i;

/** What is measured in a unit is mostly a room, a circuit or an appliance: "Towel Rail (kWh)". */
const OF_UNIT = /[([](?:[kMG]?Wh?|[kM]?VA|[kMG]J|°C|m[³3])[)\]]/;

/** The text with a dash for each name that stands by itself. */
export function withoutBareNames(text: string): string {
  let rest = '';
  let at = 0;
  for (const [from, to] of namesIn(text, OF_UNIT.test(text))) {
    rest += `${text.slice(at, from)}–`;
    at = to;
  }
  return rest + text.slice(at);
}

interface Part {
  readonly word: string;
  /** What stands between it and the word before. */
  readonly gap: string;
  readonly from: number;
  readonly to: number;
  readonly kind: Kind;
}

/** Where names stand; `sure` where an initial or a given name says so, not capitals alone. */
export function namesIn(text: string, sure = false): (readonly [from: number, to: number])[] {
  const isFile = (text.includes('_') || text.lastIndexOf('.') >= text.length - LONGEST_END) && FILE.test(text);
  if (sure && !isFile && !hasCalledName(text)) return [];
  let last = 0;
  const parts = [...text.replace(/\.[a-z]{2,5}$/i, '').matchAll(isFile ? WORDS_OF_FILE : WORDS)].map((found): Part => {
    const [word] = found;
    const to = found.index + word.length;
    const gap = text.slice(last, found.index);
    last = to;
    return { word, gap, from: found.index, to, kind: kindOf(word, isFile) };
  });
  const runs: (readonly [number, number])[] = [];
  for (let start = 0; start < parts.length; ) {
    let end = start;
    while (end < parts.length && parts[end]!.kind !== 'other' && (end === start || isJoined(parts, end, isFile))) end++;
    if (end > start && isCalledSo(parts[end - 1]!, parts[end])) {
      parts[end] = { ...parts[end]!, kind: 'name' };
      end++;
    }
    const own = trimmed(parts.slice(start, end), parts[start - 1]);
    if (own.length > 0 && arePeople(own, sure, parts[start - 1], parts[end])) runs.push([own[0]!.from, own.at(-1)!.to]);
    start = Math.max(end, start + 1);
  }
  return runs;
}

/** "Jane Wood", "J. Hall": a word that is known, but stands where a surname does. */
function isCalledSo({ kind, word }: Part, behind: Part | undefined): boolean {
  if (behind?.kind !== 'other' || !/^[\s_]+$/.test(behind.gap) || !/^\p{Lu}/u.test(behind.word)) return false;
  const isShort = kind === 'initial' && word.endsWith('.');
  return ((isShort || kind === 'given') && isSurname(behind.word)) || (isShort && isPlaceWord(behind.word));
}

/** Whether nothing but a gap parts a word from the one before, or a comma between a surname and what it is called by. */
function isJoined(parts: readonly Part[], at: number, isFile: boolean): boolean {
  const [before, { gap, kind, word }] = [parts[at - 1]!, parts[at]!];
  if (isFile ? /^[\s_.,-]*$/.test(gap) : /^[\s_]+$/.test(gap)) return true;
  if (!/^,[\s_]*$/.test(gap) || before.kind !== 'name') return false;
  const isCalled = kind === 'given' || (kind === 'initial' && word.length > 1);
  return isCalled || (/^[\p{Lu}’'-]{3,}$/u.test(before.word) && kind === 'name' && !/^[\p{Lu}’'-]+$/u.test(word));
}

/** Without what joins nothing, and without a letter that numbers the word before. */
function trimmed(run: readonly Part[], before: Part | undefined): readonly Part[] {
  const isLettered = run[0]?.kind === 'initial' && before !== undefined && LETTERED.test(before.word);
  const first = run.findIndex(({ kind }, at) => kind !== 'join' && !(isLettered && at === 0));
  const last = run.findLastIndex(({ kind }) => kind !== 'join' && kind !== 'particle');
  return first < 0 ? [] : run.slice(first, last + 1);
}

/** An initial or a given name beside a surname; else two words or more that are nothing else and no company’s. */
function arePeople(run: readonly Part[], sure: boolean, before?: Part, after?: Part): boolean {
  const count = (...kinds: readonly Kind[]) => run.filter(({ kind }) => kinds.includes(kind)).length;
  const [names, given] = [count('name'), count('given')];
  if (given > 1 || (given > 0 && count('name', 'small') > 0)) return true;
  if (count('name', 'small') > 0 && isInitialed(run)) return true;
  if (sure) return false;
  const isOfCompany = (one: Part | undefined): boolean =>
    one !== undefined && OF_COMPANIES.has(plainWords(one.word)) && /^\p{Lu}/u.test(one.word);
  return (
    names > 1 && !run.some(isOfCompany) && !(isOfCompany(after) && /^[\s_]*$/.test(after!.gap)) && !isOfCompany(before)
  );
}

/** Before its surname an initial needs no point; behind it it does. */
const isInitialed = (run: readonly Part[]): boolean =>
  run.some(
    ({ kind, word, gap }, at) =>
      kind === 'initial' &&
      (word.endsWith('.') ||
        (at > 0 && gap.includes(',')) ||
        ['name', 'small', 'particle', 'initial', 'join'].includes(run[at + 1]?.kind ?? '')),
  );
