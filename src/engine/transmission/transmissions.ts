import { plantFromSheet } from './from-sheet.ts';
import type { Circuit } from './circuits.ts';
import type { Plant, TestPoint } from './plant.ts';
import { trainingSheet } from './sheets.ts';

/** The training transmission. Invented for teaching; no maker's transmission. */
export const training: Plant = /* @__PURE__ */ plantFromSheet(trainingSheet);
/**
 * Commands at a test point in the range that applies a circuit: Reverse is boosted.
 *
 * @param plant testPoints and commands [Pa]
 * @param point idle or load [-]
 * @param circuit forward, reverse or high [-]
 * @returns engine speed [rpm], line and clutch command [Pa]
 * Range: as the sheet.
 * Source: boost of Reverse, common practice, no source; the factor is invented.
 * @example
 * commandsAt(training, 'idle', 'reverse').line // 780000
 */
export function commandsAt(
  plant: Pick<Plant, 'testPoints' | 'commands'>,
  point: keyof Plant['testPoints'],
  circuit: Circuit,
): TestPoint {
  const given = plant.testPoints[point];
  if (circuit !== 'reverse') return given;
  const factor = plant.commands.reverseFactor;
  return { ...given, line: given.line * factor, clutch: given.clutch * factor };
}
