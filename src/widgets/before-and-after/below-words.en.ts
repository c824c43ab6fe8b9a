import type { Repair } from '../../car/repair-names.ts';

export const words = {
  cars: {
    head: 'What each car would read.',
    caption: (p: { test: string }) =>
      `${p.test}, at your two temperatures, at the engine speed of the second reading. What differs between the two columns is the temperature alone.`,
    car: 'Car',
    first: (p: { temp: string }) => `At ${p.temp}`,
    second: (p: { temp: string }) => `At ${p.temp}`,
    has: {
      sound: 'A, healthy',
      half: 'B, new seal cut going in: half of the gap',
      rings: 'C, seal right, new rings damaged going in',
      untouched: 'D, nobody opened it',
    } satisfies Record<Repair, string>,
  },
  doubt: {
    head: 'Where the doubt comes from.',
    sum: (p: { before: string; after: string; doubt: string }) =>
      `The first reading may be off by ${p.before}, the second by ${p.after}. Squared, added, and the root of that: ${p.doubt} on their difference. It is less than the two together, since both seldom err the whole way in opposite directions.`,
  },
  taken: {
    head: 'What is taken for granted.',
    errors: (p: { share: string; kPa: string; rows: string }) =>
      `A gauge is taken to err by ${p.share} of what it reads, or by ${p.kPa}, whichever is more, and twice that is drawn. A stop time errs by its log, and by the rows: each end lies anywhere between two of them, here ${p.rows} apart. These are our assumptions. Your gauge has its own figures.`,
    car: 'The readings stand where the model has them; a real one lies somewhere in its bar. All four cars came in with the crack of the course. What a healthy car reads is known here. In your shop it is the command, or the maker’s figure. On this bench nothing burns at 1500 rpm in gear.',
  },
};
