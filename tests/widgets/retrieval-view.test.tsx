import { render } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { Ask } from '../../src/widgets/retrieval/Ask.tsx';
import { Explain } from '../../src/widgets/retrieval/Explain.tsx';
import { Over } from '../../src/widgets/retrieval/Over.tsx';
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

test('the end names certainty that was misplaced and the objectives to come back to', () => {
  const html = render(
    <Over
      summary={{
        asked: 2,
        right: 1,
        marks: -5,
        best: 6,
        calibration: [
          { certainty: 1, said: 1, right: 1 },
          { certainty: 2, said: 0, right: 0 },
          { certainty: 3, said: 1, right: 0 },
        ],
        again: [{ id: 'q', certainty: 3, objectives: ['a-1'] }],
      }}
      objectives={[{ id: 'a-1', text: 'Tell a gap from a hole.' }]}
    />,
  );
  expect(html).toContain('1 of 2 right, −5 of 6 marks.');
  expect(html).toContain('You were certain and wrong once');
  expect(html).toContain('<li>Tell a gap from a hole.</li>');
  expect(html).toContain('not used');
});
