import { billsOver, comebacksAmong, extraHours, worthHours } from '../shop/comeback.ts';
import { CARS, FILTER, SEAL, SOLENOIDS } from '../shop/examples.ts';
import { foundOnShelf, keepFor, usedMeanwhile } from '../shop/shelf.ts';
import { count, entry, percent, type Entries } from './entry.ts';

const hours = (value: number, what: string, wrong = {}) => entry('hours', value, what, wrong);

/** A sleeve in a task, six hours deep and two. */
const SLEEVE = { ...FILTER, extraH: 0.2, price: 8, left: 0.09 };
const SHALLOW = { ...SLEEVE, accessH: 2 };
/** A part in a question: from 10 to 4 cars in 100, eight hours deep. */
const ASKED = { ...FILTER, accessH: 8, left: 0.1, renewed: 0.04 };
/** What a part in a question costs [h], and the chances it has. */
const DEEP = { costs: 1.2, left: 0.15, renewed: 0.05 };
/** A filter in a question: used a year, days away. */
const SHELF = { aYear: 73, days: 10 };
const meanwhile = usedMeanwhile(SHELF.aYear, SHELF.days);
const seals = usedMeanwhile(SEAL.aYear, SEAL.days);
/** How many cars a question does. */
const YEAR = 25;
const filters = billsOver(FILTER, YEAR);

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
  'together-asked-access': hours(ASKED.accessH, 'access in a question'),
  'together-asked-worth': hours(worthHours(ASKED), 'from 10 to 4 in 100, eight hours deep', {
    'forgot-the-rest': {
      mistake: 'forget that some come back with the new part as well',
      value: worthHours({ ...ASKED, renewed: 0 }),
    },
    'the-rest-alone': {
      mistake: 'take the cars that come back anyway',
      value: worthHours({ ...ASKED, left: ASKED.renewed, renewed: 0 }),
    },
    'whole-access': { mistake: 'count the access for every car', value: ASKED.accessH },
  }),
  'together-deep-costs': hours(DEEP.costs, 'what a part in a question costs'),
  'together-deep-access': hours(DEEP.costs / (DEEP.left - DEEP.renewed), 'where it begins to pay', {
    'forgot-the-rest': {
      mistake: 'divide by the chance before, and forget the chance after',
      value: DEEP.costs / DEEP.left,
    },
    'own-cost': { mistake: 'ask for as much access as it costs', value: DEEP.costs },
  }),
  'together-asked-cars': count(YEAR, 'cars of a question'),
  'together-asked-bill': hours(
    filters.work + filters.comebacks,
    'so many cars with the filter renewed',
    {
      'work-alone': { mistake: 'let no car come back any more', value: filters.work },
      'comebacks-alone': { mistake: 'forget the work on every car', value: filters.comebacks },
      'left-alone': { mistake: 'take the cars on which it was left', value: filters.left },
    },
  ),
  'together-shelf-meanwhile': entry('rate', meanwhile, 'filters used while an order is under way', {
    'a-week': { mistake: 'take what is used in a week', value: SHELF.aYear / 52 },
    'a-month': { mistake: 'take what is used in a month', value: SHELF.aYear / 12 },
  }),
  'together-shelf-keep': count(keepFor(0.9, meanwhile), 'to keep for nine in ten', {
    average: { mistake: 'keep what is used on the average', value: meanwhile },
    'one-spare': { mistake: 'add a single spare', value: meanwhile + 1 },
    'four-times': { mistake: 'keep four times the average', value: 4 * meanwhile },
  }),
};
