import { needs, type Need as CarNeed } from '../../car/need.ts';
import { DEMAND_OF, type Required } from '../../simulation/choices/required.ts';

/** What a demand asks of the clutch: kPa and N·m. */
export interface Need {
  readonly pressure: number;
  readonly torque: number;
}

const asNeed = ({ kPa, torqueNm }: CarNeed): Need => ({ pressure: kPa, torque: torqueNm });

/** What each is judged by: standing in gear, and a firm take-off. */
export const needed: Readonly<Record<Required, Need>> = {
  idle: asNeed(needs[DEMAND_OF.idle]),
  'take-off': asNeed(needs[DEMAND_OF['take-off']]),
};
/** The edges of the take-off band. */
export const takeOff = { gentle: asNeed(needs.gentle), firm: asNeed(needs.firm) } as const;
