import {
  ClutchPackDrawing,
  describeClutchPack,
  describePistonSpring,
  PistonSpringDrawing,
  type ClutchPackState,
  type PistonSpringState,
} from '../../drawings/index.ts';
import { More } from '../../ui/More.tsx';
import { printer } from '../../quantity/print.ts';
import { area, force as newtons } from '../../quantity/part-quantities.ts';
import { pressure, torque } from '../../quantity/quantities.ts';
import { Readout } from '../../ui/Readout.tsx';
import { useUnits } from '../../ui/use-units.ts';
import type { HoldingModel } from './model.ts';
import { verdicts } from './words.ts';

/** Full scale of the drawings' tints [kPa]. */
const FULL_SCALE = 1000;
/** One scale for the training clutch, a bigger one where a book's piston is bigger [N]. */
const FORCE_SCALES = [10_200, 31_200] as const;

export function Piston({ model }: { readonly model: HoldingModel }) {
  const print = printer(useUnits());
  const { pressure: kpa, area: cm2 } = model.build.value;
  const force = model.force.value;
  const full = FORCE_SCALES.find((scale) => force.oil <= scale) ?? FORCE_SCALES[1];
  const state: PistonSpringState = {
    pressure: kpa / FULL_SCALE,
    force,
    fullForce: full,
    labels: {
      pressure: print(kpa, pressure),
      area: print(cm2, area),
      oil: print(force.oil, newtons),
      spring: print(force.spring, newtons),
      net: print(force.net, newtons),
      short: print(Math.max(0, force.spring - force.oil), newtons),
    },
  };
  return (
    <figure class="holding-figure">
      <figcaption>
        <strong>Who gets the push:</strong> the spring first, then the plates.
      </figcaption>
      <PistonSpringDrawing id="holding-torque-piston" state={state} />
      <More label="The drawing in words">
        <p>{describePistonSpring(state)}</p>
      </More>
    </figure>
  );
}

export function Pack({ model }: { readonly model: HoldingModel }) {
  const print = printer(useUnits());
  const { torque: has, holds, build, force } = model;
  const kpa = build.value.pressure;
  const state: ClutchPackState = {
    pressure: kpa / FULL_SCALE,
    // The piston leaves its seat once the oil beats the spring.
    travel: force.value.net > 0 ? 1 : 0,
    holds: holds.value,
    labels: { pressure: print(kpa, pressure), torque: print(has.value, torque) },
  };
  const able = verdicts(has.value);
  return (
    <figure class="holding-figure">
      <figcaption>
        <strong>The pack:</strong> drawn with ten faces, whatever number you set.
      </figcaption>
      <ClutchPackDrawing id="holding-torque-pack" state={state} />
      <dl class="readouts">
        <Readout label="It can carry" value={has.value} quantity={torque}>
          {able.idle ? 'stands in gear' : 'slips in gear'},{' '}
          {able['take-off'] ? 'takes off' : 'cannot take off'}
        </Readout>
      </dl>
      <More label="The drawing in words">
        <p>{describeClutchPack(state)}</p>
      </More>
    </figure>
  );
}
