export type { Asked, AskedChoice, AskedNumber, AskedOption, Passage, TwoUnits } from './asked.ts';
export { passageText } from './asked.ts';
export { certainties, marks, type Certainty } from './certainty.ts';
export { grade, type Explained, type Given, type Graded, type Outcome } from './grade.ts';
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
