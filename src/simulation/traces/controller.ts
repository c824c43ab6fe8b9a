/** What a controller did along time, under and over a trace. */
import { words as stateWords } from '../../car/states/words.en.ts';
import { words as names } from '../../car/words.en.ts';
import type { EventMark, Strip } from '../../charts/line-data.ts';
import type { ControllerState, EngagementEvent } from '../../engine/index.ts';
import { words } from './words.en.ts';

type States = readonly { readonly time: number; readonly state: ControllerState }[];

/** Its state at a moment [s]. */
export const stateAt = (states: States, at: number): ControllerState =>
  states.findLast(({ time }) => time <= at + 1e-9)?.state ?? 'waiting';

/** Its states up to an end [s], as a strip. */
export const controllerStrip = (id: string, label: string, states: States, end: number): Strip => ({
  id,
  label,
  states: states
    .filter(({ time }) => time < end)
    .map(({ time, state }, i) => ({
      from: time,
      to: Math.min(end, states[i + 1]?.time ?? end),
      label: stateWords[state],
      kind: state.startsWith('failSafe')
        ? 'hatched'
        : state === 'pressureRaised'
          ? 'filled'
          : 'plain',
    })),
});

/** The events up to an end [s], as ticks. */
export const eventMarks = (events: readonly EngagementEvent[], end: number): readonly EventMark[] =>
  events
    .filter(({ time }) => time <= end)
    .map(({ time, event: id, code }) => {
      const event = names.events[id];
      return { x: time, words: code === undefined ? event : words.event({ event, code }) };
    });
