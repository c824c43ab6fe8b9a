/**
 * What can be asked of a customer and answered by the model, and every answer there is. Two thirds of a good intake: when it
 * began and what was done last no model can say.
 */
export const ANSWERS = {
  ranges: ['drive', 'reverse', 'both', 'all', 'upper', 'none'],
  warm: ['cold', 'hot', 'same', 'neither'],
  minutes: ['first', 'ten', 'half', 'longer', 'not'],
  road: ['overnight-flat', 'overnight-hills', 'stop-flat', 'stop-hills'],
  weather: ['worse', 'no'],
  load: ['revs', 'no'],
  lights: ['yes', 'no'],
  stood: ['hours', 'no'],
  restart: ['cures', 'no'],
} as const;
/** A question, by id. */
export type Asked = keyof typeof ANSWERS;
export const ASKED = Object.keys(ANSWERS) as readonly Asked[];

/** A day of the customer's: what the car had done before, and the road. */
export type Day = (typeof ANSWERS.road)[number];
export const DAYS: readonly Day[] = ANSWERS.road;

/** Place of an answer among those to its question. */
export const placeOf = (question: Asked, answer: string): number =>
  (ANSWERS[question] as readonly string[]).indexOf(answer);
