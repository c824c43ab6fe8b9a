import { describe, expect, it } from 'vitest';
import { EngineError, viscosityIndex } from '../../src/engine/index.ts';
import { referenceViscosities } from '../../src/engine/fluid/viscosity-index-table.ts';
import { columns, published } from './check.ts';

const D2270 = 'ASTM D2270-10, ';
const TRIPLET = 'fluid triplet KV40/KV100/VI in a published open-source data set, VI by ASTM D2270';
const rounding = 'the index is printed as a whole number, so half a unit';
const interpolation = 'same table and arithmetic; only the last printed digit is open';

published('viscosity index', [
  {
    what: 'KV 73.30 / 8.86 cSt, procedure A',
    source: `${D2270}example 5.1.4`,
    status: 'printed',
    got: () => viscosityIndex(73.3, 8.86),
    expected: 92.43,
    within: { absolute: 0.005 },
    because: 'printed to two decimals',
  },
  {
    what: 'KV 22.83 / 5.05 cSt, procedure B',
    source: `${D2270}example 6.1.4 (1)`,
    status: 'printed',
    got: () => viscosityIndex(22.83, 5.05),
    expected: 156.37,
    within: { absolute: 0.06 },
    because:
      'the standard rounds H = 28.975 down to 28.97 before it goes on, which moves the index by 0.05',
  },
  {
    what: 'the same with H not rounded',
    source: `${D2270}equations 4 and 5`,
    status: 'computed',
    got: () => viscosityIndex(22.83, 5.05),
    expected: 156.4234829326,
    within: { absolute: 1e-8 },
    because: interpolation,
  },
  {
    what: 'KV 53.47 / 7.80 cSt, procedure B',
    source: `${D2270}example 6.1.4 (2)`,
    status: 'printed',
    got: () => viscosityIndex(53.47, 7.8),
    expected: 111,
    within: { absolute: 0.5 },
    because: rounding,
  },
  {
    what: 'the same, not rounded',
    source: `${D2270}equations 4 and 5`,
    status: 'computed',
    got: () => viscosityIndex(53.47, 7.8),
    expected: 111.3070170138,
    within: { absolute: 1e-8 },
    because: interpolation,
  },
  {
    what: 'KV 73.5 / 8.86 cSt, not rounded',
    source: `${D2270}equation 3, value of an open-source property library`,
    status: 'printed',
    got: () => viscosityIndex(73.5, 8.86),
    expected: 92.0332936979,
    within: { absolute: 1e-8 },
    because: interpolation,
  },
  {
    what: 'KV 1000 / 100 cSt, above the table: the quadratics for L and H',
    source: `${D2270}equations 1 and 2, value of an open-source property library; a made-up oil`,
    status: 'printed',
    got: () => viscosityIndex(1000, 100),
    expected: 192.9975428058,
    within: { absolute: 1e-8 },
    because: 'closed form, only the last printed digit is open',
  },
  ...(
    [
      [34.5, 7.4, 189, 0.5, rounding],
      [29, 6.5, 188, 0.5, rounding],
      [29.6, 6, 154, 0.5, rounding],
      [29, 6.3, 179, 3, 'the viscosities are rounded to 0.1 cSt, worth about 3 at 6.3 cSt'],
    ] as const
  ).map(([kv40, kv100, expected, absolute, because]) => ({
    what: `KV ${kv40} / ${kv100} cSt`,
    source: TRIPLET,
    status: 'printed' as const,
    got: () => viscosityIndex(kv40, kv100),
    expected,
    within: { absolute },
    because,
  })),
]);

describe('viscosity index, where it is not defined', () => {
  it('refuses KV100 under 2 cSt and says from where it is defined (ASTM D2270-10, scope 1.1; printed)', () => {
    expect(() => viscosityIndex(3, 1.5)).toThrow(EngineError);
    expect(() => viscosityIndex(3, 1.5)).toThrow(/1\.5 cSt.*from 2 cSt/);
  });
});

// Printed rows of table 1. Every row the training fluids fall in, then every tenth row of each zone.
// prettier-ignore
const FOUR_TO_NINE = Array.from({ length: 51 }, (_, row) => 4 + row / 10);
// prettier-ignore
const L = [25.32, 26.50, 27.75, 29.07, 30.48, 31.96, 33.52, 35.13, 36.79, 38.50, 40.23, 41.99, 43.76, 45.53, 47.31,
  49.09, 50.87, 52.64, 54.42, 56.20, 57.97, 59.74, 61.52, 63.32, 65.18, 67.12, 69.16, 71.29, 73.48, 75.72, 78.00, 80.25,
  82.39, 84.53, 86.66, 88.85, 91.04, 93.20, 95.43, 97.72, 100.0, 102.3, 104.6, 106.9, 109.2, 111.5, 113.9, 116.2, 118.5,
  120.9, 123.3];
// prettier-ignore
const H = [19.56, 20.37, 21.21, 22.05, 22.92, 23.81, 24.71, 25.63, 26.57, 27.53, 28.49, 29.46, 30.43, 31.40, 32.37,
  33.34, 34.32, 35.29, 36.26, 37.23, 38.19, 39.17, 40.15, 41.13, 42.14, 43.18, 44.24, 45.33, 46.44, 47.51, 48.57, 49.61,
  50.69, 51.78, 52.88, 53.98, 55.09, 56.20, 57.31, 58.45, 59.60, 60.74, 61.89, 63.05, 64.18, 65.32, 66.48, 67.64, 68.79,
  69.94, 71.10];
// prettier-ignore
const TENTHS: readonly (readonly [number, number, number])[] = [
  [2, 7.994, 6.394], [3, 15.49, 12.15], [10, 147.7, 82.87], [11, 173.9, 95.19], [12, 201.9, 108],
  [13, 231.9, 121.5], [14, 263.3, 135.4], [15, 296.5, 149.7], [16, 331.9, 164.6], [17, 369.4, 180.2],
  [18, 408.6, 196.2], [19, 449.9, 212.7], [20, 493.2, 229.5], [22, 585.2, 264.9], [24, 683.9, 301.8],
  [26, 790.4, 340.5], [28, 904.1, 380.6], [30, 1023, 421.7], [35, 1356, 532.5], [40, 1730, 651.8],
  [45, 2152, 780.9], [50, 2618, 919.6], [55, 3126, 1066], [60, 3676, 1222], [65, 4268, 1386], [70, 4905, 1558],
];

describe('reference oils of the viscosity index', () => {
  const rows = [
    ...columns(FOUR_TO_NINE, L).map(([y, l], row) => [y, l, H[row] as number] as const),
    ...TENTHS,
  ];
  it.each(rows)(
    'row %d cSt: L %d, H %d (ASTM D2270-10, table 1; printed, to the last digit)',
    (y, l, h) => {
      const row = referenceViscosities(y);
      // Reading a row is not arithmetic; only the rounding of 4 + row/10 is allowed for.
      expect(row.l).toBeCloseTo(l, 6);
      expect(row.h).toBeCloseTo(h, 6);
    },
  );

  it('gives exactly 0 for the poor and 100 for the good reference oil (ASTM D2270-10, definition; printed)', () => {
    // The engine takes oils up to 2000 cSt at 40 C; thicker rows are read above but cannot be asked for.
    const asked = rows.filter(([, l]) => l <= 2000);
    expect(asked.length).toBeGreaterThan(60);
    for (const [y, l, h] of asked) {
      expect(viscosityIndex(l, y)).toBeCloseTo(0, 4);
      expect(viscosityIndex(h, y)).toBeCloseTo(100, 4);
    }
  });
});

describe('above the table', () => {
  // ASTM D2270-10, equations 1 and 2: the squares are those printed; the arithmetic is by hand.
  it.each([
    [100, 9604, 2772],
    [80, 6303.52, 1928.76],
  ])('at %d cSt L is %d and H is %d', (y, l, h) => {
    const row = referenceViscosities(y);
    expect(row.l).toBeCloseTo(l, 6);
    expect(row.h).toBeCloseTo(h, 6);
  });
  it('goes on where the table ends, within the rounding of its last row', () => {
    const [row, law] = [referenceViscosities(70), referenceViscosities(70.0001)];
    expect(Math.abs(law.l / row.l - 1)).toBeLessThan(1e-3);
    expect(Math.abs(law.h / row.h - 1)).toBeLessThan(1e-3);
  });
});
