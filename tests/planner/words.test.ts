import { expect, test } from 'vitest';
import { words as job } from '../../src/measure/jobs/sheet-words.en.ts';
import { words as now } from '../../src/planner/now-words.en.ts';
import { words } from '../../src/planner/words.en.ts';

test('one minute is one minute, wherever minutes are told', () => {
  const told = (minutes: string) => [
    words.next.takes({ minutes }),
    words.readings.minutes({ minutes }),
    now.next({ test: 'Pan and filter', minutes }),
    job.open.worth({ minutes }),
    job.readings.minutes(minutes),
  ];
  for (const said of told('1')) expect(said).toMatch(/\b1 minute\b/);
  for (const said of told('12')) expect(said).toMatch(/\b12 minutes\b/);
});
