import { CIRCUITS } from './circuits.ts';
import { clutchOnSheet } from './clutch-on-sheet.ts';
import { sheetFaults } from './sheet.ts';
import type { TransmissionSheet } from './sheet.ts';

/**
 * A sheet whose numbers fit each other; the ranges of each alone have been looked at before.
 *
 * @param sheet a whole sheet [units in the names of its keys]
 * @returns the same sheet [-]
 * Range: commands in order, every spring weaker than what is commanded, the apply chart true to the circuits' names.
 * @throws SheetError with every fault: the key, both numbers and what is allowed.
 * Source: bookkeeping; a spring stronger than its command makes a clutch that never applies.
 * @example
 * checkSheet(trainingSheet).idle_rpm // 700
 */
export function checkSheet(sheet: TransmissionSheet): TransmissionSheet {
  const { commands, feed, applyChart } = sheet;
  const faults = sheetFaults();
  const order = (
    low: keyof typeof commands,
    high: keyof typeof commands,
    sentence: string,
  ): void => {
    if (commands[low] <= commands[high]) return;
    faults.add(
      `commands.${low}`,
      `commands.${low} is ${commands[low]} kPa and commands.${high} ${commands[high]} kPa; ${sentence}`,
    );
  };
  order('idleClutch_kPa', 'idleLine_kPa', 'a clutch cannot be commanded above the line.');
  order('loadClutch_kPa', 'loadLine_kPa', 'a clutch cannot be commanded above the line.');
  order('clutchLeast_kPa', 'clutchMost_kPa', 'the least must not be above the most.');
  const least = Math.min(commands.clutchLeast_kPa, commands.idleClutch_kPa);
  if (feed.band_kPa >= least) {
    faults.add(
      'feed.band_kPa',
      `feed.band_kPa is ${feed.band_kPa} kPa; it must be below the least clutch command, ${least} kPa.`,
    );
  }
  for (const circuit of CIRCUITS) {
    const { spring_N, area_cm2 } = clutchOnSheet(sheet, circuit);
    const spring = (10 * spring_N) / area_cm2;
    if (spring < least) continue;
    faults.add(
      sheet.clutches[circuit] === undefined ? 'clutch.spring_N' : `clutches.${circuit}`,
      `The return spring of the ${circuit} clutch, ${spring_N} N on ${area_cm2} cm2, takes ${spring.toFixed(0)} kPa; it must take less than the least clutch command, ${least} kPa, or the clutch never applies.`,
    );
  }
  for (const [gear, circuit] of [
    ['R', 'reverse'],
    ['1', 'forward'],
    ['3', 'high'],
  ] as const) {
    if (applyChart[gear].includes(circuit)) continue;
    faults.add(
      `applyChart.${gear}`,
      `applyChart.${gear} must name ${circuit}: the model calls a circuit by the gear it takes part in.`,
    );
  }
  faults.refuse();
  return sheet;
}
