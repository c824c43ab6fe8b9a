/**
 * The packages for other systems, taken into an item player that is not ours: @citolab/qti-components, which renders and
 * scores QTI 3.0. What it makes of an answer must be what grading here makes of it.
 */
import { createRequire } from 'node:module';
import { expect, test, type Page } from '@playwright/test';
import { strFromU8, unzipSync } from 'fflate';
import { quantityOf } from '../../src/quantity/by-name.ts';
import { toShown } from '../../src/quantity/quantity.ts';
import { named } from '../../src/qti/names.ts';
import type { Asked, AskedNumber } from '../../src/quiz/asked.ts';
import type { BankIndex } from '../../src/quiz/bank-index.ts';
import { grade, type Given } from '../../src/quiz/grade.ts';
import { readQuestionSet } from '../../src/quiz/question-set.ts';
import { best, worst } from '../quiz/given.ts';

const player = createRequire(import.meta.url).resolve(
  '@citolab/qti-components/cdn/index.global.js',
);

type Response = string | readonly string[];
interface Try {
  readonly xml: string;
  readonly response: Response;
}
interface Scored {
  readonly score: string;
  readonly feedback: string;
  /** What the feedback that opened says, and how many opened. */
  readonly told: string;
  readonly open: number;
}

/** An answer as the standard has it. */
function responseOf(asked: Asked, given: Given): Response {
  if (given.kind === 'typed') return given.text;
  const ids = given.ids.map(named);
  switch (asked.kind) {
    case 'match':
      return given.ids.map((pair) => pair.replace(/^(.*):(.*)$/u, 'from-$1 to-$2'));
    case 'several':
    case 'order':
      return ids;
    default:
      return ids[0] ?? '';
  }
}

/** Just inside and just outside of what is taken, and where each mistake leads. */
const edges = (asked: AskedNumber): Given[] =>
  [
    asked.value + 0.99 * asked.within,
    asked.value - 0.99 * asked.within,
    asked.value + 1.01 * asked.within,
    asked.value - 1.01 * asked.within,
    ...asked.distractors.map(({ value }) => value),
  ].map((metric) => ({
    kind: 'typed',
    text: String(toShown(metric, quantityOf(asked.quantity), 'us')),
    system: 'us',
  }));

/** So many of each kind, from all over the bank: all of them take a minute and a half. */
const SAMPLE = 6;
const sampled = (all: readonly Asked[]): readonly Asked[] =>
  [...new Set(all.map(({ kind }) => kind))].flatMap((kind) => {
    const some = all.filter((asked) => asked.kind === kind);
    return some.filter((_, i) => i % Math.ceil(some.length / SAMPLE) === 0);
  });

const answersTo = (asked: Asked): readonly Given[] =>
  asked.kind === 'number' ? edges(asked) : [best(asked), worst(asked)];

const scores = (page: Page, tries: readonly Try[]): Promise<readonly Scored[]> =>
  page.evaluate(async (all) => {
    interface Item extends HTMLElement {
      readonly updateComplete: Promise<unknown>;
      updateResponseVariable(identifier: string, value: Response): void;
      processResponse(): void;
      getOutcome(identifier: string): { readonly value: string };
    }
    const soon = () => new Promise((done) => setTimeout(done, 0));
    const scored: Scored[] = [];
    for (const { xml, response } of all) {
      const holder = document.createElement('qti-item');
      const container = document.createElement('item-container') as Item & { itemXML: string };
      holder.append(container);
      document.body.replaceChildren(holder);
      await container.updateComplete;
      container.itemXML = xml;
      let item: Item | null = null;
      for (let i = 0; item === null && i < 1000; i += 1) {
        await soon();
        item = container.shadowRoot?.querySelector<Item>('qti-assessment-item') ?? null;
      }
      if (item === null) throw new Error(`The player shows no item: ${xml.slice(0, 200)}`);
      await item.updateComplete;
      await soon();
      item.updateResponseVariable('RESPONSE', response);
      item.processResponse();
      await soon();
      const open = [...item.querySelectorAll('qti-modal-feedback')].filter(
        (feedback) => feedback.shadowRoot?.querySelector('dialog')?.open,
      );
      scored.push({
        score: item.getOutcome('SCORE').value,
        feedback: item.getOutcome('FEEDBACK').value,
        told: open.map(({ textContent }) => textContent).join(),
        open: open.length,
      });
    }
    return scored;
  }, tries);

test('a player of the standard scores each kind of question as it is graded here', async ({
  page,
  request,
}) => {
  const packed = unzipSync(await (await request.get('/questions/qti3-us.zip')).body());
  const index = (await (await request.get('/questions/index.json')).json()) as BankIndex;
  const sets = await Promise.all(
    index.lessons.map(async ({ id }) =>
      readQuestionSet(await (await request.get(`/questions/${id}.json`)).text(), id),
    ),
  );
  const questions = sampled(sets.flatMap((set) => set.questions));
  expect(new Set(questions.map(({ kind }) => kind)).size).toBeGreaterThanOrEqual(7);
  const tries = questions.flatMap((asked) =>
    answersTo(asked).map((given) => {
      const graded = grade(asked, given, 3);
      if (!graded.ok) throw new Error(graded.sentence);
      const xml = strFromU8(packed[`items/${asked.id}.xml`] ?? new Uint8Array());
      return { asked, xml, response: responseOf(asked, given), right: graded.outcome.right };
    }),
  );

  await page.setContent('<!doctype html><title>Player</title>');
  await page.addScriptTag({ path: player });
  const scored = await scores(page, tries);
  const wrong = scored.flatMap(({ score, open, told }, i) => {
    const tried = tries[i];
    if (tried === undefined) return ['more answers than were given'];
    const { asked, right, response } = tried;
    const fault =
      Number(score) !== Number(right)
        ? `scored ${score}`
        : open !== 1 || told.length < 30
          ? 'told nothing'
          : undefined;
    return fault === undefined ? [] : [`${asked.kind} ${asked.id} ${String(response)}: ${fault}`];
  });
  expect(wrong).toEqual([]);
  expect(new Set(scored.map(({ feedback }) => feedback))).toContain('mistake-1');
});
