import {
  controllerCycle,
  rangeSelected,
  type ControllerContext,
  type ControllerEvent,
  type ControllerInput,
  type ControllerState,
} from '../engine/index.ts';

/** What the controller made of the signals it was shown. */
export interface Watched {
  readonly events: readonly ControllerEvent[];
  /** Each holds from its time on [s]. */
  readonly states: readonly { readonly time: number; readonly state: ControllerState }[];
  /** The longest time without a break that slip was over the ratio limit while that check ran [s]. */
  readonly longestOver: number;
}

/**
 * The engine's own controller, run over signals as they were recorded. Open loop: the signals go on as
 * they were, whatever the controller decides. One cycle for each input, so they may come as unevenly
 * as a scan log has them.
 */
export function watch(
  inputs: readonly ControllerInput[],
  selectedAt: number,
  context: ControllerContext,
): Watched {
  // The same controller with no patience limit keeps count of how long slip lasts, by its own rules.
  const counting = { ...context, settings: { ...context.settings, ratioTime: Number.MAX_VALUE } };
  let memory = rangeSelected(selectedAt);
  let counter = memory;
  let longestOver = 0;
  const events: ControllerEvent[] = [];
  const states = [{ time: selectedAt, state: memory.state }];
  for (const input of inputs) {
    const cycle = controllerCycle(memory, input, context);
    if (cycle.memory.state !== memory.state) {
      states.push({ time: input.time, state: cycle.memory.state });
    }
    memory = cycle.memory;
    events.push(...cycle.events);
    counter = controllerCycle(counter, input, counting).memory;
    if (counter.slipSince !== null) {
      longestOver = Math.max(longestOver, input.time - counter.slipSince);
    }
  }
  return { events, states, longestOver };
}
