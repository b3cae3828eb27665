/** What is told of units that are more than a sign: codes with their gaps. */
export interface ToldUnit {
  'kwh-a-year': null;
  'kwh-a-day': null;
  'kwh-a-square-metre-and-year': null;
  'kwh-a-kelvin-and-day': null;
  'kwh-of-heat-a-kwh': null;
  'kelvin-days': null;
  'of-uk-average': null;
  'of-the-use': null;
  'of-the-factor': null;
  'of-the-cop': null;
  'of-the-most': null;
  'of-the-usual': null;
  'of-all-electricity': null;
  'litres-a-day': null;
  'litres-a-minute': null;
  litres: null;
  days: null;
  years: null;
  'too-few-years': null;
}
