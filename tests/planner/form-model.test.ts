import { describe, expect, test } from 'vitest';
import {
  EMPTY,
  makeForm,
  NO_CODES,
  readDraft,
  type FormDraft,
} from '../../src/planner/form-model.ts';

const read = (draft: Partial<FormDraft>) => readDraft({ ...EMPTY, ...draft }, 'us', null);
const plain = (text: string | undefined) => text?.replaceAll('\u00a0', ' ');

describe('a test in words', () => {
  test('is not taken down before somebody has chosen what it showed', () => {
    const refused = read({ test: 'fluidLevel' });
    expect(refused).toMatchObject({ ok: false, trouble: { field: 'outcome' } });
    expect(read({ test: 'fluidLevel', outcome: 'full' })).toMatchObject({
      ok: true,
      reading: { value: 'full' },
    });
  });

  test('codes: none is something that was read, too', () => {
    expect(read({ test: 'codes' })).toMatchObject({ ok: false, trouble: { field: 'outcome' } });
    expect(read({ test: 'codes', outcome: NO_CODES })).toMatchObject({
      ok: true,
      reading: { value: [] },
    });
    expect(read({ test: 'codes', codes: ['P0731'] })).toMatchObject({
      ok: true,
      reading: { value: ['P0731'] },
    });
  });
});

describe('another test chosen', () => {
  const typed = { test: 'clutch.forward.1500.cold', text: '57', temperature: '70 °F' };
  const chosen = (test: string, draft: Partial<FormDraft> = typed) => {
    const form = makeForm();
    form.set(draft);
    form.choose(test, 'us');
    return form;
  };

  test('the number and the temperature stay where the new one reads alike', () => {
    const form = chosen('line.drive.1500.cold');
    expect(form.draft.value).toMatchObject({ ...typed, test: 'line.drive.1500.cold' });
    expect(form.trouble.value).toBeNull();
  });

  test('a temperature that does not fit stays, and that is said at once, aside', () => {
    const form = chosen('clutch.forward.1500.hot');
    expect(form.draft.value).toMatchObject({ text: '57', temperature: '70 °F' });
    expect(form.trouble.value).toMatchObject({ field: 'temperature', aside: true });
    expect(plain(form.trouble.value?.sentence)).toContain('hot is 185 °F to 221 °F');
  });

  test('nothing stays where it reads something else', () => {
    expect(chosen('stopTime.drive.hot').draft.value).toEqual({
      ...EMPTY,
      test: 'stopTime.drive.hot',
    });
    expect(chosen('fluidLevel').draft.value.text).toBe('');
  });

  test('what was seen stays with its own kind alone', () => {
    const seen = { test: 'airWhere.forward', outcome: 'rings' };
    expect(chosen('airWhere.high', seen).draft.value.outcome).toBe('rings');
    expect(chosen('fluidLevel', seen).draft.value.outcome).toBe('');
  });

  test('one that was proposed begins empty, and the place of its answer is asked for', () => {
    const form = makeForm();
    form.set(typed);
    form.begin('clutch.high.700.hot');
    expect(form.draft.value).toEqual({ ...EMPTY, test: 'clutch.high.700.hot' });
    expect(form.answering.value).toBe(1);
  });
});

test('a temperature far outside is told what its warmth is', () => {
  const refused = read({ test: 'line.park.700.hot', text: '87', temperature: '2000' });
  if (refused.ok) throw new Error('It was taken.');
  expect(plain(refused.trouble.sentence)).toMatch(
    /^2,?000 °F does not fit this test: hot is 185 °F to 221 °F\./,
  );
});

test.each(['6O', '2OO psi', '1o5', 'O.5', '0.O5'])(
  'a letter O for a zero is called that: %s',
  (typed) => {
    const said = (draft: Partial<FormDraft>) => {
      const refused = read({ test: 'line.park.700.hot', ...draft });
      return refused.ok ? '' : refused.trouble.sentence;
    };
    expect(said({ text: typed })).toContain(`There is a letter O in “${typed}”`);
    expect(said({ text: '87', temperature: typed })).toContain(`There is a letter O in “${typed}”`);
    expect(said({ text: '12 oz' })).toContain('“oz” is no unit of');
    expect(said({ text: 'often' })).toContain('does not start with a number');
  },
);

test.each([
  ['55-65', '60'],
  ['55 to 65 psi', '60 psi'],
  ['380–440 kPa', '410 kPa'],
])('a range is called that, and its middle can be pressed: %s', (typed, middle) => {
  const refused = (draft: Partial<FormDraft>) => {
    const answer = read({ test: 'line.park.700.hot', ...draft });
    if (answer.ok) throw new Error('It was taken.');
    return answer.trouble;
  };
  const trouble = refused({ text: typed });
  expect(trouble.sentence).toContain(`“${typed}” is a range, and a reading is one number`);
  expect(trouble.sentence).toContain(`take the middle, ${middle}.`);
  expect(trouble.offers).toEqual([middle]);
  expect(read({ test: 'line.park.700.hot', text: middle })).toMatchObject({ ok: true });
  const warm = refused({ text: '60', temperature: '190-200' });
  expect(warm).toMatchObject({ field: 'temperature', offers: ['195'] });
  // A middle that cannot be either is not offered.
  const far = refused({ text: '5500-6500' });
  expect(far.offers).toBeUndefined();
  expect(far.sentence).toContain('is a range, and one number is asked for here. Write a number');
});
