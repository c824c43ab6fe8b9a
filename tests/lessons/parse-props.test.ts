import { expect, test } from 'vitest';
import { parseProps } from '../../src/lessons/parse-props.ts';

const page = new URL('http://localhost/lessons/x/');
const parse = (props: Record<string, unknown>) => parseProps('Task', props, page);

test('good props pass', () => {
  expect(parse({ kind: 'finish', title: 'Try it' })).toEqual({ kind: 'finish', title: 'Try it' });
});

test.each([
  [
    { kind: 'finish', title: 'Try it', weather: 1 },
    '<Task> on /lessons/x/: "weather" is not known here. There are: kind, title.',
  ],
  [{ title: 'Try it' }, '"kind" is missing. Choose one of: finish, diagnose, decide.'],
  [{ kind: 'decided', title: 'Try it' }, '"kind" is "decided". Did you mean "decide"?'],
  [{ kind: 'finish', title: 3 }, '"title" must be text, and is 3.'],
])('%o is refused in words', (props, sentence) => {
  expect(() => parse(props)).toThrow(sentence);
});

test('a tag without props says so', () => {
  expect(() => parseProps('Recap', { loud: true }, page)).toThrow(
    '<Recap> on /lessons/x/: "loud" is not known here. It takes none.',
  );
});
