import { expect, it } from 'vitest';
import { packageOf } from '../../src/build/notices.ts';

it.each([
  ['/x/node_modules/papaparse/papaparse.min.js', 'papaparse'],
  ['/x/node_modules/@preact/signals/dist/a.mjs', '@preact/signals'],
  ['C:\\x\\node_modules\\a\\node_modules\\b\\c.js', 'b'],
  ['/x/src/log/table.ts', undefined],
])('%s lies in %s', (id, name) => expect(packageOf(id)).toBe(name));
