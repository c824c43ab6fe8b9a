import { expect, test } from 'vitest';
import { airHeld } from '../../../src/engine/circuit/air-test.ts';
import { airWays } from '../../../src/engine/circuit/air-ways.ts';
import { BENCH_RIG } from '../../../src/engine/circuit/air-rig.ts';
import { airHoleFlow, BENCH_AIR } from '../../../src/engine/flow/air.ts';
import { applyFaults, training } from '../../../src/engine/index.ts';

const cracked = applyFaults(training, { transferSeal: { severity: 0.5 } });
const open = applyFaults(training, { openPort: { severity: 0.5, circuit: 'forward' } });

test.each([
  ['a sound clutch', training, 'high', 1],
  ['a clutch with a plug missing', open, 'forward', 2],
  ['the split seal itself', cracked, 'transferSeal', 1],
] as const)('%s: its ways pass what the tester’s hole does', (_, plant, target, ways) => {
  const flows = Object.values(airWays(plant, target));
  expect(flows).toHaveLength(ways);
  // Mass is conserved: what comes through the hole at the pressure behind it goes away by the ways out.
  const behind =
    BENCH_AIR.ambient + airHeld(plant, target) * (BENCH_AIR.supply - BENCH_AIR.ambient);
  const through = airHoleFlow(BENCH_RIG.hole, { ...BENCH_AIR, ambient: behind });
  const sum = flows.reduce((all, flow) => all + flow, 0);
  expect(sum / through).toBeCloseTo(1, 6);
});

test('a whole seal has no way out', () => {
  expect(airWays(training, 'transferSeal')).toEqual({});
});
