/** Solves what the bench shows, when the page is built: the commands, the sound car, and each fault from where it shows. */
import { makeCar, oneFault, soundCar, type Car } from '../../car/car.ts';
import { readingOf } from '../../car/readings.ts';
import { CLASSES, isFault, severitiesOf } from '../../diagnosis/hypotheses.ts';
import { commandsAt, training, type Circuit } from '../../engine/index.ts';
import { columnAt, COLUMNS, placeAt, READINGS, type Place } from './places.ts';

const APPLIED: Readonly<Record<Place, readonly Circuit[]>> = {
  linePark: [],
  lineReverse: ['reverse'],
  lineDrive: ['forward'],
  lineThird: ['high'],
  forward: ['forward'],
  reverse: ['reverse'],
  high: ['high'],
};
const TAP: Partial<Readonly<Record<Place, Circuit>>> = {
  forward: 'forward',
  reverse: 'reverse',
  high: 'high',
};

/** In Park nothing is to be held, so the command of idle stands whatever the engine does. */
function askedFor(reading: number) {
  const place = placeAt(reading);
  const { tempC, rpm, point } = COLUMNS[columnAt(reading)] ?? COLUMNS[0];
  const applied = APPLIED[place];
  return {
    tap: TAP[place],
    asked: { tempC, engineRpm: rpm, point: applied.length === 0 ? 'idle' : point, applied },
  } as const;
}

const all = Array.from({ length: READINGS }, (_, reading) => reading);
/** As a gauge could be read at the finest [kPa]. */
const tenth = (kPa: number): string => String(Number(kPa.toFixed(1)));

const readAll = (car: Car): string[] =>
  all.map((reading) => {
    const { tap, asked } = askedFor(reading);
    const { lineKpa, clutches } = readingOf(car, asked);
    return tenth(tap === undefined ? lineKpa : clutches[tap].kPa);
  });

const commanded = (): string[] =>
  all.map((reading) => {
    const { tap, asked } = askedFor(reading);
    const { line, clutch } = commandsAt(training, asked.point, asked.applied[0] ?? 'forward');
    return tenth((tap === undefined ? line : clutch) / 1e3);
  });

/** Every second severity that the planner weighs: five parts in a hundred apart, where a fault shows. */
const twentieths = (severity: number): boolean => Math.round(severity * 1000) % 50 === 0;

export function solveCars(): string {
  const sound = readAll(soundCar);
  const faulty = CLASSES.flatMap(({ name, circuit }) =>
    !isFault(name)
      ? []
      : severitiesOf(name)
          .filter(twentieths)
          .map((severity) => {
            const percent = Math.round(100 * severity);
            const read = readAll(makeCar({ faults: oneFault(name, percent, circuit) }));
            const apart = read.map((kPa, i) => (kPa === sound[i] ? '' : kPa));
            return [name, circuit ?? '', percent, ...apart].join(',');
          }),
  );
  return [['command', '', 0, ...commanded()], ['healthy', '', 0, ...sound], ...faulty]
    .map(String)
    .join('\n');
}
