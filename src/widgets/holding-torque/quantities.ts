import { plain, type Quantity } from '../../ui/quantity.ts';

/** NIST SP 811 (2008), appendix B: 1 lbf = 4.448 221 615 260 5 N; 1 in = 25.4 mm. */
const NEWTONS_PER_POUND = 4.4482216152605;
const CM2_PER_SQUARE_INCH = 6.4516;
const MM_PER_INCH = 25.4;

const twoSided = (
  name: string,
  si: Quantity['si'],
  us: Quantity['us'],
  perUs: number,
  typed: Readonly<Record<string, number>>,
): Quantity => ({
  name,
  si,
  us,
  toUs: (metric) => metric / perUs,
  fromUs: (shown) => shown * perUs,
  typed: Object.fromEntries(
    Object.entries(typed).map(([unit, factor]) => [unit, (value: number) => value * factor]),
  ),
});

export const force = twoSided(
  'force',
  { unit: 'N', digits: 0 },
  { unit: 'lbf', digits: 0 },
  NEWTONS_PER_POUND,
  { n: 1, kn: 1000, lbf: NEWTONS_PER_POUND, lb: NEWTONS_PER_POUND },
);
export const area = twoSided(
  'area',
  { unit: 'cm²', digits: 0 },
  { unit: 'in²', digits: 1 },
  CM2_PER_SQUARE_INCH,
  { 'cm²': 1, cm2: 1, 'in²': CM2_PER_SQUARE_INCH, in2: CM2_PER_SQUARE_INCH, 'mm²': 0.01 },
);
export const radius = twoSided(
  'radius',
  { unit: 'mm', digits: 0 },
  { unit: 'in', digits: 2 },
  MM_PER_INCH,
  { mm: 1, cm: 10, in: MM_PER_INCH, inch: MM_PER_INCH, '"': MM_PER_INCH },
);
export const friction = plain('friction', '', 2);
export const faces = plain('number of faces', '', 0, { alsoTyped: ['faces'] });
/** A book's numbers, with as many digits as the book prints. */
export const kilowatts = plain('power', 'kW', 1);
