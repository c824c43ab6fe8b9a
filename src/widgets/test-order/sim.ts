import { rankedOf, rateOf, SURE } from '../../cases/bay-list.ts';
import { BAY_CARS } from '../../cases/bay-cars.ts';
import { BAY_KEYS, BAY_TESTS, type BayKey } from '../../cases/bay-tests.ts';
import { NAMES } from '../../diagnosis/hypotheses.ts';
import { listOf } from '../../quantity/lists.ts';
import { format } from '../../quantity/print.ts';
import { count } from '../../quantity/quantities.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { makeModel, orderOf, type TestOrderGivens, type TestOrderModel } from './model.ts';
import { nameOf, openAs, printMinutes, printRate, printShare, printWorth } from './print.ts';
import { words } from './words.en.ts';

/** What was done before the question, in its order, and what the run takes. */
export const DONE = ['codes', 'turbine', 'level', 'cable'] as const satisfies readonly BayKey[];
const BEST = 'cold';
const start = { ...orderOf(...DONE), car: '1' };
const end = { [BEST]: DONE.length + 1 };
const THREE = ['seal', 'tap', 'cold'] as const;

function three() {
  const model = makeModel();
  model.apply(start);
  return THREE.map((key) => {
    const one = BAY_TESTS.find((test) => test.key === key) ?? BAY_TESTS[0];
    return { key, ...rankedOf(model.job.value, one) };
  });
}
const facts = () => {
  const told = three().flatMap((one) => [
    [one.key, printWorth(one.worth)],
    [`${one.key}Minutes`, printMinutes(one.minutes)],
    [`${one.key}Rate`, printRate(one)],
  ]);
  return Object.fromEntries(told) as Parameters<typeof words.predict.options.seal.why>[0];
};
const { options, ...predict } = told(words.predict, facts);
const { says } = words;

/** Names whose shares differ by less than this are level [of the first's]; more of them are not "in front". */
const LEVEL = 0.9;
const MOST_IN_FRONT = 3;
const HALF = 0.5;
const isFront = (share: number, first: number): boolean => share >= LEVEL * first;

/** Who is in front, in a sentence; nothing where too many are. */
function front({ list }: TestOrderModel): string {
  const shares = list.value;
  const first = Math.max(...shares);
  const ahead = NAMES.filter((_name, i) => isFront(shares[i] ?? 0, first));
  const [top] = ahead;
  if (top === undefined || ahead.length > MOST_IN_FRONT) return '';
  const share = printShare(first);
  if (ahead.length > 1) return says.level({ names: listOf(ahead.map(nameOf)) });
  if (top === 'unlisted' && first >= HALF) return says.outside({ share });
  return first >= SURE
    ? says.stop({ name: nameOf(top), share })
    : says.one({ name: nameOf(top), share });
}
function stands({ open, job, sure }: TestOrderModel): string {
  if (sure.value) return '';
  const told = { minutes: printMinutes(job.value.minutes), open: openAs(open.value) };
  return told.open === '1' ? says.settled(told) : says.open(told);
}

export const sim: SimSpec<TestOrderGivens, TestOrderModel> = {
  id: 'test-order',
  title: words.title,
  linkVersion: 1,
  controls: [
    {
      kind: 'choice',
      key: 'car',
      label: words.controls.car,
      as: 'select',
      options: BAY_CARS.map((_car, i) => ({
        value: String(i + 1),
        words: words.controls.number({ number: String(i + 1) }),
      })),
    },
    ...BAY_KEYS.map((key) =>
      numberControl(key, words.tests[key], count, {
        min: 0,
        max: BAY_KEYS.length,
        step: 1,
      }),
    ),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end,
    runMs: 600,
    outcome: (model) => {
      const most = three().reduce((one, other) => (rateOf(other) > rateOf(one) ? other : one));
      return {
        option: most.key,
        words: words.outcome({ ...facts(), open: openAs(model.open.value) }),
      };
    },
  },
  says: (model) => {
    const { taken, sure, best, leftOut } = model;
    if (taken.value.length === 0) return says.whole({ names: format(NAMES.length, count, 'si') });
    const left = leftOut.value.map((key) => words.tests[key]);
    const soon = left.length > 0 ? says.tooSoon({ left: listOf(left) }) : '';
    const end = !sure.value && best.value === undefined ? says.nothing : '';
    return [stands(model), front(model), end, soon].filter((one) => one !== '').join(' ');
  },
};
