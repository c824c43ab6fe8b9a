import {
  afterSelection,
  CHECK_AFTER,
  coolestWith,
  engage,
  makeCar,
  oneFault,
  REFERENCE_CRACK_MM,
  soundCar,
  traceAt,
} from '../../car/index.ts';
import {
  clutchTorque,
  driveHeat,
  impellerTorque,
  RAD_S_PER_RPM,
  rotatingPistonForce,
  stallSpeed,
  timeToReach,
  training,
  trainingLump,
  warmedTo,
  type DriveKind,
  type Engagement,
} from '../../engine/index.ts';
import { converterCapacity, dimension, force, spin } from '../../quantity/part-quantities.ts';
import {
  heat,
  minutes,
  power,
  seconds,
  speed,
  temperature,
  temperatureRise,
  torque,
} from '../../quantity/quantities.ts';
import {
  fluidState,
  kiloPascals,
  stallTorque,
  type EngineNumber,
  type EngineNumbers,
} from './entry.ts';

const { drive } = training;
const clutch = training.clutches.forward;
const cracked = makeCar({ crackMm: REFERENCE_CRACK_MM });
const rpm = (value: number, what: string): EngineNumber => ({ value, quantity: speed, what });
const newtonMetres = (value: number, what: string): EngineNumber => ({
  value,
  quantity: torque,
  what,
});
const time = (value: number | null, what: string): EngineNumber => {
  if (value === null) throw new Error(`The lesson needs a time here: ${what}.`);
  return { value, quantity: seconds, what };
};
const healthyCold = engage(soundCar, { tempC: 20 });
const healthyHot = engage(soundCar, { tempC: 100 });
const crackCold = engage(cracked, { tempC: 20 });
const crackHot = engage(cracked, { tempC: 100 });
/** The fading valve of lesson 5. */
const valveHot = engage(makeCar({ faults: oneFault('clutchControl', 80) }), { tempC: 100 });
const healthyIn = (tempC: number): EngineNumber =>
  time(engage(soundCar, { tempC }).stoppedAfter, `turbine stops, healthy, ${tempC} °C`);

const filledAfter = (run: Engagement): number | null => afterSelection(run, 'clutch filled');
/** From the clutch full to the turbine at rest [s]; the lesson has runs that get there. */
const riseOf = (run: Engagement): number => (run.stoppedAfter ?? NaN) - (filledAfter(run) ?? NaN);
/** The last moment before the brake is let go. */
const WAITING = 2.4;
/** The coolest fluid at which this crack makes the training controller say "not finished". */
const lateFrom = coolestWith(cracked, 'engagement not finished');
const minutesTo = (targetC: number, kind: DriveKind, what: string): EngineNumber => {
  const cold = { fluidC: 20, coolantC: 20, ambientC: 20 };
  const t = timeToReach(trainingLump, { ...cold, heat: driveHeat[kind] }, targetC);
  if (t === null) throw new Error(`The lesson says that ${kind} driving gets to ${targetC} °C.`);
  return { value: t / 60, quantity: minutes, what };
};

/** V. B. Bhandari, Design of Machine Elements, ex. 11.14: the book's givens. */
const book = { power: 10e3, rpm: 2000, m1: 20, k1: 0.075, m2: 35, k2: 0.125 };
const bookOmega = book.rpm * RAD_S_PER_RPM;
const bookTorque = book.power / bookOmega;
const i1 = book.m1 * book.k1 * book.k1;
const i2 = book.m2 * book.k2 * book.k2;
const bookInertia = (i1 * i2) / (i1 + i2);

const freeRpm = traceAt(healthyCold, 'turbineRpm', 0);
const turbineSpin = (r: number) => drive.turbineInertia * r * RAD_S_PER_RPM;
const holdsHealthy = clutchTorque(clutch, 250e3);
const stallIdle = stallTorque(drive.idleRpm);
const holdsCrackCold = traceAt(crackCold, 'capacity', WAITING);
const stallFull = stallSpeed(drive, 1, drive.idleRpm);
const stallHeat = impellerTorque(drive, stallFull * RAD_S_PER_RPM, 0) * stallFull * RAD_S_PER_RPM;

/** A spinning clutch for the note on compensated pistons; its piston is close to the training clutch's in area. */
const drum = { innerRadius: 0.05, outerRadius: 0.07, feedRadius: 0.05, compensated: false };
const head = (r: number) => rotatingPistonForce(drum, fluidState(100).density, r * RAD_S_PER_RPM);

export const turbineStopsNumbers: EngineNumbers = {
  'stop-turbine-free': rpm(freeRpm, 'turbine in Park at idle'),
  'stop-capacity': {
    value: drive.capacity,
    quantity: converterCapacity,
    what: 'converter capacity factor K',
  },
  'stop-impeller-idle': newtonMetres(
    stallIdle / drive.stallTorqueRatio,
    'what the converter takes from the engine at 700 rpm, turbine standing',
  ),
  'stop-torque-1000': newtonMetres(stallTorque(1000), 'on the clutch, standing, 1000 rpm'),
  'stop-impeller-1000': newtonMetres(
    stallTorque(1000) / drive.stallTorqueRatio,
    'what the converter takes from the engine at 1000 rpm, turbine standing',
  ),
  'stop-command-idle': kiloPascals(250e3, 'clutch command while standing at idle'),
  'stop-check-time': time(CHECK_AFTER, 'when the training controller looks'),
  'stop-healthy-20': time(healthyCold.stoppedAfter, 'turbine stops, healthy, 20 °C'),
  'stop-healthy-100': time(healthyHot.stoppedAfter, 'turbine stops, healthy, 100 °C'),
  'stop-healthy-minus-10': healthyIn(-10),
  'stop-healthy-minus-20': healthyIn(-20),
  'stop-rise-healthy': time(riseOf(healthyCold), 'clutch full to turbine stopped, healthy, 20 °C'),
  'stop-rise-crack-20': time(riseOf(crackCold), 'clutch full to turbine stopped, 0.25 mm, 20 °C'),
  // Torque times time is the change of spin, whatever the torque did meanwhile: so this mean is exact.
  'stop-mean-net-healthy': newtonMetres(
    turbineSpin(freeRpm) / riseOf(healthyCold),
    'left over on the average while the turbine came down, healthy, 20 °C',
  ),
  'stop-crack-20': time(crackCold.stoppedAfter, 'turbine stops, 0.25 mm, 20 °C'),
  'stop-filled-healthy-20': time(filledAfter(healthyCold), 'clutch filled, healthy, 20 °C'),
  'stop-filled-crack-20': time(filledAfter(crackCold), 'clutch filled, 0.25 mm, 20 °C'),
  'stop-filled-crack-100': time(filledAfter(crackHot), 'clutch filled, 0.25 mm, 100 °C'),
  'stop-filled-valve-100': time(filledAfter(valveHot), 'clutch filled, valve fades hot, 100 °C'),
  'stop-turbine-valve-100': rpm(
    traceAt(valveHot, 'turbineRpm', WAITING),
    'turbine before the brake is let go, valve fades hot, 100 °C',
  ),
  'stop-turbine-crack-100-check': rpm(
    traceAt(crackHot, 'turbineRpm', CHECK_AFTER),
    'turbine at the check, 0.25 mm, 100 °C',
  ),
  'stop-turbine-crack-100-waiting': rpm(
    traceAt(crackHot, 'turbineRpm', WAITING),
    'turbine before the brake is let go, 0.25 mm, 100 °C',
  ),
  'stop-had-crack-20': kiloPascals(
    traceAt(crackCold, 'clutchPressure', WAITING),
    'clutch pressure, standing at idle, 0.25 mm, 20 °C',
  ),
  'stop-had-crack-100': kiloPascals(
    traceAt(crackHot, 'clutchPressure', WAITING),
    'clutch pressure, standing at idle, 0.25 mm, 100 °C',
  ),
  'stop-late-from': {
    value: lateFrom,
    quantity: temperature,
    what: 'from here on a 0.25 mm crack makes the engagement check fail',
  },
  'stop-minutes-gentle': minutesTo(lateFrom, 'gentle', 'gentle driving from 20 °C to there'),
  'stop-minutes-idling': minutesTo(lateFrom, 'idling', 'idling from 20 °C to there'),
  'stop-minutes-pulling': minutesTo(lateFrom, 'pulling', 'stop and go, pulling, to there'),
  'stop-idling-end': {
    value: warmedTo(trainingLump, {
      fluidC: 20,
      coolantC: 20,
      ambientC: 20,
      heat: driveHeat.idling,
      time: 1e6,
    }).fluidC,
    quantity: temperature,
    what: 'where idling alone ends on a 20 °C day',
  },
  'stop-book-torque': newtonMetres(bookTorque, 'Bhandari 11.14: 10 kW at 2000 rpm'),
  'stop-book-speed': rpm(book.rpm, 'Bhandari 11.14: speed difference'),
  'stop-book-spin': {
    value: bookInertia * bookOmega,
    quantity: spin,
    what: 'Bhandari 11.14: both inertias as one, times the speed difference',
  },
  'stop-book-time': time((bookInertia * bookOmega) / bookTorque, 'Bhandari 11.14: 0.409285 s'),
  'stop-book-heat': {
    value: 0.5 * bookInertia * bookOmega * bookOmega,
    quantity: heat,
    what: 'Bhandari 11.14: 2046.42 J',
  },
  'stop-spin-idle': {
    value: turbineSpin(freeRpm),
    quantity: spin,
    what: 'turbine of the training transmission, free at idle',
  },
  'stop-spin-1000': {
    value: turbineSpin(1000),
    quantity: spin,
    what: 'turbine of the training transmission at 1000 rpm',
  },
  'stop-holds-healthy': newtonMetres(holdsHealthy, 'clutch holds at 250 kPa'),
  'stop-holds-crack-20': newtonMetres(holdsCrackCold, 'clutch holds, 0.25 mm, 20 °C, at idle'),
  'stop-holds-crack-100': newtonMetres(
    traceAt(crackHot, 'capacity', WAITING),
    'clutch holds, 0.25 mm, 100 °C, at idle',
  ),
  'stop-net-healthy': newtonMetres(holdsHealthy - stallIdle, 'left over to stop the turbine'),
  'stop-sum-healthy': time(turbineSpin(freeRpm) / (holdsHealthy - stallIdle), 'the sum, healthy'),
  'stop-net-crack-20': newtonMetres(holdsCrackCold - stallIdle, 'left over, 0.25 mm, 20 °C'),
  'stop-sum-crack-20': time(
    turbineSpin(freeRpm) / (holdsCrackCold - stallIdle),
    'the sum, 0.25 mm, 20 °C',
  ),
  'stop-net-1000': newtonMetres(holdsHealthy - stallTorque(1000), 'left over at 1000 rpm'),
  'stop-sum-1000': time(
    turbineSpin(1000) / (holdsHealthy - stallTorque(1000)),
    'the sum at 1000 rpm',
  ),
  'stop-stall-speed': rpm(stallFull, 'stall speed at full throttle'),
  'stop-stall-torque': newtonMetres(stallTorque(stallFull), 'on the clutch at full stall'),
  'stop-stall-heat': { value: stallHeat / 1e3, quantity: power, what: 'heat at full stall' },
  'stop-stall-rise': {
    value: stallHeat / trainingLump.capacity,
    quantity: temperatureRise,
    what: 'rise in a second at full stall, transmission and fluid as one lump',
  },
  'stop-drum-inner': {
    value: drum.innerRadius * 1e3,
    quantity: dimension,
    what: 'inner radius of the example piston',
  },
  'stop-drum-outer': {
    value: drum.outerRadius * 1e3,
    quantity: dimension,
    what: 'outer radius of the example piston',
  },
  'stop-drum-speed': rpm(4000, 'a chosen drum speed'),
  'stop-drum-speed-6000': rpm(6000, 'a chosen drum speed'),
  'stop-idle-too-high': rpm(1000, 'a chosen idle, too high'),
  'stop-head-4000': {
    value: head(4000),
    quantity: force,
    what: 'push of the spinning fluid on the example piston at 4000 rpm',
  },
  'stop-head-6000': {
    value: head(6000),
    quantity: force,
    what: 'push of the spinning fluid on the example piston at 6000 rpm',
  },
};
