// Pages as somebody has left them in the middle of work: what is only there once something was typed, taken or asked.
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import type { QuestionSet } from '../../src/quiz/question-set.ts';
import { classFile } from '../rounds/class/class-files.ts';
import { expect } from '../e2e/fixtures.ts';
import { giveAnswer } from '../e2e/give-answer.ts';

type Look = (state: string) => Promise<void>;
export interface State {
  readonly name: string;
  readonly reach: (page: Page, look: Look) => Promise<void>;
}

async function reading(page: Page, id: string, text: string): Promise<void> {
  await page.getByLabel('Test', { exact: true }).selectOption(id);
  await page.getByLabel('It read').fill(text);
  await page.getByLabel('It read').press('Enter');
}
async function threeReadings(page: Page): Promise<void> {
  await reading(page, 'clutch.forward.700.hot', '25');
  await reading(page, 'clutch.reverse.700.hot', '193 kPa');
  await reading(page, 'clutch.high.700.hot', '57 psi');
}
const causes = (page: Page) => page.locator('.next-causes li').first();

/** Questions of every kind there is, from the lessons that have them. */
const SETS = ['outside-first', 'live-data', 'air-on-the-bench', 'pump-and-regulator'];
const KINDS = ['single', 'several', 'number', 'order', 'match', 'spot', 'case'];
const lesson = 'live-data';
const setOf = (id: string) =>
  JSON.parse(readFileSync(`dist/questions/${id}.json`, 'utf8')) as QuestionSet;
function oneOfEachKind() {
  const all = SETS.flatMap((id) => setOf(id).questions);
  const first = KINDS.map((kind) => all.find((question) => question.kind === kind));
  const chart = all.find(({ chart }) => chart !== undefined);
  return [...new Set([...first, chart])].flatMap((one) => (one ? [one] : []));
}

export const STATES: readonly State[] = [
  {
    name: 'the planner with three readings',
    reach: async (page, look) => {
      await page.goto('/measure/');
      await page.locator('#next-test').scrollIntoViewIfNeeded();
      await expect(page.locator('#next-test')).toHaveAttribute('data-ready', 'true');
      await threeReadings(page);
      await expect(causes(page)).toContainText('Split transfer seal');
      await look('with readings');
      await reading(page, 'line.park.700.hot', 'much');
      await expect(page.getByRole('alert').filter({ hasText: 'much' })).toBeVisible();
      await look('with a reading that cannot be taken');
    },
  },
  {
    name: 'a job sheet',
    reach: async (page, look) => {
      await page.goto('/measure/jobs/');
      await expect(page.locator('#jobs')).toHaveAttribute('data-ready', 'true');
      await page.getByLabel('Short label').fill('Bay 3');
      await page.getByLabel('Short label').press('Enter');
      await expect(page.getByLabel('Test', { exact: true })).toBeVisible();
      await look('new');
      await threeReadings(page);
      await expect(causes(page)).toContainText('Split transfer seal');
      await look('filled');
    },
  },
  {
    name: 'the log reader with a log',
    reach: async (page, look) => {
      await page.goto('/measure/log/');
      await expect(page.locator('#log-reader')).toHaveAttribute('data-ready', 'true');
      await page.getByRole('button', { name: 'Slips in Drive and Reverse once hot' }).click();
      await expect(page.locator('.log-findings button').first()).toBeVisible();
      await look('read');
      await page.locator('.log-findings button').first().click();
      await expect(page.locator('#log-place-chart svg')).toBeVisible();
      await look('at a finding');
    },
  },
  {
    name: 'a transmission of one’s own',
    reach: async (page, look) => {
      await page.goto('/measure/transmission/');
      await expect(page.locator('#own-sheets')).toHaveAttribute('data-ready', 'true');
      await look('as it opens');
    },
  },
  {
    name: 'a practice case',
    reach: async (page, look) => {
      await page.goto('/practise/case/?case=fine-cold-revs-hot');
      await expect(page.locator('.case-bar')).toBeVisible();
      await look('brought in');
      await page.getByRole('button', { name: 'In which ranges?' }).click();
      const fold = page.locator('details.case-fold', {
        has: page.locator('summary', { hasText: /^Line pressure$/ }),
      });
      await fold.locator('summary').click();
      await fold.getByRole('button', { name: /Drive, 700 rpm, hot/ }).click();
      await fold.getByRole('button', { name: 'Do this test' }).click();
      await expect(page.locator('.case-open .case-figure')).toBeVisible();
      await look('measured');
      await page.getByRole('link', { name: 'Say what it is' }).click();
      await page.getByLabel('What is wrong').selectOption('transferSeal');
      await page.getByRole('button', { name: 'Hand it in' }).click();
      await look('handed in');
    },
  },
  {
    name: 'questions of every kind',
    reach: async (page, look) => {
      const all = oneOfEachKind();
      expect(new Set(all.map(({ kind }) => kind)).size).toBe(KINDS.length);
      // A round has six at the most.
      for (const questions of [all.slice(0, 4), all.slice(4)]) {
        await page.route(`**/questions/${lesson}.json`, (route) =>
          route.fulfill({ json: { ...setOf(lesson), questions } }),
        );
        await page.goto(`/lessons/${lesson}/`);
        const button = page.getByRole('button', { name: 'Cover the lesson and start' });
        await button.scrollIntoViewIfNeeded();
        await expect(button).toBeEnabled();
        await button.press('Enter');
        for (let place = 1; place <= questions.length; place += 1) {
          await expect(
            page.getByRole('heading', { name: `Question ${place} of ${questions.length}` }),
          ).toBeVisible();
          await giveAnswer(page);
          await look(`question ${place}, asked`);
          await page.getByRole('radio', { name: 'Certain' }).press('Space');
          await page.getByRole('button', { name: 'Check my answer' }).press('Enter');
          await expect(page.locator('.retrieval-verdict')).toBeVisible();
          await look(`question ${place}, answered`);
          await page.getByRole('button', { name: /Next question|See how it went/ }).press('Enter');
        }
        await look('over');
        await page.unroute(`**/questions/${lesson}.json`);
      }
    },
  },
  {
    name: 'the rehearsal',
    reach: async (page, look) => {
      await page.goto('/practise/rehearsal/');
      await page.getByRole('button', { name: 'Begin', exact: true }).press('Enter');
      await expect(page.getByRole('heading', { name: 'Question 1 of 50' })).toBeVisible();
      await giveAnswer(page);
      await look('a question');
      await page.getByRole('link', { name: 'All questions' }).press('Enter');
      await expect(page.getByRole('heading', { name: 'All 50 questions' })).toBeVisible();
      await look('all questions');
    },
  },
  {
    name: 'the class with a learner',
    reach: async (page, look) => {
      const [first, second] = setOf(lesson).questions;
      await page.goto('/practise/class/');
      await expect(page.getByText('Nobody yet.')).toBeVisible();
      await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
      await page.getByLabel(/^Choose the files of your learners/).setInputFiles({
        name: 'ana.json',
        mimeType: 'application/json',
        buffer: Buffer.from(
          classFile('Ana', [`${first?.id ?? ''} wrong certain`, `${second?.id ?? ''} right guess`]),
        ),
      });
      await expect(page.getByRole('textbox', { name: 'Name on this page' })).toHaveCount(1);
      await look('one learner');
    },
  },
  {
    name: 'today’s round',
    reach: async (page, look) => {
      await page.goto('/practise/today/');
      await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
      await look('offered');
    },
  },
  {
    name: 'a question sheet',
    reach: async (page, look) => {
      await page.goto('/practise/sheet/?lessons=all&count=10&units=us&seed=friday');
      await expect(page.locator('.paper')).toBeVisible();
      await look('made');
    },
  },
  {
    name: 'the search',
    reach: async (page, look) => {
      await page.goto('/search/?q=crack');
      await expect(page.locator('main li').first()).toBeVisible();
      await look('with results');
    },
  },
  {
    name: 'a term explained',
    reach: async (page, look) => {
      await page.goto('/lessons/hot-fluid-thin-fluid/');
      const term = page.locator('main .term').first();
      await term.scrollIntoViewIfNeeded();
      await term.click();
      await look('open');
    },
  },
];
