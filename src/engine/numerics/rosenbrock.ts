/**
 * Rodas3: a Rosenbrock method for stiff systems. Order 3 with an embedded order 2 for error control, four stages,
 * three function values a step, L-stable and stiffly accurate, so that a clutch circuit full of nearly
 * incompressible fluid settles without tiny steps.
 *
 * Source: A. Sandu et al., Benchmarking stiff ODE solvers for atmospheric chemistry problems II: Rosenbrock
 * solvers, Atmospheric Environment 31 (1997) 3459-3472, method RODAS3; form as in Hairer and Wanner, Solving
 * Ordinary Differential Equations II, section IV.7 (7.25). Rejected: explicit pairs (the circuit's time constant
 * of a millisecond forces thousands of steps in 7 s), npm integrators (explicit, or without events; see bench).
 */

/** Right-hand side: writes dy/dt for time [s] and state into `out`. */
export type Rhs = (time: number, state: Float64Array, out: Float64Array) => void;

/** How much the right-hand side changes with time alone, the state held: writes its derivative [1/s of dy/dt] into `out`. */
export type TimeSlope = Rhs;

/** An accepted step with what is needed to see inside it. */
export interface Step {
  readonly t0: number;
  readonly t1: number;
  readonly y0: Float64Array;
  readonly y1: Float64Array;
  readonly f0: Float64Array;
  readonly f1: Float64Array;
}

/** Error allowed a step: relative [-] and absolute [the state's unit], and the longest step [s]. */
export interface Tolerances {
  readonly relative: number;
  /** One for each state, in the state's unit. */
  readonly absolute: Float64Array;
  readonly maxStep: number;
}

/** Work done so far; tests bound it. */
export interface Work {
  steps: number;
  rejected: number;
  evaluations: number;
}

const GAMMA = 0.5;
const SAFETY = 0.9;
const SMALLEST_STEP = 1e-9;

/**
 * State inside an accepted step, as accurate as the method's own order.
 *
 * Equation: cubic Hermite polynomial through both ends and their slopes.
 *
 * @param step an accepted step: times [s], states and slopes [any]
 * @param time within the step [s]
 * @param out filled with the state [any]
 * @returns nothing [-]
 * Range: t0 to t1.
 * Source: Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I, section II.6.
 * @example
 * ((out) => { insideStep({ t0: 0, t1: 1, y0: Float64Array.of(0), y1: Float64Array.of(1), f0: Float64Array.of(0), f1: Float64Array.of(2) }, 0.5, out); return out[0] })(Float64Array.of(9)) // 0.25
 */
export function insideStep(step: Step, time: number, out: Float64Array): void {
  const h = step.t1 - step.t0;
  const s = (time - step.t0) / h;
  const r = 1 - s;
  const h00 = (1 + 2 * s) * r * r;
  const h10 = s * r * r * h;
  const h01 = s * s * (3 - 2 * s);
  const h11 = -s * s * r * h;
  for (let i = 0; i < out.length; i += 1) {
    out[i] =
      h00 * (step.y0[i] as number) +
      h10 * (step.f0[i] as number) +
      h01 * (step.y1[i] as number) +
      h11 * (step.f1[i] as number);
  }
}

/** LU with partial pivoting, in place; systems here have four states. Returns false on a zero pivot. */
function factor(a: Float64Array, n: number, pivots: Int32Array): boolean {
  for (let k = 0; k < n; k += 1) {
    let p = k;
    for (let i = k + 1; i < n; i += 1) {
      if (Math.abs(a[i * n + k] as number) > Math.abs(a[p * n + k] as number)) p = i;
    }
    pivots[k] = p;
    const pivot = a[p * n + k] as number;
    if (pivot === 0 || !Number.isFinite(pivot)) return false;
    if (p !== k) {
      for (let j = 0; j < n; j += 1) {
        const held = a[k * n + j] as number;
        a[k * n + j] = a[p * n + j] as number;
        a[p * n + j] = held;
      }
    }
    for (let i = k + 1; i < n; i += 1) {
      const scale = (a[i * n + k] as number) / pivot;
      a[i * n + k] = scale;
      for (let j = k + 1; j < n; j += 1) {
        a[i * n + j] = (a[i * n + j] as number) - scale * (a[k * n + j] as number);
      }
    }
  }
  return true;
}

function solve(a: Float64Array, n: number, pivots: Int32Array, b: Float64Array): void {
  for (let k = 0; k < n; k += 1) {
    const p = pivots[k] as number;
    if (p !== k) {
      const held = b[k] as number;
      b[k] = b[p] as number;
      b[p] = held;
    }
  }
  for (let i = 1; i < n; i += 1) {
    let sum = b[i] as number;
    for (let j = 0; j < i; j += 1) sum -= (a[i * n + j] as number) * (b[j] as number);
    b[i] = sum;
  }
  for (let i = n - 1; i >= 0; i -= 1) {
    let sum = b[i] as number;
    for (let j = i + 1; j < n; j += 1) sum -= (a[i * n + j] as number) * (b[j] as number);
    b[i] = sum / (a[i * n + i] as number);
  }
}

/** Room for one step's arithmetic. */
interface Room {
  readonly jac: Float64Array;
  readonly timeSlope: Float64Array;
  readonly matrix: Float64Array;
  readonly pivots: Int32Array;
  readonly k1: Float64Array;
  readonly k2: Float64Array;
  readonly k3: Float64Array;
  readonly k4: Float64Array;
  readonly at: Float64Array;
  readonly f: Float64Array;
}

function roomFor(n: number): Room {
  const vector = (): Float64Array => new Float64Array(n);
  return {
    jac: new Float64Array(n * n),
    timeSlope: vector(),
    matrix: new Float64Array(n * n),
    pivots: new Int32Array(n),
    k1: vector(),
    k2: vector(),
    k3: vector(),
    k4: vector(),
    at: vector(),
    f: vector(),
  };
}

/**
 * A stepper over one smooth stretch of a system. Construct it where the system's law changes; call `advance`
 * until the end of the stretch; look inside each step with `insideStep`.
 */
export class Stepper {
  time: number;
  readonly state: Float64Array;
  readonly work: Work;
  private readonly rhs: Rhs;
  private readonly timeSlopeOf: TimeSlope;
  private readonly tolerances: Tolerances;
  private stepSize: number;
  private slope: Float64Array;
  /** Kept from step to step: fresh arrays in each cost an eighth of the march. */
  private readonly room: Room;

  constructor(
    // The law and its slope with time. Given, not differenced: it is mostly zero, and a difference costs a function value a step.
    law: { readonly rhs: Rhs; readonly timeSlope: TimeSlope },
    start: { readonly time: number; readonly state: Float64Array },
    tolerances: Tolerances,
    work: Work,
    firstStep = 1e-4,
  ) {
    this.rhs = law.rhs;
    this.timeSlopeOf = law.timeSlope;
    this.time = start.time;
    this.state = Float64Array.from(start.state);
    this.tolerances = tolerances;
    this.work = work;
    this.stepSize = firstStep;
    this.slope = new Float64Array(start.state.length);
    this.room = roomFor(start.state.length);
    this.evaluate(this.time, this.state, this.slope);
  }

  private evaluate(time: number, state: Float64Array, out: Float64Array): void {
    this.work.evaluations += 1;
    this.rhs(time, state, out);
  }

  /** Forward differences; the increments are a fixed share of each state's own scale. */
  private jacobian(out: Float64Array): void {
    const n = this.state.length;
    const { at: moved, f: slope } = this.room;
    moved.set(this.state);
    for (let j = 0; j < n; j += 1) {
      const value = this.state[j] as number;
      const scale = Math.max(Math.abs(value), 1e3 * (this.tolerances.absolute[j] as number));
      const delta = 1e-6 * scale;
      moved[j] = value + delta;
      this.evaluate(this.time, moved, slope);
      moved[j] = value;
      for (let i = 0; i < n; i += 1) {
        out[i * n + j] = ((slope[i] as number) - (this.slope[i] as number)) / delta;
      }
    }
  }

  /** Takes one accepted step, not past `end`; `failed` only if no step above a nanosecond meets the tolerance. */
  advance(end: number): Step | 'failed' {
    const n = this.state.length;
    const { jac, timeSlope, matrix, pivots, k1, k2, k3, k4, at, f } = this.room;
    this.jacobian(jac);
    this.timeSlopeOf(this.time, this.state, timeSlope);
    for (;;) {
      const remaining = end - this.time;
      let h = Math.min(this.stepSize, this.tolerances.maxStep, remaining);
      // Never leave a sliver before the end: it would cost a step of its own.
      if (remaining - h < 0.1 * h) h = remaining;
      for (let i = 0; i < n * n; i += 1) matrix[i] = -(jac[i] as number);
      for (let i = 0; i < n; i += 1) {
        matrix[i * n + i] = (matrix[i * n + i] as number) + 1 / (h * GAMMA);
      }
      let error = Number.POSITIVE_INFINITY;
      if (factor(matrix, n, pivots)) {
        const y = this.state;
        for (let i = 0; i < n; i += 1) {
          k1[i] = (this.slope[i] as number) + h * 0.5 * (timeSlope[i] as number);
        }
        solve(matrix, n, pivots, k1);
        for (let i = 0; i < n; i += 1) {
          k2[i] =
            (this.slope[i] as number) +
            (4 / h) * (k1[i] as number) +
            h * 1.5 * (timeSlope[i] as number);
        }
        solve(matrix, n, pivots, k2);
        for (let i = 0; i < n; i += 1) at[i] = (y[i] as number) + 2 * (k1[i] as number);
        this.evaluate(this.time + h, at, f);
        for (let i = 0; i < n; i += 1) {
          k3[i] = (f[i] as number) + ((k1[i] as number) - (k2[i] as number)) / h;
        }
        solve(matrix, n, pivots, k3);
        for (let i = 0; i < n; i += 1) at[i] = (at[i] as number) + (k3[i] as number);
        this.evaluate(this.time + h, at, f);
        for (let i = 0; i < n; i += 1) {
          k4[i] =
            (f[i] as number) +
            ((k1[i] as number) - (k2[i] as number) - (8 / 3) * (k3[i] as number)) / h;
        }
        solve(matrix, n, pivots, k4);
        error = 0;
        for (let i = 0; i < n; i += 1) {
          const next = (at[i] as number) + (k4[i] as number);
          const scale =
            (this.tolerances.absolute[i] as number) +
            this.tolerances.relative * Math.max(Math.abs(y[i] as number), Math.abs(next));
          const share = (k4[i] as number) / scale;
          error += share * share;
          at[i] = next;
        }
        error = Math.sqrt(error / n);
      }
      if (!(error <= 1)) {
        this.work.rejected += 1;
        this.stepSize =
          h * (Number.isFinite(error) ? Math.max(0.2, SAFETY / Math.cbrt(error)) : 0.2);
        if (this.stepSize < SMALLEST_STEP) return 'failed';
        continue;
      }
      const f1 = new Float64Array(n);
      const y1 = Float64Array.from(at);
      this.evaluate(this.time + h, y1, f1);
      const step: Step = {
        t0: this.time,
        t1: h === remaining ? end : this.time + h,
        y0: Float64Array.from(this.state),
        y1,
        f0: this.slope,
        f1,
      };
      this.time = step.t1;
      this.state.set(y1);
      this.slope = f1;
      this.work.steps += 1;
      const grow = error === 0 ? 5 : Math.min(5, SAFETY / Math.cbrt(error));
      // A step cut short by `end` says little about the next: do not shrink for it.
      this.stepSize = Math.max(h * grow, h === remaining ? Math.min(this.stepSize, h * 5) : 0);
      return step;
    }
  }
}
