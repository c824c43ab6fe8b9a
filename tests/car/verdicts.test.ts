import { describe, expect, it, test } from 'vitest';
import {
  AIR_TARGETS,
  lacksFriction,
  SHOP_TESTS,
  TAPS,
  type Pattern,
  type ShopTest,
  type Verdict,
} from '../../src/car/shop-tests.ts';
import { CIRCUITS, type Circuit } from '../../src/engine/index.ts';

const all = <K extends string, V>(keys: readonly K[], value: V): Record<K, V> =>
  Object.fromEntries(keys.map((key) => [key, value])) as Record<K, V>;
/** One verdict for every tap and one for every torque. */
const pattern = (tap: Verdict, torque: Verdict): Pattern => ({
  taps: all(TAPS, all(SHOP_TESTS, tap)),
  torque: all(CIRCUITS, all(SHOP_TESTS, torque)),
  leftOver: all(SHOP_TESTS, 'ok'),
  air: all(AIR_TARGETS, 'ok'),
});
const but = (
  part: 'taps' | 'torque',
  base: Pattern,
  circuit: Circuit,
  shop: ShopTest,
  verdict: Verdict,
): Pattern => ({
  ...base,
  [part]: { ...base[part], [circuit]: { ...base[part][circuit], [shop]: verdict } },
});

// Common practice, no source: plates that slip on their full pressure, wherever one looks, lack friction and nothing else.
describe('friction is to blame', () => {
  const worn = pattern('ok', 'low');
  it('where pressure is right and torque short, in every range and test', () => {
    expect(lacksFriction(worn)).toBe(true);
    expect(lacksFriction(pattern('ok', 'gone'))).toBe(true);
    expect(lacksFriction(pattern('ok', 'ok'))).toBe(false);
    expect(lacksFriction(pattern('low', 'low'))).toBe(false);
  });
  const places = CIRCUITS.flatMap((circuit) => SHOP_TESTS.map((shop) => [circuit, shop] as const));
  test.each(places)('not where the %s clutch alone is otherwise, %s', (circuit, shop) => {
    expect(lacksFriction(but('taps', worn, circuit, shop, 'low'))).toBe(false);
    expect(lacksFriction(but('torque', worn, circuit, shop, 'ok'))).toBe(false);
  });
});
