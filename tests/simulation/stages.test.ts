import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  advance,
  startState,
  whyNotYet,
  type StageEvent,
  type StageState,
} from '../../src/simulation/stages.ts';

const through = (...events: readonly StageEvent[]): StageState =>
  events.reduce(advance, startState());
const answered: readonly StageEvent[] = [
  { type: 'predict', option: 'slips' },
  { type: 'rate', confidence: 'certain' },
];
const ran: readonly StageEvent[] = [
  ...answered,
  { type: 'run' },
  { type: 'ran', outcome: 'holds' },
];

describe('L1: no run without a prediction and a confidence', () => {
  it('waits for both, in either order, and says for which', () => {
    expect(through({ type: 'run' }).stage).toBe('predict');
    expect(whyNotYet(through())).toBe('both');
    expect(whyNotYet(through({ type: 'predict', option: 'a' }))).toBe('confidence');
    expect(whyNotYet(through({ type: 'rate', confidence: 'guessing' }))).toBe('prediction');
    expect(through(...answered, { type: 'run' }).stage).toBe('running');
    expect(whyNotYet(through(...answered))).toBeNull();
  });
  it('freezes both while it runs and after', () => {
    for (const before of [[...answered, { type: 'run' } as const], ran]) {
      const frozen = through(...before);
      expect(advance(frozen, { type: 'predict', option: 'holds' })).toBe(frozen);
      expect(advance(frozen, { type: 'rate', confidence: 'guessing' })).toBe(frozen);
    }
  });
  it('lets nobody out of a run', () => {
    const running = through(...answered, { type: 'run' });
    expect(advance(running, { type: 'to-tasks', of: 3 })).toBe(running);
    for (const type of ['to-own', 'predict-again', 'run', 'next-task'] as const) {
      expect(advance(running, { type })).toBe(running);
    }
  });
});

describe('L3: tasks, then your controls', () => {
  it('opens the tasks only after a run', () => {
    expect(through({ type: 'to-tasks', of: 3 }).stage).toBe('predict');
    expect(through(...ran, { type: 'to-tasks', of: 3 })).toMatchObject({ stage: 'tasks', task: 0 });
  });
  it('goes on only when the task is done, and ends in your controls', () => {
    let state = through(...ran, { type: 'to-tasks', of: 3 });
    expect(advance(state, { type: 'next-task' })).toBe(state);
    for (let i = 0; i < 3; i += 1) {
      expect(state).toMatchObject({ stage: 'tasks', task: i, hint: false });
      state = advance(state, { type: 'hint' });
      state = advance(advance(state, { type: 'task-done' }), { type: 'next-task' });
    }
    expect(state).toMatchObject({ stage: 'own', done: [true, true, true] });
  });
  it('comes back to the first task still open', () => {
    const left = through(
      ...ran,
      { type: 'to-tasks', of: 3 },
      { type: 'task-done' },
      { type: 'to-own' },
    );
    expect(advance(left, { type: 'to-tasks', of: 3 })).toMatchObject({ stage: 'tasks', task: 1 });
  });
  it('is skipped by a foreman at once', () => {
    expect(through({ type: 'to-own' }).stage).toBe('own');
  });
});

it('no course of events runs without answers, or changes an answer under a run', () => {
  const event = fc.oneof(
    fc.constantFrom<StageEvent>(
      { type: 'run' },
      { type: 'to-tasks', of: 3 },
      { type: 'hint' },
      { type: 'task-done' },
      { type: 'next-task' },
      { type: 'to-own' },
      { type: 'predict-again' },
    ),
    fc.constantFrom('a', 'b').map((option): StageEvent => ({ type: 'predict', option })),
    fc.constantFrom('a', 'b').map((outcome): StageEvent => ({ type: 'ran', outcome })),
    fc
      .constantFrom('guessing' as const, 'certain' as const)
      .map((confidence): StageEvent => ({ type: 'rate', confidence })),
  );
  fc.assert(
    fc.property(fc.array(event, { maxLength: 40 }), (events) => {
      let state = startState();
      for (const one of events) {
        const next = advance(state, one);
        if (next.stage === 'running' || next.stage === 'compare') {
          expect(next.prediction).not.toBeNull();
          expect(next.confidence).not.toBeNull();
        }
        if (state.stage === 'running') expect(next.prediction).toBe(state.prediction);
        if (next.stage === 'tasks') expect(next.outcome).not.toBeNull();
        expect(next.task).toBeLessThan(3);
        state = next;
      }
    }),
  );
});
