import {
  airDynamicViscosity,
  airHeld,
  applyFaults,
  BENCH_AIR,
  faultAmount,
  gearbox,
  holeArea,
  holeFlow,
  litresPerMinute,
  PA_PER_PSI,
  TESTER_HOLE,
  training,
  type AirTestTarget,
  type Circuit,
  type FaultSet,
} from '../../engine/index.ts';
import { flow, length, percent, pressure, times } from '../../quantity/quantities.ts';
import {
  clutchPressure,
  crack,
  fluidState,
  gauge,
  kiloPascals,
  type EngineNumber,
  type EngineNumbers,
} from './entry.ts';

const rings: FaultSet = { sealingRings: { severity: 0.4, circuit: 'forward' } };
const piston: FaultSet = { pistonSeal: { severity: 0.8, circuit: 'forward' } };
const port: FaultSet = { openPort: { severity: 0.7, circuit: 'forward' } };
const choked: FaultSet = { feedRestriction: { severity: 0.8 } };
const widest: FaultSet = crack(0.4);
const split: FaultSet = crack(0.25);
const highRings: FaultSet = { sealingRings: { severity: 0.5, circuit: 'high' } };

const has = (what: string, faults: FaultSet, tempC: number, circuit: Circuit = 'forward') =>
  kiloPascals(
    clutchPressure({ tempC, faults, circuit }),
    `${circuit} clutch at idle, ${what}, ${tempC} °C`,
  );
const perMinute = (metres3: number, what: string): EngineNumber => ({
  value: litresPerMinute(metres3),
  quantity: flow,
  what,
});
/** All that the forward circuit loses at hot idle, and what of it goes past the rings. */
function loses(name: string, what: string, faults: FaultSet, tempC = 100): EngineNumbers {
  const forward = gauge({ tempC, faults }).circuits.forward;
  if (forward === undefined) throw new Error('The lesson applies the forward clutch.');
  const { parts, leak } = forward;
  const where = `${what}, ${tempC} °C, idle`;
  return {
    [`${name}-all`]: perMinute(leak, `all that the forward circuit loses, ${where}`),
    [`${name}-rings`]: perMinute(parts.rings, `of it, past the rings, ${where}`),
    [`${name}-rest`]: perMinute(leak - parts.rings, `of it, not past the rings, ${where}`),
  };
}
const feedHole = (kPa: number) => {
  const { density, kinematic } = fluidState(100);
  return perMinute(
    holeFlow(gearbox.feed.area, kPa * 1e3, density, kinematic),
    `feed hole, ${kPa} kPa across it, 100 °C`,
  );
};
const holeMm = (area: number) => 2e3 * Math.sqrt(area / Math.PI);
/** What the tester's gauge keeps of its supply behind its own hole. */
const air = (what: string, target: AirTestTarget, faults: FaultSet = {}): EngineNumber => ({
  value: 100 * airHeld(applyFaults(training, faults), target),
  quantity: percent,
  what: `air test of ${target}, held, ${what}`,
});
const mm = (value: number, what: string): EngineNumber => ({ value, quantity: length, what });
const ringGap = (severity: number, what: string): EngineNumber => ({
  value: faultAmount('sealingRings', severity) / 1e3,
  quantity: length,
  what,
});

export const pathNumbers: EngineNumbers = {
  'feed-hole-size': mm(holeMm(gearbox.feed.area), 'feed hole, diameter'),
  'feed-hole-50': feedHole(50),
  'feed-hole-200': feedHole(200),
  'feed-hole-400': feedHole(400),
  'drop-50': { value: 50, quantity: pressure, what: 'a pressure drop chosen for the lesson' },
  'drop-200': { value: 200, quantity: pressure, what: 'a pressure drop chosen for the lesson' },
  'drop-400': { value: 400, quantity: pressure, what: 'a pressure drop chosen for the lesson' },
  'widest-clutch-100': has('widest crack', widest, 100),
  'widest-line-100': kiloPascals(
    gauge({ tempC: 100, faults: widest }).linePressure,
    'line at idle with the widest crack, 100 °C',
  ),
  'choked-left': {
    value: 100 * faultAmount('feedRestriction', 0.8),
    quantity: percent,
    what: 'feed area left',
  },
  'choked-20': has('choked feed', choked, 20),
  'choked-100': has('choked feed', choked, 100),
  'split-20': has('split transfer seal', split, 20),
  'split-100': has('split transfer seal', split, 100),
  'split-reverse-100': has('split transfer seal', split, 100, 'reverse'),
  'split-high-100': has('split transfer seal', split, 100, 'high'),
  'rings-gap': ringGap(0.4, 'gap at worn rings'),
  'rings-gap-sound': ringGap(0, 'gap at sound rings'),
  'rings-20': has('worn rings', rings, 20),
  'rings-100': has('worn rings', rings, 100),
  'rings-reverse-100': has('worn rings on forward', rings, 100, 'reverse'),
  'rings-high-100': has('worn rings on forward', rings, 100, 'high'),
  'high-rings-100': has('worn rings on high', highRings, 100, 'high'),
  'high-rings-forward-100': has('worn rings on high', highRings, 100, 'forward'),
  'high-rings-reverse-100': has('worn rings on high', highRings, 100, 'reverse'),
  'piston-20': has('cut piston seal', piston, 20),
  'piston-100': has('cut piston seal', piston, 100),
  'port-size': mm(holeMm(holeArea(faultAmount('openPort', 0.7) / 1e3)), 'open port, diameter'),
  'port-20': has('open port', port, 20),
  'port-100': has('open port', port, 100),
  ...loses('split-loss', 'split transfer seal', split),
  ...loses('piston-loss', 'cut piston seal', piston),
  ...loses('port-loss-cold', 'open port', port, 20),
  ...loses('port-loss-hot', 'open port', port, 100),
  'air-tester-hole': mm(holeMm(TESTER_HOLE), 'hole of the air tester'),
  'air-sound': air('sound', 'forward'),
  'air-rings': air('worn rings', 'forward', rings),
  'air-piston': air('cut piston seal', 'forward', piston),
  'air-port': air('open port', 'forward', port),
  'air-split-circuit': air('split transfer seal', 'forward', split),
  'air-seal-sound': air('sound', 'transferSeal'),
  'air-seal-split': air('split', 'transferSeal', split),
  'air-thinner-than-hot': {
    value: fluidState(100).dynamic / airDynamicViscosity(BENCH_AIR.tempK),
    quantity: times,
    what: 'dynamic viscosity of fluid at 100 °C over that of air at 20 °C',
  },
  // 29 CFR 1910.242(b) says 30 psi; 40 psi is the trade's upper end (common practice, no source).
  'air-cleaning-cap': kiloPascals(30 * PA_PER_PSI, 'legal cap on air for cleaning, 30 psi'),
  'air-check-low': kiloPascals(30 * PA_PER_PSI, 'air check, lower end of common practice'),
  'air-check-high': kiloPascals(40 * PA_PER_PSI, 'air check, upper end of common practice'),
  'air-supply': {
    value: (BENCH_AIR.supply - BENCH_AIR.ambient) / 1e3,
    quantity: pressure,
    what: 'air supply of the bench test in the model, gauge',
  },
};
