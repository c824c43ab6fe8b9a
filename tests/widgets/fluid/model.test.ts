import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../src/solve/answer.ts';
import { makeModel, type FluidPick } from '../../../src/widgets/fluid/model.ts';
import { sim } from '../../../src/widgets/fluid/sim.ts';
import { tasks } from '../../../src/widgets/fluid/tasks.ts';
import { SideBySide } from '../../../src/widgets/fluid/Below.tsx';
import { TEMPS } from '../../../src/simulation/choices/temperatures.ts';
import { h } from 'preact';
import { render } from 'preact-render-to-string';

const picks: readonly FluidPick[] = ['low-viscosity', 'standard', 'ultra-low', 'own'];
const task = (id: string) => {
  const found = tasks.find((one) => one.id === id);
  if (!found) throw new Error(`no task "${id}"`);
  return found;
};
/** Numbers stand with a no-break space before their unit. */
const plain = (text: string | undefined): string => (text ?? '').replace(/[\u00a0\u202f]/gu, ' ');
const begin = (id: string) => {
  const model = makeModel();
  model.apply(task(id).start);
  return model;
};

describe('the fluid widget', () => {
  it('says what the request interface says', () => {
    const model = makeModel();
    model.apply({ temp: 63, fluidA: 'own', own40: 45, own100: 8.1, own15: 870 });
    const asked = answer({
      kind: 'fluid',
      fluid: { kv40_cSt: 45, kv100_cSt: 8.1, density15_kgm3: 870 },
      temperature_C: [63, 20],
    }) as { kinematic_cSt: number[]; dynamic_mPas: number[] };
    const [now = NaN, cool = NaN] = asked.kinematic_cSt;
    expect(model.a.now.value?.kinematic).toBeCloseTo(now, 9);
    expect(model.a.now.value?.dynamic).toBeCloseTo(asked.dynamic_mPas[0] ?? NaN, 9);
    expect(model.a.times.value).toBeCloseTo(cool / now, 9);
  });

  // ASTM D2270, worked example of procedure A: 73.50 and 8.860 cSt give 92.03.
  it('shows the viscosity index of the standard’s own example', () => {
    const model = makeModel();
    model.apply({ fluidA: 'own', own40: 73.5, own100: 8.86 });
    expect(model.a.index.value).toBeCloseTo(92.03, 1);
    expect(render(h(SideBySide, { model }))).toContain('>92<');
  });

  it('says that there is no index below 2 cSt at 100 °C', () => {
    const model = makeModel();
    model.apply({ fluidA: 'own', own40: 5, own100: 1.9 });
    expect(model.a.index.value).toBeNull();
    expect(render(h(SideBySide, { model }))).toContain('not defined for a fluid this thin');
  });

  it('ends the run in what the model says, at more than ten times', () => {
    const model = makeModel();
    model.apply(sim.predict.start);
    model.apply(sim.predict.end);
    const { option, words } = sim.predict.outcome(model);
    expect(option).toBe('ten');
    // 69.41 / 6.00 cSt, from the independent D341 program in tests/truth.
    expect(typeof words === 'function' ? words('si') : words).toContain('11.6 times thinner');
  });

  it('lets every task be done with its own controls', () => {
    const ten = begin('ten-times');
    ten.givens.temp.value = 93;
    expect(task('ten-times').done(ten)).toBe(true);
    ten.givens.temp.value = 120;
    expect(task('ten-times').done(ten)).toBe(false);

    const cross = begin('cross');
    cross.apply({ fluidA: 'standard', fluidB: 'low-viscosity', temp: -25 });
    expect(task('cross').done(cross)).toBe(true);
    cross.apply({ fluidA: 'low-viscosity', fluidB: 'standard' });
    expect(task('cross').done(cross)).toBe(false);

    const told = (fluidA: FluidPick, fluidB: FluidPick, temp: number) => {
      cross.apply({ fluidA, fluidB, temp });
      return task('cross').verdict?.(cross)?.is;
    };
    // The right two, not cold enough; the same, the wrong way round; two that never trade places.
    expect(told('standard', 'low-viscosity', 0)).toBe('too-high');
    expect(told('low-viscosity', 'standard', -28)).toBe('not-that');
    expect(told('low-viscosity', 'ultra-low', -28)).toBe('not-that');

    const index = begin('higher-index');
    index.own.type('own100', '7');
    index.own.take('own100');
    expect(task('higher-index').done(index)).toBe(true);
  });

  it(
    'has no NaN and no endless number anywhere in the range of its controls',
    { timeout: 60_000 },
    () => {
      fc.assert(
        fc.property(
          fc.record({
            temp: fc.double({ min: -30, max: 140, noNaN: true }),
            fluidA: fc.constantFrom(...picks),
            fluidB: fc.constantFrom(...picks),
            own40: fc.double({ min: 2, max: 2000, noNaN: true }),
            own100: fc.double({ min: 1, max: 200, noNaN: true }),
            own15: fc.double({ min: 801, max: 1000, noNaN: true }),
          }),
          (givens) => {
            const model = makeModel();
            model.apply(givens);
            for (const side of [model.a, model.b]) {
              for (const at of [side.now.value, ...side.curve.value]) {
                if (at === null) continue;
                expect(at.kinematic).toBeGreaterThan(0);
                expect(at.dynamic).toBeLessThan(1e9);
              }
              const index = side.index.value;
              if (index !== null) expect(Number.isFinite(index)).toBe(true);
            }
            for (const system of ['si', 'us'] as const) {
              expect(sim.says(model, system)).not.toMatch(/NaN|Infinity|no value|e\+/u);
            }
          },
        ),
        { seed: 20, numRuns: 300 },
      );
    },
  );

  it('compares with where it starts only away from there', () => {
    const model = makeModel();
    model.apply({ temp: 20 });
    expect(sim.says(model, 'us')).not.toContain('than at');
    expect(sim.says(model, 'us')).not.toContain('same as');
    model.apply({ temp: 21 });
    expect(plain(sim.says(model, 'us'))).toContain('times thinner than at 68 °F.');
    // A fluid that hardly thins is still compared.
    model.apply({ temp: 20.2 });
    expect(plain(sim.says(model, 'si')).match(/at 20 °C/gu)).toHaveLength(2);
  });

  it('says under the picture that a pair from a link is not the one shown', () => {
    const model = makeModel();
    model.apply({ fluidA: 'own', own40: 30, own100: 40 });
    // The picture keeps to the last pair that can be; the fields show the one asked for.
    expect(model.givens.own40.value).toBe(32);
    expect(model.own.text('own100')).toBe('40.0');
    expect(plain(sim.says(model, 'us'))).toContain(
      '40.0 cSt for the hot number is more than 30.0 cSt for the cooler one.',
    );
    expect(plain(sim.says(model, 'us'))).toContain('Until then 32.0 cSt and 5.40 cSt stand.');
    model.apply({ own40: 50, own100: 8 });
    expect(sim.says(model, 'us')).not.toContain('Until then');
  });

  it('never loses a class line: the three classes have a value at every temperature', () => {
    const model = makeModel();
    for (const fluidA of picks.slice(0, 3)) {
      model.apply({ fluidA });
      expect(model.a.curve.value.filter((at) => at === null)).toEqual([]);
      expect(model.a.curve.value).toHaveLength(TEMPS.length);
    }
  });
});

describe('an own fluid, as typed', () => {
  const typed = (own40: string, own100: string) => {
    const model = makeModel();
    const before = [model.givens.own40.value, model.givens.own100.value];
    model.own.type('own40', own40);
    model.own.take('own40');
    model.own.type('own100', own100);
    model.own.take('own100');
    const { own } = model;
    return {
      inForce: [model.givens.own40.value, model.givens.own100.value],
      before,
      problems: own.problems.value,
      texts: [own.text('own40'), own.text('own100')],
      model,
    };
  };

  it('takes numbers with and without their unit', () => {
    expect(typed('29.6 cSt', '6.0 mm²/s').inForce).toEqual([29.6, 6]);
    expect(typed('29,6', '6').inForce).toEqual([29.6, 6]);
  });

  it('takes a pair whose first number alone would not fit the old second', () => {
    const { inForce, problems } = typed('5', '2');
    expect(inForce).toEqual([5, 2]);
    expect(problems).toEqual({ own40: '', own100: '' });
  });

  it.each([
    ['30', '40', 'own100', 'must be the smaller'],
    ['30', '30', 'own100', 'the same as'],
    ['', '6', 'own40', 'There is no number yet'],
    ['NaN', '6', 'own40', 'does not start with a number'],
    ['about thirty', '6', 'own40', 'does not start with a number'],
    ['5000', '6', 'own40', 'above what is allowed here: 2.00 cSt to 2000 cSt'],
    ['30', '0.5', 'own100', 'below what is allowed here: 1.00 cSt to 200 cSt'],
    ['30 psi', '6', 'own40', '“psi” is no unit of kinematic viscosity here'],
  ] as const)(
    'refuses %s and %s with a sentence at %s, and keeps what was typed',
    (a, b, at, part) => {
      const { inForce, before, problems, texts } = typed(a, b);
      expect(plain(problems[at])).toContain(part);
      expect(plain(problems[at])).toContain(
        `Until then ${at === 'own40' ? '32.0' : '30.0'} cSt and 5.40 cSt stand.`,
      );
      // A first number that goes with the old second is taken; what is refused stays as typed.
      expect(inForce).toEqual(at === 'own40' ? before : [30, 5.4]);
      expect(texts).toEqual(at === 'own40' ? [a, b] : ['30.0', b]);
    },
  );

  it('says the pair’s fault where the last number was given', () => {
    const model = makeModel();
    model.own.type('own40', '5');
    model.own.take('own40');
    expect(plain(model.own.problems.value.own40)).toContain(
      '5.40 cSt for the hot number is more than 5.00 cSt for the cooler one.',
    );
    expect(model.own.problems.value.own100).toBe('');
  });

  it('refuses a bad pair from a link, shows it, and forgets it on reset', () => {
    const model = makeModel();
    model.apply({ own40: 5, own100: 6 });
    expect(model.givens.own40.value).toBe(32);
    expect(model.own.text('own40')).toBe('5.00');
    expect(model.own.problems.value.own100).toContain('must be the smaller');
    model.reset();
    expect(model.own.text('own40')).toBe('32.0');
    expect(model.own.problems.value.own100).toBe('');
  });
});
