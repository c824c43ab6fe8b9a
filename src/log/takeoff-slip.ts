import { illustrativeSettings, slipRpm } from '../engine/index.ts';
import type { Selection } from './selections.ts';
import { moves } from './selections.ts';
import type { Series } from './series.ts';
import type { Interval } from './stop-time.ts';

/** The largest slip from 1 s to 4 s after the brake lets go. */
export type TakeoffSlip =
  | {
      readonly kind: 'measured';
      /** The largest reading [rpm], without its sign. */
      readonly peak: number;
      /** From that reading to where slip may have gone between two readings [rpm]. */
      readonly between: Interval;
      readonly at: number;
      /** How much of the three seconds the log has [s], from how many rows. */
      readonly covered: number;
      readonly rows: number;
      /** The gear changed, so the rest of the three seconds does not count. */
      readonly shifted: boolean;
    }
  | { readonly kind: 'noTakeoff' | 'tooShort' | 'noOutput' };

const AFTER = 1;
const FOR = 3;
/** With less than this of the window [s] the largest slip may lie outside it. */
const LEAST = 1.5;

const { openThrottle, ratioSlipRpm, ratioSlipShare } = illustrativeSettings;

/**
 * When the take-off begins [s]: the brake lets go; where the log has no brake, the throttle opens; where it has neither, the
 * vehicle moves. Undefined where none of it happens.
 */
export function takeoffAt(series: Series, { first, last }: Selection): number | undefined {
  const { time, brake, throttle } = series;
  const rows = Array.from({ length: last - first + 1 }, (_, i) => first + i);
  const held = rows.find((row) => brake?.[row] === 1);
  const released =
    held === undefined ? undefined : rows.find((row) => row > held && brake?.[row] === 0);
  const opened = () => rows.find((row) => (throttle?.[row] ?? 0) >= openThrottle * 100);
  const rolled = () => rows.find((row) => moves(series, row) === true);
  const row = released ?? (throttle === undefined ? undefined : opened()) ?? rolled();
  return row === undefined ? undefined : time[row];
}

/** The row from which turbine is so far below ratio x output that a higher gear must have come in. */
function shiftRow(
  series: Series,
  turbine: Float64Array,
  ratio: number,
  rows: readonly number[],
): number {
  const { output, gear } = series;
  const begun = gear?.[rows[0] ?? 0];
  return rows.findIndex((row) => {
    const now = gear?.[row];
    if (begun !== undefined && now !== undefined && !Number.isNaN(now) && !Number.isNaN(begun)) {
      return now !== begun;
    }
    const speed = turbine[row] ?? Number.NaN;
    const slip = slipRpm(speed, ratio, output?.[row] ?? Number.NaN);
    return slip < -Math.max(ratioSlipRpm, ratioSlipShare * speed);
  });
}

/** The rows from one towards an end, itself left out. */
const others = (row: number, end: number, step: 1 | -1): readonly number[] =>
  Array.from({ length: Math.max(0, (end - row) * step) }, (_, i) => row + (i + 1) * step);

/**
 * Largest slip of a take-off, and how far between two readings it may have gone: half of the larger step beside the
 * largest reading, which is the whole of it where slip rises and falls in straight lines.
 *
 * @param turbine without dropouts [rpm]
 * @param ratio of the gear that the range begins in [-]
 */
export function takeoffSlip(
  series: Series,
  turbine: Float64Array,
  selection: Selection,
  ratio: number,
): TakeoffSlip {
  const { time, output } = series;
  if (output === undefined) return { kind: 'noOutput' };
  const begun = takeoffAt(series, selection);
  if (begun === undefined) return { kind: 'noTakeoff' };
  const window: number[] = [];
  for (let row = selection.first; row <= selection.last; row += 1) {
    const after = (time[row] ?? 0) - begun;
    const has =
      !Number.isNaN(turbine[row] ?? Number.NaN) && !Number.isNaN(output[row] ?? Number.NaN);
    if (has && after >= AFTER - 1e-9 && after <= AFTER + FOR + 1e-9) window.push(row);
  }
  const cut = shiftRow(series, turbine, ratio, window);
  const rows = cut < 0 ? window : window.slice(0, cut);
  const covered = (time[rows.at(-1) ?? 0] ?? 0) - (time[rows[0] ?? 0] ?? 0);
  if (rows.length < 2 || covered < LEAST) return { kind: 'tooShort' };
  const slipAt = (row: number): number =>
    Math.abs(slipRpm(turbine[row] ?? Number.NaN, ratio, output[row] ?? Number.NaN));
  const slips = rows.map(slipAt);
  const most = slips.indexOf(Math.max(...slips));
  const peak = slips[most] ?? 0;
  const row = rows[most] ?? 0;
  // The readings beside it count also where they lie before or after the three seconds.
  const reads = (other: number): boolean => !Number.isNaN(slipAt(other));
  const before = others(row, selection.first, -1).find(reads);
  const after =
    most === slips.length - 1 && cut >= 0 ? undefined : others(row, selection.last, 1).find(reads);
  const beside = [before, after].map((other) =>
    other === undefined ? 0 : Math.abs(peak - slipAt(other)),
  );
  return {
    kind: 'measured',
    peak,
    between: { low: peak, high: peak + Math.max(...beside) / 2 },
    at: time[row] ?? 0,
    covered,
    rows: rows.length,
    shifted: cut >= 0,
  };
}
