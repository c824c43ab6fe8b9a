import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { certainties } from '../../src/quiz/certainty.ts';
import { Ask } from '../../src/widgets/retrieval/Ask.tsx';
import { Explain } from '../../src/widgets/retrieval/Explain.tsx';
import { Over } from '../../src/widgets/retrieval/Over.tsx';
import { words } from '../../src/widgets/retrieval/player/words.en.ts';
import { judgement } from '../../src/widgets/retrieval/Sureness.tsx';
import { retrievalModel } from '../../src/widgets/retrieval/model.ts';
import { Offer } from '../../src/widgets/retrieval/Offer.tsx';
import { offerWords } from '../../src/widgets/retrieval/offer-words.ts';
import { asked } from '../quiz/sample.ts';

const only = (id: string) => asked.filter((q) => q.id === id);

test('the server shows the offer, with a button that waits for the script', () => {
  const html = render(<Offer lesson="a" address="/questions/a.json" words={offerWords(4, 4)} />);
  expect(html).toContain('4 of the 4 questions of this lesson.');
  expect(html).toMatch(/<button[^>]*disabled[^>]*>Cover the lesson and start/);
  expect(html).not.toContain('The first thing');
});

test('a question shows its options, the price of certainty, and no answer', () => {
  const model = retrievalModel(only('q-single'));
  model.start(1);
  const [q] = only('q-single');
  if (q === undefined) throw new Error('no sample');
  const html = render(<Ask model={model} asked={q} id="t" />);
  expect(html.match(/type="radio"/g)).toHaveLength(3 + 3);
  expect(html).toContain('right +3, wrong −6');
  expect(html).not.toContain('Because option');
});

test('a number field names both units and says what was wrong beside it', () => {
  const model = retrievalModel(only('q-number'));
  model.start(1);
  model.type('lots');
  model.check('us');
  const [q] = only('q-number');
  if (q === undefined) throw new Error('no sample');
  const html = render(<Ask model={model} asked={q} id="t" />);
  expect(html).toContain('<span class="u-si">kPa</span><span class="u-us">psi</span>');
  expect(html).toContain('“lots”');
  expect(html).toContain('value="lots"');
  expect(html).toContain('aria-invalid="true"');
});

test('after a wrong answer every option is explained in words, in both unit systems', () => {
  const model = retrievalModel(only('q-number'));
  model.start(1);
  model.type('1600');
  model.sure(3);
  model.check('si');
  const answer = model.last.value;
  if (answer === undefined) throw new Error('not answered');
  const html = render(<Explain model={model} answer={answer} />);
  expect(html).toContain('Certain: −6 marks.');
  expect(html).toContain('You wrote “1600”.');
  expect(html.match(/<li/g)).toHaveLength(3);
  expect(html).toContain('Your number is this one');
  expect(html).toContain('232\u00a0psi');
});

const calibration = (...rows: readonly (readonly [said: number, right: number])[]) =>
  rows.map(([said, right], at) => ({ certainty: certainties[at] ?? 1, said, right }));

function round() {
  const model = retrievalModel(only('q-single'));
  model.start(1);
  const { value: session } = model.session;
  if (session === undefined) throw new Error('no session');
  return session;
}

test('the end names certainty that was misplaced, and leads to what teaches it', () => {
  const html = render(
    <Over
      summary={{
        asked: 2,
        right: 1,
        marks: -5,
        best: 6,
        calibration: calibration([1, 1], [0, 0], [1, 0]),
        again: [{ id: 'q', certainty: 3, objectives: ['a-1'] }],
      }}
      objectives={[{ id: 'a-1', text: 'Tell a gap from a hole.', href: '#two-leaks' }]}
      session={round()}
    />,
  );
  expect(html).toContain('1 of 2 right. You lost 5 marks. The most you can win is 6.');
  expect(html).toContain('You were certain and wrong once');
  expect(html).toContain('<a class="way" href="#two-leaks">Tell a gap from a hole.</a>');
  expect(html).toContain('not used');
});

test('marks below zero are lost, and others are earned out of what there was', () => {
  const round = { right: 1, asked: 6, best: 18 };
  expect(words.result({ ...round, marks: -1 })).toBe(
    '1 of 6 right. You lost 1 mark. The most you can win is 18.',
  );
  expect(words.result({ ...round, marks: 0 })).toBe('1 of 6 right, 0 of 18 marks.');
  expect(words.result({ ...round, marks: 7 })).toBe('1 of 6 right, 7 of 18 marks.');
});

describe('what a round says of somebody', () => {
  const says = (
    rows: readonly (readonly [said: number, right: number])[],
    allRight = false,
  ): string => judgement(calibration(...rows), allRight);

  test.each([
    [
      'certain and wrong, whatever else',
      [
        [2, 0],
        [3, 0],
        [1, 0],
      ],
      'You were certain and wrong once',
    ],
    [
      'certain and wrong more than once',
      [
        [0, 0],
        [0, 0],
        [6, 2],
      ],
      'You were certain and wrong 4 times',
    ],
    [
      'fairly sure of all, one right',
      [
        [0, 0],
        [6, 1],
        [0, 0],
      ],
      'You were fairly sure and wrong 5 times',
    ],
    [
      'one of each',
      [
        [1, 0],
        [1, 0],
        [4, 4],
      ],
      'You were fairly sure and wrong once',
    ],
    [
      'guesses right, and fairly sure and wrong',
      [
        [1, 1],
        [5, 0],
        [0, 0],
      ],
      'You were fairly sure and wrong 5 times',
    ],
    [
      'wrong mostly where it was a guess',
      [
        [3, 1],
        [3, 2],
        [0, 0],
      ],
      'You knew where you were not sure',
    ],
    [
      'wrong only where it was a guess',
      [
        [2, 1],
        [2, 2],
        [2, 2],
      ],
      'You knew where you were not sure',
    ],
  ] as const)('%s', (_, rows, sentence) => {
    expect(says(rows)).toMatch(new RegExp(`^${sentence}\\b`, 'u'));
  });

  test('nothing wrong', () => {
    expect(
      says(
        [
          [1, 1],
          [2, 2],
          [3, 3],
        ],
        true,
      ),
    ).toBe(words.rightGuesses);
    expect(
      says(
        [
          [0, 0],
          [3, 3],
          [3, 3],
        ],
        true,
      ),
    ).toBe(words.nothingWrong);
  });

  test('nothing wrong and some left open is no praise for doubt', () => {
    expect(
      says([
        [0, 0],
        [3, 3],
        [0, 0],
      ]),
    ).toBe(words.openLeft);
  });
});
