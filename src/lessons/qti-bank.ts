/** The whole bank of this language, in the order of the course, as a package for other systems. */
import site from '../../package.json' with { type: 'json' };
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { QtiBank } from '../qti/bank.ts';
import { writeQti } from '../qti/write.ts';
import { course } from './course.ts';
import { hasQuestions, retrievalSet } from './question-bank.ts';

export const qtiBank = (system: UnitSystem): QtiBank => ({
  system,
  version: site.version,
  lessons: course
    .filter(({ id }) => hasQuestions(id))
    .map(({ id, title }) => ({ id, title, ...retrievalSet(id) })),
});

/** As their files are called. */
export const packageUnits = { us: 'us', metric: 'si' } as const satisfies Record<
  string,
  UnitSystem
>;
export type PackageUnits = keyof typeof packageUnits;

const written = new Map<PackageUnits, Uint8Array<ArrayBuffer>>();

/** Written once, for the file and for the page that says how large it is. */
export function qtiPackage(units: PackageUnits): Uint8Array<ArrayBuffer> {
  const before = written.get(units);
  if (before !== undefined) return before;
  const now = writeQti(qtiBank(packageUnits[units]));
  written.set(units, now);
  return now;
}
