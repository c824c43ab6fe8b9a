import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { currentValues } from '../../../src/simulation/current-values.ts';
import { arrive } from '../../../src/simulation/later/arrive.ts';
import { predictionsKeeper } from '../../../src/storage/predictions.ts';
import { textFor } from '../../../src/quantity/unit-system.ts';
import { fakeArea } from '../../storage/fake-area.ts';
import { everySimulation } from '../every-simulation.ts';

beforeEach(() => {
  vi.stubGlobal('history', { state: null });
  vi.stubGlobal('localStorage', fakeArea());
});
afterEach(() => vi.unstubAllGlobals());

const keep = (sim: string, option: string): void => {
  predictionsKeeper().update(() => ({ bySim: { [sim]: { option, confidence: 'certain' } } }));
};

describe.each(everySimulation)('$name in another visit', ({ sim, makeModel }) => {
  const come = (search = '') => {
    const model = makeModel();
    const defaults = currentValues(sim, model);
    model.apply(sim.predict.start);
    const event = arrive(sim, model, defaults, search, sim.tasks.length);
    return { event, now: currentValues(sim, model), defaults };
  };

  it('asks, where nothing was predicted, or an answer that it has no more', () => {
    expect(come().event).toBeNull();
    keep(sim.id, 'an-answer-of-old');
    expect(come().event).toBeNull();
  });

  it('has its controls free, with what was said and what came of it', () => {
    const option = sim.predict.options[0]?.id ?? '';
    keep(sim.id, option);
    const { event, now, defaults } = come();
    const ran = makeModel();
    ran.apply(sim.predict.start);
    ran.apply(sim.predict.end);
    const { option: outcome, words } = sim.predict.outcome(ran);
    expect(event).toMatchObject({
      type: 'back-to',
      state: {
        stage: 'own',
        prediction: option,
        confidence: 'certain',
        outcome,
        before: { us: textFor(words, 'us'), si: textFor(words, 'si') },
      },
    });
    expect(now).toEqual(defaults);
  });
});
