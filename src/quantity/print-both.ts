import { format } from './print.ts';
import type { Quantity } from './quantity.ts';

/** An amount as it reads in each unit system, and what it is before rounding, such as "pressure 414.213". */
export interface PrintedBoth {
  readonly si: string;
  readonly us: string;
  readonly amount: string;
}

export const printBoth = (metric: number, quantity: Quantity): PrintedBoth => ({
  si: format(metric, quantity, 'si'),
  us: format(metric, quantity, 'us'),
  amount: `${quantity.name} ${Number(metric.toPrecision(6))}`,
});
