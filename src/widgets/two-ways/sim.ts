import { printer } from '../../quantity/print.ts';
import { percent, pressure, roadSpeed } from '../../quantity/quantities.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { withIds, withValues } from '../../simulation/told.ts';
import { FEED, ROLLING_KMH, START, type WaysGivens, type WaysModel } from './model.ts';
import { words } from './words.en.ts';

const { controls, outcome, says } = words;

/** Where one of the boxes ends. */
const endOf = (
  { park, none, feeds }: typeof says.cable,
  parked: boolean,
  fed: 'R' | 'D' | undefined,
): string => (parked ? park : fed === undefined ? none : feeds({ range: words.ranges[fed] }));

export const sim: SimSpec<WaysGivens, WaysModel> = {
  id: 'two-ways',
  title: words.title,
  linkVersion: 1,
  controls: [
    { kind: 'choice', key: 'range', label: controls.range, options: withValues(controls.ranges) },
    { kind: 'choice', key: 'fault', label: controls.fault, options: withValues(controls.faults) },
    {
      kind: 'choice',
      key: 'failSafe',
      label: controls.failSafe,
      options: withValues(controls.failSafes),
    },
    {
      kind: 'choice',
      key: 'car',
      label: controls.car,
      options: [
        { value: 'standing', words: controls.stands },
        {
          value: 'rolling',
          words: controls.rolls,
          note: (s) => printer(s)(ROLLING_KMH, roadSpeed),
        },
      ],
    },
    numberControl('feed', controls.feed, percent, FEED, (value, s) =>
      value === FEED.max
        ? controls.wideOpen
        : controls.shutOff({ shut: printer(s)(FEED.max - value, percent) }),
    ),
  ],
  predict: {
    ...words.predict,
    options: withIds(words.predict.options),
    start: START,
    end: { fault: 'slip' },
    outcome: ({ parked }) => {
      const { electronic, mechanical } = parked.value;
      return {
        option: electronic ? (mechanical ? 'both' : 'electronic') : 'neither',
        words: [
          outcome.wire[electronic ? 'park' : 'out'],
          outcome.cable[mechanical ? 'park' : 'out'],
        ].join(' '),
      };
    },
  },
  says: ({ parked, fed, givens, cold, hot }, s) => {
    const ratchets = givens.fault.value === 'noPower' && !parked.value.electronic;
    const sentences = [
      ratchets
        ? says.wire.ratchets
        : endOf(says.wire, parked.value.electronic, fed.value.electronic),
      endOf(says.cable, parked.value.mechanical, fed.value.mechanical),
    ];
    if (givens.fault.value === 'misSet' && fed.value.mechanical !== undefined) {
      const print = printer(s);
      sentences.push(
        says.port({ cold: print(cold.value, pressure), hot: print(hot.value, pressure) }),
      );
    }
    return sentences.join(' ');
  },
};
