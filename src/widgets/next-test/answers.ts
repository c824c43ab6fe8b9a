import { answers as said } from '../../planner/load.ts';
import { NoList, On } from './On.tsx';

/** Fetched when somebody comes to the planner: it carries the table, what shows its answers, and the choice of a transmission. */
export const answers = { ...said, NoList, On };
