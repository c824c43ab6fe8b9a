import { expect, test } from 'vitest';
import {
  aloneOn,
  decodeTable,
  hypothesesOf,
  isNumeric,
  nominalWarmth,
  readSubject,
  testOf,
  type Hypothesis,
} from '../../src/diagnosis/index.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';
import { applyFaults, training } from '../../src/engine/index.ts';

const hypotheses = hypothesesOf(decodeTable(keptTable));
const tap = testOf('clutch.forward.700.hot');
if (!isNumeric(tap)) throw new Error('A tap is a number.');
const rings = hypotheses.find(
  ({ of, severity }) =>
    of.name === 'sealingRings' && of.circuit === 'forward' && severity > 0.45 && severity < 0.55,
) as Hypothesis;

// The engine, solved at both ends of the band; the table knows the middle and a slope there, so a fifth of the difference.
test('a tap is expected at the temperature at which it was read', () => {
  const plant = applyFaults(training, {
    sealingRings: { severity: rings.severity, circuit: 'forward' },
  });
  const solved = (hot: number): number =>
    readSubject({ plant, fluid: plant.fluid, warmth: { ...nominalWarmth, hot } }, tap);
  const cooler = aloneOn(rings, tap, 85).mean;
  const hotter = aloneOn(rings, tap, 105).mean;
  const fall = solved(85) - solved(105);
  expect(fall).toBeGreaterThan(5);
  expect(Math.abs(cooler - hotter - fall)).toBeLessThan(0.2 * fall);
  expect(aloneOn(rings, tap).mean).toBe(aloneOn(rings, tap, 95).mean);
});
