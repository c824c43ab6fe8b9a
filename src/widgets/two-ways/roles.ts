/** Who does what in each of the two boxes, in the state that is drawn. */
import { parkSpeed } from '../../car/park-speed.ts';
import { words as names } from '../../car/words.en.ts';
import type { Range } from '../../drawings/range/state.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { words } from './below-words.en.ts';
import type { WaysModel } from './model.ts';
import { words as texts } from './words.en.ts';

export type Roles = Readonly<Record<keyof typeof words.parts, string>>;

const CODES: Readonly<Partial<Record<Range, string>>> = { R: 'P0736', D: 'P0731' };
const codeOf = (range: Range): string => CODES[range] ?? words.ratioCode;

export function wireRoles(model: WaysModel, system: UnitSystem): Roles {
  const { hand, controller, park } = words.wire;
  const fault = model.givens.fault.value;
  const parked = model.parked.value.electronic;
  const saw = (): string => {
    const code = codeOf(model.givens.range.value);
    const end = model.electronicEnd.value;
    if (fault === 'noPower') return controller.noPower;
    if (end === 'failSafePark') return controller.parks({ code });
    if (end !== null) return controller.waits({ code, speed: parkSpeed(system) });
    if (model.fed.value.electronic === undefined) return controller.none;
    return controller.feeds({ clutch: names.clutches[model.circuit.value] });
  };
  return {
    hand: fault === 'noPower' || fault === 'misSet' ? hand[fault] : hand.moves,
    controller: saw(),
    park:
      fault === 'noPower' ? (parked ? park.sprung : park.ratchets) : parked ? park.in : park.out,
  };
}

export function cableRoles(model: WaysModel): Roles {
  const { hand, controller, park } = words.cable;
  const fault = model.givens.fault.value;
  const range = model.givens.range.value;
  const feeds = model.fed.value.mechanical;
  const saw = (): string => {
    const code = codeOf(range);
    const end = model.mechanicalEnd.value;
    if (fault === 'noPower') return feeds ? controller.drivesHome : controller.noPower;
    if (end === 'failSafeDefaultGear') return controller.oneGear({ code });
    if (end !== null)
      return range === 'P'
        ? controller.parked({ code })
        : controller.letGo({ code, range: texts.ranges[range] });
    if (feeds === undefined) return controller.none;
    return controller.feeds({ range: texts.ranges[feeds] });
  };
  const inPark = fault === 'misSet' ? park.short : park.in;
  return {
    hand: fault === 'misSet' ? hand.misSet : hand.moves,
    controller: saw(),
    park: model.parked.value.mechanical ? inPark : park.out,
  };
}
