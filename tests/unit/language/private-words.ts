/**
 * Words that may not return: private ones where everybody has a common one, and German that no installer says.
 * The reason stands beside each; what is said instead is after the arrow.
 */
export const PRIVATE_ENGLISH: readonly RegExp[] = [
  // → written estimate: an estimate guarantees nothing
  /\bpromis(e|es|ed|ing)\b/i,
  // → work out; "reckon" is the command's name alone
  /\breckon(s|ed|ing)?\b(?! --)/i,
  // → saved, stored; "keep" stays where a hand keeps something
  /\bkept\b/i,
  /\bkeeping\b/i,
  // → compared with
  /\b(held|hold) (\S+ )*against\b/i,
  // → correct, allow for
  /\b(put|set) (\S+ )?right\b/i,
  // → costs more, expensive; a letter may greet
  /\bdear(er|est)?\b(?! \{)/i,
  // → example homes
  /\bmade homes?\b/i,
  // → in today’s money
  /\bmoney of today\b/i,
  // → everything, in all
  /\bthe whole\b(?! (home|house|year|bill))/i,
  // → cancel, remove, restore, reset
  /\bleave it\b(?! (open|empty|on|as|to))/i,
  /\b(take|takes|taken|took) (it |this )?back\b/i,
  /\b(take|takes|taken|took) (it|this one|these|the last one|what-if) (out|away|back)\b/i,
  // → break-even
  /\bbalance tips\b/i,
  // → saved tariffs
  /\bshelf\b/i,
  // → is used instead
  /\bstands? in(?=[.,;]| for |$)/i,
  // → estimate, paper
  /\bleave-behind\b/i,
  // → again
  /\banew\b/i,
  // → overview
  /\bto the desk\b/i,
];

export const PRIVATE_GERMAN: readonly RegExp[] = [
  // → Kostenschätzung
  /\bZusagen?\b/,
  /\bzugesagt/i,
  /\bKostenvoranschl/,
  /\bUnterlage\b/,
  // → Nachweis is none of a bill
  /\bNachweise?n?\b/,
  /\bBelegen?\b/,
  // → Vorlauf 45 °C
  /\bHeizwasser(temperatur| mit| \d| an einem)/,
  /\b(Heizkörpern?|Fußboden|Wasser) (mit|bei) [{\d]/,
  // → Erdreich
  /\baus dem Boden\b/,
  /\b[Dd]er Boden gibt\b/,
  // → Warmwasser
  /\bHähnen?\b/,
  // → Stand-by
  /\bBereitschaft\b/,
  // → normales Jahr, normaler Winter: one name for one thing
  /\b(üblich|durchschnittlich)e[nsmr]* (Jahr|Winter)/i,
  // → Sole/Wasser-, Luft/Wasser-Wärmepumpe
  /\b(Erd|Luft)-Wärmepumpe/,
  /\bWärmepumpe, (Erde|Luft)\b/,
  // → Berechnung: a Rechnung is a bill
  /\bdie Rechnung (beruht|ergibt)\b/i,
  // → kWh
  /\bKilowattstunden\b/,
];

/** The same in both languages, and words out of titles, standards and tariff files that are named as they are written. */
export const SAME_IN_BOTH: ReadonlySet<string> = new Set(
  `ASHRAE Achenbach Also Appendix April Arizona BDEW BREDEM Band Bayes Block Book Browser Bungalow Bytes CIBSE COP CSV
   Carnot Computer DESNZ DIN DIR Display EPW Electrification England Enter Europe Fall Filter Form Frost Fundamentals
   GSHPA Garage Gas Gaspreisanalyse Grade Green Greenwich HEAPO HTML Hand Heat Import JPEG JSON Kelvin Kusuda LOCATION Land Latin
   Listen Logo London Mail Median Meter Minute Name November EnWG Module Ofgem PDF PNG Pellets Pence Person Node Plainwarmth RECC Rate
   Region Rest SAP SCOP SPF SVG Scanner Stand Standard Starts Stick Sticks Strompreisanalyse System Systems Table Tables Tank Tests
   Text Therm Thermometer Tonne Treasury Trend UTC Umweltbundesamt UTF Version Wales Warm Was Winter Winters XLSX XML also
   analysis band bar data days demonstration electricity fallen falls fast final fri from gas half heat kWh kWp mar
   mild milder mon months normal oct pence per performance plus pump situ stand still warm warmer was`.split(/\s+/),
);
