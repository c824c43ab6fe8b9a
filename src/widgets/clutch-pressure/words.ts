import { format, printer } from '../../quantity/print.ts';
import { formatApart } from '../../quantity/print-apart.ts';
import { pressure, temperature, torque } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { LetsGo } from '../../car/lets-go.ts';
import type { Required } from '../../simulation/choices/required.ts';
import type { PressureModel } from './model.ts';

/** What is asked of the clutch, as a subject: "Standing in gear asks for …". */
export const asking: Readonly<Record<Required, string>> = {
  idle: 'Standing in gear at idle',
  'take-off': 'Taking off',
};

/** Where the line is crossed, in words; a temperature only where there is one. */
export function letsGoWords(at: LetsGo, system: UnitSystem): string {
  switch (at.kind) {
    case 'always':
      return 'holds at every temperature offered';
    case 'never':
      return 'never holds';
    case 'at':
      return `holds up to ${format(at.tempC, temperature, system)}`;
  }
}

/** The sentence under the picture. */
export function says(model: PressureModel, system: UnitSystem): string {
  const { now, need, holds, letsGo, commands, givens } = model;
  const print = printer(system);
  const [has, needs] = formatApart(now.value.clutch, need.value.pressure, pressure, system);
  const carries = print(now.value.torque, torque);
  const asked = print(need.value.torque, torque);
  // On the very edge both print alike, and "34 of the 34 asked" would say nothing.
  const torques = carries === asked ? '' : `, ${carries} of the ${asked} asked`;
  const verdict = holds.value
    ? `Holds: ${has}, ${needs} needed.`
    : `Slips: ${has} of ${needs}${torques}.`;
  const line = now.value.lineAtCommand
    ? ''
    : ` The pump cannot keep the line up: ${print(now.value.line, pressure)} of ${print(commands.value.line, pressure)}.`;
  const at = letsGoWords(letsGo.value, system);
  const whose =
    givens.circuit.value === 'high'
      ? 'High does not pass through the cracked seal: it'
      : 'This crack';
  return `${verdict}${line} ${whose} ${at}.`;
}
