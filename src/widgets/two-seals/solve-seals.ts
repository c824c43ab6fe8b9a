import { crackFault, engage, gaveUp, makeCar, oneFault, type Car } from '../../car/index.ts';
import { SEALS, TEMPS, type SealName } from './seals.ts';

function carWith(name: SealName): Car {
  const [what, size] = name.split('-');
  if (what === 'sound') return makeCar({});
  return makeCar({
    faults: what === 'split' ? crackFault(Number(size)) : oneFault('hardLip', Number(size)),
  });
}

/** To a thousandth, or nothing where the controller gives up [s]. */
function stops(car: Car, tempC: number): string {
  const solved = engage(car, { tempC });
  return solved.stoppedAfter === null || gaveUp(solved)
    ? ''
    : String(Number(solved.stoppedAfter.toFixed(3)));
}

export const solveSeals = (): string =>
  SEALS.map((name) => {
    const car = carWith(name);
    return [name, ...TEMPS.map((tempC) => stops(car, tempC))].join(',');
  }).join('\n');
