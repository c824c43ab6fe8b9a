/**
 * What a question is worth, against an enumeration written here from the rows that are kept and the figures as they are told on
 * the page: every car, every day, every pair of answers, counted into one table. It shares no code with src/cases/talk-list.ts.
 */
import { describe, expect, test } from 'vitest';
import { ANSWERS, ASKED, placeOf, type Asked } from '../../../src/cases/answers.ts';
import { keptAccounts } from '../../../src/cases/kept-accounts.ts';
import { asGoodAs, entropy, worthOf, type Suspect } from '../../../src/cases/talk-list.ts';
import { CLASSES, NAMES } from '../../../src/diagnosis/hypotheses.ts';
import { words as names } from '../../../src/car/words.en.ts';
import { FAULT_IDS, type FaultId } from '../../../src/engine/index.ts';
import {
  makeModel,
  worthAfter,
  type AskFirstGivens,
} from '../../../src/widgets/ask-first/model.ts';
import { sim } from '../../../src/widgets/ask-first/sim.ts';
import { tasks } from '../../../src/widgets/ask-first/tasks.ts';
import { begun } from '../../simulation/task-of.ts';

/** Told on the page: 85 % right, 10 % "I can't say", 5 % wrong, shared by the other answers. */
const [RIGHT, UNSURE, WRONG] = [0.85, 0.1, 0.05];
/** Columns of a kept row: class, severity, temperature, then these; the four days' minutes at the end. */
const COLUMN = { ranges: 3, warm: 4, weather: 5, load: 6, lights: 7 } as const;

interface Row {
  readonly name: string;
  readonly weight: number;
  readonly answer: (question: Asked) => number | null;
}

function everyCar(): Row[] {
  const rows = keptAccounts.map((row) => ({ row, of: CLASSES[row[0] ?? -1] }));
  const names = [...new Set(rows.map(({ of }) => of?.name ?? ''))];
  // Fifteen faults and a good car weigh one each, a cause outside the list two.
  const one = 1 / (names.length + 2);
  const listed = rows.flatMap(({ row, of }) => {
    const ofName = rows.filter((other) => other.of?.name === of?.name);
    const places = new Set(ofName.map((other) => other.of?.circuit)).size;
    const ofClass = ofName.filter((other) => other.of?.circuit === of?.circuit).length;
    return [0, 1, 2, 3].map((day): Row => ({
      name: of?.name ?? '',
      weight: one / places / ofClass / 4,
      answer: (question) => {
        if (question === 'minutes') return row[8 + day] ?? 0;
        if (question === 'road') return day;
        if (question === 'stood' || question === 'restart') return 1;
        return row[COLUMN[question]] ?? 0;
      },
    }));
  });
  return [...listed, { name: 'unlisted', weight: 2 * one, answer: () => null }];
}
const every = everyCar();

/** Chance that a customer of a car gives an answer; the last place is "I can't say". */
function chance(car: Row, question: Asked, said: number): number {
  const count = ANSWERS[question].length;
  if (said === count) return UNSURE;
  if (question === 'restart' && (car.name === 'unlisted' || car.name === 'clutchControl')) {
    return said === 0 ? 0.4 : 0.5;
  }
  const truth = car.answer(question);
  if (truth === null) return 0.9 / count;
  return said === truth ? RIGHT : WRONG / (count - 1);
}

/** Mutual information of name and answer, from the table of all of them: sum of p log2(p / (p name * p answer)). */
function enumerated(given: Partial<Record<Asked, number>>, question: Asked): number {
  const joint = new Map<string, number>();
  const ofName = new Map<string, number>();
  const ofAnswer = new Map<number, number>();
  let all = 0;
  for (const car of every) {
    for (let said = 0; said <= ANSWERS[question].length; said += 1) {
      let p = car.weight * chance(car, question, said);
      for (const [before, answer] of Object.entries(given))
        p *= chance(car, before as Asked, answer);
      const key = `${car.name}/${said}`;
      joint.set(key, (joint.get(key) ?? 0) + p);
      ofName.set(car.name, (ofName.get(car.name) ?? 0) + p);
      ofAnswer.set(said, (ofAnswer.get(said) ?? 0) + p);
      all += p;
    }
  }
  let bits = 0;
  for (const [key, p] of joint) {
    const [name = '', said = ''] = key.split('/');
    const alone = ((ofName.get(name) ?? 0) / all) * ((ofAnswer.get(Number(said)) ?? 0) / all);
    if (p > 0) bits += (p / all) * Math.log2(p / all / alone);
  }
  return bits;
}

describe('what a question is worth', () => {
  const both = { ranges: placeOf('ranges', 'both') };
  const states: Partial<Record<Asked, number>>[] = [
    {},
    both,
    { ...both, warm: placeOf('warm', 'hot') },
    { ...both, warm: placeOf('warm', 'hot'), minutes: placeOf('minutes', 'half') },
    { lights: 0, stood: 0 },
  ];
  test.each(states.flatMap((given) => ASKED.map((question) => ({ given, question }))))(
    '$question after $given',
    ({ given, question }) => {
      if (question in given) return;
      // The same sum by another way: only rounding parts them.
      expect(worthAfter(given, question)).toBeCloseTo(enumerated(given, question), 9);
    },
  );

  test('a fair coin told through a channel that errs 11 times in 100 tells half a bit', () => {
    // C. E. Shannon, 1948: 1 - H(p) bits; H(0.11) = 0.49992 (tables of the binary entropy function).
    const says = (p: number) =>
      Object.fromEntries(ASKED.map((id) => [id, [p, 1 - p, 0]])) as unknown as Suspect['says'];
    const coin: Suspect[] = [
      { name: 0, weight: 0.5, says: says(0.89) },
      { name: 1, weight: 0.5, says: says(0.11) },
    ];
    expect(worthOf(coin, [0.5, 0.5], 2, 'lights')).toBeCloseTo(0.50008, 4);
  });

  test('eight alike are three bits, and as open as a list of eight', () => {
    const alike = Array.from({ length: 8 }, () => 1 / 8);
    expect(entropy(alike)).toBeCloseTo(3, 12);
    expect(asGoodAs(alike)).toBeCloseTo(8, 12);
  });

  test('the road tells nothing by itself, and something beside the minutes', () => {
    expect(worthAfter({}, 'road')).toBeLessThan(1e-9);
    expect(worthAfter({ minutes: placeOf('minutes', 'half') }, 'road')).toBeGreaterThan(0.1);
  });

  test('hours and the key tell little of a list that is all clutches and fluid', () => {
    for (const question of ['stood', 'restart'] as const) {
      expect(worthAfter({}, question)).toBeLessThan(0.1);
    }
  });
});

const all = Object.fromEntries(ASKED.map((question) => [question, true]));

test('shares sum to one and no name is gone for good', () => {
  const model = makeModel();
  model.apply({ ...all, circuit: 'forward', day: 'overnight-flat' });
  for (const name of NAMES.filter((one) => one !== 'unlisted')) {
    model.apply({ fault: name });
    const shares = model.list.value;
    expect(shares.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
    expect(Math.min(...shares)).toBeGreaterThan(0);
    // Its own name is never struck out by its own customer's true answers.
    expect([name, shares[NAMES.indexOf(name)]]).toEqual([name, expect.any(Number)]);
    expect([name, (shares[NAMES.indexOf(name)] ?? 0) > 0.02]).toEqual([name, true]);
  }
});

describe('a hidden car', () => {
  const car = (state: Partial<AskFirstGivens>) => {
    const model = makeModel();
    model.apply(state);
    return model;
  };
  const cars = Array.from({ length: 45 }, (_, i) => i + 1);

  test('fifteen in a row have each fault once, and a number is the same car again', () => {
    const faults = cars.map((number) => car({ car: number }).has.value.fault);
    expect(cars.map((number) => car({ car: number }).has.value.fault)).toEqual(faults);
    for (const from of [0, 15, 30]) {
      expect(new Set(faults.slice(from, from + 15))).toEqual(new Set(FAULT_IDS));
    }
    // Three rounds in three orders, or the second would be known from the first.
    expect(faults.slice(0, 15)).not.toEqual(faults.slice(15, 30));
  });

  test('says nothing of itself until it is asked', () => {
    expect(new Set(cars.map((number) => sim.says(car({ car: number }), 'us'))).size).toBe(1);
  });

  test('answers as one that was chosen', () => {
    for (const number of cars) {
      const { has, answers } = car({ car: number });
      expect(car({ car: 1, ...has.value }).answers.value).toEqual(answers.value);
    }
  });

  test('the next one is another, with nothing asked and nothing named', () => {
    const model = car({ ...all, car: 4, named: 'shown', fault: 'filter', day: 'stop-flat' });
    model.deal();
    expect(model.givens.car.value).toBe(5);
    expect(model.asked.value).toEqual([]);
    expect(model.givens.named.value).toBe('none');
    expect([model.hidden.value, model.givens.day.value]).toEqual([true, 'dealt']);
    model.apply({ car: 999 });
    model.deal();
    expect(model.givens.car.value).toBe(1);
  });

  /** Shares by the enumeration above, in the order of its names. */
  const shareOf = (model: ReturnType<typeof makeModel>, name: string): number => {
    const weigh = (one: Row): number =>
      model.asked.value.reduce(
        (p, question) => p * chance(one, question, model.answers.value[question]),
        one.weight,
      );
    const sum = (some: readonly Row[]): number => some.reduce((p, one) => p + weigh(one), 0);
    return sum(every.filter((one) => one.name === name)) / sum(every);
  };

  test.each(cars)(
    'car %i: right, wrong and given up are told with what the list says',
    (number) => {
      for (const questions of [{}, { ranges: true, warm: true }, all]) {
        const model = car({ car: number, ...questions });
        const { fault } = model.has.value;
        const own = shareOf(model, fault);
        const said = (named: AskFirstGivens['named']): string => {
          model.apply({ named });
          return sim.says(model, 'us').replaceAll('\u00a0', ' ');
        };
        const shown = said('shown');
        expect(shown).toContain(names.faults[fault as FaultId]);
        const [, percent = ''] = /([\d.]+) ?%/u.exec(shown) ?? [];
        expect(Math.abs(Number(percent) - 100 * own)).toBeLessThan(0.51);
        const alone = NAMES.every((name) => name === fault || shareOf(model, name) < 0.9 * own);
        expect(said(fault)).toMatch(
          alone ? /^Right: .* stands alone/u : /^Right: .* did not say so/u,
        );
        for (const name of FAULT_IDS.filter((one) => one !== fault)) {
          const other = shareOf(model, name);
          const alike = other >= 0.9 * own && own >= 0.9 * other;
          expect(said(name)).toMatch(
            alike ? /^No\. .*not tell the two apart/u : /^No\. .*stands at/u,
          );
        }
      }
    },
  );
});

describe('tasks', () => {
  test('three questions are one too many', () => {
    const { task, model } = begun(tasks, makeModel, 'two-questions');
    model.apply({ ranges: true, warm: true });
    expect(task.done(model)).toBe(true);
    model.apply({ minutes: true });
    expect(task.done(model)).toBe(false);
    model.apply({ warm: false });
    expect(task.done(model)).toBe(false);
  });

  test('the day changes the minutes and not the answer to cold or hot', () => {
    const { task, model } = begun(tasks, makeModel, 'same-car-other-day');
    const before = model.answers.value;
    model.apply({ day: 'stop-hills' });
    expect(task.done(model)).toBe(false);
    model.apply({ day: 'overnight-hills' });
    expect(task.done(model)).toBe(true);
    expect(model.answers.value.warm).toBe(before.warm);
    expect(model.answers.value.minutes).not.toBe(before.minutes);
  });

  test('only the wrong fluid is told apart from a good car by nobody', () => {
    const { task, model } = begun(tasks, makeModel, 'where-talk-ends');
    const alike = NAMES.filter((name) => {
      if (name === 'unlisted') return false;
      model.apply({ fault: name });
      return task.done(model);
    });
    expect(alike).toEqual(['thinFluid']);
  });
});
