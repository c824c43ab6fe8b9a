import {
  benchOf,
  crackFault,
  makeCar,
  oneFault,
  REFERENCE_CRACK_MM,
  type Bench,
} from '../car/index.ts';
import {
  airDynamicViscosity,
  BENCH_AIR,
  faultAmount,
  holeArea,
  PA_PER_PSI,
  TESTER_HOLE,
  training,
  type Circuit,
  type FaultSet,
} from '../engine/index.ts';
import { fluidState, holeLeak, read, tapKpa } from './ask.ts';
import { kPa, lmin, mm, percent, times, type Entries, type WrongRules } from './entry.ts';

const rings = oneFault('sealingRings', 40);
const fifthWorn = oneFault('sealingRings', 20);
const piston = oneFault('pistonSeal', 80);
const port = oneFault('openPort', 70);
const valve = oneFault('clutchControl', 80);
const lip = oneFault('hardLip', 90);
const choked = oneFault('feedRestriction', 80);
const widest = crackFault(0.4);
const split = crackFault(REFERENCE_CRACK_MM);
const highRings = oneFault('sealingRings', 50, 'high');

const hot = (faults: FaultSet, circuit: Circuit = 'forward'): number =>
  tapKpa({ faults, tempC: 100, circuit });
const healthyHot = hot({});

const has = (
  what: string,
  faults: FaultSet,
  tempC: number,
  circuit: Circuit = 'forward',
  wrong?: WrongRules,
) =>
  kPa(tapKpa({ faults, tempC, circuit }), `${circuit} clutch at idle, ${what}, ${tempC} °C`, wrong);
const line = (what: string, faults: FaultSet, circuit: Circuit) =>
  kPa(
    read({ faults, tempC: 100, circuit }).lineKpa,
    `line at idle with ${circuit} applied, ${what}, 100 °C`,
  );
/** All that the forward circuit loses at idle, and what of it goes past the rings [L/min]. */
function losses(faults: FaultSet, tempC: number) {
  const { leakLmin, leaksLmin } = read({ faults, tempC }).clutches.forward;
  return { all: leakLmin, rings: leaksLmin.rings, rest: leakLmin - leaksLmin.rings };
}
function loses(name: string, what: string, faults: FaultSet, tempC: number, wrong?: WrongRules) {
  const lost = losses(faults, tempC);
  const where = `${what}, ${tempC} °C, idle`;
  return {
    [`${name}-all`]: lmin(lost.all, `all that the forward circuit loses, ${where}`),
    [`${name}-rings`]: lmin(lost.rings, `of it, past the rings, ${where}`),
    [`${name}-rest`]: lmin(lost.rest, `of it, not past the rings, ${where}`, wrong),
  };
}
const splitLosses = losses(split, 100);

const holeMm = (area: number): number => 2e3 * Math.sqrt(area / Math.PI);
const feedHoleMm = holeMm(training.feed.area);
const feedHole = (drop: number, wrong?: WrongRules) =>
  lmin(holeLeak(feedHoleMm, 100, drop), `feed hole, ${drop} kPa across it, 100 °C`, wrong);
/** What the tester's gauge keeps of its supply behind its own hole. */
const air = (what: string, target: keyof Bench, faults: FaultSet = {}) =>
  percent(benchOf(makeCar({ faults }))[target], `air test of ${target}, held, ${what}`);
const ringGap = (severity: number, what: string) =>
  mm(faultAmount('sealingRings', severity) / 1e3, what);

const KPA_PER_PSI = PA_PER_PSI / 1e3;

export const regulatorToClutch: readonly Entries[] = [
  {
    'feed-hole-size': mm(feedHoleMm, 'feed hole, diameter'),
    'drop-200': kPa(200, 'a pressure drop chosen for the lesson'),
    'drop-400': kPa(400, 'a pressure drop chosen for the lesson'),
    'feed-hole-200': feedHole(200),
    'feed-hole-400': feedHole(400, {
      doubled: {
        mistake: 'double the flow with the pressure, as in a thin gap',
        value: 2 * holeLeak(feedHoleMm, 100, 200),
      },
      unchanged: {
        mistake: 'let the hole alone set the flow',
        value: holeLeak(feedHoleMm, 100, 200),
      },
      fourfold: {
        mistake: 'square the pressure instead of taking the root',
        value: 4 * holeLeak(feedHoleMm, 100, 200),
      },
    }),
    'widest-clutch-20': has('widest crack', widest, 20),
    'widest-clutch-100': has('widest crack', widest, 100),
    'widest-line-100': line('widest crack', widest, 'forward'),
    'split-line-reverse-100': line('split transfer seal', split, 'reverse'),
    'healthy-line-reverse-100': line('healthy', {}, 'reverse'),
    'healthy-forward-20': has('healthy', {}, 20),
    'healthy-forward-100': has('healthy', {}, 100),
    'healthy-reverse-100': has('healthy', {}, 100, 'reverse'),
    'healthy-high-100': has('healthy', {}, 100, 'high'),
    'choked-left': percent(100 * faultAmount('feedRestriction', 0.8), 'feed area left'),
    'choked-20': has('choked feed', choked, 20),
    'choked-100': has('choked feed', choked, 100, 'forward', {
      'area-share': {
        mistake: 'cut the pressure by the same share as the area',
        value: 400 * faultAmount('feedRestriction', 0.8),
      },
      unchanged: {
        mistake: 'let a small hole fill the clutch to full pressure in the end',
        value: healthyHot,
      },
    }),
    'split-reverse-100': has('split transfer seal', split, 100, 'reverse'),
    'rings-gap': ringGap(0.4, 'gap at worn rings'),
    'rings-gap-sound': ringGap(0, 'gap at good rings'),
    'rings-20': has('worn rings', rings, 20),
    'rings-100': has('worn rings', rings, 100),
    'rings-reverse-100': has('worn rings on forward', rings, 100, 'reverse', {
      'same-as-forward': {
        mistake: 'let one pair of rings hurt both clutches',
        value: hot(rings),
      },
      'not-boosted': { mistake: 'leave out that Reverse is boosted', value: healthyHot },
      halfway: {
        mistake: 'give reverse half of the loss',
        value: (hot(rings) + hot(rings, 'reverse')) / 2,
      },
    }),
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
  },
  loses('piston-loss', 'cut piston seal', piston, 100),
  loses('port-loss-cold', 'open port', port, 20),
  loses('port-loss-hot', 'open port', port, 100),
  loses('split-loss', 'split transfer seal', split, 100, {
    'all-of-it': { mistake: 'blame the crack for everything', value: splitLosses.all },
    'ring-part': { mistake: 'take what the rings lose', value: splitLosses.rings },
    added: {
      mistake: 'add the rings a second time',
      value: splitLosses.all + splitLosses.rings,
    },
  }),
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
