import { quantityOf, type QuantityName } from './by-name.ts';
import { format } from './print.ts';

/** An amount as it reads in each unit system, and what it is before rounding, such as "pressure 414.213562". */
export interface PrintedBoth {
  readonly si: string;
  readonly us: string;
  readonly amount: string;
}

export const printBoth = (metric: number, name: QuantityName): PrintedBoth => ({
  si: format(metric, quantityOf(name), 'si'),
  us: format(metric, quantityOf(name), 'us'),
  amount: `${name} ${Number(metric.toPrecision(9))}`,
});
