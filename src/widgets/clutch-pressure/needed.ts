import { needs, type Need as CarNeed } from '../../car/need.ts';

/** What a demand asks of the clutch: kPa and N·m. */
export interface Need {
  readonly pressure: number;
  readonly torque: number;
}

/** What the control offers; src/car/need.ts says what each demand is and why there are no others. */
export type Required = 'idle' | 'take-off';

const asNeed = ({ kPa, torqueNm }: CarNeed): Need => ({ pressure: kPa, torque: torqueNm });

/** What each is judged by: standing in gear, and a firm take-off. */
export const needed: Readonly<Record<Required, Need>> = {
  idle: asNeed(needs.standing),
  'take-off': asNeed(needs.firm),
};
/** The edges of the take-off band. */
export const takeOff = { gentle: asNeed(needs.gentle), firm: asNeed(needs.firm) } as const;
