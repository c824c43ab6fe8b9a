import { clutchPressureFor, clutchTorque, training } from '../../src/engine/index.ts';
import type { Clutch } from '../../src/engine/index.ts';
import { published } from './check.ts';

/** A clutch pressed by 1 bar per 10 kN: the books give the axial force, so the area is chosen and the spring left out. */
function pressed(clutch: Pick<Clutch, 'faces' | 'meanRadius' | 'friction'>): Clutch {
  return { ...clutch, area: 0.1, springForce: 0, strokeVolume: 3e-5, compliance: 4e-12 };
}
const KHURMI = 'Khurmi & Gupta, Theory of Machines, example 10.28';
const BHANDARI = 'Bhandari, Design of Machine Elements, example ';
// Uniform wear: force from the greatest pressure, at the inner radius.
const khurmiForce = 2 * Math.PI * 0.127e6 * 0.075 * (0.125 - 0.075);
const khurmi = pressed({ faces: 4, meanRadius: 0.1, friction: 0.3 });
const bhandari = pressed({ faces: 1, meanRadius: 0.075, friction: 0.2 });
// Uniform pressure: the mean radius is 2/3 (ro^3 - ri^3) / (ro^2 - ri^2).
const uniform = pressed({ faces: 1, meanRadius: ((2 / 3) * 0.875) / 7.5, friction: 0.2 });

published('multi-plate clutch', [
  {
    what: '4 pairs of faces, 75 / 125 mm, friction 0.3, 0.127 N/mm2, 500 rpm: 18.8 kW',
    source: KHURMI,
    status: 'printed',
    got: () => (clutchTorque(khurmi, khurmiForce / khurmi.area) * 2 * Math.PI * 500) / 60 / 1e3,
    expected: 18.8,
    within: { absolute: 0.05 },
    because: 'printed to three figures',
  },
  {
    what: 'and the pressure needed to carry that torque back',
    source: KHURMI,
    status: 'printed',
    got: () => clutchPressureFor(khurmi, (18.8e3 * 60) / (2 * Math.PI * 500)) * khurmi.area,
    expected: khurmiForce,
    within: { relative: 0.0027 },
    because: '18.8 kW is printed to three figures, half a unit of which is 0.27 %',
  },
  {
    what: 'uniform wear, 100 / 200 mm, friction 0.2, 15 707.963 N: 235.619 N m',
    source: `${BHANDARI}11.1`,
    status: 'printed',
    got: () => clutchTorque(bhandari, 15707.963 / bhandari.area),
    expected: 235.619,
    within: { absolute: 0.001 },
    because: 'printed to three decimals',
  },
  {
    what: 'uniform pressure, the same plates, 23 561.945 N: 366.519 N m',
    source: `${BHANDARI}11.2`,
    status: 'printed',
    got: () => clutchTorque(uniform, 23561.945 / uniform.area),
    expected: 366.519,
    within: { absolute: 0.001 },
    because: 'printed to three decimals',
  },
  {
    what: 'friction of the training clutch is that of paper in oil, 0.10 to 0.14',
    source:
      'Juvinall & Marshek, Fundamentals of Machine Component Design, ch. 18, table of friction materials',
    status: 'printed',
    got: () => training.clutches.forward.friction,
    expected: 0.12,
    within: { absolute: 0.02 },
    because: 'the printed range',
  },
]);
