/** Shop sums: what access, comebacks and a shelf come to, and which test brings most for its minutes. */
import { count, entry, percent, times } from '../numbers/entry.ts';
import { foundOnShelf, keepFor } from '../shop/shelf.ts';
import { by, family, steps } from './family.ts';

const hours = (value: number, what: string, wrong = {}) => entry('hours', value, what, wrong);
const minutes = (value: number, what: string, wrong = {}) => entry('minutes', value, what, wrong);
/** Halvings of a list that a test tells which takes this share of it, for sure. */
const halvings = (share: number): number =>
  -(share * Math.log2(share) + (1 - share) * Math.log2(1 - share));

export const shop = {
  'worth-of-a-part': family(
    { access: steps(4, 14, 1), left: steps(7, 16, 1), renewed: steps(2, 5, 1) },
    ({ access, left, renewed }) => ({
      numbers: {
        access: hours(access, 'access'),
        left: count(left, 'of 100, come back with it left'),
        renewed: count(renewed, 'of 100, come back with a new one'),
        spared: count(left - renewed, 'of 100, no longer come back'),
        worth: hours(((left - renewed) / 100) * access, 'what the new part is worth on a car', {
          'the-rest-alone': by('take the cars that come back anyway', (renewed / 100) * access),
          'forgot-the-rest': by(
            'forget that some come back with the new part as well',
            (left / 100) * access,
          ),
          'whole-access': by('count the access for every car', access),
        }),
      },
    }),
  ),
  'where-it-pays': family(
    { costs: steps(0.4, 2.4, 0.2), left: steps(10, 18, 1), renewed: steps(3, 6, 1) },
    ({ costs, left, renewed }) => ({
      numbers: {
        costs: hours(costs, 'part with its labor'),
        left: count(left, 'of 100, come back with it left'),
        renewed: count(renewed, 'of 100, come back with a new one'),
        spared: count(left - renewed, 'of 100, no longer come back'),
        access: hours((100 * costs) / (left - renewed), 'access from which it pays', {
          'forgot-the-rest': by(
            'divide by the chance before, and forget the chance after',
            (100 * costs) / left,
          ),
          'own-cost': by('ask for as much access as it costs', costs),
        }),
      },
    }),
  ),
  'bill-of-a-year': family(
    {
      cars: steps(20, 60, 5),
      part: [0.2, 0.3, 0.4, 0.5],
      access: steps(4, 10, 1),
      renewed: [2, 3, 4],
      left: steps(8, 14, 1),
    },
    ({ cars, part, access, renewed, left }) => {
      const work = cars * part;
      const comebacks = (cars * renewed * access) / 100;
      return {
        numbers: {
          cars: count(cars, 'cars'),
          part: hours(part, 'part with its labor'),
          access: hours(access, 'access'),
          renewed: count(renewed, 'of 100, come back with a new one'),
          left: count(left, 'of 100, come back with the old one'),
          bill: hours(work + comebacks, 'parts and comebacks together', {
            'comebacks-alone': by('forget the work on every car', comebacks),
            'work-alone': by('let no car come back any more', work),
            'left-alone': by('take the cars on which it was left', (cars * left * access) / 100),
          }),
        },
      };
    },
  ),
  'used-meanwhile': family(
    { aYear: [73, 146, 219, 292, 365], days: [5, 10, 15, 20] },
    ({ aYear, days }) => ({
      numbers: {
        'a-year': count(aYear, 'used in a year'),
        days: count(days, 'days of an order'),
        every: count(365 / aYear, 'days for one'),
        used: entry('rate', (aYear / 365) * days, 'used while an order is under way', {
          'a-week': by('take what is used in a week', (aYear / 365) * 7),
          'a-month': by('take what is used in a month', aYear / 12),
        }),
      },
    }),
  ),
  'kept-on-the-shelf': family({ mean: steps(1, 8, 1) }, ({ mean }) => {
    const keep = keepFor(0.9, mean);
    return {
      numbers: {
        mean: count(mean, 'used meanwhile, on the average'),
        found: percent(100 * foundOnShelf(keep, mean), 'find theirs'),
        'one-less': count(keep - 1, 'one less'),
        'found-less': percent(100 * foundOnShelf(keep - 1, mean), 'find theirs with one less'),
        keep: count(keep, 'to keep for nine in ten', {
          average: by('keep what is used on the average', mean),
          'one-spare': by('add a single spare', mean + 1),
          'four-times': by('keep four times the average', 4 * mean),
        }),
      },
    };
  }),
  'cheap-check-first': family(
    { cheap: steps(5, 20, 5), dear: steps(30, 80, 10), names: [3, 4, 5, 6] },
    ({ cheap, dear, names }) => ({
      numbers: {
        cheap: minutes(cheap, 'cheap check'),
        dear: minutes(dear, 'dear check'),
        names: count(names, 'names on the list'),
        others: count(names - 1, 'names that the cheap check leaves'),
        mean: minutes(cheap + ((names - 1) * dear) / names, 'to one name, on the average', {
          'always-both': by('take both checks on every car', cheap + dear),
          'mean-of-two': by('halve the two checks together', (cheap + dear) / 2),
        }),
      },
    }),
  ),
  'halvings-to-one': family({ boxes: [8, 16, 32, 64, 128, 256] }, ({ boxes }) => ({
    numbers: {
      boxes: count(boxes, 'places'),
      half: count(boxes / 2, 'places that the first question leaves'),
      quarter: count(boxes / 4, 'places that the second leaves'),
      questions: count(Math.log2(boxes), 'questions', {
        'one-by-one': by('open one after the other', boxes - 1),
        'half-of-them': by('take half of them', boxes / 2),
      }),
    },
  })),
  'halvings-in-ten': family(
    { taken: [1, 2, 3], all: [6, 8, 10, 12], takes: [4, 5, 8, 15, 20] },
    ({ taken, all, takes }) => {
      const worth = halvings(taken / all);
      const inTen = (value: number): number => (10 * value) / takes;
      return {
        numbers: {
          taken: count(taken, 'names it takes'),
          all: count(all, 'names on the list'),
          rest: count(all - taken, 'names it leaves'),
          takes: minutes(takes, 'what the test takes'),
          worth: times(worth, 'halvings'),
          rate: times(inTen(worth), 'halvings in ten minutes', {
            'names-taken': by('count the share of names that it may leave', inTen(taken / all)),
            'whole-halving': by('take it for a full halving', inTen(1)),
          }),
        },
      };
    },
  ),
  'half-in-ten': family({ takes: [4, 5, 8, 16, 20, 25, 40, 50] }, ({ takes }) => ({
    numbers: {
      takes: minutes(takes, 'what the test takes'),
      rate: times(10 / takes, 'halvings in ten minutes', {
        upside: by('divide the other way', takes / 10),
        'in-one-minute': by('stop at one minute', 1 / takes),
      }),
    },
  })),
  'best-for-its-minutes': family(
    {
      best: ['look', 'gauge', 'bench'],
      taken: [1, 2, 3, 4],
      first: [3, 5, 10, 15],
      second: [10, 15, 20, 25, 40],
      third: [12, 15, 30, 45],
    },
    ({ best, taken, first, second, third }) => {
      const rates = {
        look: (10 * halvings(taken / 16)) / first,
        gauge: (10 * halvings(8 / 16)) / second,
        bench: (10 * halvings(6 / 16)) / third,
      };
      // A hair between two tests is no lesson.
      const others = Object.entries(rates).filter(([name]) => name !== best);
      if (others.some(([, rate]) => rates[best] < 1.3 * rate)) return undefined;
      return {
        numbers: {
          taken: count(taken, 'names the look takes'),
          first: minutes(first, 'the look'),
          second: minutes(second, 'the gauge'),
          third: minutes(third, 'the bench'),
          ...Object.fromEntries(
            Object.entries(rates).map(([name, rate]) => [name, times(rate, 'in ten minutes')]),
          ),
        },
        truth: Object.fromEntries(Object.keys(rates).map((name) => [name, name === best])),
      };
    },
  ),
  'what-pays': family(
    {
      pays: ['seal', 'filter', 'both', 'neither'],
      access: steps(3, 14, 1),
      seal: [0.3, 0.4, 0.5, 0.6, 0.8, 1],
      filter: [0.2, 0.3, 0.4, 0.5],
      sealSpares: steps(2, 12, 1),
      filterSpares: steps(1, 8, 1),
    },
    ({ pays, access, seal, filter, sealSpares, filterSpares }) => {
      const worth = { seal: (sealSpares * access) / 100, filter: (filterSpares * access) / 100 };
      const [sealPays, filterPays] = [worth.seal > seal, worth.filter > filter];
      const near = (a: number, b: number): boolean => Math.max(a, b) < 1.25 * Math.min(a, b);
      if (near(worth.seal, seal) || near(worth.filter, filter)) return undefined;
      const found = sealPays ? (filterPays ? 'both' : 'seal') : filterPays ? 'filter' : 'neither';
      if (found !== pays) return undefined;
      return {
        numbers: {
          access: hours(access, 'access'),
          seal: hours(seal, 'seal with its labor'),
          filter: hours(filter, 'filter with its labor'),
          'seal-spares': count(sealSpares, 'of 100, no longer come back for the seal'),
          'filter-spares': count(filterSpares, 'of 100, no longer come back for the filter'),
          'seal-worth': hours(worth.seal, 'what the seal is worth on a car'),
          'filter-worth': hours(worth.filter, 'what the filter is worth on a car'),
        },
        cases: {
          sealed: sealPays ? 'pays' : 'costs',
          filtered: filterPays ? 'pays' : 'costs',
        },
        truth: {
          seal: found === 'seal',
          filter: found === 'filter',
          both: found === 'both',
          neither: found === 'neither',
        },
      };
    },
  ),
};
