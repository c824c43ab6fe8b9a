/** Which test tells most for its minutes (specification of the planner, sections 2 and 6). */
import { ARRIVES, minutesFor, type CarState } from './car-state.ts';
import { expectedIn } from './cells.ts';
import { ANY_VALUE, CLASSES } from './hypotheses.ts';
import { inOneGo } from './in-one-go.ts';
import { normalBelow } from './normal.ts';
import { outcomesOf } from './outcome-tables.ts';
import { chancesFor, forecast, type Posterior, type Weighed } from './posterior.ts';
import {
  columnOf,
  isNumeric,
  LONGEST_STOP,
  TESTS,
  type NumericTest,
  type OutcomeTest,
  type Test,
} from './tests.ts';

/** A test with what it would tell and take. */
export interface Ranked {
  readonly test: Test;
  readonly bits: number;
  readonly minutes: number;
}

/** Less than this is not worth the walk [bits]. */
export const LEAST_BITS = 0.03;
/** Hypotheses under this share of the heaviest are left out. */
const NEGLIGIBLE = 1e-4;
const POINTS = [-1.3, -0.4, 0.4, 1.3] as const;
const EDGES = 20;
const BUCKETS = 1024;

interface Share {
  readonly cell: Weighed;
  readonly share: number;
}

/** A hypothesis with what it gives to each bin: p(bin | cell). */
interface Binned extends Share {
  readonly bins: ArrayLike<number>;
}

/** Mutual information [bits] between the class and a bin. */
function information(all: readonly Binned[], count: number): number {
  // Class after class, each with all bins.
  const joint = new Float64Array(CLASSES.length * count);
  const ofClass = new Float64Array(CLASSES.length);
  const ofBin = new Float64Array(count);
  for (const { cell, share, bins } of all) {
    const { index } = cell.hypothesis;
    ofClass[index] = (ofClass[index] ?? 0) + share;
    for (let b = 0; b < count; b += 1) {
      const part = share * (bins[b] ?? 0);
      const at = index * count + b;
      joint[at] = (joint[at] ?? 0) + part;
      ofBin[b] = (ofBin[b] ?? 0) + part;
    }
  }
  const bits = joint.reduce((sum, both, at) => {
    if (both <= 0) return sum;
    const apart = (ofClass[Math.floor(at / count)] ?? 1) * (ofBin[at % count] ?? 1);
    return sum + both * Math.log2(both / apart);
  }, 0);
  return Math.max(0, bits);
}

const bitsOfWords = (shares: readonly Share[], test: OutcomeTest): number =>
  information(
    shares.map((one) => ({ ...one, bins: chancesFor(one.cell, test) })),
    outcomesOf(test),
  );

/** Places of the points in the order of their values: by buckets first, since a sort of thousands is most of the work. */
function inOrder(values: Float64Array): Int32Array {
  const least = values.reduce((low, value) => Math.min(low, value), Infinity);
  const most = values.reduce((high, value) => Math.max(high, value), -Infinity);
  const perValue = most > least ? (BUCKETS - 1) / (most - least) : 0;
  const bucketOf = (i: number): number => Math.floor(((values[i] ?? 0) - least) * perValue);
  const begins = new Int32Array(BUCKETS + 1);
  values.forEach((_value, i) => {
    const after = bucketOf(i) + 1;
    begins[after] = (begins[after] ?? 0) + 1;
  });
  for (let k = 1; k <= BUCKETS; k += 1) begins[k] = (begins[k] ?? 0) + (begins[k - 1] ?? 0);
  const free = begins.slice();
  const order = new Int32Array(values.length);
  values.forEach((_value, i) => {
    const bucket = bucketOf(i);
    const place = free[bucket] ?? 0;
    order[place] = i;
    free[bucket] = place + 1;
  });
  for (let k = 0; k < BUCKETS; k += 1) {
    order
      .subarray(begins[k], begins[k + 1])
      .sort((one, other) => (values[one] ?? 0) - (values[other] ?? 0));
  }
  return order;
}

/** Where the scale is cut: at even weights of what the hypotheses expect. */
function edgesOf(means: Float64Array, sds: Float64Array, shares: readonly Share[], stop: boolean) {
  const each = POINTS.length;
  const values = new Float64Array(shares.length * each);
  means.forEach((mean, n) => {
    POINTS.forEach((a, k) => (values[n * each + k] = mean + a * (sds[n] ?? 0)));
  });
  const total = shares.reduce((sum, { share }) => sum + share, 0);
  const edges: number[] = [];
  let sum = 0;
  let next = 0;
  for (const i of inOrder(values)) {
    sum += (shares[Math.floor(i / each)]?.share ?? 0) / each / total;
    while (next < EDGES && sum >= 0.02 + (0.96 * next) / (EDGES - 1) - 1e-12) {
      const at = values[i] ?? 0;
      const edge = stop && at > LONGEST_STOP ? LONGEST_STOP : at;
      edges.push(edge);
      next += 1;
    }
  }
  // "Did not stop" is an outcome of its own. Where two edges are one, the bin between them is empty.
  if (stop) edges.push(LONGEST_STOP);
  return edges;
}

/** What lies from each edge to the next, of what lies below each; the first bin begins at nothing. */
function betweenEdges(edges: readonly number[], below: (edge: number) => number): Float64Array {
  const bins = new Float64Array(edges.length);
  let under = 0;
  edges.forEach((edge, b) => {
    const upTo = below(edge);
    bins[b] = upTo - under;
    under = upTo;
  });
  return bins;
}

function bitsOfNumber(shares: readonly Share[], test: NumericTest): number {
  const column = columnOf(test.id);
  const means = new Float64Array(shares.length);
  const sds = new Float64Array(shares.length);
  shares.forEach(({ cell }, n) => {
    const { mu, S } = forecast(cell, expectedIn(cell.hypothesis, column));
    means[n] = mu;
    sds[n] = Math.sqrt(S);
  });
  const stop = test.kind === 'stopTime';
  const edges = [...edgesOf(means, sds, shares, stop), Infinity];
  const [from, to] = test.span;
  const anyValue = betweenEdges(edges, (edge) =>
    Math.min(1, Math.max(0, (edge - from) / (to - from))),
  );
  // Half of what stops any time does not stop at all.
  const anything = stop
    ? anyValue.map((part, b) => 0.5 * part + (b === edges.length - 1 ? 0.5 : 0))
    : anyValue;
  const binned = shares.map(({ cell, share }, n): Binned => {
    const [mean = 0, sd = 1] = [means[n], sds[n]];
    const bins = betweenEdges(edges, (edge) => normalBelow((edge - mean) / sd));
    const { broken } = cell;
    if (!broken) return { cell, share, bins };
    const eps = ANY_VALUE * (broken.groups.get(test.group) ?? broken.from);
    return { cell, share, bins: bins.map((p, b) => (1 - eps) * p + eps * (anything[b] ?? 0)) };
  });
  return information(binned, edges.length);
}

/** The hypotheses that count, their shares summing to 1. */
function heavy(posterior: Posterior): readonly Share[] {
  const heaviest = posterior.shares.reduce((most, share) => Math.max(most, share), 0);
  const kept = posterior.cells.flatMap((cell, n): readonly Share[] => {
    const share = posterior.shares[n] ?? 0;
    return share < NEGLIGIBLE * heaviest ? [] : [{ cell, share }];
  });
  const total = kept.reduce((sum, { share }) => sum + share, 0);
  return kept.map(({ cell, share }) => ({ cell, share: share / total }));
}

const bitsOf = (shares: readonly Share[], test: Test): number =>
  isNumeric(test) ? bitsOfNumber(shares, test) : bitsOfWords(shares, test);

/** Tests that can be taken at all, with their minutes. */
function open({ taken }: Posterior, state: CarState): readonly Omit<Ranked, 'bits'>[] {
  const frosty = state.coldMorning || state.temperature === 'frost';
  return TESTS.filter(({ id }) => !taken.includes(id))
    .filter(({ at }) => at.warmth !== 'frost' || frosty)
    .map((test) => ({ test, minutes: minutesFor(test, state) }));
}

/** All tests worth their minutes, best rate first; worked out a test at a time, so that a page may answer in between. */
export function* rankSteps(
  posterior: Posterior,
  state: CarState = ARRIVES,
): Generator<undefined, readonly Ranked[]> {
  const shares = heavy(posterior);
  const worth: Ranked[] = [];
  for (const { test, minutes } of open(posterior, state)) {
    const bits = bitsOf(shares, test);
    if (bits >= LEAST_BITS) worth.push({ test, bits, minutes });
    yield undefined;
  }
  return worth.sort((a, b) => b.bits / b.minutes - a.bits / a.minutes);
}

/** The same in one go. */
export const rankTests = (posterior: Posterior, state: CarState = ARRIVES): readonly Ranked[] =>
  inOneGo(rankSteps(posterior, state));

/** The first of rankTests alone: no test tells more than what is unknown, so long ones need not be worked out. */
export function bestTest(posterior: Posterior, state: CarState = ARRIVES): Ranked | undefined {
  const shares = heavy(posterior);
  const ofClass = new Float64Array(CLASSES.length);
  for (const { cell, share } of shares) {
    const { index } = cell.hypothesis;
    ofClass[index] = (ofClass[index] ?? 0) + share;
  }
  const unknown = ofClass.reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0);
  let best: Ranked | undefined;
  for (const { test, minutes } of [...open(posterior, state)].sort(
    (a, b) => a.minutes - b.minutes,
  )) {
    const rate = best ? best.bits / best.minutes : 0;
    if (unknown / minutes < rate) break;
    const bits = bitsOf(shares, test);
    if (bits >= LEAST_BITS && bits / minutes > rate) best = { test, bits, minutes };
  }
  return best;
}
