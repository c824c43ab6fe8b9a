import { benchOf, clutchKpa, makeCar, oneFault, readingOf, type Bench } from '../../car/index.ts';
import {
  airDynamicViscosity,
  BENCH_AIR,
  faultAmount,
  holeArea,
  holeFlow,
  litresPerMinute,
  PA_PER_PSI,
  TESTER_HOLE,
  training,
  type Circuit,
  type FaultSet,
} from '../../engine/index.ts';
import { flow, length, percent, pressure, times } from '../../quantity/quantities.ts';
import { crack, fluidState, type EngineNumber, type EngineNumbers } from './entry.ts';

const rings = oneFault('sealingRings', 40);
const piston = oneFault('pistonSeal', 80);
const port = oneFault('openPort', 70);
const valve = oneFault('clutchControl', 80);
const lip = oneFault('hardLip', 90);
const choked = oneFault('feedRestriction', 80);
const widest: FaultSet = crack(0.4);
const split: FaultSet = crack(0.25);
const highRings = oneFault('sealingRings', 50, 'high');

const kPa = (value: number, what: string): EngineNumber => ({ value, quantity: pressure, what });
const has = (what: string, faults: FaultSet, tempC: number, circuit: Circuit = 'forward') =>
  kPa(
    clutchKpa(makeCar({ faults }), { tempC, circuit }),
    `${circuit} clutch at idle, ${what}, ${tempC} °C`,
  );
const line = (what: string, faults: FaultSet, circuit: Circuit) =>
  kPa(
    readingOf(makeCar({ faults }), { tempC: 100, circuit }).lineKpa,
    `line at idle with ${circuit} applied, ${what}, 100 °C`,
  );
const perMinute = (value: number, what: string): EngineNumber => ({ value, quantity: flow, what });
/** All that the forward circuit loses at hot idle, and what of it goes past the rings. */
function loses(name: string, what: string, faults: FaultSet, tempC = 100): EngineNumbers {
  const { leakLmin, leaksLmin } = readingOf(makeCar({ faults }), { tempC }).clutches.forward;
  const where = `${what}, ${tempC} °C, idle`;
  return {
    [`${name}-all`]: perMinute(leakLmin, `all that the forward circuit loses, ${where}`),
    [`${name}-rings`]: perMinute(leaksLmin.rings, `of it, past the rings, ${where}`),
    [`${name}-rest`]: perMinute(leakLmin - leaksLmin.rings, `of it, not past the rings, ${where}`),
  };
}
const feedHole = (drop: number) => {
  const { density, kinematic } = fluidState(100);
  return perMinute(
    litresPerMinute(holeFlow(training.feed.area, drop * 1e3, density, kinematic)),
    `feed hole, ${drop} kPa across it, 100 °C`,
  );
};
const holeMm = (area: number) => 2e3 * Math.sqrt(area / Math.PI);
/** What the tester's gauge keeps of its supply behind its own hole. */
const air = (what: string, target: keyof Bench, faults: FaultSet = {}): EngineNumber => ({
  value: benchOf(makeCar({ faults }))[target],
  quantity: percent,
  what: `air test of ${target}, held, ${what}`,
});
const mm = (value: number, what: string): EngineNumber => ({ value, quantity: length, what });
const ringGap = (severity: number, what: string): EngineNumber => ({
  value: faultAmount('sealingRings', severity) / 1e3,
  quantity: length,
  what,
});

const KPA_PER_PSI = PA_PER_PSI / 1e3;

export const pathNumbers: EngineNumbers = {
  'feed-hole-size': mm(holeMm(training.feed.area), 'feed hole, diameter'),
  'feed-hole-200': feedHole(200),
  'feed-hole-400': feedHole(400),
  'drop-200': { value: 200, quantity: pressure, what: 'a pressure drop chosen for the lesson' },
  'drop-400': { value: 400, quantity: pressure, what: 'a pressure drop chosen for the lesson' },
  'widest-clutch-100': has('widest crack', widest, 100),
  'widest-line-100': line('widest crack', widest, 'forward'),
  'split-line-reverse-100': line('split transfer seal', split, 'reverse'),
  'healthy-line-reverse-100': line('healthy', {}, 'reverse'),
  'reverse-boost': {
    value: 100 * (training.commands.reverseFactor - 1),
    quantity: percent,
    what: 'what Reverse is commanded above Drive',
  },
  'healthy-forward-20': has('healthy', {}, 20),
  'healthy-forward-60': has('healthy', {}, 60),
  'healthy-forward-100': has('healthy', {}, 100),
  'healthy-reverse-100': has('healthy', {}, 100, 'reverse'),
  'healthy-high-100': has('healthy', {}, 100, 'high'),
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
  'rings-gap-sound': ringGap(0, 'gap at good rings'),
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
  'valve-20': has('valve that fades hot', valve, 20),
  'valve-100': has('valve that fades hot', valve, 100),
  'valve-reverse-100': has('valve of forward that fades hot', valve, 100, 'reverse'),
  'lip-20': has('hardened lip', lip, 20),
  'lip-60': has('hardened lip', lip, 60),
  'lip-100': has('hardened lip', lip, 100),
  ...loses('piston-loss', 'cut piston seal', piston),
  ...loses('port-loss-cold', 'open port', port, 20),
  ...loses('port-loss-hot', 'open port', port, 100),
  'air-tester-hole': mm(holeMm(TESTER_HOLE), 'hole of the air tester'),
  'air-sound': air('healthy', 'forward'),
  'air-rings': air('worn rings', 'forward', rings),
  'air-piston': air('cut piston seal', 'forward', piston),
  'air-lip': air('hardened lip', 'forward', lip),
  'air-valve': air('valve that fades hot', 'forward', valve),
  'air-port': air('open port', 'forward', port),
  'air-split-circuit': air('split transfer seal', 'forward', split),
  'air-seal-split': air('split', 'transferSeal', split),
  'air-thinner-than-hot': {
    value: fluidState(100).dynamic / airDynamicViscosity(BENCH_AIR.tempK),
    quantity: times,
    what: 'dynamic viscosity of fluid at 100 °C over that of air at 20 °C',
  },
  // 29 CFR 1910.242(b) says 30 psi; 40 psi is the trade's upper end (common practice, no source).
  'air-cleaning-cap': kPa(30 * KPA_PER_PSI, 'legal cap on air for cleaning, 30 psi'),
  'air-check-low': kPa(30 * KPA_PER_PSI, 'air check, lower end of common practice'),
  'air-check-high': kPa(40 * KPA_PER_PSI, 'air check, upper end of common practice'),
  'air-supply': {
    value: (BENCH_AIR.supply - BENCH_AIR.ambient) / 1e3,
    quantity: pressure,
    what: 'air supply of the bench test in the model, gauge',
  },
};
