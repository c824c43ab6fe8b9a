import type { Kind } from './pairs.ts';
import type { Place } from './places.ts';

interface Shares {
  first: string;
  second: string;
}
/** What a pair says: the first is lower, the second is lower, both have their command, both are low alike. */
type PairWords = Record<'first' | 'second' | 'right' | 'low', (p: Shares) => string>;

export const words = {
  title: 'The gauge bench',
  places: {
    linePark: 'Line, Park',
    lineReverse: 'Line, Reverse',
    lineDrive: 'Line, Drive',
    lineThird: 'Line, third',
    forward: 'Forward tap, Drive',
    reverse: 'Reverse tap, Reverse',
    high: 'High tap, third',
  } satisfies Record<Place, string>,
  row: (p: { place: string; unit: string }) => `${p.place} (${p.unit})`,
  cold: (p: { rpm: string }) => `Cold ${p.rpm}`,
  hot: (p: { rpm: string }) => `Hot ${p.rpm}`,
  rpm: 'rpm',
  read: 'read',
  partner: 'partner of the reading on the gauge',
  of: (p: { command: string }) => `of ${p.command}`,
  controls: {
    car: 'The car on the lift',
    named: 'What you say it has',
    number: (p: { number: string }) => `Car ${p.number}`,
    none: 'I have not said yet',
  },
  gauge: {
    nothing: 'Nothing is on the gauge yet.',
    set: (p: { place: string; when: string }) => `${p.place}. ${p.when} rpm.`,
    reads: (p: { read: string; command: string }) => `${p.read}, commanded ${p.command}`,
    cold: 'cold',
    hot: 'hot',
    none: 'no reading',
  },
  predict: {
    question:
      'Car 1 slips hot in Drive. Fluid hot, idle, gauge on the forward tap: that is all you have read. How many of the fifteen faults can give this number?',
    options: {
      pump: {
        words: 'One. It is low hot, so it is the pump',
        why: (p: Names) =>
          `A worn pump can give this number, and so can ${p.others} other faults. Here the line turned out to be right, and a pump cannot be worn and keep the line up.`,
      },
      few: {
        words: 'A few: the leaks in the forward clutch',
        why: (p: Names) =>
          `They can, and so can what feeds the clutch. Of the ${p.one} that give this number, some sit before the feed and some after it. One number does not say which side you are on.`,
      },
      half: {
        words: 'About half of them',
        why: (p: Names) =>
          `${p.one} of fifteen, each at some stage of wear. The number says that something is wrong in Drive, hot. What it is, the pairs say.`,
      },
    },
    runLabel: 'Read its partners',
  },
  outcome: (p: Names) =>
    `One number: ${p.one} faults fit. With the same tap cold beside it: ${p.cold}. With the line beside the tap: ${p.all}.`,
  says: {
    empty: 'The sheet is empty. Take a reading.',
    alone: (p: { share: string }) =>
      `${p.share} of its command. Nothing on the sheet makes a pair with it yet.`,
    pairs: {
      warmth: {
        first: ({ first, second }) =>
          `Cold ${first}, hot ${second} of the command: it is worse cold.`,
        second: ({ first, second }) =>
          `Cold ${first}, hot ${second} of the command: it goes with the heat.`,
        right: ({ first, second }) => `Cold ${first}, hot ${second} of the command: right in both.`,
        low: ({ first, second }) =>
          `Cold ${first}, hot ${second} of the command: low, and heat hardly matters.`,
      },
      speed: {
        first: ({ first, second }) =>
          `At 700 rpm ${first}, at 1500 rpm ${second} of the command: revs help.`,
        second: ({ first, second }) =>
          `At 700 rpm ${first}, at 1500 rpm ${second} of the command: it falls behind.`,
        right: ({ first, second }) =>
          `At 700 rpm ${first}, at 1500 rpm ${second} of the command: right at both.`,
        low: ({ first, second }) =>
          `At 700 rpm ${first}, at 1500 rpm ${second} of the command: low alike.`,
      },
      ranges: {
        first: ({ first, second }) =>
          `One range ${first}, the other ${second} of its command: they do not share it.`,
        second: ({ first, second }) =>
          `One range ${first}, the other ${second} of its command: they do not share it.`,
        right: ({ first, second }) =>
          `One range ${first}, the other ${second} of its command: right in both.`,
        low: ({ first, second }) =>
          `One range ${first}, the other ${second} of its command: low in both, so shared.`,
      },
      feed: {
        first: ({ first, second }) =>
          `Line ${first}, tap ${second} of its command: the line is the one that is short.`,
        second: ({ first, second }) =>
          `Line ${first}, tap ${second} of its command: it is lost behind the line.`,
        right: ({ first, second }) => `Line ${first}, tap ${second} of its command: right in both.`,
        low: ({ first, second }) =>
          `Line ${first}, tap ${second} of its command: short before the feed.`,
      },
    } satisfies Record<Kind, PairWords>,
    settled: (p: { name: string }) => `${p.name}: right, and nothing else gives these numbers.`,
    unproved: (p: { name: string; others: string }) =>
      `${p.name}: right, but not proved. These fit as well: ${p.others}.`,
    unprovedMany: (p: { name: string; others: string }) =>
      `${p.name}: right, but not proved. ${p.others} other faults give these numbers.`,
    sameNumbers: (p: { name: string }) =>
      `Not that. ${p.name} gives these numbers too, so take another pair.`,
    cannot: (p: { name: string }) => `Not that. ${p.name} cannot give these numbers.`,
    sound: 'A good car gives them too.',
  },
};
interface Names {
  one: string;
  others: string;
  cold: string;
  all: string;
}
