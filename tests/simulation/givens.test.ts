import { computed, effect } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { aim, judged } from '../../src/simulation/judged.ts';
import { givensFrom } from '../../src/simulation/givens.ts';
import { told, withIds } from '../../src/simulation/told.ts';
import type { Verdict } from '../../src/simulation/sim-spec.ts';

describe('givens from their starting values', () => {
  it('sets several at once: what depends on them is worked out once, never half way', () => {
    const { givens, apply } = givensFrom({ low: 1, high: 2 });
    const seen: string[] = [];
    const both = computed(() => `${givens.low.value} ${givens.high.value}`);
    effect(() => {
      seen.push(both.value);
    });
    apply({ low: 5, high: 6 });
    expect(seen).toEqual(['1 2', '5 6']);
  });
  it('changes only what it is given, and starts over', () => {
    const start: { temp: number; fluid: string; open: boolean } = {
      temp: 20,
      fluid: 'thin',
      open: false,
    };
    const { givens, apply, reset } = givensFrom(start);
    apply({ fluid: 'thick' });
    expect([givens.temp.value, givens.fluid.value, givens.open.value]).toEqual([
      20,
      'thick',
      false,
    ]);
    apply({ temp: 90, open: true });
    reset();
    expect([givens.temp.value, givens.fluid.value, givens.open.value]).toEqual([20, 'thin', false]);
  });
  it('shares nothing between two models', () => {
    const start = { temp: 20 };
    const [one, other] = [givensFrom(start), givensFrom(start)];
    one.apply({ temp: 90 });
    expect(other.givens.temp.value).toBe(20);
  });
});

describe('how far off a task is', () => {
  it.each([
    [7.9, 'too-low'],
    [8, 'nearly'],
    [9.4, 'nearly'],
    [9.5, 'done'],
    [10.5, 'done'],
    [10.6, 'nearly'],
    [12.1, 'too-high'],
  ])('%f is %s of 9.5 to 10.5', (value, is) => {
    expect(aim({ value, least: 9.5, most: 10.5, near: 1.5 })).toBe(is);
  });
  it('has one judgement for what is told and what counts', () => {
    const task = judged((value: number): Verdict | null =>
      value < 0 ? null : { is: aim({ value, least: 3, near: 1 }), reached: '' },
    );
    expect([-1, 1, 2.5, 3].map(task.done)).toEqual([false, false, false, true]);
  });
});

describe('a words file filled in', () => {
  it('leaves plain sentences and fills places by the reader’s units', () => {
    const tasks = {
      first: { words: (p: { edge: string }) => `Up to ${p.edge}.`, hint: 'Cool it.' },
    };
    const { first } = told(tasks, (system) => ({ edge: system === 'us' ? '68 °F' : '20 °C' }));
    expect(first.hint).toBe('Cool it.');
    expect([first.words('us'), first.words('si')]).toEqual(['Up to 68 °F.', 'Up to 20 °C.']);
  });
  it('lists what stands under ids, in order', () => {
    expect(withIds({ b: { words: 'B' }, a: { words: 'A' } })).toEqual([
      { id: 'b', words: 'B' },
      { id: 'a', words: 'A' },
    ]);
  });
});
