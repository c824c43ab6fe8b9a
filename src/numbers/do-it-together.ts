import { comebacksAmong, extraHours, worthHours } from '../shop/comeback.ts';
import { CARS, FILTER, SEAL, SOLENOIDS } from '../shop/examples.ts';
import { foundOnShelf, usedMeanwhile } from '../shop/shelf.ts';
import { count, entry, percent, type Entries } from './entry.ts';

const hours = (value: number, what: string) => entry('hours', value, what);

/** A sleeve in a task, six hours deep and two. */
const SLEEVE = { ...FILTER, extraH: 0.2, price: 8, left: 0.09 };
const SHALLOW = { ...SLEEVE, accessH: 2 };
const seals = usedMeanwhile(SEAL.aYear, SEAL.days);

export const doItTogether: Entries = {
  'together-access': hours(FILTER.accessH, 'access of the example, in and out'),
  'together-before': count(100 * FILTER.left, 'of 100 cars, come back with it left'),
  'together-after': count(100 * FILTER.renewed, 'of 100 cars, come back with it renewed'),
  'together-worth': hours(worthHours(FILTER), 'what renewing it is worth on a car'),
  'together-filter': hours(extraHours(FILTER), 'filter with its labor'),
  'together-solenoids': hours(extraHours(SOLENOIDS), 'solenoids with their labor'),
  'together-cars': count(CARS, 'cars of the picture'),
  'together-none': count(
    100 * comebacksAmong(CARS, FILTER.left, 0),
    'of 100 shops, never had one of twenty back',
  ),
  'together-shelf-one': percent(100 * foundOnShelf(1, seals), 'found with one kept'),
  'together-shelf-three': percent(100 * foundOnShelf(3, seals), 'found with three kept'),
  'together-sleeve': hours(extraHours(SLEEVE), 'sleeve with its labor'),
  'together-sleeve-before': count(100 * SLEEVE.left, 'of 100, come back for the sleeve'),
  'together-sleeve-drop': count(
    100 * (SLEEVE.left - SLEEVE.renewed),
    'cars in 100 fewer with a new sleeve',
  ),
  'together-sleeve-worth': hours(worthHours(SLEEVE), 'what the sleeve is worth, six hours deep'),
  'together-shallow': hours(SHALLOW.accessH, 'access with the pan alone off'),
  'together-shallow-worth': hours(worthHours(SHALLOW), 'what the sleeve is worth there'),
};
