import { REPAIRS } from '../../car/repairs.ts';
import { standsAfter } from '../../car/stands-after.ts';
import { NODES, REACH } from './stops.ts';

/** What `bringStops` takes, solved when the page is built: with the engagements on it the page would carry 9 kB more. */
export const solveStops = (): string =>
  REPAIRS.map((repair) =>
    Array.from({ length: (REACH.max - REACH.min) / NODES + 1 }, (_, i) =>
      standsAfter(repair, REACH.min + i * NODES)?.toFixed(4),
    ).join(','),
  ).join('\n');
