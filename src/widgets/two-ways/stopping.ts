import { solveEngagement, type Circuit } from '../../engine/index.ts';
import { fluid, withPort } from './model.ts';

/**
 * How long after selection the turbine stops [s] with so much of the port open [%]; null if it never does. Apart from
 * the model, because only what is fetched after the run asks it, and the page need not carry the solver.
 */
export const stoppedAfter = (circuit: Circuit, open: number, tempC: number): number | null =>
  solveEngagement({
    plant: withPort(open),
    fluid,
    tempC,
    range: circuit === 'reverse' ? 'reverse' : 'drive',
    rangeSelection: 'mechanical',
  }).stoppedAfter;
