import type { Axis } from '../../charts/axis.ts';
import { temperature } from '../../quantity/quantities.ts';

/** All temperatures the model offers, on every chart of this simulation. */
export const TEMP_AXIS: Axis = { label: 'Temperature', quantity: temperature, min: -30, max: 140 };
