import { describe, expect, test } from 'vitest';
import type { Meeting } from '../../src/meeting/meeting.ts';
import { sessionKey, stageModel } from '../../src/stage/model.ts';
import { snapshotOf } from '../../src/stage/notes-line.ts';
import { readSession, writeSession } from '../../src/storage/meeting-session.ts';

const common = { lines: [], notes: ['Say it.'] };
const meeting: Meeting = {
  id: 'a-try',
  title: 'A try',
  minutes: 10,
  scenes: [
    { ...common, kind: 'say', heading: 'First' },
    {
      ...common,
      ...{ kind: 'vote', heading: 'Hands', stem: ['Which?'] },
      options: [
        { words: ['a'], correct: false, why: [] },
        { words: ['b'], correct: true, why: ['So.'] },
      ],
    },
    { ...common, kind: 'say', heading: 'Last' },
  ],
};
const make = (more: Partial<Parameters<typeof stageModel>[0]> = {}) =>
  stageModel({ meeting, now: () => 0, channel: () => 'one', ...more });

/** A Storage as browsers have it, of this test alone. */
function storage(): Storage {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    clear: () => kept.clear(),
    getItem: (key) => kept.get(key) ?? null,
    key: (index) => [...kept.keys()][index] ?? null,
    removeItem: (key) => void kept.delete(key),
    setItem: (key, value) => void kept.set(key, value),
  };
}

describe('the wall', () => {
  test('hands go to the vote on show, and stand once the answer is out', () => {
    const model = make();
    model.run({ do: 'hand', option: 0, by: 1 });
    model.run({ do: 'next' });
    expect(model.handsHere.value).toEqual([0, 0]);
    model.run({ do: 'hand', option: 1, by: 1 });
    model.run({ do: 'next' });
    model.run({ do: 'hand', option: 1, by: 1 });
    model.run({ do: 'next' });
    expect(model.step.value).toBe('answer');
    model.run({ do: 'hand', option: 0, by: 1 });
    model.typeHands(1, 40);
    expect(model.handsHere.value).toEqual([0, 2]);
  });

  test('a step on a blank wall brings the scene back and goes nowhere', () => {
    const model = make();
    model.run({ do: 'blank' });
    model.run({ do: 'next' });
    expect([model.blank.value, model.place.value.scene]).toEqual([false, 0]);
  });

  test('under the black no key counts, and nothing opens that nobody sees', () => {
    const model = make({ at: { scene: 1, step: 0 } });
    model.run({ do: 'blank' });
    model.press({ do: 'hand', option: 0, by: 1 });
    expect(model.handsHere.value).toEqual([0, 0]);
    expect(model.blank.value).toBe(true);
    for (const key of ['keys', 'code', 'leave'] as const) {
      expect(model.press({ do: key })).toBeUndefined();
      expect([key, model.blank.value, model.open.value]).toEqual([key, false, null]);
      model.run({ do: 'blank' });
    }
    // Whoever counts in the window with the notes sees it there.
    model.run({ do: 'hand', option: 0, by: 1 });
    expect(model.handsHere.value).toEqual([1, 0]);
  });

  test('the menu is closed by Escape, by what it opens, and by the black', () => {
    const model = make();
    for (const command of [{ do: 'leave' }, { do: 'blank' }] as const) {
      model.open.value = 'more';
      expect(model.run(command)).toBeUndefined();
      expect(model.open.value).toBeNull();
    }
    model.run({ do: 'blank' });
    model.open.value = 'more';
    model.run({ do: 'code' });
    expect(model.open.value).toBe('code');
  });

  test('Escape closes what is open before it leaves', () => {
    const model = make();
    model.run({ do: 'keys' });
    expect(model.run({ do: 'leave' })).toBeUndefined();
    expect(model.open.value).toBeNull();
    model.run({ do: 'blank' });
    expect(model.run({ do: 'leave' })).toBeUndefined();
    expect(model.run({ do: 'leave' })).toBe('leave');
  });

  test('the clock is set back to the full time, and runs on if it ran', () => {
    let at = 0;
    const model = make({ now: () => at });
    at = 600_000;
    model.run({ do: 'restart' });
    expect(model.clock.value).toEqual({ ran: 0, since: 600_000 });
    model.run({ do: 'pause' });
    at = 700_000;
    model.run({ do: 'restart' });
    expect(model.clock.value).toEqual({ ran: 0, since: null });
  });

  test('the notes tell what the next press brings', () => {
    const model = make();
    expect(snapshotOf(model)).toMatchObject({ heading: 'First', next: { heading: 'Hands' } });
    model.run({ do: 'next' });
    expect(snapshotOf(model).next).toEqual({ step: 'tally' });
    model.run({ do: 'last' });
    expect(snapshotOf(model).next).toBeNull();
  });

  test('the notes have what the room reads: lines, a question, a complaint', () => {
    const scenes: Meeting['scenes'] = [
      { ...common, kind: 'say', heading: 'Say', lines: [['One.'], ['Two.']] },
      { ...common, kind: 'vote', heading: 'Hands', stem: ['Which?'], options: [] },
      { ...common, kind: 'case', heading: 'Car', car: { week: 1 }, complaint: 'It slips.' },
    ];
    const walls = scenes.map(
      (_, scene) =>
        snapshotOf(make({ meeting: { ...meeting, scenes }, at: { scene, step: 0 } })).wall,
    );
    expect(walls).toEqual([[['One.'], ['Two.']], [['Which?']], [['It slips.']]]);
  });
});

describe('why each option is so, where the wall tells one at a time', () => {
  const options = [0, 1, 2, 3].map((i) => ({
    ...{ words: [`option ${i}`], correct: i === 1 },
    why: [`why ${i}`],
  }));
  const scenes: Meeting['scenes'] = [
    { ...common, kind: 'vote', heading: 'Hands', stem: ['Which?'], options },
    { ...common, kind: 'say', heading: 'Last' },
  ];
  const voted = (...hands: readonly number[]) => {
    const model = make({ meeting: { ...meeting, scenes } });
    for (const option of hands) model.run({ do: 'hand', option, by: 1 });
    return model;
  };
  /** Every step to the next scene. */
  const way = (model: ReturnType<typeof make>): readonly number[] => {
    const steps = [];
    while (model.place.value.scene === 0) {
      steps.push(model.place.value.step);
      model.run({ do: 'next' });
    }
    return steps;
  };

  test('going on tells it of each wrong one that had a hand, and of all where none was counted', () => {
    expect(way(voted(1, 3))).toEqual([0, 1, 2, 5]);
    expect(way(voted(1))).toEqual([0, 1, 2]);
    expect(way(voted())).toEqual([0, 1, 2, 3, 4, 5]);
  });

  test('the key of an option tells it of that one, and no hand is counted any more', () => {
    const model = voted(0);
    model.run({ do: 'next' });
    model.run({ do: 'next' });
    model.run({ do: 'hand', option: 2, by: 1 });
    expect(model.place.value).toEqual({ scene: 0, step: 4 });
    model.run({ do: 'hand', option: 1, by: 1 });
    expect(model.step.value).toBe('answer');
    expect(model.handsHere.value).toEqual([1, 0, 0, 0]);
    model.run({ do: 'next' });
    expect(model.place.value.step).toBe(3);
    model.run({ do: 'back' });
    expect(model.step.value).toBe('answer');
  });

  test('the window with the notes reads each one from the bars on, and knows which the wall tells', () => {
    const model = voted(0);
    const votes = () => snapshotOf(model).votes;
    expect(votes().map(({ why }) => why)).toEqual([[], [], [], []]);
    model.run({ do: 'next' });
    expect(votes().map(({ why }) => why)).toEqual([['why 0'], ['why 1'], ['why 2'], ['why 3']]);
    expect(votes().map(({ told }) => told)).toEqual([undefined, undefined, undefined, undefined]);
    model.run({ do: 'next' });
    expect(votes().map(({ told }) => told)).toEqual([false, true, false, false]);
    expect(snapshotOf(model).next).toEqual({ step: 'why' });
    model.run({ do: 'next' });
    expect(votes().map(({ told }) => told)).toEqual([true, false, false, false]);
    expect(snapshotOf(model).next).toEqual({ heading: 'Last' });
  });

  test('where all of it fits, no option waits', () => {
    const model = make({ at: { scene: 1, step: 2 } });
    expect(snapshotOf(model).votes.map(({ told }) => told)).toEqual([undefined, undefined]);
  });
});

describe('what a reload finds', () => {
  test('hands and clock, until the tab is closed', () => {
    const area = storage();
    const model = make();
    model.run({ do: 'next' });
    model.run({ do: 'hand', option: 1, by: 1 });
    writeSession(model.session.value, area);
    const kept = readSession(sessionKey(meeting), area);
    expect(make({ kept, at: { scene: 1, step: 0 } }).handsHere.value).toEqual([0, 1]);
    expect(kept?.channel).toBe('one');
  });

  test('a meeting that is begun anew has its whole time and no hands, and the second window still finds it', () => {
    const area = storage();
    const model = make();
    model.run({ do: 'next' });
    model.run({ do: 'hand', option: 1, by: 1 });
    writeSession(model.session.value, area);
    const kept = readSession(sessionKey(meeting), area);
    const anew = make({ kept, now: () => 3_600_000, channel: () => 'another' });
    anew.run({ do: 'next' });
    expect(anew.handsHere.value).toEqual([0, 0]);
    expect(anew.clock.value).toEqual({ ran: 0, since: 3_600_000 });
    expect(anew.channel).toBe('one');
  });

  test('begun anew by mistake and left on its first scene, it has the hands of before', () => {
    const kept = { ...make().session.value, hands: { 1: [0, 3] } };
    const anew = make({ kept });
    expect(anew.keptOnLeaving().hands).toEqual({ 1: [0, 3] });
    anew.run({ do: 'next' });
    expect(anew.keptOnLeaving().hands).toEqual({});
    anew.run({ do: 'hand', option: 0, by: 1 });
    anew.run({ do: 'first' });
    expect(anew.keptOnLeaving().hands).toEqual({ 1: [1, 0] });
  });

  test('nothing of another meeting, and nothing of what cannot be read', () => {
    const area = storage();
    writeSession(make().session.value, area);
    expect(readSession('another 2', area)).toBeUndefined();
    for (const text of ['', '{', 'null', '{"v":1}', '{"v":9,"meeting":"a"}', '[]']) {
      area.setItem('hot-clutch:meeting', text);
      expect(readSession(sessionKey(meeting), area)).toBeUndefined();
    }
  });
});
