/**
 * What every simulation has to keep, whatever it is about. A new folder in src/widgets with a
 * sim.ts is tested here by being there.
 */
import { Signal } from '@preact/signals';
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { currentValues } from '../../src/simulation/current-values.ts';
import { linkSchema } from '../../src/simulation/later/link-schema.ts';
import type { Givens, SimModel } from '../../src/simulation/sim-spec.ts';
import { parseLink, printLink } from '../../src/ui/link-state.ts';
import { format } from '../../src/quantity/print.ts';
import { textFor, type UnitSystem, type UnitText } from '../../src/quantity/unit-system.ts';
import { everySimulation } from './every-simulation.ts';
import { simProblems } from './sim-problems.ts';
import { FEW, neighbours, onlyOnes } from './neighbours.ts';
import { grid, search } from './states.ts';

const SYSTEMS: readonly UnitSystem[] = ['us', 'si'];
/** How many settings of a task's live controls are tried before the search gives up. */
const MOST_TRIED = 3000;
/** On a machine that does other things as well. The engagement solves two stories for each state. */
const SLOW = 120_000;

/** A text as a reader gets it, and free of what a formatter prints when it was handed nothing. */
function expectText(where: string, words: UnitText): void {
  for (const system of SYSTEMS) {
    const text = textFor(words, system);
    expect([where, system, text.trim().length > 0]).toEqual([where, system, true]);
    expect([where, text]).toEqual([
      where,
      expect.not.stringMatching(/NaN|Infinity|undefined|null|\[object|no value|e[+-]\d/u),
    ]);
  }
}

/** Works out everything that a model computes, down through what it groups. */
function readAll(value: unknown, depth = 0): void {
  if (value instanceof Signal) {
    value.peek();
    return;
  }
  if (depth > 2 || typeof value !== 'object' || value === null) return;
  for (const one of Object.values(value)) readAll(one, depth + 1);
}

it('finds the simulations', () => {
  // Without this, a folder that moved would leave nothing to test.
  expect(everySimulation.map(({ name }) => name)).toEqual(
    expect.arrayContaining(['fluid', 'gap-or-hole', 'engagement']),
  );
});

it('gives every simulation an id of its own, since links carry it', () => {
  const ids = everySimulation.map(({ sim }) => sim.id);
  expect(new Set(ids).size).toBe(ids.length);
});

describe.each(everySimulation)('$name', ({ sim, makeModel, View, props, Below }) => {
  const at = (...states: readonly Partial<Givens>[]): SimModel<Givens> => {
    const model = makeModel();
    for (const state of states) model.apply(state);
    return model;
  };
  const start = currentValues(sim, makeModel());
  const states = grid(sim.controls, start);

  it('keeps the learning rules', () => expect(simProblems(sim, makeModel)).toEqual([]));

  it('has all its words, in both unit systems', () => {
    const { predict, tasks } = sim;
    expectText('title', sim.title);
    expectText('question', predict.question);
    expectText('run', predict.runLabel);
    for (const { id, words, why } of predict.options) {
      expectText(`option ${id}`, words);
      expectText(`why ${id}`, why);
    }
    for (const { id, words, hint, after } of tasks) {
      for (const text of [words, hint, after]) expectText(`task ${id}`, text);
    }
    const after = at(predict.start, predict.end);
    expectText('outcome', predict.outcome(after).words);
  });

  it('has every control in words, in both unit systems', () => {
    for (const system of SYSTEMS) {
      const labels = sim.controls.map(({ label }) => textFor(label, system));
      expect(new Set(labels).size).toBe(labels.length);
    }
    for (const control of sim.controls) {
      const { key, label } = control;
      expectText(key, label);
      if (control.kind === 'number') {
        const { quantity, min, max, words } = control;
        for (const value of [min, (min + max) / 2, max]) {
          expectText(key, (system) => format(value, quantity, system));
          expectText(key, (system) => `${key}: ${words?.(value, system) ?? ''}`);
        }
      } else if (control.kind === 'choice') {
        for (const { words, note } of control.options) {
          expectText(key, words);
          if (note !== undefined) expectText(key, note);
        }
      } else {
        expectText(key, control.on);
        expectText(key, control.off);
      }
    }
  });

  it('throws nothing and says something in every state', { timeout: SLOW }, () => {
    for (const state of states) {
      const where = JSON.stringify(state);
      const model = at(state);
      readAll(model);
      expectText(where, (system) => sim.says(model, system));
      const { option, words } = sim.predict.outcome(model);
      expect(sim.predict.options.map(({ id }) => id)).toContain(option);
      expectText(where, words);
      for (const { done, verdict } of sim.tasks) {
        const judged = verdict?.(model);
        if (judged) expectText(where, judged.reached);
        // What is told and what counts are one judgement.
        if (verdict) expect([where, judged?.is === 'done']).toEqual([where, done(model)]);
      }
    }
  });

  it.each(sim.tasks)(
    'lets task "$id" be done by moving only what is live',
    { timeout: SLOW },
    ({ id, start: from, controls, done, after }) => {
      const live = sim.controls.filter(({ key }) => controls.includes(key));
      const found = search(live, MOST_TRIED, (moved) => done(at(from, moved)));
      expect(found).not.toBeNull();
      // Where some neighbours count too, the words name none of them as the only one.
      for (const control of live) {
        if (control.kind !== 'number') continue;
        const taken = neighbours(
          control,
          Number(at(from, found ?? {}).givens[control.key]?.peek()),
          (value) => done(at(from, { ...found, [control.key]: value })),
        );
        if (taken.length < 2 || taken.length > FEW) continue;
        for (const system of SYSTEMS) {
          expect([
            control.key,
            system,
            onlyOnes({ id, text: textFor(after, system) }, control, taken, system),
          ]).toEqual([control.key, system, []]);
        }
      }
    },
  );

  it('comes back from its own link', { timeout: SLOW }, () => {
    const schema = linkSchema(sim, start);
    for (const state of states) {
      const model = at(state);
      const values = currentValues(sim, model);
      const link = parseLink(schema, printLink(schema, values));
      expect(link).toMatchObject({ present: true, notes: [], values });
      expect(currentValues(sim, at(link.values))).toEqual(values);
    }
  });

  it('starts over', () => {
    const model = at(sim.predict.start, sim.predict.end, ...states.slice(0, 5));
    model.reset();
    expect(currentValues(sim, model)).toEqual(start);
  });

  it.runIf(View !== undefined)('draws on the server, twice the same', { timeout: SLOW }, () => {
    if (View === undefined) return;
    const html = render(h(View, props));
    expect(html).toContain(sim.title);
    expect(html).not.toMatch(/NaN|undefined| style=/u);
    expect(render(h(View, props))).toBe(html);
    if (Below === undefined) return;
    for (const state of [sim.predict.start, ...states.slice(0, 8)]) {
      const below = render(
        h(Below, { model: at(state), revealed: true, stage: 'own', live: () => false }),
      );
      expect(below).not.toMatch(/NaN|undefined| style=/u);
    }
  });
});
