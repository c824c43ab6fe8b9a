import type { Kind } from './pairs.ts';

export const words = {
  table: {
    head: 'Your pairs.',
    caption:
      'Each by itself, and how many of the fifteen faults it leaves. Those that leave fewest stand first.',
    none: 'No two readings on the sheet make a pair yet.',
    pair: 'Pair',
    read: 'Of the command',
    leaves: 'Leaves',
    kinds: {
      warmth: 'cold / hot',
      speed: '700 / 1500',
      ranges: 'range / range',
      feed: 'line / tap',
    } satisfies Record<Kind, string>,
    name: (p: { kind: string; first: string; second: string }) =>
      `${p.kind}: ${p.first}, and ${p.second}`,
    reading: (p: { place: string; when: string }) => `${p.place}, ${p.when}`,
    shares: (p: { first: string; second: string }) => `${p.first}, ${p.second}`,
  },
  fits: {
    head: 'What still gives all of your numbers.',
    later: 'Say what the car has, and this list opens.',
    sound: 'Nothing wrong',
    single: 'One pair settled it by itself: it leaves a single name.',
    together: 'No pair settled it alone. It took them together.',
  },
  taken: {
    head: 'What is taken for granted.',
    same: (p: { percent: string; pressure: string }) =>
      `A fault fits if at some stage of wear it gives every number on the sheet within ${p.percent} or ${p.pressure}, whichever is more (our assumption). It is tried in steps of a twentieth, from where a customer would notice, in each clutch it can sit in.`,
    car: 'Each car has one fault. The commands are fixed here, where a controller would ramp them. The gauges have no error of their own here, and a pressure is read once it has settled. In Park the command of idle stands at any engine speed. Third is solved with the high clutch alone.',
    rev: 'Both commands in Reverse are raised alike. On your car the maker’s table says what is commanded when.',
  },
};
