import type { TagName } from './tag-forms.ts';
import ClutchPressure from '../widgets/clutch-pressure/index.astro';
import Engagement from '../widgets/engagement/index.astro';
import Fluid from '../widgets/fluid/index.astro';
import GapOrHole from '../widgets/gap-or-hole/index.astro';
import HoldingTorque from '../widgets/holding-torque/index.astro';
import WhichRanges from '../widgets/which-ranges/index.astro';
import WhoGoesHungry from '../widgets/who-goes-hungry/index.astro';
import ControllerSees from '../widgets/controller-sees/index.astro';
import TwoWays from '../widgets/two-ways/index.astro';
import WarmUpDrive from '../widgets/warm-up/index.astro';
import Caution from './tags/Caution.astro';
import ControllerDiagram from './tags/ControllerDiagram.astro';
import Drawing from './tags/Drawing.astro';
import EngineTable from './tags/EngineTable.astro';
import Mistake from './tags/Mistake.astro';
import Num from './tags/Num.astro';
import Recap from './tags/Recap.astro';
import Retrieval from './tags/Retrieval.astro';
import Section from './tags/Section.astro';
import Solution from './tags/Solution.astro';
import Src from './tags/Src.astro';
import Task from './tags/Task.astro';
import Tasks from './tags/Tasks.astro';
import Term from './tags/Term.astro';
import Wide from './tags/Wide.astro';

/**
 * Every tag that a lesson may use, named by what it teaches. A simulation joins with two lines:
 * `import Fluid from '../widgets/fluid/index.astro';` and its name below, and a third in tag-forms.ts, which says what each
 * tag takes and where it may stand. A name in one of the two alone does not pass `npm run check`.
 */
export const tags = {
  Caution,
  ClutchPressure,
  ControllerDiagram,
  ControllerSees,
  Drawing,
  Engagement,
  EngineTable,
  Fluid,
  GapOrHole,
  HoldingTorque,
  Mistake,
  Num,
  Recap,
  Retrieval,
  Section,
  Solution,
  Src,
  Task,
  Tasks,
  Term,
  TwoWays,
  WarmUpDrive,
  WhichRanges,
  WhoGoesHungry,
  Wide,
} as const satisfies Record<TagName, unknown>;
