import type { Level, On } from '../cases/made-key.ts';

const levels: Record<Level, { readonly title: string; readonly about: string }> = {
  1: {
    title: 'Plain',
    about: 'One cause that shows. The right readings, taken in a good order, leave little doubt.',
  },
  2: {
    title: 'With a look-alike',
    about:
      'Something else gives the same complaint. One or two readings tell them apart. Some of these cars have nothing wrong.',
  },
  3: {
    title: 'With more than one trap',
    about: 'Two faults at once, causes that no gauge shows, or a story that points the wrong way.',
  },
};

const transmissions: Record<On, string> = {
  training: 'The training transmission',
  second: 'The second training transmission',
};

export const words = {
  title: 'Practice cases',
  description:
    'Cars of our invented shop with what their customers say. Ask, look, measure, pay the minutes, and say what is wrong; then compare your way with the planner’s.',
  lead: (p: { number: string }) =>
    `${p.number} cars stand outside, each with what its customer says. Bring one in.`,
  how: 'You ask the customer, look, and take readings. Everything takes its minutes, as in the shop. Then you say what is wrong and what you would do. In many of these cars the answer that everybody gives first is not the right one.',
  levels,
  made: {
    title: 'Cars without end',
    about:
      'A number names a car. The same number, difficulty and transmission give the same car to everybody, so you can send it to a colleague. These cars differ from each other as real ones do: pumps, bores, friction and gauges are not all alike. Their faults are those that the model has, sometimes two, sometimes none.',
    number: (p: { most: string }) => `Number, 1 to ${p.most}`,
    level: 'Difficulty',
    levels: { 1: 'Plain', 2: 'Any fault, or none', 3: 'Perhaps two faults' } satisfies Record<
      Level,
      string
    >,
    on: 'On which transmission',
    transmissions,
    go: 'Bring it in',
  },
  honest: {
    title: 'What these cars are',
    text: 'All of them are invented: the shop, the customers, the cars and both transmissions. Readings are worked out by the model of this site. Where the model has no such fault, they were written by hand after common practice. Minutes are assumptions. Solving these shows that you can reason from readings; it is no proof that you can find a fault on a lift.',
  },
  standing: {
    begun: 'begun',
    solved: (p: { minutes: string }) => `solved in ${p.minutes} min`,
    part: 'part of it found',
    wrong: 'not found yet',
  },
};
