import { expect, test } from 'vitest';
import { said } from '../../src/offline/said.ts';

const standing = { have: 948, of: 949, bytes: 9_500_000, sent: 3_296_000 };

test.each(['insecure', 'none', 'blocked', 'off', 'begun', 'failed'] as const)(
  '%s says that it is not ready, and what to do',
  (kind) => {
    expect(said({ kind })).toMatch(/^Not (ready|possible|stored)/);
  },
);
test('how far it is, in files; how large, in megabytes of a million bytes', () => {
  expect(said({ kind: 'storing', standing })).toContain('948 of 949 files');
  expect(said({ kind: 'broken', standing })).toMatch(/^Not ready: 948 of 949/);
  expect(said({ kind: 'full', standing })).toContain('9.5\u00a0MB');
  const ready = said({ kind: 'ready', standing: { ...standing, have: 949 } });
  expect(ready).toMatch(/^Ready offline: all 949 files/);
  expect(ready).toContain('9.5\u00a0MB');
  expect(ready).toContain('3.3\u00a0MB');
});
