import { figures } from './figures.en.ts';
import type { TagName } from './tag-forms.ts';
import AfterRun from './tags/AfterRun.astro';
import Caution from './tags/Caution.astro';
import GoDeeper from './tags/GoDeeper.astro';
import Mistake from './tags/Mistake.astro';
import Num from './tags/Num.astro';
import Recap from './tags/Recap.astro';
import Retrieval from './tags/Retrieval.astro';
import Section from './tags/Section.astro';
import Solution from './tags/Solution.astro';
import Src from './tags/Src.astro';
import Sum from './tags/Sum.astro';
import Task from './tags/Task.astro';
import Tasks from './tags/Tasks.astro';
import Term from './tags/Term.astro';
import Wide from './tags/Wide.astro';

/**
 * Every tag that a lesson may use, named by what it teaches. tag-forms.ts says what each takes and where it may stand; a name
 * in one of the two alone does not pass `npm run check`. A translation lacks some: see figures.en.ts.
 */
export const tags = {
  ...figures,
  AfterRun,
  Caution,
  GoDeeper,
  Mistake,
  Num,
  Recap,
  Retrieval,
  Section,
  Solution,
  Src,
  Sum,
  Task,
  Tasks,
  Term,
  Wide,
} as const satisfies Record<TagName, unknown>;
