import type { UnitSystem } from '../../quantity/unit-system.ts';
import { parkSpeed } from '../../car/park-speed.ts';
import type { WaysModel } from './model.ts';
import { RANGES } from './words.ts';

/** Who does what in one of the two boxes, in the state that is drawn. */
export interface Roles {
  readonly hand: string;
  readonly controller: string;
  readonly park: string;
}

const CODES = { P: 'the ratio code', N: 'the ratio code', R: 'P0736', D: 'P0731' } as const;

function electronicController(
  { givens, fed, electronicEnd }: WaysModel,
  system: UnitSystem,
): string {
  const { range, fault } = { range: givens.range.value, fault: givens.fault.value };
  if (fault === 'noPower') {
    return 'Dead. No solenoid works, so the clutches vent and nothing can be selected.';
  }
  if (electronicEnd.value !== null) {
    const seen = `It saw slip, raised pressure once, stored ${CODES[range]} and let the clutch go.`;
    return electronicEnd.value === 'failSafePark'
      ? `${seen} The car stands, so it selected Park by itself, whatever the selector says.`
      : `${seen} The car rolls too fast for the pawl: Neutral now, Park once slower than ${parkSpeed(system)}.`;
  }
  const feeds = fed.value.electronic;
  return feeds === undefined
    ? 'Feeds no clutch. With none applied there is no slip to see.'
    : `Feeds the ${RANGES[feeds]} clutch and watches slip. It can raise pressure, let the clutch go, and move the pawl.`;
}

function electronicPark({ givens, parked }: WaysModel): string {
  if (givens.fault.value === 'noPower') {
    return parked.value.electronic
      ? 'The oil has left the actuator and its spring has pushed the pawl in. To roll the car you need the maker’s release procedure, and brake and chocks first.'
      : 'The oil has left the actuator. The spring pushes the pawl at a turning gear, and it ratchets until the car is slow.';
  }
  return parked.value.electronic
    ? 'Held by the spring of the actuator: the controller has let the oil out.'
    : 'Held out by oil through the park solenoid. Lose the oil or the current, and the spring puts it in.';
}

export function electronicRoles(model: WaysModel, system: UnitSystem): Roles {
  const { fault } = model.givens;
  return {
    hand:
      fault.value === 'noPower'
        ? 'Moves a switch that nobody reads.'
        : fault.value === 'misSet'
          ? 'Moves a switch. There is no cable here to set wrong, so nothing changes.'
          : 'Moves a switch, and nothing else. The controller reads it as a request.',
    controller: electronicController(model, system),
    park: electronicPark(model),
  };
}

function mechanicalController({ givens, fed, mechanicalEnd }: WaysModel): string {
  const { range, fault } = { range: givens.range.value, fault: givens.fault.value };
  const feeds = fed.value.mechanical;
  if (fault === 'noPower') {
    return feeds === undefined
      ? 'Dead. Its clutch solenoids are shut off. The lever still moves valve and pawl.'
      : 'Dead. But this box is built so that oil alone holds one gear. It drives, with a hard shift and no help.';
  }
  if (mechanicalEnd.value !== null) {
    const seen = `It saw slip, raised pressure once and stored ${CODES[range]}.`;
    if (mechanicalEnd.value === 'failSafeDefaultGear') {
      return `${seen} It holds one gear at full pressure, so that the car can be driven in. It cannot select Park.`;
    }
    return range === 'P'
      ? `${seen} It let the clutch go. The rest your hand did.`
      : `${seen} It let the clutch go. The lever still says ${RANGES[range]}, the car is in Neutral and can roll.`;
  }
  return feeds === undefined
    ? 'The valve gives it nothing to work with. It can set line pressure and wait.'
    : `The manual valve has opened the way to ${RANGES[feeds]}. It sets the pressure behind that and watches slip. It can let the clutch go. Valve and pawl are out of its reach.`;
}

function mechanicalPark({ givens, parked }: WaysModel): string {
  const misSet = givens.fault.value === 'misSet';
  if (!parked.value.mechanical) {
    return 'Out, because the lever pulled the rod back. Only the lever puts it in.';
  }
  return misSet
    ? 'The rod stops short, so the cone is not all the way home under the pawl. Do not trust it on a slope. Chock the wheels.'
    : 'Held by the cone that the rod has pushed under the pawl. It needs neither oil nor current, and no controller can undo it.';
}

export function mechanicalRoles(model: WaysModel): Roles {
  return {
    hand:
      model.givens.fault.value === 'misSet'
        ? 'Moves the lever home, but the stop sits hard against the eye of the cable and holds the plate short of its notch. The roller sits on the slope, the valve half over its port. Set right, the stop sits just past the eye, not hard against it (common practice, no source).'
        : 'Pulls the cable. The cable turns the detent plate, and the plate moves the manual valve and the park rod together.',
    controller: mechanicalController(model),
    park: mechanicalPark(model),
  };
}
