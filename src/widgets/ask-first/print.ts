/** This simulation's own words for its numbers. */
import { ANSWERS, type Asked } from '../../cases/answers.ts';
import { words as names } from '../../car/words.en.ts';
import { isFault, type Name } from '../../diagnosis/hypotheses.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import { count, percent, times } from '../../quantity/quantities.ts';
import { words } from './words.en.ts';

export const nameOf = (name: Name): string =>
  isFault(name) ? names.faults[name] : words.names[name];

export const printCount = (value: number): string => formatNumber(value, count, 'si');
export const printShare = (share: number): string => format(100 * share, percent, 'si');
export const printBits = (bits: number): string => formatNumber(bits, times, 'si');

/** How much of a list is left by so many bits: a third is 1.58, half is 1, two thirds are 0.58, three quarters 0.42. */
const STEPS = [
  [1.35, 'third'],
  [0.85, 'half'],
  [0.5, 'much'],
  [0.3, 'quarter'],
  [0.1, 'some'],
  [0.02, 'little'],
] as const;
export function worthWords(bits: number): string {
  const step = STEPS.find(([least]) => bits >= least)?.[1] ?? 'nothing';
  return words.worth[step]({ bits: printBits(bits) });
}

/** What a customer says, by the place of the answer. */
export function answerWords(question: Asked, place: number): string {
  const id = ANSWERS[question][place];
  const told = words.answers[question] as Readonly<Record<string, string>>;
  return words.said({ answer: told[id ?? ''] ?? '' });
}
