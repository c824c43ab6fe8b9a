import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { EngagementScene } from '../engine/drive/engagement-scene.ts';
import {
  applyFaults,
  densityRatio,
  faultSeverity,
  fluidAt,
  fluidClasses,
  makeFluid,
  RAD_S_PER_RPM,
  solveEngagement,
  training,
  trainingStory,
} from '../engine/index.ts';
import type { Row } from './row.ts';

/**
 * The engine's solver beside two others on one case in one run: ratios, since times alone say more
 * of the machine. The case is one in which the controller does nothing, so that a general-purpose
 * integrator can solve it too: it has no events, and is stopped and started at the story's times.
 */
const CASE = 'hot crack 0.16 mm';
const ROUNDS = 15;

interface Frozen {
  readonly name: string;
  readonly step_s: number;
  readonly turbine_rpm: readonly number[];
}
const truth = (
  JSON.parse(
    readFileSync(new URL('../../tests/truth/engagement.json', import.meta.url), 'utf8'),
  ) as readonly Frozen[]
).find(({ name }) => name === CASE);

const fluid = makeFluid(fluidClasses['low-viscosity']);
const plant = applyFaults(training, {
  transferSeal: { severity: faultSeverity('transferSeal', 0.16) },
});

type Slopes = (time: number, y: number[]) => number[];
type Watch = (time: number, y: number[]) => void;
interface OdexSolver {
  relativeTolerance: number;
  absoluteTolerance: number | number[];
  maxSteps: number;
  denseOutput: boolean;
  grid(step: number, watch: Watch): unknown;
  solve(slopes: Slopes, from: number, y: number[], to: number, watch: unknown): { y: number[] };
}
// Required, not imported: the package ships its TypeScript source, which our compiler would then hold to our rules.
const odex = createRequire(import.meta.url)('odex') as {
  readonly Solver: new (size: number) => OdexSolver;
};

/** Middle of several times [ms]. */
function middle(work: () => void): number {
  for (let i = 0; i < 3; i += 1) work();
  const times = Array.from({ length: ROUNDS }, () => {
    const begun = performance.now();
    work();
    return performance.now() - begun;
  }).sort((a, b) => a - b);
  return times[ROUNDS >> 1] ?? Number.NaN;
}

/** Largest error of the turbine speed against the frozen SciPy solution [rpm]. */
function worst(rpm: ArrayLike<number>): number {
  let most = 0;
  truth?.turbine_rpm.forEach((value, i) => {
    const error = Math.abs((rpm[i] ?? Number.NaN) - value);
    most = Math.max(most, Number.isNaN(error) ? Number.POSITIVE_INFINITY : error);
  });
  return most;
}

function withOdex(tolerance: number): Float64Array {
  const story = trainingStory;
  const scene = new EngagementScene({
    plant,
    fluid: fluidAt(fluid, 100),
    swell: densityRatio(fluid, 20, 100),
    story,
    circuit: 'forward',
  });
  const free = (training.drive.idleRpm + 12) * RAD_S_PER_RPM;
  const rpm = new Float64Array(Math.round(story.end / 0.01) + 1);
  const slope = new Float64Array(4);
  let state = [free, free, 0, 0];
  let row = 0;
  const corners = [0, story.select, story.brakeOff, story.brakeOff + 3, story.end];
  for (let k = 1; k < corners.length; k += 1) {
    const from = corners[k - 1] ?? 0;
    const to = corners[k] ?? 0;
    if (from === story.select) scene.selected = true;
    if (from === story.brakeOff) scene.held = false;
    const solver = new odex.Solver(4);
    solver.relativeTolerance = tolerance;
    // The volume is tiny in cubic metres, so one absolute tolerance must suit it.
    solver.absoluteTolerance = [1e-2, 1e-2, 1e-10, 1e-4];
    solver.maxSteps = 200_000;
    solver.denseOutput = true;
    const solved = solver.solve(
      (time, y) => {
        scene.rhs(time, Float64Array.from(y), slope);
        return Array.from(slope);
      },
      from,
      state,
      to,
      solver.grid(0.01, (time, y) => {
        row = Math.round(time * 100);
        rpm[row] = (y[1] ?? Number.NaN) / RAD_S_PER_RPM;
      }),
    );
    state = solved.y;
  }
  rpm[rpm.length - 1] = (state[1] ?? Number.NaN) / RAD_S_PER_RPM;
  return rpm;
}

function scipyRow(ours: number): Row {
  const script = new URL('../../tests/truth/time_engagement.py', import.meta.url).pathname;
  const { status, stdout } = spawnSync('python3', [script, CASE, '1e-5'], { encoding: 'utf8' });
  const ms = Number(stdout) * 1e3;
  return {
    what: `SciPy (LSODA, relative 1e-5) over ours, ${CASE}`,
    aim: 'a ratio',
    measured:
      status === 0 && ms > 0
        ? `${(ms / ours).toFixed(0)} times (${ms.toFixed(0)} ms, ${ours.toFixed(2)} ms)`
        : 'not measured: no Python with SciPy here',
  };
}

export function benchEngagementRivals(): readonly Row[] {
  const request = {
    plant,
    fluid,
    tempC: 100,
    range: 'drive',
    rangeSelection: 'electronic',
  } as const;
  const ours = middle(() => {
    solveEngagement(request);
  });
  const error = worst(solveEngagement(request).trace.turbineRpm);
  const tried = [1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 1e-6, 1e-7].map((tolerance) => ({
    tolerance,
    error: worst(withOdex(tolerance)),
  }));
  const best = tried.reduce((a, b) => (b.error < a.error ? b : a));
  const { tolerance, error: theirError } = tried.find((one) => one.error <= error) ?? best;
  const theirs = middle(() => {
    withOdex(tolerance);
  });
  const odexRow: Row = {
    what: `npm odex (extrapolation) over ours, ${CASE}`,
    aim: 'a ratio at equal error',
    measured: `${(theirs / ours).toFixed(0)} times (${theirs.toFixed(0)} ms at tolerance ${tolerance}; error ${theirError.toFixed(2)} rpm${theirError > error ? ', the best it came to' : ''}, ours ${error.toFixed(2)} rpm)`,
  };
  return [scipyRow(ours), odexRow];
}
