import { driveHeat, trainingLump } from '../../engine/index.ts';
import { format } from '../../quantity/print.ts';
import { heat, power, temperature, temperatureRise } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import { KINDS, type WarmUpModel } from './model.ts';
import { kindWords } from './words.ts';

/** Where each kind of driving would end if it went on for ever, in this weather. */
export function Below({ model }: { readonly model: WarmUpModel }) {
  const system = useUnits();
  const outside = model.givens.outside.value;
  return (
    <div class="warm-ends">
      <p>
        Each kind of driving has a temperature of its own, where the fluid gives off as much heat as
        it takes in. At {format(outside, temperature, system)} outside:{' '}
        {KINDS.map((kind, i) => (
          <span key={kind}>
            {i > 0 && ', '}
            {kindWords[kind]}{' '}
            <span class="number">
              {format(outside + driveHeat[kind] / trainingLump.loss, temperature, system)}
            </span>
          </span>
        ))}
        . Pulling is stop and go under load. The model leaves out the cooler’s thermostat, so what
        it says of long pulling is too hot. It does not matter here: you stop long before.
      </p>
      <p class="muted">
        All invented for the training transmission: {format(trainingLump.capacity, heat, system)} to
        warm it by {format(1, temperatureRise, system)}, {trainingLump.loss} W given off for each
        such step above the air,{' '}
        {KINDS.map(
          (kind) => `${kindWords[kind]} ${format(driveHeat[kind] / 1e3, power, system)}`,
        ).join(', ')}
        . Where the crack lets go comes from “Does the clutch hold?”, with the command held fixed at
        its idle values. A controller that asks for more as you give throttle pulls away hotter than
        this.
      </p>
    </div>
  );
}
