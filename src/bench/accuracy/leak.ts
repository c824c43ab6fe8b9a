/** How often the 90 % region of the crack's size holds the true size, by the pressures that were taken. */
import {
  crack,
  crackLaws,
  crackShares,
  isNumeric,
  likeliest,
  makeGenerated,
  REGION,
  testOf,
  type Chance,
  type CrackLaw,
} from '../../diagnosis/index.ts';
import { training } from '../../engine/index.ts';

/** Two pressures hot, the same with the cold one that helps, and four. */
const SETS: readonly (readonly string[])[] = [
  ['clutch.forward.700.hot', 'clutch.reverse.700.hot'],
  ['clutch.forward.700.hot', 'clutch.forward.1500.cold'],
  ['clutch.forward.700.hot', 'clutch.reverse.700.hot', 'clutch.forward.1500.cold'],
  [
    'clutch.forward.700.hot',
    'clutch.reverse.1500.hot',
    'clutch.forward.1500.cold',
    'clutch.forward.700.cold',
  ],
];

export interface Coverage {
  readonly taps: readonly string[];
  readonly cars: number;
  readonly held: number;
}

/** The size on the grid next to a true one: widths go by their logarithm. */
function nearest(laws: readonly CrackLaw[], heightMm: number, widthMm: number): number {
  const steps = (law: CrackLaw): number =>
    Math.max(
      Math.abs(law.heightMm - heightMm) / 0.01,
      (23 * Math.abs(Math.log(law.widthMm / widthMm))) / Math.log(10),
    );
  return laws.reduce((best, law, i) => (steps(law) < steps(laws[best] ?? law) ? i : best), 0);
}

/** Heights evenly, widths evenly in their logarithm, as the estimate believes before anything is read. */
export function leakCoverage(cars: number, chance: Chance): readonly Coverage[] {
  return SETS.map((taps) => {
    const tests = taps.map(testOf).filter(isNumeric);
    const laws = crackLaws(
      training,
      tests.map((test) => ({ test })),
    );
    let held = 0;
    for (let n = 0; n < cars; n += 1) {
      const heightMm = 0.04 + 0.4 * chance();
      const widthMm = 4 * 10 ** chance();
      const read = makeGenerated(
        training,
        { spoil: (sound) => crack(sound, heightMm, widthMm), chances: () => [] },
        chance,
      );
      const shares = crackShares(
        laws,
        tests.map((test) => read(test).value as number),
      );
      if (likeliest(shares, REGION).includes(nearest(laws, heightMm, widthMm))) held += 1;
    }
    return { taps, cars, held: held / cars };
  });
}
