import { letsGoWhere, type LetsGo } from '../../car/lets-go.ts';
import { findRoot } from '../../engine/index.ts';
import { CRACK } from '../../simulation/choices/number.ts';
import { TEMP } from '../../simulation/choices/temperatures.ts';

/** Clutch pressure over what is needed [kPa], below zero where it slips; falls with temperature and with crack. */
export type Margin = (crackMm: number, tempC: number) => number;

/** Where a crack lets go, over the temperatures offered. */
export const letsGo = (margin: Margin, crackMm: number): LetsGo =>
  letsGoWhere((tempC) => margin(crackMm, tempC));

/** The widest crack [mm] that still holds at a temperature: the end of the range where all hold, null where none does. */
export function widestHolding(margin: Margin, tempC: number): number | null {
  const at = (crackMm: number): number => margin(crackMm, tempC);
  const whole = at(CRACK.min);
  if (whole < 0) return null;
  const worst = at(CRACK.max);
  if (worst >= 0) return CRACK.max;
  return findRoot(at, CRACK.min, CRACK.max, whole, worst).root;
}

export interface HoldMap {
  readonly cells: readonly (readonly ('holds' | 'slips')[])[];
  readonly contour: readonly (readonly [tempC: number, crackMm: number])[];
}

export const MAP_TEMPS: readonly number[] = Array.from({ length: 35 }, (_, i) => TEMP.min + i * 5);
export const MAP_CRACKS: readonly number[] = Array.from({ length: 41 }, (_, i) => i / 100);

/**
 * Crack width by temperature. Each column is one exact edge rather than 41 solves, so the whole map
 * costs about as much as the chart's two lines.
 */
export function holdMap(margin: Margin): HoldMap {
  const widest = MAP_TEMPS.map((tempC) => widestHolding(margin, tempC));
  const cells = MAP_CRACKS.map((crack) =>
    widest.map((edge) => (edge !== null && crack <= edge ? 'holds' : 'slips')),
  );
  const inside = MAP_TEMPS.flatMap((tempC, i) => {
    const edge = widest[i];
    return edge !== undefined && edge !== null && edge < CRACK.max ? [[tempC, edge] as const] : [];
  });
  // The edge enters at the widest crack and may leave at none at all: both ends between columns.
  const enter = letsGo(margin, CRACK.max);
  const leave = letsGo(margin, CRACK.min);
  return {
    cells,
    contour: [
      ...(enter.kind === 'at' ? [[enter.tempC, CRACK.max] as const] : []),
      ...inside,
      ...(leave.kind === 'at' ? [[leave.tempC, CRACK.min] as const] : []),
    ],
  };
}
