import { HOT_C, makeCar, oneFault, readingOf, REFERENCE_CRACK_MM, type Car } from '../car/index.ts';
import { CIRCUITS, type Circuit } from '../engine/index.ts';
import { along, steps, type AxisAsked, type Recipe } from './recipe.ts';
import { words } from './words.en.ts';

const FROM_C = 20;
const TO_C = 110;
const temperatures = steps(FROM_C, TO_C, 18);
const temperature: AxisAsked = {
  label: words.temperature,
  quantity: 'temperature',
  min: FROM_C,
  max: TO_C,
};
const pressure: AxisAsked = { label: words.pressure, quantity: 'pressure', min: 0, max: 800 };
const tableAt = [FROM_C, 40, 60, 80, HOT_C];
const common = { x: temperature, y: pressure, tableAt } as const;

const line =
  (car: Car) =>
  (tempC: number): number =>
    readingOf(car, { tempC }).lineKpa;
const tap =
  (car: Car, circuit: Circuit) =>
  (tempC: number): number =>
    readingOf(car, { tempC, circuit }).clutches[circuit].kPa;

const lineAndTap = (car: Car): Recipe => ({
  ...common,
  about: words.lineAndTap,
  lines: [along(temperatures, line(car)), along(temperatures, tap(car, 'forward'))],
});
const threeTaps = (car: Car): Recipe => ({
  ...common,
  about: words.threeTaps,
  lines: CIRCUITS.map((circuit) => along(temperatures, tap(car, circuit))),
});
const lineOverHeat = (car: Car): Recipe => ({
  ...common,
  y: { ...pressure, max: 1200 },
  about: words.lineOverHeat,
  lines: [
    along(temperatures, line(car)),
    along(temperatures, (tempC) => readingOf(car, { tempC, point: 'load' }).lineKpa),
  ],
});

/** Pressures over temperature, each of one car. */
export const pressures = {
  'line-and-tap-cracked-seal': () => lineAndTap(makeCar({ crackMm: REFERENCE_CRACK_MM })),
  'line-and-tap-open-port': () => lineAndTap(makeCar({ faults: oneFault('openPort', 65) })),
  'line-and-tap-healthy': () => lineAndTap(makeCar({})),
  'three-taps-cracked-seal': () => threeTaps(makeCar({ crackMm: REFERENCE_CRACK_MM })),
  'three-taps-forward-rings': () => threeTaps(makeCar({ faults: oneFault('sealingRings', 20) })),
  'line-worn-bore': () => lineOverHeat(makeCar({ faults: oneFault('regulatorBore', 100) })),
  'line-low-command': () => lineOverHeat(makeCar({ faults: oneFault('pressureControl', 60) })),
} satisfies Record<string, () => Recipe>;
