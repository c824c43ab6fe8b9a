import { fluidAt, gapFlow, makeFluid, slotFlow } from '../../src/engine/index.ts';
import { published } from './check.ts';

const anyOil = makeFluid({ kv40CSt: 34.5, kv100CSt: 7.4, density15: 850 });
const ring = { width: 0.377, height: 25e-6, length: 2e-3 };

published('how a leak goes with viscosity and temperature', [
  {
    what: 'a fifth less viscosity, a quarter more leak',
    source:
      'Dziubak & Szczepaniak, Energies 2023, 16(22), 7667, abstract: measured clearances of a transmission valve body',
    status: 'printed',
    got: () => {
      const at = (dynamic: number) => gapFlow(ring, 4e5, { density: 800, dynamic }).flow;
      return at(0.8 * 0.02) / at(0.02);
    },
    expected: 1.25,
    within: { absolute: 0.005 },
    because: 'the gap law carries an end loss of a few tenths of a percent beside the laminar term',
  },
  {
    what: 'dynamic viscosity of a KV 34.5 / 7.4 fluid at 20 C',
    source: 'ASTM D341 and API MPMS 11.1, density 850 at 15 C',
    status: 'computed',
    got: () => fluidAt(anyOil, 20).dynamic * 1e3,
    expected: 65.07,
    within: { absolute: 0.005 },
    because: 'worked out to four figures',
  },
  {
    what: 'and at 100 C',
    source: 'ASTM D341 and API MPMS 11.1, density 850 at 15 C',
    status: 'computed',
    got: () => fluidAt(anyOil, 100).dynamic * 1e3,
    expected: 5.889,
    within: { absolute: 5e-4 },
    because: 'worked out to four figures',
  },
  {
    what: 'so a laminar leak grows 11.05 times from 20 to 100 C',
    source: 'slot law with ASTM D341 and API MPMS 11.1',
    status: 'computed',
    got: () => {
      const at = (tempC: number) =>
        slotFlow({ ...ring, dp: 4e5, dynamic: fluidAt(anyOil, tempC).dynamic });
      return at(100) / at(20);
    },
    expected: 11.05,
    within: { absolute: 0.005 },
    because: 'worked out to four figures',
  },
  {
    what: 'and the leak of a sealing-ring gap, end losses and all, nearly as much',
    source: 'slot law with ASTM D341 and API MPMS 11.1',
    status: 'computed',
    got: () => {
      const at = (tempC: number) => gapFlow(ring, 4e5, fluidAt(anyOil, tempC)).flow;
      return at(100) / at(20);
    },
    expected: 11.05,
    within: { relative: 0.01 },
    because: 'end losses take half a percent of the pressure when hot, none when cold',
  },
]);
