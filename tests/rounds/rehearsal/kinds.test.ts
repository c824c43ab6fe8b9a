import { describe, expect, test } from 'vitest';
import { passageText, type Varied } from '../../../src/quiz/asked.ts';
import type { QuestionSet } from '../../../src/quiz/question-set.ts';
import { answerAll, device, putDown, sets, type Visit } from './device.ts';

const KINDS = ['single', 'several', 'order', 'match', 'spot', 'case', 'number'] as const;
const kindOf = new Map(
  sets.flatMap(({ questions }) => questions.map(({ id, kind }) => [id, kind] as const)),
);
const placeOf = ({ rehearsal }: Visit, kind: (typeof KINDS)[number]): number =>
  rehearsal.value?.items.findIndex(({ id }) => kindOf.get(id) === kind) ?? -1;
const shown = ({ player }: Visit) => {
  const asked = player.value?.question.value;
  if (asked === undefined) throw new Error('No question is on show.');
  return asked;
};

describe.each(KINDS)('a question of the kind %s', (kind) => {
  test.each([true, false])(
    'is taken up after a reload as it was left, and graded: %s',
    async (right) => {
      const { visit, answers } = device();
      const before = await visit();
      await before.begin();
      const place = placeOf(before, kind);
      before.goTo(place);
      const was = shown(before);
      putDown(before, right, 3);
      // The tab dies here.
      const after = await visit();
      await after.show({ at: 'question' });
      expect(shown(after)).toEqual(was);
      expect(after.player.value?.given('us')).toEqual(before.player.value?.given('us'));
      expect(after.standings.value[place]).toBe('answered');
      await after.handIn();
      expect(answers.map(({ answer }) => [answer.item, answer.result, answer.certainty])).toEqual([
        [was.id, right ? 'right' : 'wrong', 3],
      ]);
    },
  );

  test('can be changed after others were on show', async () => {
    const { visit, answers } = device();
    const model = await visit();
    await model.begin();
    const place = placeOf(model, kind);
    model.goTo(place);
    putDown(model, false);
    model.goTo(place === 0 ? 1 : 0);
    model.goTo(place);
    putDown(model, true);
    await model.handIn();
    expect(answers.map(({ answer }) => answer.result)).toEqual(['right']);
  });
});

describe('half an answer', () => {
  test.each([
    ['match', ['both:both'], /2 lines have no partner/u],
    ['case', ['log'], /./u],
  ] as const)(
    'to the kind %s is kept, asked about at its place, and counts as open',
    async (kind, ids, said) => {
      const { visit, answers } = device();
      const before = await visit();
      await before.begin();
      const place = placeOf(before, kind);
      before.goTo(place);
      before.player.value?.give(ids);
      before.player.value?.sure(2);
      expect(before.onward('us')).toBe(false);
      expect(before.player.value?.complaint.value?.sentence).toMatch(said);
      const after = await visit();
      await after.show({ at: 'question' });
      expect(after.player.value?.ticked.value).toEqual(ids);
      expect(after.standings.value[place]).toBe('unread');
      await after.handIn();
      expect(answers).toEqual([]);
    },
  );
});

describe('a question that varies', () => {
  const variantsIn = (model: Visit): readonly (string | undefined)[] => {
    const items = model.rehearsal.value?.items ?? model.past.value[0]?.items ?? [];
    return items
      .filter(({ id }) => id.endsWith('-0'))
      .map(({ variant }) => variant)
      .sort();
  };
  const stemOf = (model: Visit): string => passageText(shown(model).stem, 'si');

  test('is the same after a reload, answered and unanswered, and the log says which it was', async () => {
    const { visit, answers } = device();
    const before = await visit();
    await before.begin();
    before.goTo(placeOf(before, 'single'));
    const stem = stemOf(before);
    const { variant, id } = shown(before);
    const again = await visit();
    await again.show({ at: 'question' });
    expect(stemOf(again)).toBe(stem);
    putDown(again, true);
    const after = await visit();
    await after.show({ at: 'question' });
    expect(stemOf(after)).toBe(stem);
    await after.handIn();
    expect(answers.map(({ answer }) => [answer.item, answer.variant, answer.result])).toEqual([
      [id, variant, 'right'],
    ]);
  });

  test('comes in every variant over the seeds', async () => {
    const stems = new Set<string>();
    for (let seed = 0; seed < 60; seed += 1) {
      const { visit, state } = device();
      state.now += seed * 86_400_000;
      const model = await visit();
      await model.begin();
      model.goTo(placeOf(model, 'single'));
      stems.add(stemOf(model));
    }
    expect(stems.size).toBe(6);
  });

  test('says which it was in the result, open ones too, and is told as that', async () => {
    const { visit } = device();
    const model = await visit();
    await model.begin();
    putDown(model, true);
    await model.handIn();
    const [one] = model.past.value;
    const variants = variantsIn(model);
    expect(variants.every((variant) => /^[a-f]$/u.test(variant ?? ''))).toBe(true);
    const later = await visit();
    await later.show({ at: 'result', begun: one?.begun ?? 0 });
    expect(variantsIn(later)).toEqual(variants);
    for (const item of one?.items ?? []) {
      expect(one && later.askedOf(one, item)?.variant).toBe(item.variant);
      expect(one && later.askedOf(one, item)?.id).toBe(item.id);
    }
    const others = one?.items.filter(({ id }) => !id.endsWith('-0'));
    expect(others?.every(({ variant }) => variant === undefined)).toBe(true);
  });

  /** A visit to a site whose questions have been changed since. */
  const changed = async (
    { visit, around }: ReturnType<typeof device>,
    change: (question: Varied) => Varied,
  ) => {
    const got: readonly QuestionSet[] = sets.map((set) => ({
      ...set,
      questions: set.questions.map(change),
    }));
    return visit({
      loadPlay: async () => ({
        ...(await around.loadPlay()),
        loadSets: () => Promise.resolve({ got }),
      }),
    });
  };

  test('stays what it was when the site gets more variants meanwhile', async () => {
    const one = device();
    const before = await one.visit();
    await before.begin();
    before.goTo(placeOf(before, 'single'));
    const was = shown(before);
    putDown(before, true);
    const after = await changed(one, ({ others, ...first }) =>
      others === undefined ? first : { ...first, variant: 'new', others: [...others, first] },
    );
    await after.show({ at: 'question' });
    expect(shown(after)).toEqual(was);
    await after.handIn();
    expect(one.answers.map(({ answer }) => answer.result)).toEqual(['right']);
  });

  test('is left out when its variant is gone from the site, as a question that is gone', async () => {
    const one = device();
    const before = await one.visit();
    await before.begin();
    before.goTo(placeOf(before, 'single'));
    const { id } = shown(before);
    putDown(before, true);
    const after = await changed(one, ({ others, ...first }) =>
      others === undefined
        ? first
        : { ...first, variant: 'new', others: [{ ...first, variant: 'newer' }] },
    );
    await after.show({ at: 'all' });
    expect(after.rehearsal.value?.items.map((item) => item.id)).not.toContain(id);
    expect(after.rehearsal.value?.items).toHaveLength(23);
  });

  test('is told of no more when its variant is gone after it was handed in', async () => {
    const one = device();
    const before = await one.visit();
    await before.begin();
    answerAll(before, () => true);
    await before.handIn();
    const [done] = before.past.value;
    const after = await changed(one, ({ others, ...first }) =>
      others === undefined ? first : { ...first, variant: 'new' },
    );
    await after.show({ at: 'result', begun: done?.begun ?? 0 });
    const told = done?.items.map((item) => after.askedOf(done, item)?.id);
    expect(told?.filter((id) => id === undefined)).toHaveLength(3);
  });
});
