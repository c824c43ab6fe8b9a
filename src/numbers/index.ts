/**
 * Every number of the course: what prose prints with <Num id="…" />, and what questions quote with {= id} or ask for.
 * Values come from the car and the engine when the site is built, wrong ones too; nobody types a result.
 */
import { askedFor } from './asked-for.ts';
import { airOnTheBench } from './air-on-the-bench.ts';
import { codesAreQuestions } from './codes-are-questions.ts';
import { coldHotAndAir } from './cold-hot-and-air.ts';
import { doItTogether } from './do-it-together.ts';
import { hotFluidThinFluid } from './hot-fluid-thin-fluid.ts';
import { liveData } from './live-data.ts';
import { partsThatSeal } from './parts-that-seal.ts';
import { pressuresHotAndCold } from './pressures-hot-and-cold.ts';
import { provingTheRepair } from './proving-the-repair.ts';
import { puttingBack } from './putting-back.ts';
import { pumpAndRegulator } from './pump-and-regulator.ts';
import { regulatorToClutch } from './regulator-to-clutch.ts';
import { otherComplaints } from './other-complaints.ts';
import { tableOf } from './table.ts';
import { temperatures } from './temperatures.ts';
import { outsideFirst } from './outside-first.ts';
import { theComplaint } from './the-complaint.ts';
import { theNextBestTest } from './the-next-best-test.ts';
import { thinGapOpenHole } from './thin-gap-open-hole.ts';
import { turbineMustStop } from './turbine-must-stop.ts';
import { turbineSums } from './turbine-sums.ts';
import { twoRangeSelections } from './two-range-selections.ts';
import { warmUp } from './warm-up.ts';
import { whatPressureDoes } from './what-pressure-does.ts';
import { whatSlipIs } from './what-slip-is.ts';
import { whoseParts } from './whose-parts.ts';

export const numbers = tableOf({
  'temperatures.ts': temperatures,
  'what-pressure-does.ts': whatPressureDoes,
  'hot-fluid-thin-fluid.ts': hotFluidThinFluid,
  'thin-gap-open-hole.ts': thinGapOpenHole,
  'asked-for.ts': askedFor,
  'pump-and-regulator.ts': pumpAndRegulator,
  'regulator-to-clutch.ts': regulatorToClutch,
  'cold-hot-and-air.ts': coldHotAndAir,
  'two-range-selections.ts': twoRangeSelections,
  'turbine-must-stop.ts': turbineMustStop,
  'turbine-sums.ts': turbineSums,
  'what-slip-is.ts': whatSlipIs,
  'warm-up.ts': warmUp,
  'the-complaint.ts': theComplaint,
  'live-data.ts': liveData,
  'codes-are-questions.ts': codesAreQuestions,
  'outside-first.ts': outsideFirst,
  'pressures-hot-and-cold.ts': pressuresHotAndCold,
  'do-it-together.ts': doItTogether,
  'parts-that-seal.ts': partsThatSeal,
  'air-on-the-bench.ts': airOnTheBench,
  'whose-parts.ts': whoseParts,
  'the-next-best-test.ts': theNextBestTest,
  'proving-the-repair.ts': provingTheRepair,
  'other-complaints.ts': otherComplaints,
  'putting-back.ts': puttingBack,
});
