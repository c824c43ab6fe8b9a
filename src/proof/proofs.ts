/** The proofs that are no Playwright specs, by name. */
import { agreement } from './agreement.ts';
import { bytes } from './bytes.ts';
import { faults } from './faults.ts';
import type { Figure } from './form.ts';
import { fuzz } from './fuzz.ts';
import { mutation, mutationWords } from './mutation/index.ts';
import { packages } from './packages.ts';
import { planner } from './planner.ts';
import { security } from './security.ts';
import { speed } from './speed.ts';
import { walks } from './walks.ts';

type Measure = (said: readonly string[]) => readonly Figure[] | Promise<readonly Figure[]>;

export const proofs: Readonly<Record<string, Measure>> = {
  agreement,
  planner,
  fuzz,
  security,
  packages,
  faults,
  walks,
  speed,
  bytes,
  mutation,
};

/** Words that may follow the name of a proof, by its name. */
export const wordsOf: Readonly<Record<string, readonly string[]>> = { mutation: mutationWords };
