import { expect, test } from 'vitest';
import { writtenCases } from '../../src/cases/written.ts';
import { REPAIR_OF } from '../../src/practice/made-case.ts';
import type { FaultId } from '../../src/engine/index.ts';

test('what puts a fault right is the same in a made case as in the written ones', () => {
  for (const { id, faults, repair } of writtenCases()) {
    const wanted = Object.keys(faults).map((name) => REPAIR_OF[name as FaultId]);
    for (const one of wanted) expect([id, repair]).toEqual([id, expect.arrayContaining([one])]);
  }
});
