import AskFirst from '../widgets/ask-first/index.astro';
import BenchAir from '../widgets/bench-air/index.astro';
import BeforeAndAfter from '../widgets/before-and-after/index.astro';
import ClutchPressure from '../widgets/clutch-pressure/index.astro';
import Engagement from '../widgets/engagement/index.astro';
import Fluid from '../widgets/fluid/index.astro';
import FreezeFrame from '../widgets/freeze-frame/index.astro';
import GapOrHole from '../widgets/gap-or-hole/index.astro';
import GaugeBench from '../widgets/gauge-bench/index.astro';
import HeatAndAir from '../widgets/heat-and-air/index.astro';
import HoldingTorque from '../widgets/holding-torque/index.astro';
import JobCard from '../widgets/job-card/index.astro';
import LevelWindow from '../widgets/level-window/index.astro';
import NextTest from '../widgets/next-test/index.astro';
import NowOrTwice from '../widgets/now-or-twice/index.astro';
import SamplingTrap from '../widgets/sampling-trap/index.astro';
import StallTorque from '../widgets/stall-torque/index.astro';
import StockOrOrder from '../widgets/stock-or-order/index.astro';
import TwoSeals from '../widgets/two-seals/index.astro';
import TwoFilters from '../widgets/two-filters/index.astro';
import TestOrder from '../widgets/test-order/index.astro';
import WhichRanges from '../widgets/which-ranges/index.astro';
import WholeCar from '../widgets/whole-car/index.astro';
import WhoGoesHungry from '../widgets/who-goes-hungry/index.astro';
import ControllerSees from '../widgets/controller-sees/index.astro';
import ThreeChecks from '../widgets/three-checks/index.astro';
import TwoWays from '../widgets/two-ways/index.astro';
import WarmUpDrive from '../widgets/warm-up/index.astro';
import ControllerDiagram from './tags/ControllerDiagram.astro';
import Drawing from './tags/Drawing.astro';
import EngineTable from './tags/EngineTable.astro';
import QuestionPackages from './tags/QuestionPackages.astro';

/**
 * What a lesson can show: simulations, drawings, tables of the engine's data; and the files that the page of practice offers. A simulation joins
 * with two lines, `import Fluid from '../widgets/fluid/index.astro';` and its name below. In another
 * language only those join whose words are written in it: see figures.es.ts.
 */
export const figures = {
  AskFirst,
  BenchAir,
  BeforeAndAfter,
  ClutchPressure,
  ControllerDiagram,
  ControllerSees,
  Drawing,
  Engagement,
  EngineTable,
  Fluid,
  FreezeFrame,
  GapOrHole,
  GaugeBench,
  HeatAndAir,
  HoldingTorque,
  JobCard,
  LevelWindow,
  NextTest,
  NowOrTwice,
  QuestionPackages,
  SamplingTrap,
  StallTorque,
  StockOrOrder,
  TwoSeals,
  TwoFilters,
  TestOrder,
  ThreeChecks,
  TwoWays,
  WarmUpDrive,
  WhichRanges,
  WholeCar,
  WhoGoesHungry,
} as const;
