import { describe, expect, test } from 'vitest';
import { LOOKS } from '../../src/cases/lists.ts';
import { carOfCase, testByHand } from '../../src/cases/play.ts';
import { writtenCases } from '../../src/cases/written.ts';
import { ARRIVES, decodeTable, plannerOf, testOf, TESTS } from '../../src/diagnosis/index.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';
import { training } from '../../src/engine/index.ts';
import { course } from '../../src/lessons/course.ts';

const cases = writtenCases();
const ask = plannerOf(decodeTable(keptTable));

test('there are 36 or more, in order, with four healthy cars and a third in which the popular answer is wrong', () => {
  expect(cases.length).toBeGreaterThanOrEqual(36);
  expect(cases.map(({ order }) => order)).toEqual(cases.map((_one, i) => i + 1));
  expect(cases.filter(({ healthy }) => healthy).length).toBeGreaterThanOrEqual(4);
  expect(cases.filter(({ outside }) => outside).length).toBeGreaterThanOrEqual(6);
  const wrong = cases.filter(({ tempting, faults }) => !Object.hasOwn(faults, tempting));
  expect(wrong.length).toBeGreaterThanOrEqual(cases.length / 3);
});

describe.each(cases)('$id', (one) => {
  const { id, faults, healthy, outside, byHand = [], decides, lesson } = one;
  const names = Object.keys(faults);

  test('has one kind of cause, tests that there are, and a lesson', () => {
    expect(
      [names.length > 0, healthy === true, outside !== undefined].filter(Boolean),
    ).toHaveLength(1);
    for (const by of byHand) expect(testByHand(by).kind).toBe(by.test);
    for (const what of decides) {
      if (!(LOOKS as readonly string[]).includes(what)) expect(testOf(what).id).toBe(what);
      else expect(Object.keys(one.looks ?? {})).toContain(what);
    }
    expect(course.map((planned) => planned.id)).toContain(lesson);
  });

  test('is decided by what it says decides', () => {
    const car = carOfCase(training, id, one);
    const readings = TESTS.filter((test) => decides.includes(test.id)).map((test) => car(test));
    const { faults: found } = ask({
      readings,
      state: { ...ARRIVES, coldMorning: true },
      priors: {},
    });
    const top = found.slice(0, names.length + 1).map(({ fault }) => fault);
    const told = `${id}: ${found
      .slice(0, 3)
      .map(({ fault, probability }) => `${fault} ${probability.toFixed(2)}`)
      .join(', ')}`;
    if (names.length === 1) expect([told, top.includes(names[0] as never)]).toEqual([told, true]);
    // Of two faults one is found first; the other shows in what is left over.
    if (names.length > 1)
      expect([told, names.some((name) => top.includes(name as never))]).toEqual([told, true]);
    // Nobody with nothing wrong, or with another cause, is accused for sure.
    if (names.length === 0) {
      const [first] = found;
      const accused =
        first?.fault !== 'unlisted' &&
        first?.fault !== 'healthy' &&
        (first?.probability ?? 0) >= 0.9;
      expect([told, accused]).toEqual([told, false]);
    }
  });
});
