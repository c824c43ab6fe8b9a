/** Which circuit, and what the controller commands of it. */
import { words as names } from '../../car/words.en.ts';
import { CIRCUITS, training } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { pressure } from '../../quantity/quantities.ts';
import type { ChoiceSpec } from '../sim-spec.ts';
import { words } from './words.en.ts';

type Choice<K extends string> = ChoiceSpec<Record<K, string>>;

/** Whether a circuit passes through the transfer seal decides most of what a crack there does. */
export const circuitControl = <K extends string>(key: K, label = words.circuit) =>
  ({
    kind: 'choice',
    key,
    label,
    options: CIRCUITS.map((value) => ({
      value,
      words: names.circuits[value],
      note: training.leaks[value].transferSeal.width > 0 ? words.throughSeal : words.pastSeal,
    })),
  }) satisfies Choice<K>;

export const testPointControl = <K extends string>(key: K, label = words.testPoint) =>
  ({
    kind: 'choice',
    key,
    label,
    options: (['idle', 'load'] as const).map((value) => ({
      value,
      words: words.testPoints[value],
      note: (system) => {
        const print = printer(system);
        const { line, clutch } = training.testPoints[value];
        return words.commands({
          line: print(line / 1e3, pressure),
          clutch: print(clutch / 1e3, pressure),
        });
      },
    })),
  }) satisfies Choice<K>;
