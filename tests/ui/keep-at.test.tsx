import { render } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import type { Answer } from '../../src/storage/answer.ts';
import type { KeepStatus } from '../../src/storage/answers.ts';
import { keepAt } from '../../src/ui/keep-at.ts';
import { NotKept } from '../../src/ui/NotKept.tsx';

const answer: Answer = {
  kind: 'prediction',
  sim: 'fluid',
  option: 'ten',
  confidence: 'certain',
  right: true,
};
const says = (place: string): string => render(<NotKept place={place} />);
const silent = '<p class="muted" role="status"></p>';
const keepingAs = (status: KeepStatus) => () => Promise.resolve(status);

test('nothing is said of an answer that was kept', async () => {
  await keepAt('here', answer, keepingAs('ok'));
  expect(says('here')).toBe(silent);
});

test.each(['full', 'blocked', 'newer', 'busy', 'unloaded', 'failed'] as const)(
  'an answer that was not kept (%s) is told of in one sentence, at its place and no other, until the next',
  async (status) => {
    await keepAt('here', answer, keepingAs(status));
    expect(says('here')).toMatch(/could not be kept for practice: [^.]+\.<\/p>$/u);
    expect(says('there')).toBe(silent);
    await keepAt('here', answer, keepingAs('ok'));
    expect(says('here')).toBe(silent);
  },
);
