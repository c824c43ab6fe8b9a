import { describe, expect, test } from 'vitest';
import { answerAll, device, putDown, sets, type Visit } from './device.ts';

const order = ({ rehearsal }: Visit) => rehearsal.value?.items.map(({ id }) => id);

test('from the first question to the result, and the answers are in the log', async () => {
  const { visit, answers } = device();
  const model = await visit();
  expect(model.next.value).toHaveLength(24);
  await model.begin();
  expect(model.view.value).toEqual({ at: 'question' });
  answerAll(model, (place) => place % 4 !== 0);
  expect(model.view.value).toEqual({ at: 'all' });
  expect(new Set(model.standings.value)).toEqual(new Set(['answered']));
  expect(answers).toEqual([]);
  await model.handIn();
  // Of 24 places six are multiples of four.
  const [result] = model.past.value;
  expect(result?.items.filter((item) => item.result === 'right')).toHaveLength(18);
  expect(model.view.value).toEqual({ at: 'result', begun: result?.begun });
  expect(answers).toHaveLength(24);
  expect(answers.filter(({ answer }) => answer.result === 'right')).toHaveLength(18);
  expect(new Set(answers.map(({ answer }) => answer.item)).size).toBe(24);
  expect(result?.logged).toBe(true);
  expect(model.rehearsal.value).toBeUndefined();
});

describe('a rehearsal that was left', () => {
  test('has its questions, answers, flags, place and time after a reload', async () => {
    const { visit, state } = device();
    const before = await visit();
    await before.begin();
    putDown(before, true, 3);
    before.tick();
    state.now += 4000;
    before.tick();
    before.onward('si');
    before.flag();
    putDown(before, false, null);
    before.rest();
    // The tab dies here.
    const after = await visit();
    expect(order(after)).toEqual(order(before));
    expect(after.seconds.value).toBe(4);
    await after.show({ at: 'question' });
    expect(after.rehearsal.value?.place).toBe(1);
    expect(after.rehearsal.value?.items[0]?.certainty).toBe(3);
    expect(after.rehearsal.value?.items[1]?.flagged).toBe(true);
    expect(after.player.value?.ticked.value).toEqual(before.player.value?.ticked.value);
    expect(after.standings.value.slice(0, 3)).toEqual(['answered', 'unsure', 'open']);
    expect(after.player.value?.question.value).toEqual(before.player.value?.question.value);
  });

  test('loses the seconds since the clock was last written down, ten at most', async () => {
    const { visit, state } = device();
    const before = await visit();
    await before.begin();
    for (let second = 0; second <= 47; second += 1) {
      before.tick();
      state.now += 1000;
    }
    expect(before.seconds.value).toBe(47);
    const { seconds } = await visit();
    expect(seconds.value).toBeGreaterThan(37);
    expect(seconds.value).toBeLessThanOrEqual(47);
  });

  test('can be given up, and brought back while the page is open', async () => {
    const { visit } = device();
    const model = await visit();
    await model.begin();
    putDown(model, true);
    const was = order(model);
    model.drop();
    expect([model.rehearsal.value, model.view.value.at]).toEqual([undefined, 'before']);
    expect((await visit()).rehearsal.value).toBeUndefined();
    model.bringBack();
    expect(order(model)).toEqual(was);
    expect((await visit()).rehearsal.value?.items[0]?.certainty).toBe(2);
  });

  test('leaves out a question that is gone from the site', async () => {
    const { visit, around } = device();
    const before = await visit();
    await before.begin();
    const [first] = order(before) ?? [];
    const after = await visit({
      loadPlay: async () => ({
        ...(await around.loadPlay()),
        loadSets: () =>
          Promise.resolve({
            got: sets.map((set) => ({
              ...set,
              questions: set.questions.filter(({ id }) => id !== first),
            })),
          }),
      }),
    });
    await after.show({ at: 'question' });
    expect(order(after)).toEqual(order(before)?.slice(1));
    expect(after.player.value?.question.value).toBeDefined();
  });
});

describe('the clock', () => {
  test('runs only while questions are on show and it is on', async () => {
    const { visit, state } = device();
    const model = await visit();
    const pass = (): void => {
      model.tick();
      state.now += 1000;
      model.tick();
    };
    pass();
    expect(model.seconds.value).toBe(0);
    await model.begin();
    pass();
    expect(model.seconds.value).toBe(1);
    model.switchClock();
    pass();
    expect(model.seconds.value).toBe(1);
    model.switchClock();
    pass();
    await model.show({ at: 'all' });
    pass();
    await model.show({ at: 'before' });
    pass();
    // A second between the looks at "all" belongs to it as well.
    expect(model.seconds.value).toBe(3);
    expect(model.minutesLeft.value).toBe(60);
  });

  test('takes no time that a device slept, and none that a clock was set back', async () => {
    const { visit, state } = device();
    const model = await visit();
    await model.begin();
    for (const passed of [0, 1000, 3_600_000, -7_200_000, 1000]) {
      state.now += passed;
      model.tick();
    }
    expect(model.seconds.value).toBe(2);
  });

  test('goes below zero and takes nothing away', async () => {
    const { visit, state } = device();
    const model = await visit();
    await model.begin();
    for (let i = 0; i <= 61 * 12; i += 1) {
      model.tick();
      state.now += 5000;
    }
    expect(model.minutesLeft.value).toBe(-1);
    putDown(model, true);
    expect(model.standings.value[0]).toBe('answered');
  });
});

describe('an answer', () => {
  test('can be changed until it is handed in, and left open', async () => {
    const { visit, answers } = device();
    const model = await visit();
    await model.begin();
    putDown(model, false, 3);
    expect(model.onward('si')).toBe(true);
    expect(model.onward('si')).toBe(true);
    model.goTo(0);
    putDown(model, true, 1);
    await model.handIn();
    expect(answers.map(({ answer }) => [answer.result, answer.certainty])).toEqual([['right', 1]]);
    expect(model.past.value[0]?.items.filter(({ result }) => result === undefined)).toHaveLength(
      23,
    );
  });

  test('that does not say how sure is asked for it at its place, and counts as open', async () => {
    const { visit, answers } = device();
    const model = await visit();
    await model.begin();
    putDown(model, true, null);
    expect(model.onward('si')).toBe(false);
    expect(model.player.value?.complaint.value?.place).toBe('certainty');
    await model.show({ at: 'all' });
    expect(model.standings.value[0]).toBe('unsure');
    await model.handIn();
    expect(answers).toEqual([]);
    expect(model.past.value[0]?.items[0]?.result).toBeUndefined();
  });

  test('that is no number is told at its place and stays typed', async () => {
    const { visit } = device();
    const model = await visit();
    await model.begin();
    const at = model.rehearsal.value?.items.findIndex(({ id }) => id.endsWith('-7')) ?? -1;
    model.goTo(at);
    model.player.value?.type('lots');
    model.player.value?.sure(2);
    expect(model.onward('si')).toBe(false);
    expect(model.player.value?.complaint.value?.sentence).toContain('“lots”');
    expect(model.standings.value[at]).toBe('unread');
    const after = await visit();
    await after.show({ at: 'question' });
    expect(after.player.value?.typed.value).toBe('lots');
  });
});

test('a number means what it meant when the units are switched before it is seen again', async () => {
  const { visit, units } = device();
  const model = await visit();
  await model.begin();
  const at = model.rehearsal.value?.items.findIndex(({ id }) => id.endsWith('-7')) ?? -1;
  model.goTo(at);
  model.player.value?.type('60');
  model.goTo(at === 0 ? 1 : 0);
  units.value = 'si';
  model.goTo(at);
  expect(model.player.value?.typed.value).toBe('60 psi');
  // On show, what is typed is read as the field says it.
  model.player.value?.type('60');
  expect(model.rehearsal.value?.items[at]?.given).toMatchObject({ system: 'si', text: '60' });
});

describe('what can go wrong', () => {
  test('a device that dies while it hands in has every answer in the log once', async () => {
    const { visit, answers, state } = device();
    const before = await visit();
    await before.begin();
    answerAll(before, () => true);
    state.logTakes = 10;
    await before.handIn();
    expect(answers).toHaveLength(10);
    state.logTakes = Number.POSITIVE_INFINITY;
    // Another tab that opens meanwhile keeps its hands off.
    await visit();
    expect(answers).toHaveLength(10);
    state.now += 60_000;
    const after = await visit();
    expect(answers).toHaveLength(24);
    expect(new Set(answers.map(({ answer }) => answer.item)).size).toBe(24);
    expect(after.past.value.map(({ logged }) => logged)).toEqual([true]);
    state.now += 60_000;
    await visit();
    expect(answers).toHaveLength(24);
  });

  test('a result that finds no room among the past ones waits where it is', async () => {
    const { visit, area, state } = device();
    const before = await visit();
    await before.begin();
    putDown(before, true);
    area.failWrites = { on: /rehearsals-past/u, as: 'QuotaExceededError' };
    await before.handIn();
    expect([before.past.value.length, before.notKept.value]).toEqual([1, 'full']);
    const full = await visit();
    expect([full.past.value.length, full.rehearsal.value]).toEqual([1, undefined]);
    area.failWrites = null;
    state.now += 60_000;
    expect((await visit()).past.value).toHaveLength(1);
    expect((await visit()).past.value[0]?.items.filter(({ result }) => result)).toHaveLength(1);
  });

  test('a browser that keeps nothing still asks, and tells the result', async () => {
    const { visit, area } = device();
    area.failWrites = { on: /./u, as: 'SecurityError' };
    const model = await visit({ keepAnswer: () => Promise.resolve(false) });
    await model.begin();
    expect(model.notKept.value).toBe('blocked');
    answerAll(model, () => true);
    await model.handIn();
    expect(model.view.value.at).toBe('result');
    expect(model.past.value[0]?.items.every(({ result }) => result === 'right')).toBe(true);
    // The next one takes other questions as far as there are any.
    expect(model.next.value).toHaveLength(24);
  });

  test('a browser that runs full meanwhile loses nothing of what is on the page', async () => {
    const { visit, area } = device();
    const model = await visit();
    await model.begin();
    putDown(model, true, 1);
    area.failWrites = { on: /./u, as: 'QuotaExceededError' };
    model.onward('si');
    putDown(model, true, 2);
    model.onward('si');
    putDown(model, true, 3);
    expect(model.notKept.value).toBe('full');
    expect(model.rehearsal.value?.items.slice(0, 3).map(({ certainty }) => certainty)).toEqual([
      1, 2, 3,
    ]);
    area.failWrites = null;
    model.flag();
    const after = await visit();
    expect(after.rehearsal.value?.items.slice(0, 3).map(({ certainty }) => certainty)).toEqual([
      1, 2, 3,
    ]);
  });

  test('what does not come is said, and nothing is lost by it', async () => {
    const { visit, around } = device();
    const offline = await visit({ loadIndex: () => Promise.resolve({ miss: 'offline' }) });
    expect(offline.miss.value).toBe('offline');
    const stuck = await visit({ loadPlay: () => Promise.reject(new Error('gone')) });
    await stuck.begin();
    expect([stuck.miss.value, stuck.view.value.at]).toEqual(['stuck', 'before']);
    expect(stuck.rehearsal.value?.items).toHaveLength(24);
    const cut = await visit({
      loadPlay: async () => ({
        ...(await around.loadPlay()),
        loadSets: () => Promise.resolve({ miss: 'foreign' as const }),
      }),
    });
    await cut.show({ at: 'question' });
    expect([cut.miss.value, cut.view.value.at]).toEqual(['foreign', 'before']);
  });
});

test('the first question is on show while the others are on their way, and one that is gone to is fetched', async () => {
  const { visit, around } = device();
  const waiting: (() => void)[] = [];
  const model = await visit({
    loadPlay: async () => {
      const play = await around.loadPlay();
      return {
        ...play,
        loadSets: async (base, lessons) => {
          // All but a single lesson has to wait until the test lets it come.
          if (lessons.length > 1) await new Promise<void>((come) => waiting.push(come));
          return play.loadSets(base, lessons);
        },
      };
    },
  });
  const begun = model.begin();
  await expect.poll(() => model.view.value.at).toBe('question');
  expect(model.questions.value.size).toBe(8);
  const other = model.rehearsal.value?.items.findIndex(({ id }) => !model.questions.value.has(id));
  model.goTo(other ?? 0);
  await expect.poll(() => model.rehearsal.value?.place).toBe(other);
  expect(model.player.value?.question.value?.id).toBe(model.rehearsal.value?.items[other ?? 0]?.id);
  for (const come of waiting) come();
  await begun;
  expect(model.questions.value.size).toBe(24);
  expect(model.rehearsal.value?.place).toBe(other);
});

describe('two tabs', () => {
  test('keep each other’s answers', async () => {
    const { visit } = device();
    const [one, other] = [await visit(), await visit()];
    await one.begin();
    other.heard();
    await other.show({ at: 'question' });
    putDown(one, true, 1);
    other.goTo(1);
    putDown(other, true, 3);
    one.flag();
    const after = await visit();
    expect(after.rehearsal.value?.items[0]).toMatchObject({ certainty: 1, flagged: true });
    expect(after.rehearsal.value?.items[1]).toMatchObject({ certainty: 3 });
  });

  test('hand in once', async () => {
    const { visit, answers } = device();
    const [one, other] = [await visit(), await visit()];
    await one.begin();
    other.heard();
    await other.show({ at: 'question' });
    putDown(one, true);
    await Promise.all([one.handIn(), other.handIn()]);
    expect(answers).toHaveLength(1);
    expect(other.view.value.at).toBe('before');
    expect(other.past.value).toHaveLength(1);
  });

  test('one that gives it up takes it from the other, with a way on', async () => {
    const { visit } = device();
    const [one, other] = [await visit(), await visit()];
    await one.begin();
    other.heard();
    await other.show({ at: 'question' });
    one.drop();
    other.heard();
    expect([other.rehearsal.value, other.view.value.at]).toEqual([undefined, 'before']);
  });
});

test('a past result can be seen again, and an address that names none leads to the beginning', async () => {
  const { visit } = device();
  const model = await visit();
  await model.begin();
  putDown(model, true);
  await model.handIn();
  const begun = model.past.value[0]?.begun ?? 0;
  const after = await visit();
  await after.show({ at: 'result', begun });
  expect(after.view.value).toEqual({ at: 'result', begun });
  expect(after.questions.value.size).toBe(24);
  await after.show({ at: 'result', begun: 1 });
  expect(after.view.value.at).toBe('before');
  await after.show({ at: 'all' });
  expect(after.view.value.at).toBe('before');
});
