import { degC, type Entries } from './entry.ts';

const chosen = (tempC: number) => degC(tempC, `a chosen temperature, nobody's result: ${tempC} °C`);

/** Temperatures that the prose chooses; they still have to read in both unit systems. */
export const temperatures: readonly Entries[] = [
  {
    'offered-temperature-low': chosen(-30),
    'offered-temperature-high': chosen(140),
    // 150 °F, as the source has it.
    'burns-in-two-seconds': chosen((150 - 32) / 1.8),
  },
  Object.fromEntries(
    [-20, -10, 0, 15, 20, 40, 60, 80, 100, 110, 120].map((tempC) => [
      `at-${tempC < 0 ? `minus-${-tempC}` : tempC}`,
      chosen(tempC),
    ]),
  ),
];
