import { namedAsRequest, readQuestion, TESTS, type TakenReading } from '../../diagnosis/index.ts';
import type { JobReading } from '../../storage/jobs/job.ts';

/** A kept reading as diagnosis takes it; null for one that this version of the site does not know, as a file may bring. */
export function takenOf({ test, value, temperatureC }: JobReading): TakenReading | null {
  const known = TESTS.find(({ id }) => id === test);
  if (known === undefined) return null;
  const named = namedAsRequest(known);
  const at = temperatureC !== undefined && 'temperature_C' in named;
  const read = readQuestion({
    readings: [{ ...named, ...(at && { temperature_C: temperatureC }), value }],
  });
  // A temperature of another band makes it another test.
  if ('error' in read || read.readings[0]?.test !== known) return null;
  return { test: known, value, ...(at && { temperatureC }) };
}
