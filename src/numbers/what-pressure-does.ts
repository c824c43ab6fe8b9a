import { needs } from '../car/index.ts';
import { clutchPressureFor, clutchTorque, training } from '../engine/index.ts';
import { read, tapKpa } from './ask.ts';
import { count, entry, kPa, newtonMetres, newtons, percent, rpm, type Entries } from './entry.ts';

const clutch = training.clutches.forward;
const areaCm2 = clutch.area * 1e4;
const glazed = { ...clutch, friction: clutch.friction / 2 };
/** Torque for each newton that presses the plates together [N·m/N]. */
const arm = (faces: number = clutch.faces): number => clutch.friction * faces * clutch.meanRadius;
const squeeze = (torqueNm: number): number => torqueNm / arm();
const pushN = (pressureKpa: number): number => pressureKpa * 1e3 * clutch.area;
const holdsNm = (pressureKpa: number, on = clutch): number => clutchTorque(on, pressureKpa * 1e3);
const neededKpa = (torqueNm: number): number => clutchPressureFor(clutch, torqueNm) / 1e3;

const holds = (pressureKpa: number) =>
  newtonMetres(holdsNm(pressureKpa), `torque held at ${pressureKpa} kPa`);
const load = { tempC: 100, point: 'load' } as const;

export const whatPressureDoes: Entries = {
  'piston-area': entry('area', areaCm2, 'piston area'),
  'spring-force': newtons(clutch.springForce, 'return spring force'),
  'spring-pressure': kPa(neededKpa(0), 'pressure that only balances the spring'),
  'pressure-400': kPa(400, 'clutch pressure commanded at idle'),
  'pressure-250': kPa(250, 'a pressure chosen for an exercise'),
  'pressure-200': kPa(200, 'half of the clutch pressure at idle'),
  'force-at-400': newtons(pushN(400), 'piston force at 400 kPa'),
  'left-at-400': newtons(pushN(400) - clutch.springForce, 'left for the plates, 400 kPa'),
  'force-at-200': newtons(pushN(200), 'piston force at 200 kPa'),
  'left-at-200': newtons(pushN(200) - clutch.springForce, 'left for the plates, 200 kPa'),
  'holds-at-400': holds(400),
  'force-at-250': newtons(pushN(250), 'piston force at 250 kPa'),
  'left-at-250': newtons(pushN(250) - clutch.springForce, 'left for the plates, 250 kPa'),
  'holds-at-250': holds(250),
  'holds-at-200': holds(200),
  'holds-at-90': holds(90),
  'holds-share-200': percent(
    (100 * holdsNm(200)) / holdsNm(400),
    'torque at half the pressure, as a share of the full',
  ),
  'holds-worn-400': newtonMetres(
    holdsNm(400, glazed),
    'torque held at 400 kPa with half the friction',
  ),
  'holds-eight-faces': newtonMetres(
    holdsNm(400, { ...clutch, faces: 8 }),
    'torque held at 400 kPa with eight faces',
  ),
  'no-spring-250': newtonMetres(
    holdsNm(250, { ...clutch, springForce: 0 }),
    'the answer that forgets the spring',
  ),
  faces: count(clutch.faces, 'friction faces'),
  friction: entry('friction', clutch.friction, 'friction'),
  'friction-radius': entry('dimension', clutch.meanRadius * 1e3, 'mean friction radius'),
  'lever-ten': entry('leverArm', arm(10), 'torque for each newton, ten faces'),
  'lever-eight': entry('leverArm', arm(8), 'torque for each newton, eight faces'),

  'idle-speed': rpm(training.drive.idleRpm, 'idle'),
  'speed-gentle': rpm(
    needs.gentle.engineRpm,
    'engine speed of the gentle take-off, turbine standing',
  ),
  'stall-ratio': count(training.drive.stallTorqueRatio, 'stall torque ratio'),
  'torque-gentle': newtonMetres(needs.gentle.torqueNm, 'on the clutch, gentle take-off'),
  'torque-firm': newtonMetres(needs.firm.torqueNm, 'on the clutch, standing, 1500 rpm'),
  'needed-standing': kPa(needs.standing.kPa, 'needed to hold at idle against the brake'),
  'needed-gentle': kPa(needs.gentle.kPa, 'needed to pull away gently'),
  'needed-firm': kPa(needs.firm.kPa, 'needed at 1500 rpm, standing'),

  'torque-100': newtonMetres(100, 'a torque chosen for an exercise'),
  'squeeze-100': newtons(squeeze(100), 'squeeze for 100 N·m'),
  'push-100': newtons(squeeze(100) + clutch.springForce, 'squeeze for 100 N·m and the spring'),
  'needed-for-100': kPa(neededKpa(100), 'pressure needed for 100 N·m'),
  'torque-60': newtonMetres(60, 'a torque chosen for an exercise'),
  'squeeze-60': newtons(squeeze(60), 'squeeze for 60 N·m'),
  'push-60': newtons(squeeze(60) + clutch.springForce, 'squeeze for 60 N·m and the spring'),
  'needed-for-60': kPa(neededKpa(60), 'pressure needed for 60 N·m'),
  'no-spring-60': kPa(squeeze(60) / clutch.area / 1e3, 'the answer that forgets the spring'),

  'healthy-load-100': kPa(tapKpa(load), 'forward clutch, healthy, 100 °C, load'),
  'holds-healthy-load-100': newtonMetres(
    read(load).clutches.forward.holdsNm,
    'healthy clutch, 100 °C, load',
  ),
  'holds-worn-load-100': newtonMetres(
    read({ ...load, faults: { frictionWear: { severity: 1 } } }).clutches.forward.holdsNm,
    'clutch with friction worn to the worst, 100 °C, load',
  ),
};
