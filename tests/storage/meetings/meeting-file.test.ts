import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { meetingFile } from '../../../src/storage/meetings/meeting-store.ts';
import {
  isMeetingDeleted,
  LONGEST,
  meetingMarkOnly,
  mergeMeetings,
  readOwnMeeting,
  withMeetingDeleted,
  type OwnMeeting,
} from '../../../src/storage/meetings/own-meeting.ts';
import version1 from './meetings-version-1.json' with { type: 'json' };

const time = fc.integer({ min: 0, max: 9 });
const text = (maxLength: number) => fc.string({ maxLength });
const heading = text(LONGEST.heading);
const notes = text(20);
const scene = fc.oneof(
  fc.record({
    ...{ kind: fc.constant('say' as const), heading, notes },
    lines: fc.array(text(30), { maxLength: 3 }),
  }),
  fc.record({ kind: fc.constant('simulation' as const), heading, href: text(60), notes }),
  fc.record({ kind: fc.constant('case' as const), heading, search: text(60), notes }),
);
const plan = fc.record({
  title: text(LONGEST.title),
  minutes: fc.integer({ min: 1, max: 180 }),
  scenes: fc.array(scene, { maxLength: 4 }),
});
const meeting: fc.Arbitrary<OwnMeeting> = fc.record({
  id: fc.constantFrom('a', 'b-1'),
  created: time,
  plan: fc.record({ at: time, value: plan }),
  deleted: fc.record({ at: time, value: fc.boolean() }),
});

test('what is written is read again, to the letter, whatever was typed', () => {
  fc.assert(
    fc.property(fc.array(meeting, { maxLength: 3 }), (records) => {
      expect(meetingFile.read(meetingFile.write(records))).toEqual({
        ok: true,
        records,
        unreadable: 0,
      });
    }),
  );
});

test('a vote keeps the explanation of each option', () => {
  const [one] = version1.meetings.map(readOwnMeeting);
  const explained = JSON.parse(
    JSON.stringify(one).replace(/"why":"[^"]*"/u, '"why":["So.","Not so."]'),
  ) as OwnMeeting;
  expect(JSON.stringify(explained)).toContain('Not so.');
  expect(meetingFile.read(meetingFile.write([explained]))).toMatchObject({ records: [explained] });
});

// Kept for ever: as version 1 wrote it.
test('a file of version 1 is read', () => {
  const read = meetingFile.read(JSON.stringify(version1));
  expect(read).toMatchObject({ ok: true, unreadable: 0 });
  expect(read.ok && read.records.map((one) => [one.id, isMeetingDeleted(one)])).toEqual([
    ['cold-seals', false],
    ['gone', true],
  ]);
  expect(read.ok && JSON.stringify(read.records)).toContain('Heat hardens rubber');
});

describe('two devices', () => {
  test('come to the same meeting, whoever is merged into whom, and however often', () => {
    fc.assert(
      fc.property(meeting, meeting, meeting, (one, two, three) => {
        const [a, b, c] = [one, { ...two, id: one.id }, { ...three, id: one.id }];
        const merged = mergeMeetings(a, b);
        expect(mergeMeetings(b, a)).toEqual(merged);
        expect(mergeMeetings(merged, b)).toEqual(merged);
        expect(mergeMeetings(merged, c)).toEqual(mergeMeetings(a, mergeMeetings(b, c)));
      }),
    );
  });

  test('a deletion holds until something is changed after it', () => {
    fc.assert(
      fc.property(meeting, time, (given, now) => {
        const gone = withMeetingDeleted(given, now, true);
        expect(isMeetingDeleted(gone)).toBe(true);
        expect(isMeetingDeleted(mergeMeetings(given, gone))).toBe(true);
        expect(isMeetingDeleted(meetingMarkOnly(gone))).toBe(true);
        const changed = { ...gone, plan: { at: gone.deleted.at + 1, value: gone.plan.value } };
        expect(isMeetingDeleted(mergeMeetings(gone, changed))).toBe(false);
      }),
    );
  });
});
