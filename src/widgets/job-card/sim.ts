import { driveAfter, pullsIn, type Step } from '../../car/back-together.ts';
import { count } from '../../quantity/quantities.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { cardWithout, WHOLE, type Half, type JobCardGivens, type JobCardModel } from './model.ts';
import { saysOf, THREE, three } from './print.ts';
import { words } from './words.en.ts';

const { options, ...predict } = told(words.predict, three);
const { outcome } = told({ outcome: words.outcome }, three);
const half = (key: Half) =>
  numberControl(key, words.halves[key], count, { min: 0, max: WHOLE[key], step: 1 });
const pullsCold = (skipped: readonly Step[]): boolean => pullsIn(driveAfter(skipped).cold);

export const sim: SimSpec<JobCardGivens, JobCardModel> = {
  id: 'job-card',
  title: words.title,
  linkVersion: 1,
  controls: [
    {
      kind: 'flag',
      key: 'strict',
      label: words.controls.strict,
      on: words.controls.refuses,
      off: words.controls.lets,
    },
    half('inside'),
    half('after'),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start: { ...cardWithout('bridge', 'drive'), strict: false },
    end: cardWithout('bridge'),
    runMs: 600,
    outcome: () => {
      const [a, b, c] = [pullsCold(THREE.a), pullsCold(THREE.b), pullsCold(THREE.c)];
      return { option: a ? 'all' : b && c ? 'two' : 'none', words: outcome };
    },
  },
  says: saysOf,
};
