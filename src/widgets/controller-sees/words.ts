import type { ControllerEvent } from '../../engine/index.ts';
import { format } from '../../quantity/print.ts';
import { length, seconds, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { Judged, SeesModel } from './model.ts';
import { recipes, RECORDING_IDS, type RecordingId } from '../../car/recordings.ts';

const at = (id: RecordingId, system: UnitSystem): string =>
  format(recipes[id].tempC, temperature, system);

/** What each recording is of, as a name. */
export const names: Readonly<Record<RecordingId, (system: UnitSystem) => string>> = {
  cold: (system) => `Healthy, ${at('cold', system)}`,
  hot: (system) => `Healthy, ${at('hot', system)}`,
  frost: (system) => `Healthy, ${at('frost', system)}`,
  hurry: (system) => `Healthy, ${at('hurry', system)}, driver in a hurry`,
  crack16: (system) => `Crack ${format(0.16, length, system)}, ${at('crack16', system)}`,
  crack25: (system) => `Crack ${format(0.25, length, system)}, ${at('crack25', system)}`,
  crack30: (system) => `Crack ${format(0.3, length, system)}, ${at('crack30', system)}`,
  friction: (system) => `Worn friction, ${at('friction', system)}`,
};

/** The first failed check and the code, in one line of the table. */
export function tripWords({ trip, codeAfter }: Judged, system: UnitSystem): string {
  if (!trip) return 'no check fails';
  const check = trip.check === 'engagement' ? 'engagement check' : 'ratio check';
  const code = codeAfter === null ? 'no code' : `code at ${format(codeAfter, seconds, system)}`;
  return `${check} at ${format(trip.after, seconds, system)}, ${code}`;
}

/** The engine tells every event; what follows from a stored code is one thing, so only its first line is kept. */
export const worthTelling = ({ event }: ControllerEvent): boolean =>
  event !== 'clutch vented' && event !== 'neutral commanded';

const faulty = RECORDING_IDS.filter((id) => !recipes[id].healthy).length;
const healthy = RECORDING_IDS.length - faulty;

export function score(model: SeesModel): string {
  const { caught, falseAlarms } = model;
  const tripped = falseAlarms.value.length;
  return `Faults caught: ${caught.value.length} of ${faulty}. False alarms: ${tripped === 0 ? 'none' : tripped} of ${healthy}.`;
}

/** The sentence under the picture. */
export function says(model: SeesModel, system: UnitSystem): string {
  const shown = model.shown.value;
  return `${names[shown.id](system)}: ${shown.verdict}, ${tripWords(shown, system)}. ${score(model)}`;
}
