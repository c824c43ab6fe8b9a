import { needs } from '../../car/index.ts';
import { clutchPressureFor, clutchTorque, training } from '../../engine/index.ts';
import { area, dimension, force, friction, leverArm } from '../../quantity/part-quantities.ts';
import { count, percent, speed, torque } from '../../quantity/quantities.ts';
import { index, kiloPascals, needed, type EngineNumber, type EngineNumbers } from './entry.ts';

const clutch = training.clutches.forward;
const perNewton = (faces: number) => clutch.friction * faces * clutch.meanRadius;
const squeeze = (nm: number) => nm / perNewton(clutch.faces);
const newtons = (value: number, what: string): EngineNumber => ({ value, quantity: force, what });
const holds = (pascals: number): EngineNumber => ({
  value: clutchTorque(clutch, pascals),
  quantity: torque,
  what: `torque held at ${pascals / 1e3} kPa`,
});
const worn = { ...clutch, friction: clutch.friction * 0.5 };

export const whatPressureNumbers: EngineNumbers = {
  'piston-area': { value: clutch.area * 1e4, quantity: area, what: 'piston area' },
  'spring-force': newtons(clutch.springForce, 'return spring force'),
  'spring-pressure': kiloPascals(
    clutch.springForce / clutch.area,
    'pressure that only balances the spring',
  ),
  'pressure-400': kiloPascals(400e3, 'clutch pressure commanded at idle'),
  'pressure-200': kiloPascals(200e3, 'half of the clutch pressure at idle'),
  'force-at-400': newtons(clutch.area * 400e3, 'piston force at 400 kPa'),
  'left-at-400': newtons(clutch.area * 400e3 - clutch.springForce, 'left for the plates, 400 kPa'),
  'left-at-200': newtons(clutch.area * 200e3 - clutch.springForce, 'left for the plates, 200 kPa'),
  'force-at-200': newtons(clutch.area * 200e3, 'piston force at 200 kPa'),
  'holds-at-400': holds(400e3),
  'holds-at-200': holds(200e3),
  'holds-at-spring': holds(clutch.springForce / clutch.area),
  'holds-share-200': {
    value: (100 * clutchTorque(clutch, 200e3)) / clutchTorque(clutch, 400e3),
    quantity: percent,
    what: 'torque at half the pressure, as a share of the full',
  },
  'holds-worn-400': {
    value: clutchTorque(worn, 400e3),
    quantity: torque,
    what: 'torque held at 400 kPa with half the friction',
  },
  faces: index(clutch.faces, 'friction faces'),
  friction: { value: clutch.friction, quantity: friction, what: 'friction' },
  'friction-radius': {
    value: clutch.meanRadius * 1e3,
    quantity: dimension,
    what: 'mean friction radius',
  },
  'torque-stall-idle': {
    value: needs.standing.torqueNm,
    quantity: torque,
    what: 'torque on the clutch, standing in gear at idle',
  },
  'torque-gentle': {
    value: needs.gentle.torqueNm,
    quantity: torque,
    what: 'torque on the clutch, gentle take-off',
  },
  'speed-gentle': {
    value: needs.gentle.engineRpm,
    quantity: speed,
    what: 'engine speed of the gentle take-off, turbine standing',
  },
  'torque-stall-1500': {
    value: needs.firm.torqueNm,
    quantity: torque,
    what: 'torque on the clutch, standing, engine at 1500 rpm',
  },
  'needed-stall-idle': needed('standing', 'pressure needed at idle'),
  'needed-gentle': needed('gentle', 'pressure needed to pull away gently'),
  'needed-stall-1500': needed('firm', 'pressure needed at 1500 rpm, standing'),
  'needed-for-100': kiloPascals(clutchPressureFor(clutch, 100), 'pressure needed for 100 N·m'),
  'torque-100': { value: 100, quantity: torque, what: 'a torque chosen for an exercise' },
  'torque-60': { value: 60, quantity: torque, what: 'a torque chosen for an exercise' },
  'needed-for-60': kiloPascals(clutchPressureFor(clutch, 60), 'pressure needed for 60 N·m'),
  'lever-ten': {
    value: perNewton(10),
    quantity: leverArm,
    what: 'torque for each newton, ten faces',
  },
  'lever-eight': {
    value: perNewton(8),
    quantity: leverArm,
    what: 'torque for each newton, eight faces',
  },
  'squeeze-100': newtons(squeeze(100), 'squeeze for 100 N·m'),
  'push-100': newtons(squeeze(100) + clutch.springForce, 'squeeze for 100 N·m and the spring'),
  'squeeze-60': newtons(squeeze(60), 'squeeze for 60 N·m'),
  'push-60': newtons(squeeze(60) + clutch.springForce, 'squeeze for 60 N·m and the spring'),
  'no-spring-60': kiloPascals(squeeze(60) / clutch.area, 'the answer that forgets the spring'),
  'holds-eight-faces': {
    value: clutchTorque({ ...clutch, faces: 8 }, 400e3),
    quantity: torque,
    what: 'torque held at 400 kPa with eight faces',
  },
  'pressure-250': kiloPascals(250e3, 'a pressure chosen for an exercise'),
  'holds-at-250': holds(250e3),
  'no-spring-250': {
    value: clutchTorque({ ...clutch, springForce: 0 }, 250e3),
    quantity: torque,
    what: 'the answer that forgets the spring',
  },
  'idle-speed': { value: training.drive.idleRpm, quantity: speed, what: 'idle' },
  'stall-ratio': {
    value: training.drive.stallTorqueRatio,
    quantity: count,
    what: 'stall torque ratio',
  },
};
