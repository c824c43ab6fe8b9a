import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { parseLink, printLink } from '../../src/ui/link-state.ts';
import { Compare } from '../../src/simulation/later/Compare.tsx';
import { currentValues } from '../../src/simulation/current-values.ts';
import { linkSchema } from '../../src/simulation/later/link-schema.ts';
import { simProblems } from './sim-problems.ts';
import { startState } from '../../src/simulation/stages.ts';
import { between } from '../../src/simulation/sweep.ts';
import { DemoView } from './DemoView.tsx';
import { demo, makeDemo } from './demo.tsx';

describe('the shell on the server', () => {
  const html = render(<DemoView />);
  it('asks first: the run waits and says why, beside it', () => {
    expect(html).toMatch(
      /<button type="submit" class="act" disabled aria-describedby="demo-why">Run it hot/u,
    );
    expect(html).toContain('First say what you expect, and how sure you are.');
    expect(html.match(/name="demo-prediction"/gu)).toHaveLength(3);
    expect(html.match(/name="demo-confidence"/gu)).toHaveLength(3);
  });
  it('shows neither controls nor the further pictures before the answer', () => {
    expect(html).not.toContain('demo-temp-field');
    expect(html).not.toContain('demo-map');
    expect(html).toContain('Your controls');
  });
  it('is the same twice and has no style attribute', () => {
    expect(render(<DemoView />)).toBe(html);
    expect(html).not.toMatch(/ style=|NaN|undefined/u);
  });
});

describe('after the run (L2, L6)', () => {
  const compare = (prediction: string) => {
    const model = makeDemo();
    model.apply(demo.predict.end);
    const { option, words } = demo.predict.outcome(model);
    const state = {
      ...startState(),
      stage: 'compare' as const,
      prediction,
      confidence: 'certain' as const,
      outcome: option,
    };
    return render(
      <Compare
        sim="demo"
        options={demo.predict.options}
        tasks={demo.tasks.length}
        outcomeWords={words}
        state={state}
        system="si"
        byHand
        send={() => undefined}
      />,
    );
  };
  it('sets prediction and outcome side by side with the model’s numbers', () => {
    const html = compare('holds');
    expect(html).toContain('You said, certain');
    expect(html).toContain('It still holds.');
    // 600 - 0.25 x 0.25 x 150 x 40 = 225, by hand.
    expect(html).toContain('225\u00a0kPa is left');
  });
  it('explains the answer given, the one that came true, and the others', () => {
    const wrong = compare('holds');
    for (const { why } of demo.predict.options) expect(wrong).toContain(why);
    expect(compare('slips')).toContain('As you said.');
    expect(compare('slips')).toContain('The other answers');
  });
});

describe('a widget’s own check', () => {
  it('passes the demonstration', () => expect(simProblems(demo, makeDemo)).toEqual([]));
  it('finds what the learning rules forbid', () => {
    const firstTwo = demo.tasks.slice(0, 2);
    const broken = {
      ...demo,
      predict: { ...demo.predict, outcome: () => ({ option: 'melts', words: '' }) },
      tasks: firstTwo.map((task, i) =>
        i === 0
          ? { ...task, controls: ['temp', 'crack', 'push', 'open'] as const }
          : { ...task, start: { temp: -20, crack: 0.2 } },
      ),
    };
    const problems = simProblems(broken, makeDemo).join('\n');
    expect(problems).toContain('"melts", which is not an option');
    expect(problems).toContain('There are 2 tasks');
    expect(problems).toContain('4 live controls');
    expect(problems).toContain('done before anything is moved');
  });
});

describe('the link of a simulation', () => {
  it('brings another model to the same state', () => {
    const model = makeDemo();
    const schema = linkSchema(demo, currentValues(demo, model));
    model.apply({ temp: 85, crack: 0.13, grade: 'thick', open: false });
    const link = parseLink(schema, printLink(schema, currentValues(demo, model)));
    expect(link.notes).toEqual([]);
    expect(link.values).toEqual({ temp: 85, crack: 0.13, push: 600, grade: 'thick', open: false });
  });
});

describe('the sweep of a run', () => {
  it('starts at the start, ends exactly at the end, and never turns back', () => {
    const from = { temp: 20, grade: 'thin' };
    const to = { temp: 110.1, grade: 'thick' };
    expect(between(from, to, 0)).toEqual({ temp: 20, grade: 'thick' });
    expect(between(from, to, 1)).toEqual(to);
    expect(between(from, to, 7)).toEqual(to);
    let last = 20;
    for (let i = 0; i <= 100; i += 1) {
      const { temp } = between(from, to, i / 100);
      expect(temp).toBeGreaterThanOrEqual(last);
      last = temp ?? 0;
    }
  });
});
