/** The readings of the ten complaints that our model has, solved when the page is built. */
import {
  crackFault,
  engage,
  makeCar,
  oneFault,
  readingOf,
  REFERENCE_CRACK_MM,
  type Car,
} from './index.ts';
import { faultSpan, type Circuit } from '../engine/index.ts';

const [FROST, COLD, HOT, WARM] = [0, 20, 100, 70];
const sound = makeCar({});
const frosty = {
  drainBack: sound,
  hardLip: makeCar({ faults: oneFault('hardLip', 100) }),
  frost: sound,
  lowLevel: makeCar({ faults: oneFault('lowFluid', 80) }),
  filter: makeCar({ faults: oneFault('filter', 28) }),
};
/** Where the plates are worn, pressure is a sound car's. */
const slipping = {
  seal: makeCar({ faults: crackFault(REFERENCE_CRACK_MM) }),
  rings: makeCar({ faults: oneFault('sealingRings', 25) }),
  valve: makeCar({ faults: oneFault('clutchControl', 60) }),
  hole: makeCar({ faults: oneFault('openPort', 70) }),
  plates: sound,
};
const openPlug = makeCar({ faults: oneFault('openPort', 70, 'reverse') });

/** Until the turbine stands [s]. */
const stops = (car: Car, tempC: number, range: 'drive' | 'reverse'): number =>
  engage(car, { tempC, range }).stoppedAfter ?? Number.NaN;
const tap = (car: Car, tempC: number, circuit: Circuit): number =>
  readingOf(car, { tempC, applied: [circuit] }).clutches[circuit].kPa;
const line = (car: Car, circuit: Circuit): number =>
  readingOf(car, { tempC: HOT, applied: [circuit] }).lineKpa;

type Of<K extends string> = Readonly<Record<K, readonly number[]>>;
const each = <K extends string>(
  cars: Readonly<Record<K, Car>>,
  read: (car: Car) => readonly number[],
): Of<K> =>
  Object.fromEntries(Object.entries<Car>(cars).map(([id, car]) => [id, read(car)])) as Of<K>;

const driveTap = tap(sound, HOT, 'forward');
/** [s], [kPa] and [rpm], by complaint, check and cause. */
export const readings = () => ({
  seconds: {
    lateCold: {
      twice: each(frosty, (car) => [stops(car, FROST, 'drive')]),
      reverse: each(frosty, (car) => [stops(car, FROST, 'drive'), stops(car, FROST, 'reverse')]),
      sister: each(frosty, (car) => [stops(car, FROST, 'drive'), stops(sound, FROST, 'drive')]),
    },
    oneGear: { reverse: each(slipping, (car) => [stops(car, WARM, 'reverse')]) },
  },
  pressure: {
    oneGear: {
      tap: each(slipping, (car) => [tap(car, COLD, 'forward'), tap(car, HOT, 'forward')]),
      line: each(slipping, (car) => [line(car, 'forward')]),
    },
    noReverse: {
      line: {
        ...each({ range: sound, boost: sound }, (car) => [line(car, 'forward')]),
        ...each({ leak: openPlug, valve: sound, pack: sound }, (car) => [line(car, 'reverse')]),
      },
      tap: {
        boost: [driveTap],
        leak: [tap(openPlug, HOT, 'reverse')],
        pack: [tap(sound, HOT, 'reverse')],
      },
    },
  },
  speed: { code: { stand: { floor: [faultSpan('turbineSensor').worst] } } },
});
export type Readings = ReturnType<typeof readings>;
