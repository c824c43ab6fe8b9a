import { describe, expect, test } from 'vitest';
import { findApi, type Api } from '../../src/scorm/launch/find-api.ts';
import { openReport, timespan } from '../../src/scorm/launch/report.ts';

const bank = { lessons: [{ id: 'a' }], items: [{ id: 'a1', lesson: 'a' }] };

function platform(kept: Record<string, string> = {}, opens = true) {
  const calls: string[] = [];
  const values = new Map(Object.entries(kept));
  const api: Api = {
    LMSInitialize: () => (calls.push('initialize'), String(opens)),
    LMSFinish: () => (calls.push('finish'), 'true'),
    LMSCommit: () => (calls.push('commit'), 'true'),
    LMSGetValue: (name) => values.get(name) ?? '',
    LMSSetValue: (name, value) => (values.set(name, value), 'true'),
  };
  return { api, calls, values };
}
const all = { done: new Set(['a']), right: new Map([['a1', true]]) };

describe('a visit', () => {
  test('tells what changed, once, and closes once', () => {
    const { api, calls, values } = platform();
    let now = 0;
    const visit = openReport(api, bank, () => now);
    visit.tell(all);
    visit.tell(all);
    now = 3_725_000;
    visit.finish();
    visit.finish();
    visit.tell({ done: new Set(), right: new Map() });
    expect(calls).toEqual(['initialize', 'commit', 'commit', 'finish']);
    expect(Object.fromEntries(values)).toEqual({
      'cmi.core.score.min': '0',
      'cmi.core.score.max': '100',
      'cmi.core.score.raw': '100',
      'cmi.core.lesson_status': 'passed',
      'cmi.suspend_data': '1;1;1',
      'cmi.core.session_time': '0001:02:05',
      'cmi.core.exit': 'suspend',
    });
  });

  test('takes up what was put aside, and takes no pass back', () => {
    const { api, values } = platform({
      'cmi.suspend_data': '1;1;0',
      'cmi.core.lesson_status': 'passed',
    });
    const visit = openReport(api, bank, () => 0);
    expect(visit.start).toEqual({ done: new Set(['a']), right: new Map([['a1', false]]) });
    visit.tell(visit.start);
    expect(values.get('cmi.core.lesson_status')).toBe('passed');
  });

  test('leaves a platform alone that does not open', () => {
    const { api, calls, values } = platform({}, false);
    const visit = openReport(api, bank, () => 0);
    visit.tell(all);
    visit.finish();
    expect(calls).toEqual(['initialize']);
    expect(values.size).toBe(0);
  });
});

// CMITimespan of SCORM 1.2: HHHH:MM:SS.
test.each([
  [0, '0000:00:00'],
  [61_999, '0000:01:01'],
  [-5, '0000:00:00'],
  [36_000_000, '0010:00:00'],
])('%i ms is %s', (ms, text) => {
  expect(timespan(ms)).toBe(text);
});

describe('the run-time is found', () => {
  const { api } = platform();
  const top = { API: api };
  test('here, some frames up, or above the window that opened this one', () => {
    expect(findApi(top)).toBe(api);
    expect(findApi({ parent: { parent: top } })).toBe(api);
    expect(findApi({ parent: null, opener: { parent: top } })).toBe(api);
  });
  test('and none where there is none, in a ring of frames, or in a window of somebody else', () => {
    const ring: { parent?: object } = {};
    ring.parent = ring;
    expect(findApi(ring)).toBeUndefined();
    expect(findApi({})).toBeUndefined();
    const strange = {
      get parent(): never {
        throw new DOMException('cross-origin', 'SecurityError');
      },
    };
    expect(findApi(strange)).toBeUndefined();
  });
});
