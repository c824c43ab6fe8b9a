import { GAP_REYNOLDS_LIMIT } from '../../engine/index.ts';
import { COOL_C, coolAndHot, HOT_C } from '../../simulation/choices/temperatures.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { printer } from '../../quantity/print.ts';
import { count, temperature } from '../../quantity/quantities.ts';
import type { GapOrHoleGivens, GapOrHoleModel } from './model.ts';
import { limit, printTimes } from './print.ts';
import { CLEARLY_MORE, ONE_HAIR } from './sim.ts';
import { words } from './task-words.en.ts';

const texts = told(words.tasks, (s) => ({ ...coolAndHot(s), limit }));
const { reached } = words;

/** Judged by how many times more the crack leaks hot than cold. */
const growing = (bounds: { readonly least?: number; readonly most?: number; near: number }) =>
  judged(({ growth }: GapOrHoleModel) => {
    const value = growth.value.crack;
    return {
      is: aim({ value, ...bounds }),
      reached: (s) => reached.grown({ ...coolAndHot(s), times: printTimes(value) }),
    };
  });

export const tasks: readonly TaskSpec<GapOrHoleGivens, GapOrHoleModel>[] = [
  {
    id: 'eight-times',
    ...texts.eightTimes,
    start: { temp: HOT_C, height: 0.25, pressure: 400, fluid: 'low-viscosity' },
    controls: ['height'],
    ...growing({ least: 8, near: 1 }),
  },
  {
    id: 'like-a-hole',
    ...texts.likeHole,
    start: { temp: HOT_C, height: 0.07, pressure: 600, fluid: 'low-viscosity' },
    controls: ['height', 'pressure'],
    ...growing({ most: CLEARLY_MORE, near: 0.3 }),
  },
  {
    id: 'five-to-one',
    ...texts.fiveToOne,
    start: { temp: COOL_C, ...ONE_HAIR },
    controls: ['temp'],
    ...judged(({ crack, hole, givens }) => {
      const value = crack.value.leak / hole.value;
      const temp = givens.temp.value;
      const times = printTimes(value);
      return {
        is: aim({ value, least: 4.7, most: 5.3, near: 0.7 }),
        reached: (s) => reached.apart({ temp: printer(s)(temp, temperature), times }),
      };
    }),
  },
  {
    id: 'end-of-law',
    ...texts.endOfLaw,
    start: { temp: COOL_C, ...ONE_HAIR },
    controls: ['temp', 'height', 'pressure'],
    ...judged(({ crack }) => {
      const { reynolds, laminarLawValid } = crack.value;
      const missed = aim({ value: reynolds, least: GAP_REYNOLDS_LIMIT, near: 300 });
      return {
        is: laminarLawValid ? missed : 'done',
        reached: (s) => reached.reynolds({ reynolds: printer(s)(reynolds, count) }),
      };
    }),
  },
];
