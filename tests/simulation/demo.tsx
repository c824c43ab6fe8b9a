/**
 * A simulation about nothing: a load that must stay above twenty, where load = push - 0.004 heat leak.
 * Arithmetic invented for these tests; whatever it resembles, it is no physics.
 */
import { computed, signal } from '@preact/signals';
import { length, pressure, temperature } from '../../src/quantity/quantities.ts';
import { format } from '../../src/quantity/print.ts';
import type { SimModel, SimSpec, TasksFile } from '../../src/simulation/sim-spec.ts';

export type DemoGivens = {
  temp: number;
  crack: number;
  push: number;
  grade: string;
  open: boolean;
};
const START: DemoGivens = { temp: 20, crack: 0.25, push: 600, grade: 'thin', open: true };

export function makeDemo() {
  const givens = {
    temp: signal(START.temp),
    crack: signal(START.crack),
    push: signal(START.push),
    grade: signal(START.grade),
    open: signal(START.open),
  };
  const apply = (partial: Partial<DemoGivens>) => {
    for (const [key, value] of Object.entries(partial)) {
      (givens[key as keyof DemoGivens] as { value: unknown }).value = value;
    }
  };
  const loadAt = (temp: number, crack: number): number =>
    givens.push.value - (givens.open.value ? 1 : 0) * crack * crack * (temp + 40) * 40;
  const load = computed(() => loadAt(givens.temp.value, givens.crack.value));
  return { givens, apply, reset: () => apply(START), load, loadAt } satisfies SimModel<DemoGivens> &
    Record<string, unknown>;
}
export type DemoModel = ReturnType<typeof makeDemo>;

export const NEEDED = 400;

export const demo: SimSpec<DemoGivens, DemoModel> & TasksFile<DemoGivens, DemoModel> = {
  id: 'demo',
  title: 'A made-up load',
  linkVersion: 1,
  controls: [
    {
      kind: 'number',
      key: 'temp',
      label: 'Temperature',
      quantity: temperature,
      min: -20,
      max: 140,
      step: 5,
    },
    {
      kind: 'number',
      key: 'crack',
      label: 'Crack width',
      quantity: length,
      min: 0,
      max: 0.5,
      step: 0.01,
      words: (mm) => `${Math.round(mm / 0.07)} hairs`,
    },
    {
      kind: 'number',
      key: 'push',
      label: 'Push',
      quantity: pressure,
      min: 300,
      max: 1000,
      step: 10,
    },
    {
      kind: 'choice',
      key: 'grade',
      label: 'Grade',
      options: [
        { value: 'thin', words: 'Thin' },
        { value: 'thick', words: 'Thick' },
      ],
    },
    { kind: 'flag', key: 'open', label: 'Crack', on: 'open', off: 'shut' },
  ],
  predict: {
    question: 'The part holds at 20 °C. What does it do at 110 °C?',
    options: [
      {
        id: 'holds',
        words: 'It still holds.',
        why: 'It would, if the leak did not grow with heat.',
      },
      {
        id: 'slips',
        words: 'It slips.',
        why: 'The leak grows with heat, so less is left to push.',
      },
      { id: 'breaks', words: 'It breaks.', why: 'Nothing in this made-up model can break.' },
    ],
    start: { temp: 20, crack: 0.25, push: 600, grade: 'thin', open: true },
    end: { temp: 110 },
    runLabel: 'Run it hot',
    outcome: ({ load }) => {
      const kpa = load.value;
      const option = kpa >= NEEDED ? 'holds' : 'slips';
      return {
        option,
        words: (system) =>
          `It ${option}. ${format(kpa, pressure, system)} is left, and ${format(NEEDED, pressure, system)} is needed.`,
      };
    },
  },
  tasks: [
    {
      id: 'edge',
      words: 'Find a temperature at which it holds again.',
      start: { temp: 110, crack: 0.25 },
      controls: ['temp'],
      done: ({ load }) => load.value >= NEEDED,
      hint: 'Cool it down.',
      after: 'Cooler, it leaks less.',
    },
    {
      id: 'narrow',
      words: 'Keep it hot. Find a crack it can live with.',
      start: { temp: 110, crack: 0.25 },
      controls: ['crack'],
      done: ({ load, givens }) => load.value >= NEEDED && givens.crack.value > 0.1,
      hint: 'A narrower crack.',
      after: 'The leak falls fast as the crack narrows.',
    },
    {
      id: 'push',
      words: 'Hot and wide: make it hold with push alone.',
      start: { temp: 110, crack: 0.3, push: 600 },
      controls: ['push'],
      done: ({ load }) => load.value >= NEEDED,
      hint: 'Push more.',
      after: 'More push covers the leak, for a while.',
    },
  ],
  says: ({ load }, system) =>
    `${format(load.value, pressure, system)} is left: it ${load.value >= NEEDED ? 'holds' : 'slips'}.`,
};
