import { benchOf, makeCar, type Bench } from '../car/index.ts';
import {
  airDynamicViscosity,
  BENCH_AIR,
  faultAmount,
  holeArea,
  PA_PER_PSI,
  TESTER_HOLE,
  type FaultSet,
} from '../engine/index.ts';
import { fluidState } from './ask.ts';
import {
  fifthWorn,
  has,
  holeMm,
  lip,
  loses,
  piston,
  port,
  rings,
  split,
  valve,
} from './circuit-asks.ts';
import { kPa, mm, percent, times, type Entries } from './entry.ts';

/** What the tester's gauge keeps of its supply behind its own hole. */
const air = (what: string, target: keyof Bench, faults: FaultSet = {}) =>
  percent(benchOf(makeCar({ faults }))[target], `air test of ${target}, held, ${what}`);
const ringGap = (severity: number, what: string) =>
  mm(faultAmount('sealingRings', severity) / 1e3, what);

const KPA_PER_PSI = PA_PER_PSI / 1e3;

export const coldHotAndAir: readonly Entries[] = [
  {
    'rings-gap': ringGap(0.4, 'gap at worn rings'),
    'rings-gap-sound': ringGap(0, 'gap at good rings'),
    'piston-20': has('cut piston seal', piston, 20),
    'piston-100': has('cut piston seal', piston, 100),
    'port-size': mm(holeMm(holeArea(faultAmount('openPort', 0.7) / 1e3)), 'open port, diameter'),
    'port-20': has('open port', port, 20),
    'port-100': has('open port', port, 100),
    'valve-20': has('valve that fades hot', valve, 20),
    'valve-100': has('valve that fades hot', valve, 100),
    'valve-reverse-100': has('valve of forward that fades hot', valve, 100, 'reverse'),
    'lip-20': has('hardened lip', lip, 20),
    'lip-60': has('hardened lip', lip, 60),
    'lip-100': has('hardened lip', lip, 100),
  },
  loses('port-loss-cold', 'open port', port, 20),
  loses('port-loss-hot', 'open port', port, 100),
  {
    'air-tester-hole': mm(holeMm(TESTER_HOLE), 'hole of the air tester'),
    'air-sound': air('healthy', 'forward'),
    'air-rings': air('worn rings', 'forward', rings),
    'air-rings-fifth': air('rings worn by a fifth of the worst', 'forward', fifthWorn),
    'air-piston': air('cut piston seal', 'forward', piston),
    'air-lip': air('hardened lip', 'forward', lip),
    'air-valve': air('valve that fades hot', 'forward', valve),
    'air-port': air('open port', 'forward', port),
    'air-split-circuit': air('split transfer seal', 'forward', split),
    'air-seal-sound': air('sound', 'transferSeal'),
    'air-seal-split': air('split', 'transferSeal', split),
    'air-thinner-than-hot': times(
      fluidState(100).dynamic / airDynamicViscosity(BENCH_AIR.tempK),
      'dynamic viscosity of fluid at 100 °C over that of air at 20 °C',
    ),
    // 29 CFR 1910.242(b) says 30 psi; 40 psi is the trade's upper end (common practice, no source).
    'air-cleaning-cap': kPa(30 * KPA_PER_PSI, 'legal cap on air for cleaning, 30 psi'),
    'air-check-low': kPa(30 * KPA_PER_PSI, 'air check, lower end of common practice'),
    'air-check-high': kPa(40 * KPA_PER_PSI, 'air check, upper end of common practice'),
    'air-supply': kPa(
      (BENCH_AIR.supply - BENCH_AIR.ambient) / 1e3,
      'air supply of the bench test in the model, gauge',
    ),
  },
];
