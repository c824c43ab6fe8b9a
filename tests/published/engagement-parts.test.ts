import {
  converterTorqueRatio,
  impellerTorque,
  joinMasses,
  rotatingPistonForce,
  timeToReach,
  warmedTo,
} from '../../src/engine/index.ts';
import { Stepper } from '../../src/engine/numerics/rosenbrock.ts';
import { columns, published, type PublishedCheck } from './check.ts';

const RPM = Math.PI / 30;
const BHANDARI = 'Bhandari, Design of Machine Elements, example 11.14';
/** 20 kg at 75 mm and 35 kg at 125 mm radius of gyration, 10 kW at 2000 rpm. */
const bhandari = {
  first: 20 * 0.075 ** 2,
  second: 35 * 0.125 ** 2,
  slip: 2000 * RPM,
  torque: 10e3 / (2000 * RPM),
};
const JINDAL = 'Jindal, Machine Design, example 22-1';

/** The same clutch marched in time by the solver of the engagements, until the slip is gone. */
function marched(): number {
  const { first, second, slip, torque } = bhandari;
  const stepper = new Stepper(
    {
      rhs: (_, __, out) => {
        out[0] = -torque / first;
        out[1] = torque / second;
      },
      timeSlope: (_, __, out) => out.fill(0),
    },
    { time: 0, state: Float64Array.of(slip, 0) },
    { relative: 1e-6, absolute: Float64Array.of(1e-6, 1e-6), maxStep: 0.05 },
    { steps: 0, rejected: 0, evaluations: 0 },
  );
  for (;;) {
    const step = stepper.advance(1);
    if (step === 'failed') return Number.NaN;
    const before = (step.y0[0] ?? 0) - (step.y0[1] ?? 0);
    const after = (step.y1[0] ?? 0) - (step.y1[1] ?? 0);
    // Slip falls in a straight line at constant torque, so the chord is the answer.
    if (after <= 0) return step.t0 + ((step.t1 - step.t0) * before) / (before - after);
  }
}

published('a clutch joining two masses', [
  {
    what: 'slip time 0.409285 s',
    source: BHANDARI,
    status: 'printed',
    got: () => joinMasses(bhandari).time,
    expected: 0.409285,
    within: { absolute: 1e-6 },
    because: 'printed to six decimals',
  },
  {
    what: 'heat 2046.42 J',
    source: BHANDARI,
    status: 'printed',
    got: () => joinMasses(bhandari).energy,
    expected: 2046.42,
    within: { absolute: 0.01 },
    because: 'printed to two decimals',
  },
  {
    what: 'slip time again, marched by the engagement solver',
    source: BHANDARI,
    status: 'printed',
    got: marched,
    expected: 0.409285,
    within: { absolute: 1e-5 },
    because: 'the solver works to 1e-6 relative',
  },
  {
    what: 'one mass against a wall, 7.2 kg m2 from 300 rpm with 44.33 N m: 5.1 s',
    source: JINDAL,
    status: 'printed',
    got: () => joinMasses({ first: 7.2, second: 1e30, slip: 300 * RPM, torque: 44.33 }).time,
    expected: 5.1,
    within: { absolute: 0.05 },
    because: 'printed to one decimal',
  },
  {
    what: 'and its heat 3553.06 J, all of the motion',
    source: JINDAL,
    status: 'printed',
    got: () => joinMasses({ first: 7.2, second: 1e30, slip: 300 * RPM, torque: 44.33 }).energy,
    expected: 3553.06,
    within: { absolute: 0.01 },
    because: 'printed to two decimals',
  },
]);

const OPEN_TABLE =
  'open converter table of a US national-laboratory vehicle simulator, 29 points, 13 used';
const ratios = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.85, 0.9];
const torqueRatios = [2, 1.88, 1.77, 1.66, 1.55, 1.43, 1.32, 1.21, 1.1, 1.04, 1];
const impellerRpm = [1444, 1466, 1494, 1525, 1574, 1637, 1722, 1833, 1973, 2107, 2272];
const table = { capacity: 144.4, stallTorqueRatio: 2 };

published('torque ratio against an open table', [
  ...columns(ratios, torqueRatios).map(([s, expected]): PublishedCheck => ({
    what: `at speed ratio ${s}`,
    source: OPEN_TABLE,
    status: 'printed',
    got: () => converterTorqueRatio(table, s),
    expected,
    within: { absolute: 0.04 },
    because:
      'a straight line through stall and coupling, our simplification, is off by 0.03 at 0.85',
  })),
]);

published('capacity against an open table', [
  ...columns(ratios, impellerRpm).map(([s, expected]): PublishedCheck => ({
    what: `impeller speed at 100 N m, speed ratio ${s}`,
    source: OPEN_TABLE,
    status: 'printed',
    // Torque goes with speed squared, so the speed for 100 N m follows from the torque at any other.
    got: () => 1000 * Math.sqrt(100 / impellerTorque(table, 1000 * RPM, s * 1000 * RPM)),
    expected,
    within: { relative: 0.14 },
    because:
      'the shape 1 - s^5 is ours: 13.6 % off at its worst, at 0.7, and right at stall and at 0.9',
  })),
  {
    what: '250 N m at stall turn the impeller at 2283.2 rpm',
    source: `${OPEN_TABLE}; square law, VDI 2153`,
    status: 'computed',
    got: () => impellerTorque(table, 2283.2 * RPM, 0),
    expected: 250,
    within: { absolute: 0.01 },
    because: 'five figures of speed',
  },
  {
    what: 'and all 59.77 kW go to heat',
    source: `${OPEN_TABLE}; heat T w (1 - SR TR), SAE J643 definitions`,
    status: 'computed',
    got: () => (impellerTorque(table, 2283.2 * RPM, 0) * 2283.2 * RPM) / 1e3,
    expected: 59.77,
    within: { absolute: 0.01 },
    because: 'four figures',
  },
]);

const EU = 'Regulation (EU) 2017/2400, Annex VI, appendix 9, section 13, generic converter';
published('pump torque falling with speed ratio, against the EU generic converter', [
  ...columns([0.6, 0.9, 1], [0.8, 0.5, 0]).map(([s, expected]): PublishedCheck => ({
    what: `share of stall torque at ${s} of the speed ratio without load`,
    source: EU,
    status: 'printed',
    got: () =>
      impellerTorque(table, 1000 * RPM, s * 1000 * RPM) / impellerTorque(table, 1000 * RPM, 0),
    expected,
    within: { absolute: 0.13 },
    because:
      'the generic curve is a lower bound for trucks; ours stays flatter and falls later, by 0.12',
  })),
]);

const INCROPERA = 'Incropera & DeWitt, example 5.1';
/** A bead of 0.706 mm in a gas stream: h 400 W/m2 K, 8500 kg/m3, 400 J/kg K. */
const diameter = 6 * (400 / (8500 * 400));
const bead = {
  capacity: 8500 * 400 * (Math.PI / 6) * diameter ** 3,
  loss: 400 * Math.PI * diameter ** 2,
  exchange: 0,
};
published('warming as one lump', [
  {
    what: 'the bead whose time constant is 1 s measures 7.06e-4 m',
    source: INCROPERA,
    status: 'printed',
    got: () => diameter * (bead.capacity / bead.loss),
    expected: 7.06e-4,
    within: { absolute: 0.005e-4 },
    because: 'printed to three figures',
  },
  {
    what: '25 to 199 C in gas of 200 C takes 5.2 s',
    source: INCROPERA,
    status: 'printed',
    got: () =>
      timeToReach(bead, { fluidC: 25, coolantC: 25, ambientC: 200, heat: 0 }, 199) ?? Number.NaN,
    expected: 5.2,
    within: { absolute: 0.05 },
    because: 'printed to two figures',
  },
  {
    what: 'and after that time it is at 199 C',
    source: INCROPERA,
    status: 'computed',
    got: () =>
      warmedTo(bead, {
        fluidC: 25,
        coolantC: 25,
        ambientC: 200,
        heat: 0,
        time: Math.log(175),
      }).fluidC,
    expected: 199,
    within: { absolute: 1e-9 },
    because: 'the same law read the other way',
  },
]);

/** Pressure of a turning liquid on a ring, added up by Simpson's rule: exact for the cubic that it is. */
function simpson(inner: number, outer: number, feed: number, density: number, speed: number) {
  const at = (r: number) => ((density * speed ** 2 * (r ** 2 - feed ** 2)) / 2) * 2 * Math.PI * r;
  return ((outer - inner) / 6) * (at(inner) + 4 * at((inner + outer) / 2) + at(outer));
}
const piston = { innerRadius: 0.05, outerRadius: 0.07, feedRadius: 0.04, compensated: false };
published('centrifugal head on a turning piston', [
  {
    what: 'force with the feed inside the inner edge',
    source: 'pressure of a liquid in solid-body rotation, Massey, Mechanics of Fluids, ch. 2',
    status: 'computed',
    got: () => rotatingPistonForce(piston, 800, 600),
    expected: simpson(0.05, 0.07, 0.04, 800, 600),
    within: { relative: 1e-12 },
    because: 'both are exact',
  },
  {
    what: 'force with the head starting at the inner edge: pi rho w^2 (ro^2 - ri^2)^2 / 4',
    source: 'usual textbook form, from memory',
    status: 'memory',
    got: () => rotatingPistonForce({ ...piston, feedRadius: 0.05 }, 800, 600),
    expected: (Math.PI * 800 * 600 ** 2 * (0.07 ** 2 - 0.05 ** 2) ** 2) / 4,
    within: { relative: 1e-12 },
    because: 'both are exact',
  },
  {
    what: 'a balance chamber takes it all away',
    source: 'common practice, no source',
    status: 'memory',
    got: () => rotatingPistonForce({ ...piston, compensated: true }, 800, 600),
    expected: 0,
    within: { absolute: 0 },
    because: 'the two sides cancel',
  },
]);
