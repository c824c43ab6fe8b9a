export type { Asked, AskedChoice, AskedNumber, AskedOption, TwoUnits, Words } from './asked.ts';
export { plain } from './asked.ts';
export { certainties, marks, type Certainty } from './certainty.ts';
export { grade, type Explained, type Given, type Graded, type Outcome } from './grade.ts';
export {
  inSystem,
  infoOf,
  quantityNames,
  withUnit,
  type Quantity,
  type System,
} from './quantities.ts';
export { readAmount, type Reading } from './read-amount.ts';
export { pickRound, ROUND_SIZE } from './pick-round.ts';
export { asChoices, resolveQuestion, type KeyLookup, type KeyNumber } from './resolve.ts';
export {
  answer,
  current,
  next,
  startSession,
  summarise,
  type Session,
  type Summary,
} from './session.ts';
