import { illustrativeSettings } from '../../engine/index.ts';
import { recording } from '../../car/recordings.ts';
import { printer } from '../../quantity/print.ts';
import { count, seconds, speed } from '../../quantity/quantities.ts';
import { judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { makeModel, START, type SeesGivens, type SeesModel } from './model.ts';
import { alarmsOf, crackOf, nameOf, verdictOf } from './print.ts';
import { words } from './task-words.en.ts';

const usual = makeModel();
const texts = told(words.tasks, (system) => {
  const print = printer(system);
  const stopped = (id: 'friction' | 'frost' | 'crack16') =>
    print(recording(id).stoppedAfter ?? 0, seconds);
  return {
    crack16: crackOf('crack16', system),
    crack25: crackOf('crack25', system),
    longestOver: print(usual.healthyWorst.value.longestOver, seconds),
    thin: stopped('crack16'),
    frost: stopped('frost'),
    friction: stopped('friction'),
    limit: print(START.engagementLimit, speed),
    readings: print(START.slipTime / illustrativeSettings.sample, count),
  };
});

/** Those whose code the first task asks for. */
const BIG_CRACKS = ['crack25', 'crack30'] as const;

export const tasks: readonly TaskSpec<SeesGivens, SeesModel>[] = [
  {
    id: 'both-cracks',
    ...texts.bothCracks,
    start: { ...START, slipLimit: 600, slipTime: 1.5 },
    controls: ['slipLimit', 'slipTime', 'recording'],
    ...judged((model) => {
      const [uncoded] = BIG_CRACKS.filter((id) => model.of(id).codeAfter === null);
      if (model.falseAlarms.value.length > 0)
        return { is: 'too-low', reached: (s) => alarmsOf(model, s) };
      if (uncoded)
        return {
          is: 'too-high',
          reached: (s) => words.reached.noCode({ recording: nameOf(uncoded, s) }),
        };
      return { is: 'done', reached: words.reached.allRight };
    }),
  },
  {
    id: 'friction',
    ...texts.friction,
    start: { ...START, recording: 'friction' },
    controls: ['engagementTime', 'recording'],
    ...judged((model) => {
      const friction = model.of('friction');
      if (friction.verdict !== 'caught')
        return { is: 'too-high', reached: (s) => verdictOf(friction, s) };
      const clean = model.falseAlarms.value.length === 0;
      return { is: clean ? 'done' : 'too-low', reached: (s) => alarmsOf(model, s) };
    }),
  },
  {
    id: 'price',
    ...texts.price,
    start: { ...START, engagementTime: 1.25, recording: 'crack16' },
    controls: ['engagementTime', 'recording'],
    ...judged((model) => {
      const thin = model.of('crack16');
      const paid = thin.verdict === 'caught' && model.falseAlarms.value.length > 0;
      return { is: paid ? 'done' : 'too-high', reached: (s) => verdictOf(thin, s) };
    }),
  },
  {
    id: 'noise',
    ...texts.noise,
    start: { ...START, recording: 'hot' },
    controls: ['noise'],
    ...judged(({ of }) => {
      const hot = of('hot');
      return {
        is: hot.verdict === 'false-alarm' ? 'done' : 'too-low',
        reached: (s) => verdictOf(hot, s),
      };
    }),
  },
];
