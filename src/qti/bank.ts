import type { UnitSystem } from '../quantity/unit-system.ts';
import type { Asked } from '../quiz/asked.ts';

export interface QtiLesson {
  readonly id: string;
  readonly title: string;
  readonly objectives: readonly { readonly id: string; readonly text: string }[];
  readonly questions: readonly Asked[];
}

/** What a package holds. */
export interface QtiBank {
  /** The units its amounts are shown and its numbers typed in. */
  readonly system: UnitSystem;
  /** Of the site that wrote it. */
  readonly version: string;
  readonly lessons: readonly QtiLesson[];
}
