import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { passageText, type Asked } from '../../src/quiz/asked.ts';
import { grade, type Outcome } from '../../src/quiz/grade.ts';
import { resultOf } from '../../src/quiz/result.ts';
import { best, worst } from './given.ts';
import { ask, forms, gap, match, order, shortCase, spot } from './sample.ts';

const outcome = (q: Asked, ...ids: readonly string[]): Outcome => {
  const graded = grade(q, { kind: 'chosen', ids }, 2);
  if (!graded.ok) throw new Error(graded.sentence);
  return graded.outcome;
};
const sentence = (q: Asked, ...ids: readonly string[]): string => {
  const graded = grade(q, { kind: 'chosen', ids }, 2);
  return graded.ok ? 'counted' : graded.sentence;
};
const notes = ({ explained }: Outcome): Record<string, string> =>
  Object.fromEntries(explained.map(({ id, note = [] }) => [id, passageText(note, 'si')]));

test('the best answer is right, the worst is wrong, and every line is explained by both', () => {
  for (const q of forms.map(ask)) {
    for (const [given, right] of [
      [best(q), true],
      [worst(q), false],
    ] as const) {
      const graded = grade(q, given, 3);
      if (!graded.ok) throw new Error(graded.sentence);
      expect([graded.outcome.right, graded.outcome.marks], q.id).toEqual([right, right ? 3 : -6]);
      for (const one of graded.outcome.explained) {
        expect(passageText(one.why, 'us').length, q.id).toBeGreaterThan(10);
        if (q.kind !== 'case') expect(one.note, q.id).toBeDefined();
      }
    }
  }
});

describe('order', () => {
  const q = ask(order);
  test('two that may swap are right both ways, anything else is wrong', () => {
    expect(outcome(q, 'chock', 'codes', 'level', 'drive').right).toBe(true);
    const rights = new Set(['chock,level,codes,drive', 'chock,codes,level,drive']);
    fc.assert(
      fc.property(
        fc.shuffledSubarray(['chock', 'level', 'codes', 'drive'], { minLength: 4 }),
        (ids) => {
          expect(outcome(q, ...ids).right).toBe(rights.has(ids.join()));
        },
      ),
    );
  });
  test('one step too far down leaves the rest standing right, and is told apart', () => {
    const out = outcome(q, 'level', 'codes', 'drive', 'chock');
    expect(out.verdict).toBe('Not yet. 3 of the 4 steps stand in the right order.');
    expect(resultOf(out)).toBe('partial');
    expect(out.explained.map(({ id }) => id)).toEqual(['chock', 'level', 'codes', 'drive']);
    expect(notes(out)).toMatchObject({
      chock: 'You had this one at place 4',
      drive: 'You have this one where it belongs',
    });
  });
  test('back to front is wrong', () => {
    expect(resultOf(outcome(q, 'drive', 'codes', 'level', 'chock'))).toBe('wrong');
  });
  test('nothing moved is no answer; a step twice or a stranger is our mistake', () => {
    expect(sentence(q)).toContain('None has been moved');
    expect(() => outcome(q, 'chock', 'chock', 'level', 'codes')).toThrow('each once');
    expect(() => outcome(q, 'chock', 'level', 'codes', 'sing')).toThrow('no "sing"');
  });
});

describe('match', () => {
  const q = ask(match);
  test('says how many pairs are right and with what a wrong one was paired', () => {
    const out = outcome(q, 'both:both', 'one:extra', 'all:all');
    expect(out.right).toBe(false);
    expect(out.verdict).toBe('Not yet. 2 of the 3 pairs are right.');
    expect(notes(out)).toMatchObject({
      both: 'You paired this one right',
      one: 'You paired it with: Park pawl',
    });
    expect(passageText(out.explained[1]?.words ?? [], 'si')).toBe(
      'Reverse alone goes with: Reverse piston',
    );
    expect(out.explained.at(-1)).toMatchObject({ id: 'extra', correct: false, taken: true });
  });
  test('right in all, each pair and what goes with nothing is told whole', () => {
    const out = outcome(q, 'both:both', 'one:one', 'all:all');
    expect(out.verdict).toBe('Right, all 3 of them.');
    expect(
      out.explained.map(({ words, why, note = [], correct, taken }) => [
        ...[words, why, note].map((passage) => passageText(passage, 'si')),
        correct,
        taken,
      ]),
    ).toEqual([
      [
        'Drive and Reverse goes with: Shared seal',
        'Both are fed through it.',
        'You paired this one right',
        true,
        true,
      ],
      [
        'Reverse alone goes with: Reverse piston',
        'Only Reverse has it.',
        'You paired this one right',
        true,
        true,
      ],
      [
        'Every range goes with: Pump',
        'It feeds all of them.',
        'You paired this one right',
        true,
        true,
      ],
      [
        'Park pawl',
        'It holds the car and slips nowhere.',
        'This one goes with nothing here',
        true,
        false,
      ],
    ]);
  });
  test('without anything to spare, the pairs alone are told', () => {
    const { extra, ...bare } = match;
    const out = outcome(ask(bare), 'both:both', 'one:all', 'all:one');
    expect(extra).toBeDefined();
    expect(out.explained.map(({ id, correct }) => [id, correct])).toEqual([
      ['both', true],
      ['one', false],
      ['all', false],
    ]);
    expect(out.verdict).toBe('Not yet. 1 of the 3 pairs are right.');
  });
  test('an open line is asked for; a stranger is our mistake', () => {
    expect(sentence(q)).toContain('3 lines have no partner');
    expect(sentence(q, 'both:both', 'all:one')).toContain('One line has no partner');
    expect(() => outcome(q, 'both:moon')).toThrow('no "moon"');
    expect(() => outcome(q, 'moon:both')).toThrow('no "moon"');
  });
});

describe('spot', () => {
  test('the unsafe step, and every other one said to be right', () => {
    const out = outcome(ask(spot), 'lift');
    expect(out.right).toBe(false);
    expect(notes(out)).toEqual({
      lift: 'You pointed at this one, and it is right',
      under: 'This is the one to find',
      engine: 'This step is right',
    });
    expect(out.explained.filter(({ taken }) => taken).map(({ id }) => id)).toEqual(['lift']);
    expect(resultOf(out)).toBe('wrong');
    expect(sentence(ask(spot))).toBe('Point at one step first.');
    expect(() => outcome(ask(spot), 'engine', 'moon')).toThrow('no "moon"');
  });
  test('the missing step is told in its place', () => {
    const out = outcome(ask(gap), 'lift');
    expect(out.right).toBe(true);
    expect(out.explained.map(({ id }) => id)).toEqual(['lift', 'missing', 'under', 'engine']);
    expect(notes(out)['missing']).toBe('This step was missing, and you found the place');
    expect(notes(outcome(ask(gap), 'under'))['missing']).toBe('This step was missing here');
    expect(outcome(ask(gap), 'under').verdict).toContain('after step 2');
    expect(outcome(ask(gap), 'engine').verdict).toContain('after step 3');
    expect(outcome(ask(gap), 'start').verdict).toContain('before the first step');
    expect(sentence(ask(gap))).toBe('Point at one place first.');
  });
  test('a gap above the first step', () => {
    const { missing } = gap;
    if (missing === undefined) throw new Error('no sample');
    const q = ask({ ...gap, missing: { ...missing, after: ['start'] } });
    expect(outcome(q, 'start').explained[0]?.id).toBe('missing');
    expect(() => outcome(ask(spot), 'start')).toThrow('no "start"');
  });
});

describe('case', () => {
  const q = ask(shortCase);
  test('minutes spent stand beside the cheapest that decide', () => {
    const out = outcome(q, 'tap', 'line', 'seal');
    expect(out.right).toBe(true);
    // By hand: a gauge (12) and warming (20) once, and two minutes for each of two readings; a tool (3), warming and two.
    expect(out.verdict).toBe(
      'Right. You spent 36 minutes on readings. The cheapest that decide take 25.',
    );
    expect(notes(out)).toMatchObject({
      log: 'You left this out, and it is one of the cheapest that decide',
      tap: 'You read this',
    });
    expect(passageText(out.explained.at(-1)?.words ?? [], 'us')).toBe('The line: 58 psi');
  });
  test('exactly the cheapest is enough, and a reading is never what was named', () => {
    const out = outcome(q, 'log', 'seal');
    expect(out.verdict).toBe(
      'Right. You spent 25 minutes on readings. The cheapest that decide take 25.',
    );
    expect(out.explained.filter(({ taken }) => taken).map(({ id }) => id)).toEqual(['seal']);
  });
  test('a wrong name is wrong, however much was read', () => {
    const out = outcome(q, 'log', 'tap', 'line', 'rings');
    expect(out.right).toBe(false);
    expect(resultOf(out)).toBe('wrong');
  });
  test('it may be named without a reading, and not without a name', () => {
    expect(outcome(q, 'seal').verdict).toMatch(/^Right, but .* You spent 0 minutes/);
    expect(sentence(q)).toBe('Name what is wrong with it first.');
    expect(sentence(q, 'log')).toBe('Name what is wrong with it first.');
    expect(() => outcome(q, 'moon', 'seal')).toThrow('no "moon"');
  });
});
