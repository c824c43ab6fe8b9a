import type { Answer } from '../../../src/storage/answer.ts';
import { nothingKept, type Bundle } from '../../../src/storage/bundle/bundle.ts';
import { readJob } from '../../../src/storage/jobs/job-form.ts';
import { readOwnMeeting } from '../../../src/storage/meetings/own-meeting.ts';
import { readOwnSheet } from '../../../src/storage/sheets/sheet-form.ts';
import { pastForm, underWayForm } from '../../../src/storage/rehearsals.ts';
import answers from '../answers-version-1.json' with { type: 'json' };
import rehearsals from '../rehearsals-version-1.json' with { type: 'json' };
import { jobs } from '../jobs/jobs-version-1.json' with { type: 'json' };
import { meetings } from '../meetings/meetings-version-1.json' with { type: 'json' };
import { transmissions } from '../sheets/sheets-version-1.json' with { type: 'json' };

const some = <One>(given: readonly unknown[], read: (one: unknown) => One | undefined): One[] =>
  given.map(read).filter((one) => one !== undefined);

/** Something in each part, as a learner of some weeks has it. */
export const aBundle: Bundle = {
  name: 'Bay 3, days',
  written: 1_796_000_000_000,
  answers: answers.map(({ at, answer }) => ({ at, answer: answer as Answer })),
  plan: {
    exam: '2027-03-01',
    minutes: 10,
    round: {
      day: 20_000,
      seed: 7,
      items: [{ id: 'gap-hole-which', lesson: 'thin-gap-open-hole' }],
    },
  },
  progress: {
    done: ['what-pressure-does', 'thin-gap-open-hole'],
    last: { lesson: 'thin-gap-open-hole', section: { id: 'two-leaks', title: 'Two leaks' } },
  },
  visits: {
    byCase: {
      'case-1': {
        steps: ['ask:ranges', 'test:codes'],
        causes: ['split-seal'],
        repairs: [],
        ended: { verdict: 'part', minutes: 44 },
        serial: 3,
      },
    },
  },
  columns: {
    tools: [{ header: 'Time,RPM', columns: { time: { column: 0, unit: 's' } }, ranges: {} }],
  },
  settings: { units: 'si', theme: 'dark' },
  rehearsal: underWayForm.parse(rehearsals.underWay.data) ?? null,
  rehearsed: pastForm.parse(rehearsals.past.data) ?? null,
  jobs: some(jobs, readJob),
  sheets: some(transmissions, readOwnSheet),
  meetings: some(meetings, readOwnMeeting),
};

export const emptyBundle: Bundle = nothingKept(0);
