import { render } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { needIn, SHOP_TESTS } from '../../../src/car/shop-tests.ts';
import { formatNumber } from '../../../src/quantity/print.ts';
import { pressure } from '../../../src/quantity/quantities.ts';
import { View } from '../../../src/widgets/which-ranges/View.tsx';

test('what each test asks for stands over its column, so that 43 can be gone beside a low 27', () => {
  const asked = [...render(<View />).matchAll(/needs (\d+)/gu)].map(([, amount]) => amount);
  expect(asked).toEqual(SHOP_TESTS.map((name) => formatNumber(needIn(name).kPa, pressure, 'us')));
  expect(new Set(asked).size).toBe(2);
});
