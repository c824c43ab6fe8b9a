/** The posterior as a shop reads it: names, circuits, severities, and whether any single fault fits. */
import { hasSeverity, inOneCircuit, NAMES, type Name } from './hypotheses.ts';
import { CIRCUITS, type Circuit } from '../engine/index.ts';
import { normalBelow } from './normal.ts';
import type { Posterior } from './posterior.ts';
import { spreadOf } from './spread.ts';
import type { TwoFaults } from './two-faults.ts';

/** From this share of the top name on, the planner stops asking. */
export const SURE = 0.9;

/** One name, best first. */
export interface Finding {
  readonly fault: Name;
  readonly probability: number;
  readonly circuits?: Readonly<Record<Circuit, number>>;
  /** 5, 50 and 95 % points, where the name has a severity and counts at all. */
  readonly severity?: readonly [number, number, number];
}
/** How well the readings fit the hypotheses as they stand. */
export interface Fit {
  readonly d2: number;
  readonly readings: number;
  readonly p: number | null;
  readonly singleFaultFits?: boolean;
}

const COUNTS = 0.01;

/** All seventeen names, likeliest first; they sum to 1. */
export function findingsOf({ cells, shares }: Posterior): readonly Finding[] {
  const found = NAMES.map((fault): Finding => {
    const mine = cells.flatMap((cell, n) =>
      cell.hypothesis.of.name === fault ? [{ cell, share: shares[n] ?? 0 }] : [],
    );
    const probability = mine.reduce((sum, { share }) => sum + share, 0);
    const inCircuit = (circuit: Circuit): number =>
      mine
        .filter(({ cell }) => cell.hypothesis.of.circuit === circuit)
        .reduce((sum, { share }) => sum + share, 0);
    const circuits = Object.fromEntries(
      CIRCUITS.map((circuit) => [circuit, inCircuit(circuit)]),
    ) as Record<Circuit, number>;
    return {
      fault,
      probability,
      ...(inOneCircuit(fault) && { circuits }),
      ...(hasSeverity(fault) &&
        probability > COUNTS && {
          severity: spreadOf(mine.map(({ cell, share }) => [cell.hypothesis.severity, share])),
        }),
    };
  });
  return [...found].sort((a, b) => b.probability - a.probability);
}

/**
 * Upper tail of the chi-square law.
 *
 * Equation: P(X > x) for n degrees of freedom: the finite sums for even and odd n (M. Abramowitz and I. Stegun, 26.4.4 and
 * 26.4.5).
 *
 * @param x [-]
 * @param n degrees of freedom [-]
 * @returns 0 to 1 [-]
 * Range: x 0 or more, n a whole number from 1.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.4.4, 26.4.5 (from memory).
 * @example
 * chiSquareTail(0, 4) // 1
 */
export function chiSquareTail(x: number, n: number): number {
  const half = x / 2;
  let sum = 0;
  if (n % 2 === 0) {
    let term = 1;
    for (let k = 0; k < n / 2; k += 1) {
      if (k > 0) term *= half / k;
      sum += term;
    }
    return Math.exp(-half) * sum;
  }
  const root = Math.sqrt(x);
  let term = root;
  for (let k = 1; k <= (n - 1) / 2; k += 1) {
    if (k > 1) term *= x / (2 * k - 1);
    sum += term;
  }
  return erfc(root / Math.SQRT2) + Math.sqrt(2 / Math.PI) * Math.exp(-half) * sum;
}

const erfc = (x: number): number => 2 * normalUpper(x * Math.SQRT2);
const normalUpper = (x: number): number => 1 - normalBelow(x);

/** From this many numeric readings on, fit is told at all, and by which rule. */
export const FEW = 4;
const SOME = 10;
export const MANY = 20;
/**
 * D2 over the number of readings from which no single fault fits, by how many there are, and how many times likelier two faults
 * have to be than one. With every reading taken, those odds or a distance of 1.6 for many said so of 4 in 1,000 cars with one
 * fault and of 85 in 100 with two, those odds or 2 of 3 and 84 (3,000 cars and 600, of seeds 101 to 106, which npm run accuracy
 * does not use); without the odds 2 finds 70 in 100.
 */
const MOST_OFF = { some: 1.4, many: 2 };
export const TWO_ODDS = 8;

/** Whether two faults explain the readings so much better than one that they are named. */
export const areTwo = ({ odds }: Pick<TwoFaults, 'odds'>): boolean => odds > TWO_ODDS;

/**
 * Distance of the readings from what the listed hypotheses expect, averaged over them. `two`: what pairs come to, without which
 * nothing is said of many readings.
 */
export function fitOf({ cells, shares, numbers }: Posterior, two?: TwoFaults): Fit {
  let sum = 0;
  let weight = 0;
  cells.forEach((cell, n) => {
    if (cell.broken) return;
    const share = shares[n] ?? 0;
    sum += share * cell.off;
    weight += share;
  });
  const d2 = weight > 0 ? sum / weight : 0;
  if (numbers === 0) return { d2: 0, readings: 0, p: null };
  const p = chiSquareTail(d2, numbers);
  if (numbers < FEW || (numbers >= MANY && two === undefined)) return { d2, readings: numbers, p };
  const misfits =
    numbers >= MANY
      ? d2 / numbers > MOST_OFF.many || (two !== undefined && areTwo(two))
      : numbers >= SOME
        ? d2 / numbers > MOST_OFF.some
        : p < 0.02;
  return { d2, readings: numbers, p, singleFaultFits: !misfits };
}
