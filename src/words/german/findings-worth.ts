import type { Catalogue } from '../say.ts';

/** What findings are worth. */
export const FINDINGS_WORTH: Catalogue = {
  '“Sure” is our own weighing, tried on 1,000 made households. Of findings less than {middle} in 20 sure, at least {littleTrue} in 100 were true; from {middle} in 20 on {middleTrue}; from {much} in 20 on {muchTrue}. A real home may differ from made ones.':
    '„Sicher“ ist unsere eigene Abwägung, geprüft an 1.000 erdachten Haushalten. Von Befunden unter {middle} von 20 trafen mindestens {littleTrue} von 100 zu; ab {middle} von 20 {middleTrue}; ab {much} von 20 {muchTrue}. Ein wirkliches Haus kann anders sein als erdachte.',
  'Of 100 made homes without it at most {wrong, plural, one {# was} other {# were}} said to have it; of 100 with it at least {found} were found.':
    'Von 100 erdachten Häusern ohne dies {wrong, plural, one {wurde es höchstens # nachgesagt} other {wurde es höchstens # nachgesagt}}; von 100 mit diesem wurden mindestens {found} gefunden.',
  'Electric heaters of {machine} kW are seen on the machine’s own meter and of {house} kW on the house’s. Smaller ones run at powers that the machine has too, so they are not named. Of 100 heaters in half-hours at least {found} were found, by the hour {hourly}, on the house’s meter alone {houseOnly}.':
    'Heizstäbe mit {machine} kW sind am eigenen Zähler der Maschine zu sehen, solche mit {house} kW am Zähler des Hauses. Kleinere laufen mit Leistungen, die auch die Maschine hat, und werden darum nicht genannt. Von 100 Heizstäben wurden aus halben Stunden mindestens {found} gefunden, aus Stunden {hourly}, am Hauszähler allein {houseOnly}.',
  'Use at dear hours cannot be judged: under “{first}” a unit’s price hangs on the amount too.':
    'Verbrauch zu teuren Stunden lässt sich nicht beurteilen: Im Tarif „{first}“ hängt der Preis einer Einheit auch von der Menge ab.',
  'Only “{first}” was looked through. Beside it stands {others}, and nobody says whether that counts the same units.':
    'Nur „{first}“ wurde durchgesehen. Daneben steht {others}, und niemand sagt, ob das dieselben Einheiten zählt.',
};
