/** What the command line answers of a steady state. */
import { answer } from '../../src/solve/answer.ts';

interface Steady {
  readonly line_kPa: number;
  readonly cooler_Lmin: number;
  readonly circuits: Readonly<
    Record<string, { readonly pressure_kPa: number; readonly leak_Lmin: number }>
  >;
}

/** Hot at the commands of idle, unless the request says otherwise. */
export const steady = (request: object): Steady =>
  answer({
    ...{ kind: 'steady', temperature_C: 95, engine_rpm: 700, line_kPa: 600, clutch_kPa: 400 },
    ...request,
  }) as unknown as Steady;
