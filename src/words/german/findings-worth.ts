import type { Catalogue } from '../say.ts';

/** What findings are worth. */
export const FINDINGS_WORTH: Catalogue = {
  'What “sure” is worth, on 1,000 example homes: of findings under {middle} in 20 sure at least {littleTrue} in 100 were true, from {middle} in 20 on {middleTrue}, from {much} in 20 on {muchTrue}. A real home may differ.':
    'Was „sicher“ wert ist, an 1.000 erdachten Häusern: Von Befunden unter {middle} von 20 trafen mindestens {littleTrue} von 100 zu, ab {middle} von 20 {middleTrue}, ab {much} von 20 {muchTrue}. Ein wirkliches Haus kann anders sein.',
  'On example homes: named without cause in at most {wrong} of 100, found in at least {found} of 100.':
    'An erdachten Häusern: ohne Grund genannt bei höchstens {wrong} von 100, gefunden bei mindestens {found} von 100.',
  'Electric heaters of {machine} kW are seen on the machine’s own meter and of {house} kW on the house’s. Smaller ones run at powers that the machine has too, so they are not named. Of 100 heaters in half-hours at least {found} were found, by the hour {hourly}, on the house’s meter alone {houseOnly}.':
    'Heizstäbe mit {machine} kW sind am eigenen Zähler der Wärmepumpe zu sehen, solche mit {house} kW am Zähler des Hauses. Kleinere laufen mit Leistungen, die auch die Wärmepumpe hat, und werden darum nicht genannt. Von 100 Heizstäben wurden aus halben Stunden mindestens {found} gefunden, aus Stunden {hourly}, am Hauszähler allein {houseOnly}.',
  'These readings cannot rule out: {causes}.': 'Diese Messwerte schließen nicht aus: {causes}.',
  'Use at expensive hours cannot be judged: under “{first}” the price per kWh depends on the amount too.':
    'Verbrauch zu teuren Stunden lässt sich nicht beurteilen: Im Tarif „{first}“ hängt der Preis je kWh auch von der Menge ab.',
  'Only “{first}” was looked through. There is {others} beside it, and nobody says whether the same units count in both.':
    'Nur „{first}“ wurde durchgesehen. Daneben gibt es {others}, und niemand sagt, ob beide dieselben kWh zählen.',
};
