/**
 * Words of meter files in English, German, French, Spanish, Italian, Dutch, Danish, Swedish, Norwegian, Portuguese, Polish, Finnish
 * and Czech, in small letters without accents
 * ("ø" as "o", "ß" as "ss"). How network companies and households write; from public descriptions of files and from memory.
 * The order of asking is that of the callers: words propose, cells confirm.
 */

const words = (...parts: readonly string[]): RegExp => new RegExp(`(?:${parts.join('|')})`);
const whole = (...parts: readonly string[]): RegExp => new RegExp(`(?<![a-z])(?:${parts.join('|')})(?![a-z])`);
const only = (...parts: readonly string[]): RegExp => new RegExp(`^(?:${parts.join('|')})$`);

/** Brackets and what they hold say units and clocks, never what a column is for. */
export const withoutBrackets = (heading: string): string => heading.replaceAll(/[([{][^)\]}]*[)\]}]/g, ' ').trim();

const any = (...patterns: readonly RegExp[]): RegExp => new RegExp(patterns.map((one) => one.source).join('|'));

/** Numbers that name somebody or something. */
export const IDENTIFIER = any(
  whole('num poste|stn|stations? ?(id|nr|no)|alti|mpan|mprn|nmi|icp|pdl|prm|cups|pod|ean|esi ?id|uprn|lat|lon|lng'),
  only(
    '(account|customer|client|kunde|kunden|klant|cliente|contract|contrat|contrato)( ?(no\\.?|number|nr\\.?|id|ref\\w*|code|name))?',
  ),
  words('reference client|account n|codice client|attribut'),
  words('kundennummer|vertragskonto|zahlernummer|zahlpunkt|zahler.?nr|messlokation|klantnummer'),
  words('meternummer|serienummer|kundenummer|aftagenummer|malernummer|malepunkt|matricola|matricule'),
  words('anlaggnings.?id|matar(nummer|id)|numer (licznika|ppe)|cislo (elektro|plyno|mer)|product (type|code|id)'),
  words('contratto|codice|premise|serial|installation (no|number|id)|postcode|post ?code|zip ?code'),
  words(
    '(meter|device|site|supply) ?(no\\b|nr|number|id\\b|serial|point)',
    '(numero|n[°ºo.]{0,2}) ?(de |di )?(compteur|contador|contatore|client)',
  ),
  only('contador|contatore|compteur|zahler|meter|maler|latitude|longitude|breite|lange'),
  words('latitud|longitud|breitengrad|langengrad|breddegrad|elevation|altitude|seehohe'),
);

/** What a weather station measures beside the temperature. */
export const OTHER_WEATHER = any(
  words('sunshine|sonnenschein|sonnendauer|ensoleillement|insolation|insolaz|insolac|zonneschijn'),
  words('solskin|radiation|irradi|strahlung|rayonnement|radiaci|radiazion|straling|straling'),
  words('humid|feuchte|humedad|umidita|vochtig|fugtig|niederschlag|precip|rainfall|neerslag'),
  words('nedbor|lluvia|pioggia|wind ?(speed|gust|dir)|windgesch|windricht|windsnelh|vindhast'),
  words('feels like|apparent temp|wind ?chill|gefuhlte|ressentie|heat index|wet.?b|soil temp|bodentemp'),
  words('cloud|bewolk|nuage|taupunkt|dew ?point|luftdruck|air pressure|barometr|snow|schneeh'),
  words('w ?\\/ ?m|visibil'),
  only(
    'prcp|snow|dew|dwp[cf]|dewp|slp|stp|relh|vis|wdsp|wdir|wspd|wpgt|pres|tsun|rhum|rr|td|wind|vent|viento|vento|rain|regen|pluie|sun|sonne|rh|rf|ff|fx|dd|ws|wd|wg|pressure|druck|pression',
  ),
);

/** How far the days stayed below a base: no temperature and no energy. */
export const DEGREE_DAYS = any(
  words('deg(ree)?s?.?days?|gradtag|degres?.?jours?|graaddag|grados?.?dia|gradi.?giorno|graddage?|heiztage?(?![a-z])'),
  whole('[hc]dd\\d*|dju\\d*|gtz'),
);

/** What makes kWh of a volume of gas in one number, beside or instead of a calorific value. */
export const GAS_FACTOR = words(
  'conversion (factor|coeff\\w*)|coeff?\\w* (de )?(conversi\\w+|c\\b)|facteur de conversion|factor de conversion',
  'umrechnungsfaktor|omregningsfaktor|conversiefactor|fattore di conversione',
);

/** Therms in a hundred cubic feet of gas, or BTU in one. */
export const THERM_FACTOR = words(
  '(therms?|btu|heat(ing)? (content|value)) (factor|multiplier)|therms? ?(\\/|per) ?ccf|btu ?(\\/|per) ?(cf(?![a-z])|cubic f|ft)',
);

/** Fuels that no way of heating here burns. */
export const OTHER_FUEL = words(
  '(?<![a-z])(coal|anthracite|lignite|charcoal|fire ?wood|wood ?logs|^logs|wood ?(?!pellet)|peat|turf|petrol|gasoline|diesel|hydrogen)(?![a-z])',
  'kohle(?!n?(dioxid|stoff|ndi))|brikett|(?<![a-z])koks|brennholz|scheitholz|stuckholz|hackschnitzel|hackgut|torf(?![a-z])|benzin',
  'charbon|houille|anthrazit|(?<![a-z])bois(?! ?pellet)(?<!granules de bois)|buches?(?![a-z])|(?<![a-z])lena(?![a-z])|legna|legname|steenkool|kolen(?![a-z])|brandhout|braende|klapi|polttopuu|drewno|palivove|(?<![a-z])steres?(?![a-z])|^ved(?![a-z])',
);

/** Wood to burn, where a title says it: "wood", "coal" and "logs" alone are names and places too. */
export const FIREWOOD = words(
  'fire ?wood|(?<![a-z])wood ?logs|logs? (deliver|bought|burn)|brennholz|scheitholz|stuckholz|hackschnitzel|hackgut|brikett|bois de chauffage|legna da ardere|brandhout|braendeovn|polttopuu|palivove drevo|drewno opalowe',
);

/** Reactive and apparent: no energy that is bought. */
export const NOT_ACTIVE = any(
  whole('k?va|k?vah|k?varh?|k?vah?r'),
  words('reactive|reaktiv|blindarbeit|blindleistung|reactiva|reattiva|blindenergie|apparent|scheinleistung'),
  words('cos ?phi|power factor|leistungsfaktor|voltage|spannung|tension \\(|current \\(a'),
  whole('volts?|amps?|amperes?|ampere'),
);

/** Taken out of a home by what cools it: neither electricity nor heat that was asked for. */
export const COLD_MADE = words(
  '(?<![a-z])cold (energy|generat|produc|output)|cooling (power|capacity|output|produc|generat|energy (out(put)?\\b|produc|generat|deliver))',
  'kaltemenge|kalteenergie|kalteerzeug|kalteproduk|kuhlenergie|froid produit|energie (frigorifique|de froid)|energia frigorifera',
);

/** Heat that collectors on the roof make, or that a machine takes from around it: not bought, and none that a heat pump has to make. */
export const SUN_HEAT = words(
  '(umwelt|umgebungs|erd)warme|(ambient|environment\\w*) (heat|energy)|heat from (the )?(air|ground|source)|chaleur (ambiante|de l.environnement)|calor ambiental|calore ambientale|omgevingswarmte|omgivningsvarme',
  'solar.?therm|solar (hot )?water|solaire thermique|solar termica|solare termico|solvarme|solfangar|zonneboiler|zonnecollector|(solar|sonnen|flach|rohren)kollektor|aurinkolampo|kolektor',
);

/** What a home uses of its own making: neither bought nor sent out. */
export const OWN_USE = words(
  'self.?(consum|use)|(consumed|used) direct|direct(ly)? (consum|us(e|ed|age))\\b|direktverbrauch|direktnutz|eigenverbrauch|autocons|eigen ?verbruik|egetforbrug|egenforbru|egenanvandn|own use|eigendeckung|(solar|\\bpv|panels?|roof) (to|used (in|by)) (the )?(home|house|load)',
);

/** A part of what stands before it. */
export const PART_OF = whole(
  '(?<=^ *)(incl\\.?|including|inkl\\.?|inklusive|einschliesslich)(?= )(?! vat| tax| mwst| moms)',
  'of (which|that|this|it)|thereof|davon|darunter|hiervon|dont|di cui|de (los|las) (cuales|que)|waarvan|daarvan|heraf|hvoraf|varav|hvorav|z czego|w tym|z toho|josta',
);

/** Sent out into the grid. */
export const SENT_OUT = any(
  words(
    'feed.?in|fed in|fed to|grid feed|surplus|sent (out|to)|(given back|return(ed)?) to|to (the )?grid|inject|injekt',
    // Sold.
    '(?<![a-z])(vendid[ao]s?|vendut[ao]|vendite|vendue?s?|(?<!points? de )ventes?|sprzeda\\w*|verkocht\\w*|verkopen|verkauft\\w*|stromverkauf|(el)?sald|myy(ty|nti)|prodan[aeoy]|prodej)(?![a-z])',
    '(vers|dans) le reseau|(a|hacia) la red(?![a-z])|(alla|in|nella) rete(?![a-z])|(naar|aan) (het )?net(?![a-z])|(til|till) net(tet)?(?![a-z])|(til|till) natet|do (sieci|site)(?![a-z])|verkkoon|para a rede|(?<![a-z])(an|zum) (das )?netz(?![a-z])',
  ),
  words(
    'ein(ge)?speis|ruckgespeis|ins netz|ruckliefer|ruckspeis|uberschuss|ueberschuss|lieferung ins|netzlieferung|abgabe ins|wirk(arbeit|energie|leistung)? abgabe',
  ),
  words('inn?matning|inn?matad|injec(?!tie|tion)|injetad|oddan|oddawan|wprowadzon|dodavk[ay] do|pretok'),
  words('revente|vertid|excedent|exportaci|exportad|inyect|iniezion|immission|immess|ecceden'),
  words('(?<![a-z])cedut|cessione|restitu|teruglever|terug ?gelever|injectie|invoed|teruggaaf|elsalg|overskud'),
  words(
    '(?<![a-z])ret (?=energy)',
    'salg til|solgt til|grid spill|spill(ed)? (to|energy|k?wh)|^spill$|leveret til net|til nettet|eksport',
    '^-?a ?[-−–](?= ?($|[\\[(]|k?wh|total|gesamt|sum))',
    '(?<![a-z])p ?[-−–](?= ?($|[\\[(]))',
    '(?<![^ ])[-−–]a(?![a-z])',
  ),
  whole(
    'terug|export|exports|exported|solgt|salg|returned|wirk(arbeit|energie|leistung)? lieferung|2[.:](?:8|9|29)[.:]\\d|kwh 28\\d',
  ),
);

/** Made on the roof by panels that the words name, or by a "generation" that heat has not. */
export const MADE_HERE = any(
  whole('pv|solar|generation|generated'),
  words('photovolt|fotovolt|erzeugung|eigenerzeug|solarprod|solarerzeug|solarertrag|generaci|generad'),
  words('opwek|solcelle|zonnepan|zonneprod|zonnestroom|autoproduc|elproduktion|solaire|solare'),
);
/** Words for making that heat pumps use of their heat as well. */
export const MADE = words(
  // A column of the product that is sold says nothing of making.
  '\\bmade\\b|\\byield|produkcj|produksj|tuot(anto|ettu)|wytworz|vyrob|produc(?!ts?(?![a-z]))|produkt(?!er?(?![a-z])|(?![a-z]))|produite|(?<=[a-z] )produit|prodott|produz|ertrag|erzeugt|opbrengst',
);

/** Drawn from the grid. */
export const DRAWN = any(
  words(
    'netzbezug|strombezug|bezug aus|(vom |aus dem )?netz bezogen|netz (an|ans|zum) (haus|heim)|grid to (the )?(home|house|load)|bezogene (energie|strom)|wirkarbeit|grid import|from (the )?grid|consumo de red|soutir',
  ),
  words('(?<![a-z])uttag(?![a-z])|uttagen|(energia )?pobran|pobor|consumo da rede|odber ze site|odebran'),
  words('preliev|prelevat|afname van|elkob|energia activa|energia attiva|importaci'),
  whole(
    'import|imported|purchased?|bought|(zu|ein)?gekauft|achats?|achetee?s?|comprad[ao]s?|acquistat[ao]|(in)?gekocht|kobt|kopt|kupion[aey]|ostettu|(na)?kouplen[aoy]|grid draw|draw from (the )?grid|1[.:](?:8|9|29)[.:]\\d|kwh 18\\d',
  ),
  words(
    '^\\+?a ?\\+(?= ?($|[\\[(]|k?wh|total|gesamt|sum))',
    '(?<![^ ])\\+a(?![a-z])',
    '(?<![a-z])p ?\\+(?= ?($|[\\[(]))',
  ),
);
/** Used in the home, in words of its own; "import" is what was done with a file as well. */
export const USED =
  /usage|\buse|consum|import(?!e)|verbrauch|purchase|verbruik|forbrug|forbruk|consommation|zuzyci|spotreb|kulutus/;
/** Codes of the two ways, drawn and sent out, that mean so beside each other only. */
export const PARTNER_CODES: readonly (readonly [drawn: string, sentOut: string])[] = [
  ['delivered', 'received'],
  ['ai', 'ae'],
  ['ae', 'as'],
  ['x', 'i'],
  ['imp', 'exp'],
  ['in', 'out'],
  ['inflow', 'outflow'],
  ['bought', 'sold'],
  ['buy', 'sell'],
  // Registers of the open market format: drawn, and sent back.
  ['e1', 'b1'],
  // Metering points of market documents: consumption and production.
  ['e17', 'e18'],
  ['entrante', 'saliente'],
  ['lvr', 'tlv'],
  ['odber', 'dodavka'],
];

/** A column that says which way each reading went. */
export const WAY = words(
  'direction|richtung|retning|sentido|direzione|(?<![a-z])(sens|verso|flow|way)(?![a-z])(?! ?(temp|rate))',
);

/** Also drawn, where a column of what is sent out stands beside it; by itself it may be of any energy. */
export const ELECTRIC = any(
  words(
    '(energie|puissance|energia|potenza|potencia) (active|activa|attiva|ativa)|energia czynna|cinna energie|active (energy|power)|wirk(arbeit|leistung|energie)',
  ),
  words(
    'sahko|el(forbruk|anvand|tillfor|intag|atgang|behov|inkop|effekt)|stromforbruk|elektry|eletric|(?<!bio)elektrick|elmatare|elektromer',
    'wirkverbrauch|wirkbezug|leistungsaufnahme|aufnahmeleistung|electri|elektri|elettric|strom(verbrauch|bezug|zahler|preis|ver|menge)?|stroom|elforbrug|elmaler',
  ),
  whole('elec|el|strom|power supply|eas|eait?|p ?el'),
);

/** Heat that comes to the home by a pipe. */
export const OF_HEAT_NETWORK = any(
  words(
    '(district|communal|community) heat(?!ing (oil|gas))|heat network|heat interface|chauffage urbain|reseau de chaleur',
  ),
  words('(fern|nah|stadt)-?(warme|heizung)|warmenetz|teleriscaldamento|(stads|wijk)(verwarming|warmte)|warmtenet'),
  words(
    '(fjern|fjarr)-?varme|kaukolam|calefaccion (de distrito|urbana)|red de calor|siec(i)? cieplown|dalkove teplo|cieplo sieciowe',
  ),
  whole('hiu'),
);

export const HEAT = any(
  OF_HEAT_NETWORK,
  whole('wmz'),
  words('^((hp|total|space) )?heating (power|output|capacity)(?! ?(consum|input|used))'),
  words(
    'heat (output|out|produced|delivered|meter|generated|energy|supplied)|thermal|thermi(que|sch)|termica',
    '(?<!(electric|gas|oil|storage) )heat (used|usage|consum\\w+|power|demand)(?! ?pump)',
    // What comes out of a heat pump is heat.
    'heat ?pump (energy |power )?output(?! ?temp)',
  ),
  words(
    'warmemenge|warmeleistung|warmeabgabe|warmeerzeug|warmeproduk|warmeertrag|heizleistung|warmeenergie|warmezahler|warmeverbrauch|chaleur|warmteverbruik',
  ),
  words('varmeforbrug|varmeproduk|varmeafgiv|varmemangd|varmeenergi|warmtemeter'),
  words('lampoenerg|cieplo|cieplna|(?<![a-z])cie?pla(?![a-z])|tepelna'),
  whole('warme|lampo|calor(?! ?gas)|calore|warmte|varme|teplo|tepla|q ?th'),
  words(
    '(?<![a-z])(leistung|puissance|potenza|potencia|vermogen|power|energie|energy|arbeit|effekt|p|w|e) ?[-_]?th(?![a-z])',
  ),
  words('\\bheat(?= ?(\\(|\\[|[mk]?wh\\b|[gm]j\\b|$))'),
);

/** Water by its volume. */
export const WATER = any(
  whole(
    'water|wasser|agua|acqua|eau|vand|vatten|vann|woda|wody|voda|vody|abwasser|sew(er(age)?|age)|drainage|trinkwasser|kaltwasser',
  ),
  words('waste.?water|eaux usees|assainissement|alcantarillado|saneamiento|fognatura|spildevand|riool'),
  words('wassermenge|wasserverbrauch|watervolume|waterverbruik|vandmangde|vandforbrug|durchfluss|flow volume'),
);
/** A volume that does not say of what. */
export const VOLUME = whole('volume|volumen|volym|volum');

export const OUTDOOR = any(
  words('°c|°f|temp(?![a-z])|temperat|teplot|celsius|fahrenheit|outdoor|outside air|weather|dry.?bulb', 'aussenluft'),
  // Signs of weather services: air at 2 m, mean of the day, of the hour.
  only(
    't2m?',
    't ?air',
    'tmp[cf]?',
    't ?(out(door|side)?|ext|aussen|amb(ient)?|buiten|est|ude)',
    '([\\w ]* )?(outside|outdoor|ambient) ?t',
    'tavg( [cf])?',
    'tmed',
    'tas',
    'tmk?',
    'tt[_ ]?(tu|\\d+)',
    't ?mean( [cf])?',
    'tg',
    'oat',
  ),
);

/** Temperatures that say they are out of doors. */
export const OUT_OF_DOORS = words(
  'out(door|side)|aussen|(?<![a-z])(ext|ute)(?![a-z])|utetemp|exter|buiten|esterna|udendors|utomhus|ulko|zewn|venk',
);

/** All that a home uses, rather than one of its parts. */
export const WHOLE_HOME = whole(
  '(whole[ -]?)?(house|home|household)|mains(?! water)|building|haus(halt)?|gesamt|maison|foyer|logement|casa|vivienda|abitazione|woning|huis|hus|bolig',
);

/** American homes have two legs, by such words; "Flat A" and "Flat B" are two homes. */
export const OF_LEGS = whole('mains?|legs?|lines?|phases?|ph|l[12]');

/** One appliance of a home. */
export const APPLIANCE = whole(
  'evs?|cars?|chargers?|wall ?box|e.?auto|ladestation|ladepunkt|borne|voiture|coche|laadpaal|ladestander|elbil',
  'ovens?|freezers?|fridges?|immersion|lights?|lighting|pool|hot tub|sauna|dryer|dishwasher|kitchen|heizstab|batter(y|ie)',
);

/** What went into a store of electricity or came out of it: neither bought nor used by the home. */
export const OF_A_STORE = words(
  '^(home )?(batter(y|ies?)|batterij|batteri[ae]?|akku|accu|batt)( (power|leistung))?( k?wh?)?$',
  '(batt(er(y|ies))?|batterien?|batterij|batteri[ae]|akku|accu|(strom|heim|solar)speicher)\\w*([ -]\\w+)? ?(in|out|(dis)?charg\\w*|(ent|ein|aus)?lad(en|ung)|(ent|ge)laden|import|export|input|output)(?![a-z])',
  '(?<![a-z])((dis)?charg(e|ed|ing)|(in)?to|from|ladung|entladung) (the )?(batt|akku|accu)',
);

/** Of the grid, in words that no appliance has. */
export const OF_THE_GRID = words('grid|netz|(?<![a-z])red(?![a-z])|reseau|rete(?![a-z])');

/** What was used up to the day of the row. */
export const SINCE_LAST = words(
  '(?<![a-z])since (the |my |our )?(last|previous)(?! (year|month|week)(?![a-z]))( read(ing)?)?',
  '(?<![a-z])seit (der )?letzte[nr]?( ablesung| lesung)?(?![a-z])',
  'depuis (le |la )?derni(er|ere)( releve)?(?![a-z])|desde la ultima( lectura)?|sinds (de )?(laatste|vorige)( opname)?|siden sidst',
);

/** Electricity is billed in units, each a kWh; of gas a unit may be a cubic metre or a hundred cubic feet. */
export const UNITS_OF_ELECTRICITY = /(?<![a-z])units(?![a-z])/;

/** How full a tank is. */
export const IN_TANK = words(
  '(?<!(put|filled|delivered|pumped) )in (the )?tank|(?<!to )(?<!to the )tank (level|content|gauge|volume|reading|litres?|liters?|kg)',
  '(?<![a-z])dip(stick)?(?![a-z])|(litres?|liters?|kg|oil|gas) left|(in|of) stock|stock (level|litres?|liters?|kg)|on hand|(oil|tank|brennstoff|pellet)(vorrat|bestand)|fullstand|tankinhalt|tankstand|im tank(?![a-z])|dans la cuve|in de tank|i tanken|niveau (de )?cuve',
  '(oil|kerosene|lpg|propane|fuel|diesel) (level|remaining|left)|(?<![a-z])(heiz)?olstand|flussiggasstand',
);

/** What was put into it. */
export const PUT_IN = words('fill|added|deliver|bought|top.?(ped )?up|liefer|getankt|nachgefullt|zugang|livr|rempli');

/** Power rather than energy; only where no unit says otherwise. */
export const POWER = any(
  words('leistung|vykon|puissance|potencia|potenza|vermogen|courbe de charge|belastung|belastning|belasting'),
  whole('power|demand|load|effekt|demanda|last|carico|kilowatts?|watts?'),
);

/** The highest power of a while: no energy comes of it. */
export const HIGHEST = words(
  '(?<![a-z])(max|maxim|massim|hochst|spitzen|piek|peak)(?!.?(hours?|rate|tariff?|time))\\w*',
  'hoogste|hojeste|storste|highest|plus haute?|spids(belastning|effekt|last)|puissance de pointe|picco|potencia (de )?punta',
);

/** Another year, another home or a guess beside what was used: to compare with, never to add. */
export const TO_COMPARE = any(
  words(
    '(last|previous|prior) (year|month|week|period)|(previous|prior|same) day|year (ago|before)|forecast|predict|projected|expected|budget',
  ),
  words(
    '(similar|average|typical|neighbou?r\\w*|other) (homes?|house\\w*)|baseline(?! us(e|age))|neighbou?r(s|hood) ?(average|avg|mean|us(e|age)|[mk]?wh)|nachbar(n|schaft)|voisins|vecinos|(media|consumo) (dei )?vicini|(gemiddelde|verbruik) (van (de )?)?buren|nabo(er|gennemsnit)|grannar|sasiad|soused|naapur|benchmark|rolling|(weather|degree.?day) (corr|norm|adj)',
  ),
  words(
    'primary energy|primarenerg|energie primaire|energi[ae] primari[ae]|primaire energie|primaerenergi|primarni energ|anomal(y|ies|ia)|departure from|deviation from|abweichung (vom|zum)|ecart a la|afwijking|scostamento',
  ),
  words('durchschnitts?(nutzer|haushalt|wohnung)|average (user|household|dwelling)'),
  words('(moving|running) (average|avg|mean)|moyenne (mobile|glissante)|media (movil|mobile)|voortschrijdend|glidende'),
  words(
    'vorjahr|vormonat|vorhersage|prognos|pronostic|verwachting|voorspel|ennuste|predpoved|plan ?wert|vergleich|gleitend|bereinigt|annee (precedente|derniere)|prevision',
  ),
  words(
    'foyers? similaires?|ano (anterior|pasado)|prevision|anno precedente|previsto|vorig jaar|verwacht|sidste ar|forventet',
  ),
  // The same gas by its lower heat value.
  whole('pci'),
  whole('target|budget|ziel|objectif|objetivo|obiettivo|geplant'),
  words('(?<![a-z])plan(?= ?(\\d{4}|[[(]|k?wh|m3))'),
  // What is ascribed to a home of what its neighbours make.
  words('anteil gemeinschaft'),
  // How long something ran, and what is left in a tank or a store.
  words(
    '(compressor|kompressor|verdichter|burner|brenner|(?<![a-z])(hp|wp|pump|fan)) ?(run(ning)? ?)?(hours?|starts?|freq|speed|rpm|cycles?|drehzahl|stunden|takt)',
  ),
  words(
    '(burner|operating|running|run) (hours|hrs)|(betriebs|lauf)(stunden|std)|laufzeit|drift(s?timer|s?timmar|stid)|gangtid|heures de (fonct|marche)|horas de (funcion|marcha|operac)|ore (di )?(funzion|marcia|esercizio)|(draai|bedrijfs)uren|kayntitun|godziny pracy|motohodin|provozni(ch)? hod|(hours|hrs) run(ning)?(?![a-z])',
  ),
  // What is still paid for.
  words('balance (on|left|of|at)|(meter|prepaid|credit) balance|(units|k?wh|credit) left|left on (the )?meter'),
  words('in (the )?store|restmenge|remaining'),
  IN_TANK,
);

/** Of each day on the mean, whatever the row's length. */
export const A_DAY = any(
  words('(\\/|(?<![a-z])(per|pro|par|por|al|pr\\.?|je|a)) ?(day|d|tag|jour|dia|giorno|dag)(?![a-z])'),
  words(
    '(average|avg\\.?|mean) daily|daily (average|avg|mean)|tagesdurchschnitt|tagesmittel|moyenne (par jour|journaliere)',
  ),
  words('media (diaria|giornaliera)|(consumo|promedio) diario medio|daggemiddelde|dognmiddel|dagligt gennemsnit'),
  words(
    '(durchschn\\w*|mittl\\w*|[øo]) (tages|taglich)\\w*|(tages|taglich\\w* )verbrauch im (schnitt|mittel|durchschnitt)|(consommation|moyenne) quotidienne( moyenne)?|(consommation moyenne|moyenne) (journaliere|quotidienne)',
    '(consumo medio|promedio) diario|consumo (medio giornaliero|giornaliero medio)|gemiddelde? dag\\w*|gennemsnitlig\\w* d[ao]g\\w*|genomsnittlig\\w* d(ag|ygn)\\w*|dygnsmedel|(srednie|prumern\\w*) (dzienn|denn)\\w*|keskimaarainen paiva\\w*',
  ),
);

/** All since a month, a year or anything else began. */
export const SINCE = words(
  '(year|month|week|quarter|season) to date|(?<![a-z])[ymq]td(?![a-z])|running total|cumulative|kumul|cumul|acumulad|aufgelaufen|auflaufend|seit jahresbeginn|(kwh|m3|to) to date|depuis le debut|sinds begin|dall.inizio',
);

export const CLOCK_TIME = any(
  only('klockslag|godzina|godz\\.?|cas'),
  only('klo|time|clock( time)?|local time|time of day|uhrzeit|zeit|heure( locale)?|hora( local)?'),
  only('ora|orario|tijd|kloktijd|tid|klokken|klokkeslaet|kl\\.?'),
  words('^(time|clock|uhrzeit|klokkeslaet|orario)\\b'),
);
/** The number of an hour or of a part of one within its day. */
export const HOUR_NUMBER = any(
  words(
    '^(viertelstunden?|halbstunden?|quart d.?heure|cuarto|quarto|kwartier|kvarter|half.?hour|hh|sp)( ?(nr|no|nummer|number))?\\b',
    '^(tunti|hour|hr|he|stunde|std|heure|hora|ora|uur|time|timenummer|uurnummer|period|periode|periodo|interval|intervall|timme|godz(ina)?|hodina)\\b',
  ),
  words(
    '^(n[°ºo.]{1,2}|nr|numero|number|num)[ .]*(de |di |of )?(heure|hora|ora|hour|stunde|uur|period)',
    'hour (of|number|ending)|settlement period',
  ),
);

export const PERIOD_START = any(
  only('od|fran|from|start|begin|von|ab|de|du|da|dal|dalle|desde|van|vanaf|fra'),
  whole('start(ed|ing|s)?|begin(ning|ns)?|beginn|debut|inicio|inizio|begyndelse|commencement|commencing'),
  words('startzeit|starttijd|starttid|startdat|begindat|begintijd|startdato|zeitvon|datumvon'),
  words('date from|from date|^from\\b|\\b(zeit|datum|uhrzeit) von\\b|\\bfra dato\\b|^fran?\\b', '\\bdate de debut\\b'),
);
export const PERIOD_END = any(
  only('do|till|ate|to|end|until|till|bis|a|al|alle|au|hasta|tot|t/m|til|fin|fine'),
  whole('end(ed|ing|s)?|until|ende|fin|final|fine|hasta|einde|slut|finish(ed)?|ending'),
  words('endzeit|eindtijd|einddat|sluttid|slutdat|enddat|date to\\b|\\bto date\\b|^to\\b|^bis\\b'),
  words('\\b(zeit|datum|uhrzeit) bis\\b|\\btil dato\\b|^till?\\b|^tot\\b'),
);
export const STAMP = any(
  words('date|time|datum|zeit|month|quarter|period|interval|stamp|horodat|tijdstip|tidspunkt'),
  whole(
    'aika(leima)?|alkuaika|paivamaara|pvm|kuukausi|viikko|vuosi|dygn|manad|kvartal|vecka|ar|dzien|doba|miesiac|kwartal|tydzien|rok|okres|den|mesic|ctvrtleti|tyden|obdobi|semana',
  ),
  words('delivered on|fecha|instant|meetmoment|marca de tiempo|istante|dato\\b|monat|trimest'),
  whole('day|when|tag|jour|dia|giorno|dag|mes|mois|mese|maand|maned|jahr|year|moment'),
  words('^(dt|ds|data)$|^data (e )?(ora|lettura)|^data/ora'),
);

export const MONEY = any(
  words('cost|(?<!de )charge|price|£|€|₹|[([]rs\\.?[)\\]]|\\$|net amount|gross amount|kosten|betrag|preis'),
  words('kostnad|kwota|koszt|(?<![a-z])(zl|pln|cena|kc|czk|sek|nok)(?![a-z])'),
  words('montant|\\bprix|coute?\\b|coste|import[eo]\\b|precio|prezzo|costo|bedrag|prijs|belob'),
  words('omkostning', '(?<![a-z])(inc|incl|exc?|excl|plus) (vat|tax|gst)(?![a-z])'),
  whole('gbp|eur|euros?|usd|chf|dkk|kr|pence|pounds?|pris|debit|credit|balance|saldo|solde|haben|paid (in|out)'),
);

/** Money that is a part of a bill; a total may say that it holds one. From memory of bills. */
export const PART_OF_COST = words(
  '(demand|network|distribution|transmission|capacity|metering|meter|supply|service|delivery|fixed|basic|customer|environmental|policy|carbon|wires|access|line) (charges?|costs?|fees?)',
  '(?<![a-z])(lev(y|ies)|surcharges?|(?<!(incl?(uding)?|with|plus|after|before|ex(cl?(uding)?)?|inc)\\.? )tax(es)?(?= ?($|[([£€$])))',
  'netzentgelt|netznutzung|netzkosten|stromsteuer|energiesteuer|umlage|konzession|grundpreis|grundgebuhr|messstellen|messentgelt',
  'acheminement|turpe|(?<![a-z])(cspe|cta)(?![a-z])|abonnement|peajes?|impuesto|termino (de potencia|fijo)|alquiler',
  '^(gst|hst|pst|qst|vat|mwst|ust|umsatzsteuer|mehrwertsteuer|tva|iva|btw|moms|alv|dph)(?![a-z])',
  'oneri|accis[ae]|imposte|quota fissa|trasporto|netbeheer|vastrecht|energiebelasting|nettarif|elafgift|natavgift|nettleie|energiskatt',
);
/** All of a bill, with whatever parts. */
export const ALL_OF_COST = words(
  'total|gesamt|totaal|totale|(?<![a-z])(incl|inkl|inc|ttc|all|summe|bill|invoice|rechnung)(?![a-z])',
);

export const MARKS = any(
  words('quality|status|estimat|flag|(read(ing)?|type of) ?type|^type$|actual|^e ?\\/ ?a$|^a ?\\/ ?e$'),
  words('qualit|statut|^nature|^etat|^estado|^stato|calidad|kwaliteit|kvalitet|metodo de obten'),
  words('tipo (di |de )?lettura|tipo (de )?lectura|soort meting|maletype|geschatz|ersatzwert'),
);

export const COUNTER = any(
  whole('reading|register|cumulative|meter read|index|counter|stand|releve|relevee|lectura|lettura'),
  words(
    'zahlerstand|meterstand|gasstand|waterstand|(?<![a-z])(strom|gas|wasser)zahlerstand|tellerstand|malerstand|taellerstand|aflaesning|ablesung|acumulad|cumulat',
  ),
  words('lukema|matarstallning|malerstand|avlasning|stan (licznika|gazomierza)|odczyt|wskazani|leitura|odecet'),
  words(
    'stav (elektro|plyno|mer|vodo)|kumul|^reads?$|odometer',
    '^sta[vn] (vt|nt|strefa|dzienn|nocn|poprzedn|obecn|biezac)|^stav$',
  ),
);

/** A meter by its name alone shows readings, where its numbers go up. */
export const METER = words(
  'matare|licznik|gazomierz|elektromer|plynomer|meridl|meter\\b|zahler(?!nr|nummer)|compteur|contador|contatore|(?<![a-z])(maler|teller)(?![a-z])',
);

/** What fuel comes in, by the piece: how much is in one the words do not say. */
export const PIECES = whole(
  'bottles?|cylinders?|canisters?|drums?|barrels?|cans?|jerry ?cans?|loads?|fills?|refills?|tanks?|pallets?|flaschen?|fasser|kanister|paletten?|bouteilles?|bidons?|futs?|bombole|bombonas?|botellas?|flessen|vaten|flasker|flaskor|butle|lahve|palets?',
);

export const AMOUNT = any(
  words('usage|consum|used|energ|volume|verbrauch|quantity|amount|delivered|import|export|units'),
  words('forbrukning|anvandning|forbruk(?![a-z])|zuzyci|spotreb|kulutus'),
  words('consommation|bezug|verbruik|afname|levering|forbrug|maengde|\\bmenge|quantite|cantidad'),
  words(
    'quantita|quantidade|(?<![a-z])(maara|mangd|mengde|ilosc|mnozstvi)(?![a-z])|hoeveelheid|^kob|messwert|^valor|^valeur|^waarde|^wert',
  ),
);

/** A register of some hours, at some price. */
export const RATE_REGISTER = any(
  whole('day|night|peak|off.?peak|low|normal|standard|rate ?\\d|(?<!\\d)[rt]0?\\d|f[1-6]|p[1-6]|fascia ?\\d'),
  whole('tarif ?\\d|tariff ?\\d|tarief ?\\d|ht|nt|hc|hp|h[cp]j[brw]|hochtarif|niedertarif|tag|nacht'),
  whole('heures (pleines|creuses)|punta|llano|valle|dia|noche|fuori punta|hoog|laag|piek|dal|normaal'),
  whole('vt|(haut|bas|plein) tarif|tarif (haut|bas|plein)|strefa \\w+|(alta|bassa) tariffa|paiva(sahko)?|yo(sahko)?'),
  whole('nat|dag|hoj|lav|spids|1[.:]8[.:][1-9]|2[.:]8[.:][1-9]|kwh [12]8[1-9]|jour|nuit'),
  whole('vazio|ponta|cheias?|strefa (dzienna|nocna)|hc ?hc|hc ?hp'),
  whole('morning|afternoon|evening|midday|daytime|overnight|abend|soir|tarde|sera|avond|aften|kvall|natt'),
  whole(
    'morgen|vormittag|mittag|nachmittag|matin|apres.midi|manana|mattina|pomeriggio|ochtend|middag|(for|efter)middag',
  ),
  whole('reg(ister)? ?\\d|shoulder|anytime|controlled load|general (usage|supply)'),
);

/**
 * Words of tables that no English table has, in languages that write the day before the month and decimals with a comma.
 * Those that English shares ("date", "data", "gas", "tag", "du", "au") tell nothing.
 */
export const NOT_ENGLISH = any(
  whole('datum|zeit|uhrzeit|monat|jahr|strom|warme|wert|einheit|betrag|von|bis|verbrauch|menge|bezug|abgelesen'),
  words('zahler|verbrauch|ablesung|warmemenge|stromverbrauch|netzbezug|einspeis|heizol|fernwarme'),
  whole('jour|mois|annee|heure|horodate|valeur|unite|montant|electricite|gaz|conso|energie|releve|puissance'),
  words('consommation|electrique|compteur|soutirage|fioul|chaleur'),
  whole('fecha|hora|mes|ano|valor|unidad|importe|electricidad|energia|lectura|desde|hasta|potencia'),
  words('consumo|contador|calefaccion'),
  whole('giorno|mese|anno|ora|valore|unita|importo|lettura|dal|bolletta|elettrica|calore'),
  words('prelevat|contatore|fornitura'),
  whole('dag|maand|jaar|tijd|tijdstip|waarde|eenheid|bedrag|stroom|afname|warmte|vanaf|t/m'),
  words('verbruik|meterstand|teruglever|stadswarmte'),
  whole('dato|maned|klokken|vaerdi|enhed|belob|fra|til|varme|maler|tidspunkt'),
  words('forbrug|malepunkt|fjernvarme|aflaesning'),
  whole('klockslag|manad|varde|enhet|fran|till|matarstallning|miesiac|godzina|wartosc|jednostka|licznik[au]?|od|gazu'),
  words('forbrukning|anvandning|zuzyci|elektryczn|spotreb|plynomer|elektromer|eletricid|consumo|leitura'),
  whole('aika|paivamaara|pvm|kuukausi|kulutus|sahko|mesic|cas|hodnota|jednotka|elektriny|plynu|stav|hodina|unidade'),
);

/** A title that says when a file was made rather than what its data are of. */
export const OF_A_DAY =
  /^(created|printed|generated|exported(?! (?:energy|electricity|power|units|k?wh))|downloaded|made|issued|run|report (date|run)|erstellt|gedruckt|exportiert|erzeugt|stand|edite|genere|imprime|cree|generad[oa]|impreso|creado|stampat[oa]|generat[oa]|creato|gemaakt|gegenereerd|afgedrukt|udskrevet|dannet|genereret|oprettet)\b/;

/** Of electricity that is paid before it is used. */
export const BOUGHT_AHEAD = words(
  'purchas|tokens?\\b|top.?ups?\\b|recharg|prepa(id|y)|vouchers?\\b|vending|units (bought|left)|aufladung|guthaben',
);

const OF_SUMS =
  '\\p{L}+(summen?|totaal|total)|totals?|summa|razem|[lł][aą]cznie|celkem|totaal|totale|totaux|sum|summe|suma|somme|somma|gesamt|insgesamt|i alt|overall';
const LIKE_SUMS =
  'diff\\w*|ver[aä]nderung|mittel(wert)?|m[eé]dia|medelv[aä]rde|[sś]rednia|pr[uů]m[eě]r|gjennomsnitt|gennemsnit|average|mean|durchschnitt|moyenne|media|gemiddelde|maximum|minimum|max|min|count';
/** Rows of sums and the like, by their first word as written. */
export const TOTALS = new RegExp(`^((grand |sub ?)?(${OF_SUMS}|${LIKE_SUMS})\\b|[øσδ⌀∑](?!\\p{L}))`, 'iu');

/** Of those the rows of sums alone. */
export const SUMS = new RegExp(`^((grand )?(${OF_SUMS}|summen)\\b|[σ∑](?!\\p{L}))`, 'iu');

/** A column of units. */
export const OF_UNITS = /\bunits?\b|\buom\b|einheit|unite\b|unidad|unita\b|eenheid|enhed/;

/** Words for a week. */
export const WEEK =
  /^((calendar|iso) ?)?(week|wk|kw|woche|kalenderwoche|uge|vecka|uke|tydzien|tyden|semaine|semana|settimana|viikko)( ?(no|nr|number)\.?)?$/;

/** Titles that are of somebody, of a company, of the data. */
export const OF_A_PARTY =
  /^(customer|client|name|address|street|account|contract|supplier|provider|retailer|tariff|product(?!i)|plan|post ?code|site|installer|kunde|anschrift|strasse|lieferant|anbieter|vertrag|tarif|produkt(?!i)|nom|fournisseur|offre|contrat|cliente|direccion|calle|domicilio|comercializadora|contrato|nome|indirizzo|fornitore|offerta|contratto|klant|naam|adres|straat|leverancier|contract|navn|adresse|leverandor|aftale)\w*\b/;
export const OF_A_COMPANY =
  /\b(ltd|limited|plc|gmbh|ag|ug|inc|llc|s\.?a\.?|s\.?p\.?a|s\.?r\.?l|b\.?v\.?|n\.?v\.?|a\/s|aps|sarl|sas|stadtwerke?)\b/;
export const RECORD =
  /meter|zahler|compteur|contador|contatore|teller|maler|\bdat(a|en|os|i)\b|donnees|gegevens|reading|usage|use\b|consum|verbrauch|forbrug|verbruik|consommation|bezug|profil|lastgang|messwert|messreihe|curva|courbe|history|histor|half.?hour|hourly|daily|interval|load|record|ablesung|releve|lectura|lettura/;

/** Units and years. */
export const BESIDE_THE_ENERGY = /[([]? *\b([km]?wh|m3|m³|[mg]j|(19|20)\d\d)\b *[)\]]?|\bin\b/g;

/** What stands above a column and says no more of it than that it was measured, how often and in which unit. */
export const SAYS_NO_MORE = whole(
  // One home of a house; of all of them "flats" says more.
  '(flat|apartment|apt|wohnung|appartement|appartamento|lejlighed|lagenhet|leilighet|mieszkanie|byt|asunto) ?(\\d+[a-z]?|[a-d])',
  '[kmg]?wh?|therms?|dth|de[ck]atherms?|[mhc]?cf|m?m?btus?|[kmg]j|gcal|smc|nm|cubic|cubed?s?|cubi(que|co|ci|c)s?|kubi\\w*|kubiek\\w*|feet|foot|met(re|er)s?|metri|metros?|hundreds?',
  'kilowatt\\w*|megawatt\\w*|watt\\w*|heures?|hours?|stunden?|horas?|ore|uur|timer?|hora(rio|ria)?|horaires?|hourly|half.?hourly|daily|weekly|monthly|quarterly|yearly|annual(ly)?|per|each|minutes?|mins?|min|half|quart\\w*',
  'taglich\\w*|stundlich\\w*|monatlich\\w*|jahrlich\\w*|quotidien\\w*|mensuel\\w*|annuel\\w*|journali\\w*|diari[oa]|mensual|anual|giornalier\\w*|mensil\\w*|annual[ei]|dagelijks\\w*|maandelijks\\w*|daglig\\w*|manedlig\\w*|kvarter',
  '(sub.?)?totals?|totaal|totale?|totaux|gesamt|insgesamt|summe?|somme|suma|somma|overall|all|net|gross|netto|brutto|mains?|supply|supplied|point|channel|kanal|canal|service',
  'gas|gaz|metano?|erdgas|naturgas|aardgas|naturale?|naturel|energ\\w*|utility|fuel|commodity|sparte|medium|fluide',
  'values?|wert|valeur|valor|valore|waarde|vaerdi|varde|reads?|readings?|data|daten|donnees|datos|dati|gegevens|profile?|number|num|state|sensor|statistic|quantity|recorded|measured?|measurement|metered|billed|actual|ist|observed|gemessen\\w*|mesure\\w*|medid[oa]|misurat[oa]|gemeten|malt',
  'this|the|for|and|und|aus|dem|den|des|der|die|het|van|voor|aan|les|las|los|del|della|dei|with|was|has|your|you|our|from|into|com|por|par|pour|pro',
  'consomm\\w*|consum\\w*|us(age|ed?|es)|verbraucht?|verbruikt?|forbrugt?|kobt?|drawn|taken|atteinte',
  'grid|netz?|nett?et|reseau|red|rete|geliefert\\w*|livree?|geleverd|leveret|fornit[ao]|suministrad[ao]|delivered|actief|aktiv|reell?e?|real|effettiva',
  'registad[oa]s?|registrad[oa]s?|regist(red|rato|ree?)|erfasst\\w*|measured|mean|average|avg|active|activ[ae]|attiva|ativa|whole',
  'mittlere? leistung|puissance moyenne|gemiddeld vermogen|gennemsnitlig effekt|potenza media|potencia media|(mean|average) (power|demand|load)',
  'since|reset|lifetime|start|end|opening|closing|present|previous|current|last|latest|first|new|old|before|after|later|earlier|primary|secondary|active|smart|general|rate|register|index|phase|pulses?|imp(uls\\w*)?|normal',
);
