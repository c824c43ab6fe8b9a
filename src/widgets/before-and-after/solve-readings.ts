import { readingOf } from '../../car/readings.ts';
import { REPAIRS } from '../../car/repair-names.ts';
import { repaired } from '../../car/repairs.ts';
import { standsAfter } from '../../car/stands-after.ts';
import { COLUMNS, REACH } from './brought.ts';

const degrees = Array.from({ length: REACH.max - REACH.min + 1 }, (_, i) => REACH.min + i);

/** What `bringReadings` takes, solved when the page is built: with the engine on it the page would carry 10 kB more. */
export const solveReadings = (): string =>
  REPAIRS.flatMap((repair) =>
    COLUMNS.map(([test, point]) =>
      degrees
        .map((tempC) => {
          if (test === 'stop') return standsAfter(repair, tempC)?.toFixed(4);
          const { lineKpa, clutches } = readingOf(repaired(repair), { tempC, point });
          return (test === 'line' ? lineKpa : clutches.forward.kPa).toFixed(2);
        })
        .join(','),
    ),
  ).join('\n');
