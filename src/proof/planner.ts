import kept from '../bench/accuracy.json' with { type: 'json' };
import type { Figures } from '../measure/accuracy/figures.ts';
import { GOALS, reached, type Goal } from '../measure/accuracy/goals.ts';
import { words } from '../measure/accuracy/words.en.ts';
import type { Figure } from './form.ts';

const figures: Figures = kept;
const printed = (value: number, { in: unit }: Goal): string =>
  unit === 'share'
    ? `${Number((100 * value).toFixed(1))} %`
    : unit === 'minutes'
      ? `${Math.round(value)} min`
      : String(Number(value.toFixed(3)));

/** What `npm run accuracy` found the last time, as its own page prints it. */
export const planner = (): Figure[] =>
  GOALS.map((goal: Goal & { id: keyof typeof words.rows }) => ({
    what: `${words.groups[goal.of]}: ${words.rows[goal.id]}`,
    value: printed(goal.value(figures), goal),
    bar:
      goal.least === undefined
        ? words.orLess(printed(goal.most ?? 0, goal))
        : words.orMore(printed(goal.least, goal)),
    met: reached(goal, figures),
    command: figures.command,
  }));
