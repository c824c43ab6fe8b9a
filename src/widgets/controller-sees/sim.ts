import { format } from '../../quantity/print.ts';
import { length, seconds, speed } from '../../quantity/quantities.ts';
import type { ControlSpec, SimSpec } from '../../simulation/sim-spec.ts';
import { START, makeControllerSees, type SeesGivens, type SeesModel } from './model.ts';
import { RECORDING_IDS } from '../../car/recordings.ts';
import { names, says } from './words.ts';

const controls: readonly ControlSpec<SeesGivens>[] = [
  {
    kind: 'number',
    key: 'slipLimit',
    label: 'Slip limit',
    quantity: speed,
    min: 20,
    max: 1000,
    step: 10,
  },
  {
    kind: 'number',
    key: 'slipTime',
    label: 'Time over the limit',
    quantity: seconds,
    min: 0.05,
    max: 2,
    step: 0.05,
  },
  {
    kind: 'choice',
    key: 'recording',
    label: 'Recording',
    as: 'select',
    options: RECORDING_IDS.map((id) => ({ value: id, words: names[id] })),
  },
  {
    kind: 'number',
    key: 'engagementTime',
    label: 'Engagement check, after selection',
    quantity: seconds,
    min: 0.3,
    max: 2.4,
    step: 0.05,
  },
  {
    kind: 'number',
    key: 'engagementLimit',
    label: 'Engagement check, slip limit',
    quantity: speed,
    min: 20,
    max: 800,
    step: 10,
  },
  {
    kind: 'number',
    key: 'noise',
    label: 'Noise of the turbine sensor',
    quantity: speed,
    min: 0,
    max: 300,
    step: 5,
    words: (value) => (value === 0 ? 'none' : 'either way'),
  },
  {
    kind: 'number',
    key: 'resolution',
    label: 'Smallest step the sensor can tell',
    quantity: speed,
    min: 0,
    max: 300,
    step: 5,
    words: (value) => (value === 0 ? 'exact' : ''),
  },
];

/** The numbers the explanations name, from the model at the end of the run. */
const end = { slipTime: 0.15, recording: 'hurry' } as const;
const after = makeControllerSees();
after.apply({ ...START, ...end });
const before = makeControllerSees();

export const sim: SimSpec<SeesGivens, SeesModel> = {
  id: 'controller-sees',
  title: 'What does the controller catch?',
  linkVersion: 1,
  controls,
  predict: {
    question: (system) =>
      `The ratio check waits ${format(START.slipTime, seconds, system)} over the limit before it acts. Halve that, so that faults are caught sooner. What else is caught, among healthy cars?`,
    options: [
      {
        id: 'nothing',
        words: 'Nothing. A healthy clutch does not slip.',
        why: (system) =>
          `Once it is full, it does not. But it takes a moment to fill, and a driver may have the throttle open by then. The turbine turns free for ${format(after.of('hurry').longestOver, seconds, system)} with the check running, and to a controller that is slip.`,
      },
      {
        id: 'hurry',
        words: 'A car whose driver steps on it before the clutch is full.',
        why: (system) => {
          const gained =
            (before.of('crack25').codeAfter ?? 0) - (after.of('crack25').codeAfter ?? 0);
          return `The clutch is still filling, the throttle is open, so the ratio check runs: slip for ${format(after.of('hurry').longestOver, seconds, system)}. The usual limit lets that pass, half of it does not. And what was gained? The code for the crack of ${format(0.25, length, system)} comes ${format(gained, seconds, system)} sooner.`;
        },
      },
      {
        id: 'frost',
        words: 'A car in the frost, whose clutch fills slowly.',
        why: (system) =>
          `It is the slowest to stop its turbine, ${format(after.healthyWorst.value.slowest, seconds, system)} after selection. But its driver waits. At a standstill with the throttle shut the ratio check does not run. Only the engagement check looks then, and its time was left alone.`,
      },
    ],
    start: START,
    end,
    runLabel: 'Halve the time',
    outcome: ({ falseAlarms }) => {
      const tripped = falseAlarms.value;
      const option = tripped.includes('frost') ? 'frost' : tripped.length > 0 ? 'hurry' : 'nothing';
      return {
        option,
        words: (system) =>
          tripped.length === 0
            ? 'No healthy recording fails a check.'
            : `False alarm now: ${tripped.map((id) => names[id](system)).join('; ')}.`,
      };
    },
  },
  says,
};
