/** What the lesson on the converter works out by hand: torque, spin, stall, a book's clutch and a spinning drum. */
import { needs, stalledTorque, traceAt } from '../car/index.ts';
import {
  clutchTorque,
  impellerTorque,
  RAD_S_PER_RPM,
  rotatingPistonForce,
  stallSpeed,
  training,
  trainingLump,
} from '../engine/index.ts';
import { fluidState } from './ask.ts';
import { entry, newtonMetres, newtons, rpm, seconds, type Entries } from './entry.ts';
import { healthyCold, holdsCrackCold, riseOf } from './turbine-must-stop.ts';

const { drive } = training;
const stallIdle = needs.standing.torqueNm;
const freeRpm = traceAt(healthyCold, 'turbineRpm', 0);
const spinAt = (speed: number): number => drive.turbineInertia * speed * RAD_S_PER_RPM;
const holdsHealthy = clutchTorque(training.clutches.forward, training.commands.clutchLeast);
const stallFull = stallSpeed(drive, 1, drive.idleRpm);
const stallHeat = impellerTorque(drive, stallFull * RAD_S_PER_RPM, 0) * stallFull * RAD_S_PER_RPM;

/** V. B. Bhandari, Design of Machine Elements, ex. 11.14: the book's givens. */
const book = { power: 10e3, rpm: 2000, m1: 20, k1: 0.075, m2: 35, k2: 0.125 };
const bookOmega = book.rpm * RAD_S_PER_RPM;
const bookTorque = book.power / bookOmega;
const i1 = book.m1 * book.k1 * book.k1;
const i2 = book.m2 * book.k2 * book.k2;
const bookInertia = (i1 * i2) / (i1 + i2);

/** A spinning clutch for the note on compensated pistons; its piston is close to the training clutch's in area. */
const drum = { innerRadius: 0.05, outerRadius: 0.07, feedRadius: 0.05, compensated: false };
const head = (speed: number) =>
  newtons(
    rotatingPistonForce(drum, fluidState(100).density, speed * RAD_S_PER_RPM),
    `push of the spinning fluid on the example piston at ${speed} rpm`,
  );

export const turbineSums: Entries = {
  'stop-capacity': entry('converterCapacity', drive.capacity, 'converter capacity factor K'),
  'torque-standing': newtonMetres(stallIdle, 'on the clutch, standing in gear at idle'),
  'stop-impeller-idle': newtonMetres(
    stallIdle / drive.stallTorqueRatio,
    'what the converter takes from the engine at idle, turbine standing',
  ),
  'stop-idle-too-high': rpm(1000, 'a chosen idle, too high'),
  'stop-torque-1000': newtonMetres(stalledTorque(1000), 'on the clutch, standing, 1000 rpm'),
  'stop-impeller-1000': newtonMetres(
    stalledTorque(1000) / drive.stallTorqueRatio,
    'what the converter takes from the engine at 1000 rpm, turbine standing',
  ),
  // Torque times time is the change of spin, whatever the torque did meanwhile: so this mean is exact.
  'stop-mean-net-healthy': newtonMetres(
    spinAt(freeRpm) / riseOf(healthyCold),
    'left over on the average while the turbine came down, healthy, 20 °C',
  ),
  'stop-spin-idle': entry('spin', spinAt(freeRpm), 'turbine of the training car, free at idle'),
  'stop-spin-1000': entry('spin', spinAt(1000), 'turbine of the training car at 1000 rpm'),
  'stop-net-healthy': newtonMetres(holdsHealthy - stallIdle, 'left over to stop the turbine'),
  'stop-sum-healthy': seconds(spinAt(freeRpm) / (holdsHealthy - stallIdle), 'the sum, healthy'),
  'stop-net-crack-20': newtonMetres(holdsCrackCold - stallIdle, 'left over, 0.25 mm, 20 °C'),
  'stop-sum-crack-20': seconds(
    spinAt(freeRpm) / (holdsCrackCold - stallIdle),
    'the sum, 0.25 mm, 20 °C',
  ),
  'stop-net-1000': newtonMetres(holdsHealthy - stalledTorque(1000), 'left over at 1000 rpm'),
  'stop-sum-1000': seconds(
    spinAt(1000) / (holdsHealthy - stalledTorque(1000)),
    'the sum at 1000 rpm',
  ),
  'stop-stall-speed': rpm(stallFull, 'stall speed at full throttle'),
  'stop-stall-torque': newtonMetres(stalledTorque(stallFull), 'on the clutch at full stall'),
  'stop-stall-heat': entry('power', stallHeat / 1e3, 'heat at full stall'),
  'stop-stall-rise': entry(
    'temperatureRise',
    stallHeat / trainingLump.capacity,
    'rise in a second at full stall, transmission and fluid as one lump',
  ),
  'stop-book-torque': newtonMetres(bookTorque, 'Bhandari 11.14: 10 kW at 2000 rpm'),
  'stop-book-speed': rpm(book.rpm, 'Bhandari 11.14: speed difference'),
  'stop-book-spin': entry(
    'spin',
    bookInertia * bookOmega,
    'Bhandari 11.14: both inertias as one, times the speed difference',
  ),
  'stop-book-time': seconds((bookInertia * bookOmega) / bookTorque, 'Bhandari 11.14: 0.409285 s'),
  'stop-book-heat': entry(
    'heat',
    0.5 * bookInertia * bookOmega * bookOmega,
    'Bhandari 11.14: 2046.42 J',
  ),
  'stop-drum-inner': entry(
    'dimension',
    drum.innerRadius * 1e3,
    'inner radius of the example piston',
  ),
  'stop-drum-outer': entry(
    'dimension',
    drum.outerRadius * 1e3,
    'outer radius of the example piston',
  ),
  'stop-drum-speed': rpm(4000, 'a chosen drum speed'),
  'stop-drum-speed-6000': rpm(6000, 'a chosen drum speed'),
  'stop-head-4000': head(4000),
  'stop-head-6000': head(6000),
};
